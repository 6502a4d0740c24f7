using Training.Courses;

namespace Training.Web.Features.Courses;

/// <summary>A module as another page names it.</summary>
/// <param name="Id">For its address.</param>
/// <param name="Title">Plain text.</param>
/// <param name="Minutes">About how long it takes to read.</param>
public sealed record ModuleLink(string Id, string Title, int Minutes)
{
    /// <summary>The link in one language.</summary>
    public static ModuleLink To(Module module, Language language) => new(module.Id, module.Pages[language].Title, module.Minutes);
}

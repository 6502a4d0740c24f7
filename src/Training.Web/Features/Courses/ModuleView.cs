using Training.Courses;

namespace Training.Web.Features.Courses;

/// <summary>What the page of a module is given.</summary>
/// <param name="CourseId">For addresses.</param>
/// <param name="CourseHash">The text that is shown.</param>
/// <param name="Id">For addresses.</param>
/// <param name="CourseTitle">What the paper calls the course.</param>
/// <param name="Number">Which part it is, from 1.</param>
/// <param name="Count">Of how many.</param>
/// <param name="Minutes">About how long it takes to read.</param>
/// <param name="Objectives">What the reader can do after it, in the order of the course.</param>
/// <param name="Page">Its words, rendered.</param>
/// <param name="Place">Where the reader works.</param>
/// <param name="Previous">The part before, or null.</param>
/// <param name="Next">The part after, or null.</param>
public sealed record ModuleView(
    string CourseId,
    string CourseHash,
    string Id,
    string CourseTitle,
    int Number,
    int Count,
    int Minutes,
    IReadOnlyList<string> Objectives,
    ModulePage Page,
    ReadersPlace Place,
    ModuleLink? Previous,
    ModuleLink? Next)
{
    /// <summary>What of the page is for its reader.</summary>
    public IEnumerable<PagePart> Parts => Page.Parts.Where(part => part is not PagePart.Text text || Place.Snakes.Has(text.Snakes));

    /// <summary>The module of an id in one language, or null where the course has none.</summary>
    public static ModuleView? Find(Course course, string moduleId, ReadersPlace place, Language language)
    {
        var modules = course.Modules;
        var index = modules.Index().FirstOrDefault(m => m.Item.Id == moduleId, (-1, null!)).Index;
        if (index < 0) return null;
        return new(
            course.Id,
            course.Hash,
            moduleId,
            course.Scheme.Words[language].Title,
            index + 1,
            modules.Count,
            modules[index].Minutes,
            [.. course.Objectives.Where(modules[index].Objectives.Contains).Select(objective => course.Words[language].Objectives[objective])],
            modules[index].Pages[language],
            place,
            index == 0 ? null : ModuleLink.To(modules[index - 1], language),
            index == modules.Count - 1 ? null : ModuleLink.To(modules[index + 1], language));
    }
}

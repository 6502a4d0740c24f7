using Microsoft.AspNetCore.Mvc;
using Training.Courses;
using Training.Documents.Fonts;
using Training.Documents.Typesetting;
using Training.Web.Demo;
using Training.Web.Doors;
using Training.Web.Provider;
using Training.Web.Settings;

namespace Training.Web.Features.Shared;

/// <summary>Papers that are printed when somebody asks for them: what all have in common, and how they are answered. No file of them is kept.</summary>
public sealed class PrintedPapers(TrainingOptions options, OurProvider provider, DemoMark demo, FontFaces faces)
{
    /// <summary>Who gives them out.</summary>
    public string ProviderName => provider.Name;

    /// <summary>The sheet.</summary>
    public PaperSize Size => options.Papers.Size;

    /// <summary>Whether what they say is invented.</summary>
    public bool IsDemonstration => demo.IsOn;

    /// <summary>What they are set in.</summary>
    public FontFaces Faces => faces;

    /// <summary>The paper as a file to save; where it cannot be printed as written, a page that says everything that is in the way (422).</summary>
    /// <param name="controller">Who answers.</param>
    /// <param name="page">What the paper says.</param>
    /// <param name="canPrint">Adds what is in the way; true where nothing is.</param>
    /// <param name="write">Prints it.</param>
    /// <param name="name">Of the file.</param>
    public IActionResult Answer<TPage>(
        Controller controller, TPage page, Func<TPage, FontFaces, ICollection<Problem>, bool> canPrint, Func<TPage, FontFaces, byte[]> write, string name)
    {
        var problems = new List<Problem>();
        return canPrint(page, faces, problems) ? controller.File(write(page, faces), "application/pdf", name) : CannotPrint(controller, problems);
    }

    /// <summary>The page that says why a paper is not printed (422).</summary>
    /// <param name="controller">Who answers.</param>
    /// <param name="problems">Everything that is in the way.</param>
    /// <param name="others">Where one paper holds many and only some are in the way: the others.</param>
    public static ViewResult CannotPrint(Controller controller, IReadOnlyList<Problem> problems, OtherPapers? others = null) =>
        controller.Mend("CannotPrint", new CannotPrintPage(problems, others));
}

/// <summary>Why a paper is not printed.</summary>
/// <param name="Problems">At least one.</param>
/// <param name="Others">What can be printed none the less.</param>
public sealed record CannotPrintPage(IReadOnlyList<Problem> Problems, OtherPapers? Others);

/// <summary>Those of many that can be printed.</summary>
/// <param name="Address">Of the file, on this site.</param>
/// <param name="Count">At least one.</param>
public sealed record OtherPapers(string Address, int Count);

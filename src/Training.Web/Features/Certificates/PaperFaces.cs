using Training.Courses;
using Training.Documents.Fonts;
using Training.Web.Settings;

namespace Training.Web.Features.Certificates;

/// <summary>Reads the faces that papers are set in.</summary>
public static class PaperFaces
{
    /// <summary>The operator's faces, or those of the PDF library where no folder is set; null where a file is missing or cannot be used.</summary>
    public static FontFaces? Read(PapersOptions papers, ICollection<Problem> problems)
    {
        if (papers.FontFolder.Length == 0) return FontFaces.Default;
        var files = new[] { FontFaces.DisplayFile, FontFaces.TextFile, FontFaces.StrongFile }
            .Select(file => Path.Combine(papers.FontFolder, file)).ToList();
        var missing = files.Where(file => !File.Exists(file)).ToList();
        foreach (var file in missing) problems.Add(new(SettingsProblems.FileMissing, Place.Of("Training:Papers:FontFolder"), file));
        return missing.Count > 0
            ? null
            : FontFaces.Read(File.ReadAllBytes(files[0]), File.ReadAllBytes(files[1]), File.ReadAllBytes(files[2]), problems);
    }
}

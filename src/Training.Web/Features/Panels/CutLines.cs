using System.Globalization;
using Training.Courses;
using Training.Records;

namespace Training.Web.Features.Panels;

/// <summary>The lines of an adopted cut for the course's files (docs/course-format.md, "Where a pass mark comes from").</summary>
/// <param name="Yaml">Beside <c>id</c> of the quiz or checklist, in place of its <c>pass</c>.</param>
/// <param name="HeadingId">Of the section with the reason, in <c>course.md</c> of every language.</param>
public sealed record CutLines(string Yaml, string HeadingId)
{
    /// <summary>The lines of an adoption.</summary>
    /// <param name="adoption">Which.</param>
    /// <param name="targetId">Quiz or checklist.</param>
    /// <param name="leadName">Its initials are written; a name that was erased leaves a dash.</param>
    public static CutLines Of(CutAdoption adoption, string targetId, string? leadName) => new(
        string.Create(CultureInfo.InvariantCulture, $"""
              pass: {adoption.PassPercent}
              cut:
                panel: {adoption.PanelId}
                method: {MethodOf(adoption.Method)}
                set-on: {adoption.AdoptedOn:yyyy-MM-dd}
                set-by: {InitialsOf(leadName)}
                judges: {adoption.Judges}
                rounds: {adoption.Rounds}
                mean: {adoption.Mean:0.##}
            {(adoption.StandardError is { } error ? string.Create(CultureInfo.InvariantCulture, $"    standard-error: {error:0.##}\n") : "")}
            """).TrimEnd() + "\n",
        $"cut-{targetId}");

    private static string MethodOf(CutMethod method) => method switch
    {
        CutMethod.Angoff => "angoff",
        CutMethod.Hofstee => "hofstee",
        CutMethod.BorderlineRegression => "borderline-regression",
    };

    private static string InitialsOf(string? name) => string.IsNullOrWhiteSpace(name) ? "\"–\""
        : string.Join(' ', name.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(part => $"{char.ToUpperInvariant(part[0])}."));
}

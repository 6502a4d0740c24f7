using Training.Courses;
using Training.Records;
using Training.Scoring;
using Training.Web.Features.Scoresheets;

namespace Training.Web.Features.Scoring;

/// <summary>A sheet of the visitor with everything that its pages show.</summary>
/// <param name="Started">With its marks.</param>
/// <param name="Course">The snapshot that it is scored with.</param>
/// <param name="Checklist">Of that snapshot.</param>
/// <param name="Candidate">By name.</param>
/// <param name="Watcher">By name; null on a model.</param>
/// <param name="Site">Where.</param>
/// <param name="Zone">IANA time zone of the site.</param>
/// <param name="IsSigned">Nothing can be marked any more.</param>
public sealed record OpenSheet(
    StartedScoresheet Started, Course Course, Checklist Checklist, string Candidate, string? Watcher, string Site, string Zone, bool IsSigned)
{
    /// <summary>A mark a step, in order; null where there is none.</summary>
    public IReadOnlyList<Observation?> Marks => Started.MarksOf(Checklist);

    /// <summary>The first step without a mark, from 1; null where it was stopped or all are marked.</summary>
    public int? Next => Started.FirstWithoutMark(Checklist);

    /// <summary>The number of the step at which it was stopped, from 1, or null.</summary>
    public int? Stop => Started.StoppedAtStep is { } id ? NumberOf(id) : null;

    /// <summary>The step that an undo takes back, from 1; null where nothing was done.</summary>
    public int? Last => Stop ?? (Started.Observations.MaxBy(mark => mark.Position) is { } last ? NumberOf(last.StepId) : null);

    /// <summary>The instructions were read, so that steps can be marked.</summary>
    public bool IsRead => Started.InstructionsReadAt is not null;

    /// <summary>The step of a number, or null.</summary>
    public ChecklistStep? FindStep(int number) => number >= 1 && number <= Checklist.Steps.Count ? Checklist.Steps[number - 1] : null;

    private int NumberOf(string stepId) => Checklist.Steps.Index().First(step => step.Item.Id == stepId).Index + 1;
}

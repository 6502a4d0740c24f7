using Training.Courses;
using Training.Scoring;

namespace Training.Web.Features.Calibrations;

/// <summary>A new round, as posted.</summary>
public sealed class RoundForm
{
    /// <summary>Made when the form was: the same twice is one round.</summary>
    public Guid Id { get; set; }

    /// <summary>Which checklist.</summary>
    public string? ChecklistId { get; set; }

    /// <summary>What the demonstration is called.</summary>
    public string? Title { get; set; }

    /// <summary>Where the recording is found.</summary>
    public string? Recording { get; set; }
}

/// <summary>An instructor's marks, as posted.</summary>
public sealed class MarksForm
{
    /// <summary>Made when the form was.</summary>
    public Guid Id { get; set; }

    /// <summary>By step id.</summary>
    public Dictionary<string, Observation> Marks { get; set; } = [];

    /// <summary>Steps of the checklist without a mark, in order.</summary>
    public IReadOnlyList<ChecklistStep> Missing(Checklist checklist) => [.. checklist.Steps.Where(step => !Marks.ContainsKey(step.Id))];
}

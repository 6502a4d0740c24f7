using Training.Records;

namespace Training.Web.Features.PaperRuns;

/// <summary>What a lead posts to start a run.</summary>
public sealed record PaperRunForm
{
    /// <summary>Made by the page.</summary>
    public Guid Id { get; init; }

    /// <summary>Which papers.</summary>
    public PaperRunKind? Kind { get; init; }

    /// <summary>Of whose people; null for all.</summary>
    public Guid? EmployerId { get; init; }

    /// <summary>Under which scheme; null for all.</summary>
    public string? SchemeId { get; init; }

    /// <summary>Why.</summary>
    public string? Reason { get; init; }
}

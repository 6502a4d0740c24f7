using Training.Records;

namespace Training.Web.Features.Programme;

/// <summary>What waits for a programme lead.</summary>
/// <param name="Today">The lead's.</param>
/// <param name="LeadId">Who looks.</param>
/// <param name="Decisions">Longest wait first.</param>
/// <param name="Suspensions">Nearest deadline first.</param>
/// <param name="Transitions">Who did not do in time what changed rules ask; by scheme and person.</param>
/// <param name="Proposals">Withdrawals for a second lead, oldest first.</param>
/// <param name="Disputes">Newest first.</param>
/// <param name="Corrected">Certifications that rest on a result which a correction turned into "not passed".</param>
/// <param name="Appeals">Without a decision, due first first.</param>
/// <param name="Rested">What had rested on results set aside.</param>
/// <param name="Instructors">How many instructors' files want something.</param>
/// <param name="Findings">Findings in course files.</param>
/// <param name="Names">By person; erased ones are not there.</param>
/// <param name="Titles">By scheme, quiz or checklist id, in the page's language.</param>
public sealed record ProgrammePage(
    DateOnly Today,
    Guid LeadId,
    IReadOnlyList<WaitingDecision> Decisions,
    IReadOnlyList<OpenSuspension> Suspensions,
    IReadOnlyList<OverdueTransition> Transitions,
    IReadOnlyList<OpenProposal> Proposals,
    IReadOnlyList<DisputedCopy> Disputes,
    IReadOnlyList<CorrectionCase> Corrected,
    IReadOnlyList<AppealCase> Appeals,
    IReadOnlyList<RestedCase> Rested,
    int Instructors,
    int Findings,
    IReadOnlyDictionary<Guid, string> Names,
    IReadOnlyDictionary<string, string> Titles)
{
    /// <summary>Reviews on the first page; the rest has a page of its own.</summary>
    public const int MostReviews = 12;

    /// <summary>Reviews that no lead has concluded, oldest first.</summary>
    public IReadOnlyList<OpenReview> Reviews { get; init; } = [];

    /// <summary>Decisions on the first page; the rest has a page of its own.</summary>
    public const int MostDecisions = 12;
}

using System.Diagnostics;
using Training.Certification;
using Training.Courses;

namespace Training.Records;

/// <summary>Decisions as rows, and back.</summary>
internal static class DecisionRows
{
    internal static DecisionRecord Of(MadeDecision made, IReadOnlyList<DecisionEvidenceRecord> evidence, DateTimeOffset now) => new()
    {
        Id = made.Id,
        PersonId = made.PersonId,
        SchemeId = made.SchemeId,
        CourseHash = made.CourseHash,
        Route = made.Decision switch
        {
            Decision.Granted granted => granted.Route,
            Decision.NotYet notYet => notYet.Route,
            _ => throw new UnreachableException(),
        },
        Outcome = made.Decision switch
        {
            Decision.Granted => DecisionOutcome.Granted,
            Decision.NotYet { IsRefusal: true } => DecisionOutcome.Refused,
            Decision.NotYet => DecisionOutcome.NotYet,
            _ => throw new UnreachableException(),
        },
        DecidedOn = made.DecidedOn,
        Zone = made.Zone,
        LeadId = made.Decider is Decider.Lead lead ? lead.PersonId : null,
        Reasons = Reasons(made.Decision),
        KeptAt = now,
        Evidence = [.. evidence],
        Exceptions = made.Decision is Decision.Granted { Exceptions: var exceptions }
            ? [.. exceptions.Select(exception => new DecisionExceptionRecord
            {
                DecisionId = made.Id,
                ScoresheetResultId = exception.ResultId,
                ScorerId = exception.ScorerId,
                Reason = exception.Reason,
            })]
            : [],
    };

    internal static PeriodRecord Of(Period period, MadeDecision made) => new()
    {
        DecisionId = made.Id,
        PersonId = made.PersonId,
        SchemeId = made.SchemeId,
        Number = period.Number,
        DecidedOn = period.DecidedOn,
        StartsOn = period.StartsOn,
        ExpiresOn = period.ExpiresOn,
        Validity = period.Terms.Validity,
        Window = period.Terms.Window,
        Grace = period.Terms.Grace,
    };

    internal static Period Read(PeriodRecord row) =>
        new(row.Number, row.DecidedOn, row.StartsOn, row.ExpiresOn, new Terms(row.Validity, row.Window, row.Grace));

    internal static Suspension Read(SuspensionRecord row, ReinstatementRecord? end) => new(
        row.StartsOn, row.LeadId, row.Reason, row.DeadlineOn, end is null ? null : new Reinstatement(end.ReinstatedOn, end.LeadId, end.Reason));

    internal static Withdrawal Read(WithdrawalRecord row) => new(row.WithdrawnOn, row.LeadId, row.ConfirmedById, row.Reason);

    internal static MadeDecision Read(DecisionRecord row, PeriodRecord? period) => new(
        row.Id, row.PersonId, row.SchemeId, row.CourseHash,
        row.LeadId is { } lead ? new Decider.Lead(lead) : new Decider.Rule(),
        row.DecidedOn, row.Zone,
        period is null
            ? new Decision.NotYet(row.Route, StoredJson.Read<DecisionReason>(row.Reasons))
            : new Decision.Granted(
                row.Route, Read(period),
                [.. row.Evidence.OrderBy(evidence => evidence.Position).Select(ResultId)],
                [.. row.Exceptions.OrderBy(exception => exception.ScoresheetResultId)
                    .Select(exception => new SeparationException(exception.ScoresheetResultId, exception.ScorerId, exception.Reason))]));

    /// <summary>Item by item: a record compares the lists it holds by reference.</summary>
    internal static bool AreSame(Decision left, Decision right) => (left, right) switch
    {
        (Decision.Granted one, Decision.Granted other) => one.Route == other.Route && one.Period == other.Period
            && one.RestsOn.SequenceEqual(other.RestsOn) && one.Exceptions.ToHashSet().SetEquals(other.Exceptions),
        (Decision.NotYet one, Decision.NotYet other) => one.Route == other.Route && one.Reasons.SequenceEqual(other.Reasons),
        _ => false,
    };

    private static string Reasons(Decision decision) =>
        StoredJson.Write(decision is Decision.NotYet notYet ? notYet.Reasons : []);

    private static Guid ResultId(DecisionEvidenceRecord evidence) =>
        evidence.SittingResultId ?? evidence.ScoresheetResultId ?? throw new UnreachableException();
}

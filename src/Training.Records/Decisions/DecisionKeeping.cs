using System.Diagnostics;
using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;

namespace Training.Records;

/// <summary>Keeps decisions with the results they rest on and the period they open.</summary>
public static class DecisionKeeping
{
    /// <summary>
    /// Keeps a decision, its evidence and its period in one transaction. The same id again is answered with what is stored. Refused, and
    /// nothing written, where another decision opened that period meanwhile: read the case file again and decide again.
    /// </summary>
    public static async Task<Kept> KeepAsync(
        this RecordsContext records, MadeDecision made, DateTimeOffset now, CancellationToken cancellation)
    {
        if (await records.FindDecisionAsync(made.Id, cancellation) is { } stored) return Repeat(stored.Made, made);
        var problems = new List<Problem>();
        await records.RequirePersonAsync(made.PersonId, "person", problems, cancellation);
        await records.RequireSnapshotAsync(made.CourseHash, problems, cancellation);
        if (made.Decider is Decider.Lead lead)
        {
            await records.RequireAppointedAsync(lead.PersonId, AppointedRole.ProgrammeLead, made.DecidedOn, problems, cancellation);
            await records.RequireNotAnewByThemselvesAsync(made, lead.PersonId, problems, cancellation);
        }

        var evidence = await records.ReadEvidenceAsync(made, problems, cancellation);
        await records.RequireNextPeriodAsync(made, problems, cancellation);
        if (problems.Count > 0) return new Kept.Refused(problems);

        object[] rows = made.Decision is Decision.Granted granted
            ? [DecisionRows.Of(made, evidence, now), DecisionRows.Of(granted.Period, made)]
            : [DecisionRows.Of(made, evidence, now)];
        if (await records.TryInsertAsync(cancellation, rows)) return new Kept.Stored(made.Id);
        return await records.FindDecisionAsync(made.Id, cancellation) is { } first
            ? Repeat(first.Made, made)
            : new Kept.Refused([PeriodTaken(made)]);
    }

    private static Kept Repeat(MadeDecision stored, MadeDecision made)
    {
        // Read back from the same rows, both sides are comparable piece by piece.
        var isSame = stored with { Decision = made.Decision } == made && DecisionRows.AreSame(stored.Decision, made.Decision);
        return isSame
            ? new Kept.AlreadyStored(made.Id)
            : new Kept.Refused([RecordsProblems.At("decision", RecordsProblems.OtherContent, made.Id.ToString())]);
    }

    private static async Task<IReadOnlyList<DecisionEvidenceRecord>> ReadEvidenceAsync(
        this RecordsContext records, MadeDecision made, List<Problem> problems, CancellationToken cancellation)
    {
        if (made.Decision is not Decision.Granted granted) return [];
        var ids = granted.RestsOn.ToList();
        var ofSittings = await (from result in records.SittingResults
                                join sitting in records.Sittings on result.SittingId equals sitting.Id
                                where ids.Contains(result.Id) && sitting.PersonId == made.PersonId
                                select result.Id).ToListAsync(cancellation);
        var ofSheets = await (from result in records.ScoresheetResults
                              join sheet in records.Scoresheets on result.ScoresheetId equals sheet.Id
                              where ids.Contains(result.Id) && sheet.CandidateId == made.PersonId
                              select result.Id).ToListAsync(cancellation);
        foreach (var id in ids.Where(id => !ofSittings.Contains(id) && !ofSheets.Contains(id)))
            problems.Add(RecordsProblems.At("evidence", RecordsProblems.ResultUnknown, id.ToString()));
        return [.. ids.Select((id, index) => new DecisionEvidenceRecord
        {
            DecisionId = made.Id,
            Position = index + 1,
            SittingResultId = ofSittings.Contains(id) ? id : null,
            ScoresheetResultId = ofSheets.Contains(id) ? id : null,
        })];
    }

    // Rule: docs/rules.md, "Appeals": what an appeal asked to be decided anew, another lead decides first.
    private static async Task RequireNotAnewByThemselvesAsync(
        this RecordsContext records, MadeDecision made, Guid leadId, List<Problem> problems, CancellationToken cancellation)
    {
        var isTheirs = await (from contested in records.Decisions
                              where contested.PersonId == made.PersonId && contested.SchemeId == made.SchemeId && contested.LeadId == leadId
                              join appeal in records.Appeals on contested.Id equals appeal.DecisionId
                              join end in records.AppealDecisions on appeal.Id equals end.AppealId
                              where end.Remedy == AppealRemedy.DecideAnew
                                  && !records.Decisions.Any(later => later.PersonId == made.PersonId && later.SchemeId == made.SchemeId
                                      && later.LeadId != null && later.KeptAt >= end.KeptAt)
                              select end.AppealId).AnyAsync(cancellation);
        if (isTheirs) problems.Add(RecordsProblems.At("lead", RecordsProblems.AnewByAnother));
    }

    private static async Task RequireNextPeriodAsync(
        this RecordsContext records, MadeDecision made, List<Problem> problems, CancellationToken cancellation)
    {
        if (made.Decision is not Decision.Granted granted) return;
        var last = await records.LastPeriodAsync(made.PersonId, made.SchemeId, cancellation) ?? 0;
        if (granted.Period.Number != last + 1) problems.Add(PeriodTaken(made));
    }

    internal static Task<int?> LastPeriodAsync(
        this RecordsContext records, Guid personId, string schemeId, CancellationToken cancellation) =>
        records.Periods.Where(period => period.PersonId == personId && period.SchemeId == schemeId)
            .MaxAsync(period => (int?)period.Number, cancellation);

    private static Problem PeriodTaken(MadeDecision made) => made.Decision is Decision.Granted granted
        ? RecordsProblems.At("period", RecordsProblems.PeriodTaken, granted.Period.Number.ToString(CultureInfo.InvariantCulture))
        : throw new UnreachableException();
}

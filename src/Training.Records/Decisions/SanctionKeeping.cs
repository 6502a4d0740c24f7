using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;
using Training.Documents.IssueLog;

namespace Training.Records;

/// <summary>Keeps what leads do to a certification: suspend, reinstate, withdraw. Each a row with who, when and why.</summary>
public static class SanctionKeeping
{
    /// <summary>Suspends a certification. Refused where nothing is held, it is suspended already, or the lead is not appointed that day.</summary>
    /// <param name="records">Where to.</param>
    /// <param name="id">Made by the form; the same again is one suspension.</param>
    /// <param name="personId">Whose.</param>
    /// <param name="schemeId">Under which scheme.</param>
    /// <param name="suspension">From when, by whom, why, until when to settle; its reinstatement is kept apart.</param>
    /// <param name="now">UTC.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<Kept> SuspendAsync(
        this RecordsContext records, Guid id, Guid personId, string schemeId, Suspension suspension, DateTimeOffset now, CancellationToken cancellation)
    {
        for (var attempt = 0; attempt < Bounds.Attempts; attempt++)
        {
            var earlier = await (from row in records.Suspensions.AsNoTracking()
                                 where row.PersonId == personId && row.SchemeId == schemeId
                                 select new
                                 {
                                     Row = row,
                                     // A withdrawal settles what began before it, as in Standings.
                                     IsEnded = records.Reinstatements.Any(end => end.SuspensionId == row.Id)
                                         || records.Withdrawals.Any(end =>
                                             end.PersonId == personId && end.SchemeId == schemeId && row.StartsOn <= end.WithdrawnOn),
                                 })
                .ToListAsync(cancellation);
            if (earlier.Find(row => row.Row.Id == id) is { } stored) return Repeat(stored.Row, suspension);

            var problems = new List<Problem>();
            var period = await records.RequireHeldAsync(personId, schemeId, problems, cancellation);
            RequireAnother(personId, suspension.By, problems);
            await records.RequireAppointedAsync(suspension.By, AppointedRole.ProgrammeLead, suspension.From, problems, cancellation);
            if (suspension.Deadline < suspension.From)
                problems.Add(RecordsProblems.At("deadline", RecordsProblems.DeadlineBeforeStart, Text(suspension.From)));
            if (earlier.Find(row => !row.IsEnded) is { } open)
                problems.Add(RecordsProblems.At("suspension", RecordsProblems.SuspendedAlready, Text(open.Row.StartsOn)));
            if (problems.Count > 0) return new Kept.Refused(problems);

            var added = new SuspensionRecord
            {
                Id = id, PersonId = personId, SchemeId = schemeId, PeriodNumber = period, Number = earlier.Count + 1, StartsOn = suspension.From,
                LeadId = suspension.By, Reason = suspension.Reason, DeadlineOn = suspension.Deadline, KeptAt = now,
            };
            var events = await records.EventsOfAsync(personId, schemeId, IssueEvent.Suspended, suspension.From, now, cancellation);
            if (await records.TryInsertLoggedAsync(events, cancellation, added)) return new Kept.Stored(id);
        }

        throw new InvalidOperationException($"Suspension {id} met {Bounds.Attempts} others at once.");
    }

    /// <summary>Ends the open suspension of a certification. The same again is answered with what is stored.</summary>
    public static async Task<Kept> ReinstateAsync(
        this RecordsContext records, Guid personId, string schemeId, Reinstatement reinstatement, DateTimeOffset now, CancellationToken cancellation)
    {
        var last = await records.Suspensions.AsNoTracking().Where(row => row.PersonId == personId && row.SchemeId == schemeId)
            .OrderByDescending(row => row.Number).FirstOrDefaultAsync(cancellation);
        if (last is null) return new Kept.Refused([RecordsProblems.At("reinstatement", RecordsProblems.NotSuspended)]);
        if (await records.FindEndAsync(last.Id, cancellation) is { } stored) return Repeat(stored, reinstatement);
        var isSettled = await records.Withdrawals.AnyAsync(
            end => end.PersonId == personId && end.SchemeId == schemeId && last.StartsOn <= end.WithdrawnOn, cancellation);
        if (isSettled) return new Kept.Refused([RecordsProblems.At("reinstatement", RecordsProblems.NotSuspended)]);

        var problems = new List<Problem>();
        RequireAnother(personId, reinstatement.By, problems);
        await records.RequireAppointedAsync(reinstatement.By, AppointedRole.ProgrammeLead, reinstatement.On, problems, cancellation);
        if (reinstatement.On < last.StartsOn)
            problems.Add(RecordsProblems.At("reinstatement", RecordsProblems.BeforeSuspension, Text(last.StartsOn)));
        if (problems.Count > 0) return new Kept.Refused(problems);

        var added = new ReinstatementRecord
        {
            SuspensionId = last.Id, ReinstatedOn = reinstatement.On, LeadId = reinstatement.By, Reason = reinstatement.Reason, KeptAt = now,
        };
        var events = await records.EventsOfAsync(personId, schemeId, IssueEvent.Reinstated, reinstatement.On, now, cancellation);
        if (await records.TryInsertLoggedAsync(events, cancellation, added)) return new Kept.Stored(last.Id);
        return await records.FindEndAsync(last.Id, cancellation) is { } first
            ? Repeat(first, reinstatement)
            : throw new InvalidOperationException($"The end of suspension {last.Id} was refused although there is none.");
    }

    /// <summary>Withdraws a certification by two different leads, both appointed that day. The same again is answered with what is stored.</summary>
    public static async Task<Kept> WithdrawAsync(
        this RecordsContext records, Guid id, Guid personId, string schemeId, Withdrawal withdrawal, DateTimeOffset now, CancellationToken cancellation)
    {
        var problems = new List<Problem>();
        var added = await records.PrepareWithdrawalAsync(id, personId, schemeId, withdrawal, now, problems, cancellation);
        if (problems.Count > 0) return new Kept.Refused(problems);
        var events = await records.EventsOfAsync(personId, schemeId, IssueEvent.Withdrawn, withdrawal.On, now, cancellation);
        if (await records.TryInsertLoggedAsync(events, cancellation, added)) return new Kept.Stored(id);
        var stored = await records.Withdrawals.AsNoTracking().FirstOrDefaultAsync(row => row.Id == id, cancellation);
        var isSame = stored is not null && stored.PersonId == personId && stored.SchemeId == schemeId
            && new Withdrawal(stored.WithdrawnOn, stored.LeadId, stored.ConfirmedById, stored.Reason) == withdrawal;
        return isSame ? new Kept.AlreadyStored(id) : new Kept.Refused([RecordsProblems.At("withdrawal", RecordsProblems.OtherContent, id.ToString())]);
    }

    /// <summary>The row of a withdrawal, and everything that is in its way.</summary>
    internal static async Task<WithdrawalRecord> PrepareWithdrawalAsync(
        this RecordsContext records, Guid id, Guid personId, string schemeId, Withdrawal withdrawal, DateTimeOffset now, List<Problem> problems,
        CancellationToken cancellation)
    {
        if (withdrawal.By == withdrawal.ConfirmedBy) problems.Add(RecordsProblems.At("lead", RecordsProblems.SecondLeadRequired));
        RequireAnother(personId, withdrawal.By, problems);
        RequireAnother(personId, withdrawal.ConfirmedBy, problems);
        var period = await records.RequireHeldAsync(personId, schemeId, problems, cancellation);
        await records.RequireAppointedAsync(withdrawal.By, AppointedRole.ProgrammeLead, withdrawal.On, problems, cancellation);
        await records.RequireAppointedAsync(withdrawal.ConfirmedBy, AppointedRole.ProgrammeLead, withdrawal.On, problems, cancellation);
        return new()
        {
            Id = id, PersonId = personId, SchemeId = schemeId, PeriodNumber = period, WithdrawnOn = withdrawal.On, LeadId = withdrawal.By,
            ConfirmedById = withdrawal.ConfirmedBy, Reason = withdrawal.Reason, KeptAt = now,
        };
    }

    internal static void RequireAnother(Guid personId, Guid leadId, List<Problem> problems)
    {
        if (leadId == personId) problems.Add(RecordsProblems.At("lead", RecordsProblems.LeadAboutOneself));
    }

    internal static async Task<int> RequireHeldAsync(
        this RecordsContext records, Guid personId, string schemeId, List<Problem> problems, CancellationToken cancellation)
    {
        var last = await records.LastPeriodAsync(personId, schemeId, cancellation);
        if (last is null) problems.Add(RecordsProblems.At("scheme", RecordsProblems.NothingHeld, schemeId));
        return last ?? 0;
    }

    private static Task<ReinstatementRecord?> FindEndAsync(this RecordsContext records, Guid suspensionId, CancellationToken cancellation) =>
        records.Reinstatements.AsNoTracking().SingleOrDefaultAsync(end => end.SuspensionId == suspensionId, cancellation);

    private static Kept Repeat(SuspensionRecord stored, Suspension suspension) =>
        new Suspension(stored.StartsOn, stored.LeadId, stored.Reason, stored.DeadlineOn, null) == suspension with { Reinstatement = null }
            ? new Kept.AlreadyStored(stored.Id)
            : new Kept.Refused([RecordsProblems.At("suspension", RecordsProblems.OtherContent, stored.Id.ToString())]);

    private static Kept Repeat(ReinstatementRecord stored, Reinstatement reinstatement) =>
        new Reinstatement(stored.ReinstatedOn, stored.LeadId, stored.Reason) == reinstatement
            ? new Kept.AlreadyStored(stored.SuspensionId)
            : new Kept.Refused([RecordsProblems.At("reinstatement", RecordsProblems.NotSuspended)]);

    private static string Text(DateOnly day) => day.ToString("O", CultureInfo.InvariantCulture);
}

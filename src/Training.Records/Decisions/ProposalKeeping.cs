using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;
using Training.Documents.IssueLog;

namespace Training.Records;

/// <summary>Keeps a withdrawal in its two steps: one lead proposes, another confirms.</summary>
/// <remarks>Rule: docs/rules.md, "Suspension and withdrawal".</remarks>
public static class ProposalKeeping
{
    /// <summary>Proposes to withdraw what the person holds. Refused where nothing is held, or it is withdrawn or proposed already.</summary>
    /// <param name="records">Where to.</param>
    /// <param name="id">Made by the form; the same again is one proposal.</param>
    /// <param name="personId">Whose; never the lead's own.</param>
    /// <param name="schemeId">Under which scheme.</param>
    /// <param name="leadId">Who proposes; appointed on that day.</param>
    /// <param name="reason">Why.</param>
    /// <param name="on">The day.</param>
    /// <param name="now">UTC.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<Kept> ProposeWithdrawalAsync(
        this RecordsContext records, Guid id, Guid personId, string schemeId, Guid leadId, string reason, DateOnly on, DateTimeOffset now,
        CancellationToken cancellation)
    {
        for (var attempt = 0; attempt < Bounds.Attempts; attempt++)
        {
            if (await records.FindProposalAsync(id, cancellation) is { } stored)
            {
                var isSame = (stored.PersonId, stored.SchemeId, stored.LeadId, stored.Reason) == (personId, schemeId, leadId, reason);
                return isSame ? new Kept.AlreadyStored(id) : Refuse(RecordsProblems.OtherContent, id.ToString());
            }

            var problems = new List<Problem>();
            SanctionKeeping.RequireAnother(personId, leadId, problems);
            var period = await records.RequireHeldAsync(personId, schemeId, problems, cancellation);
            await records.RequireAppointedAsync(leadId, AppointedRole.ProgrammeLead, on, problems, cancellation);
            var earlier = await records.RequireNothingOpenAsync(personId, schemeId, period, problems, cancellation);
            if (problems.Count > 0) return new Kept.Refused(problems);

            var added = new WithdrawalProposalRecord
            {
                Id = id, PersonId = personId, SchemeId = schemeId, PeriodNumber = period, Number = earlier + 1, ProposedOn = on,
                LeadId = leadId, Reason = reason, KeptAt = now,
            };
            if (await records.TryInsertAsync(cancellation, added)) return new Kept.Stored(id);
        }

        throw new InvalidOperationException($"Proposal {id} met {Bounds.Attempts} others at once.");
    }

    /// <summary>
    /// Confirms a proposal and withdraws, in one transaction. Refused where the lead is the one who proposed it, where it was settled
    /// before, and where another period was decided meanwhile. The same lead again is answered with what is stored.
    /// </summary>
    public static async Task<Kept> ConfirmWithdrawalAsync(
        this RecordsContext records, Guid proposalId, Guid leadId, DateOnly on, DateTimeOffset now, CancellationToken cancellation)
    {
        if (await records.FindProposalAsync(proposalId, cancellation) is not { } proposal) return Unknown(proposalId);
        if (await records.FindProposalEndAsync(proposalId, cancellation) is { } before) return Repeat(before, ProposalEnd.Confirmed, leadId);

        var problems = new List<Problem>();
        var withdrawal = new Withdrawal(on, proposal.LeadId, leadId, proposal.Reason);
        var row = await records.PrepareWithdrawalAsync(
            proposalId, proposal.PersonId, proposal.SchemeId, withdrawal, now, problems, cancellation);
        if (row.PeriodNumber != proposal.PeriodNumber)
            problems.Add(RecordsProblems.At("period", RecordsProblems.PeriodTaken, row.PeriodNumber.ToString(CultureInfo.InvariantCulture)));
        if (problems.Count > 0) return new Kept.Refused(problems);
        var events = await records.EventsOfAsync(proposal.PersonId, proposal.SchemeId, IssueEvent.Withdrawn, on, now, cancellation);
        if (await records.TryInsertLoggedAsync(events, cancellation, EndOf(proposalId, ProposalEnd.Confirmed, leadId, on, now), row))
            return new Kept.Stored(proposalId);
        return await records.FindProposalEndAsync(proposalId, cancellation) is { } first
            ? Repeat(first, ProposalEnd.Confirmed, leadId)
            : Refuse(RecordsProblems.WithdrawnAlready, Text(on));
    }

    /// <summary>Takes a proposal back. Only whoever made it may, and only while nobody has confirmed it.</summary>
    public static async Task<Kept> TakeBackProposalAsync(
        this RecordsContext records, Guid proposalId, Guid leadId, DateOnly on, DateTimeOffset now, CancellationToken cancellation)
    {
        if (await records.FindProposalAsync(proposalId, cancellation) is not { } proposal) return Unknown(proposalId);
        if (proposal.LeadId != leadId) return Refuse(RecordsProblems.NotTheProposer);
        if (await records.TryInsertAsync(cancellation, EndOf(proposalId, ProposalEnd.TakenBack, leadId, on, now))) return new Kept.Stored(proposalId);
        return await records.FindProposalEndAsync(proposalId, cancellation) is { } first
            ? Repeat(first, ProposalEnd.TakenBack, leadId)
            : throw new InvalidOperationException($"The end of proposal {proposalId} was refused although there is none.");
    }

    private static async Task<int> RequireNothingOpenAsync(
        this RecordsContext records, Guid personId, string schemeId, int period, List<Problem> problems, CancellationToken cancellation)
    {
        var withdrawn = await records.Withdrawals
            .Where(row => row.PersonId == personId && row.SchemeId == schemeId && row.PeriodNumber == period)
            .Select(row => (DateOnly?)row.WithdrawnOn).FirstOrDefaultAsync(cancellation);
        if (withdrawn is { } day) problems.Add(RecordsProblems.At("withdrawal", RecordsProblems.WithdrawnAlready, Text(day)));
        var last = await (from row in records.WithdrawalProposals
                          where row.PersonId == personId && row.SchemeId == schemeId && row.PeriodNumber == period
                          orderby row.Number descending
                          select new { row.Number, row.ProposedOn, IsSettled = records.WithdrawalProposalEnds.Any(end => end.ProposalId == row.Id) })
            .FirstOrDefaultAsync(cancellation);
        // A withdrawal that came another way has settled it as well.
        if (withdrawn is null && last is { IsSettled: false })
            problems.Add(RecordsProblems.At("withdrawal", RecordsProblems.ProposedAlready, Text(last.ProposedOn)));
        return last?.Number ?? 0;
    }

    private static WithdrawalProposalEndRecord EndOf(Guid proposalId, ProposalEnd end, Guid leadId, DateOnly on, DateTimeOffset now) => new()
    {
        ProposalId = proposalId, End = end, EndedOn = on, LeadId = leadId, KeptAt = now,
    };

    private static Task<WithdrawalProposalRecord?> FindProposalAsync(this RecordsContext records, Guid id, CancellationToken cancellation) =>
        records.WithdrawalProposals.AsNoTracking().SingleOrDefaultAsync(proposal => proposal.Id == id, cancellation);

    private static Task<WithdrawalProposalEndRecord?> FindProposalEndAsync(
        this RecordsContext records, Guid proposalId, CancellationToken cancellation) =>
        records.WithdrawalProposalEnds.AsNoTracking().SingleOrDefaultAsync(end => end.ProposalId == proposalId, cancellation);

    private static Kept Repeat(WithdrawalProposalEndRecord stored, ProposalEnd end, Guid leadId) =>
        stored.End == end && stored.LeadId == leadId
            ? new Kept.AlreadyStored(stored.ProposalId)
            : Refuse(RecordsProblems.ProposalSettled, Text(stored.EndedOn));

    private static Kept.Refused Unknown(Guid id) => Refuse(RecordsProblems.ProposalUnknown, id.ToString());

    private static Kept.Refused Refuse(string code, params IReadOnlyList<string> arguments) =>
        new([RecordsProblems.At("withdrawal", code, arguments)]);

    private static string Text(DateOnly day) => day.ToString("O", CultureInfo.InvariantCulture);
}

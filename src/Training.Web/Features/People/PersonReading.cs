using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Localization;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Features.Decisions;
using Training.Web.Features.Programme;
using Training.Web.Features.Sanctions;
using Training.Web.Features.TrainingChanges;
using Training.Web.Provider;
using Training.Web.Shelf;

namespace Training.Web.Features.People;

/// <summary>Puts a lead's page of a person together.</summary>
public sealed class PersonReading(
    RecordsContext records, CourseShelf shelf, TrainingChangeReading changes, OurProvider provider, TimeProvider clock,
    IStringLocalizer<DecisionText> text)
{
    private const int MostDecisions = 200;
    private const int MostWork = 200;

    /// <summary>The page, or null where there is no such person.</summary>
    public async Task<PersonPage?> FindAsync(
        Guid personId, Guid leadId, Language language, WorkForm? work, SanctionForm? sanction, CancellationToken cancellation)
    {
        var person = await records.Persons.AsNoTracking().SingleOrDefaultAsync(person => person.Id == personId, cancellation);
        if (person is null) return null;
        var day = await PersonDay.OfAsync(records, personId, provider.Zone, clock.GetUtcNow(), cancellation);
        var decisions = await DecisionsAsync(personId, cancellation);
        var results = await ResultsAsync(personId, decisions, cancellation);
        var holdings = await HoldingsAsync(personId, day.Today, decisions, results, cancellation);
        var names = await records.NamesOfAsync(PeopleIn(personId, results, holdings), day.Today, cancellation);
        var words = new DecisionWords(text, shelf.Courses.Titles(language), names);
        var signInName = await records.Accounts.Where(account => account.PersonId == personId).Select(account => account.UserName)
            .FirstOrDefaultAsync(cancellation);
        return new(
            personId, names.GetValueOrDefault(personId), person.Language, person.MailAddress, day, leadId, await WorkAsync(personId, cancellation), holdings,
            [.. shelf.Used.Where(course => course.Scheme.Kind == SchemeKind.Certification).Select(course => course.Id)],
            results, await changes.OfAsync(personId, day.Today, language, cancellation), signInName, words, await records.SiteChoicesAsync(cancellation),
            work ?? new() { StartsOn = day.Today.Iso() }, sanction ?? new())
        {
            Holds = [.. Certification.Holds.On(await records.HoldsOfAsync(personId, cancellation), day.Today)],
        };
    }

    private async Task<List<DecisionRecord>> DecisionsAsync(Guid personId, CancellationToken cancellation) =>
        await records.Decisions.AsNoTracking().Include(decision => decision.Evidence).Include(decision => decision.Exceptions).AsSplitQuery().Where(decision => decision.PersonId == personId)
            .OrderByDescending(decision => decision.KeptAt).Take(MostDecisions).ToListAsync(cancellation);

    private async Task<IReadOnlyList<ResultLine>> ResultsAsync(
        Guid personId, List<DecisionRecord> decisions, CancellationToken cancellation)
    {
        var teachings = await records.TeachingsOfAsync(personId, cancellation);
        var decided = decisions.SelectMany(decision => decision.Evidence.Select(
            evidence => (ResultId: evidence.SittingResultId ?? evidence.ScoresheetResultId, decision.LeadId))).ToLookup(one => one.ResultId, one => one.LeadId);
        return [.. (await records.ResultsOfAsync(personId, cancellation)).Select(result => new ResultLine(
            result,
            [.. teachings.Where(teaching => teaching.On <= result.On).Select(teaching => teaching.InstructorId).Distinct()],
            result.ResultId is { } id ? [.. decided[id].Distinct()] : []))];
    }

    private async Task<IReadOnlyList<Holding>> HoldingsAsync(
        Guid personId, DateOnly today, List<DecisionRecord> decisions, IReadOnlyList<ResultLine> results, CancellationToken cancellation)
    {
        var kept = await records.KeptCertificationsAsync(personId, cancellation);
        var proposals = await records.OpenProposalsAsync(personId, cancellation);
        var ids = decisions.ConvertAll(decision => decision.Id);
        var serials = await records.Papers.Where(paper => ids.Contains(paper.DecisionId))
            .Select(paper => new { paper.DecisionId, paper.Revision, paper.Serial }).ToListAsync(cancellation);
        var forMachines = await records.SerialsForMachinesAsync(personId, cancellation);
        var newest = serials.OrderBy(paper => paper.Revision).GroupBy(paper => paper.DecisionId)
            .ToDictionary(group => group.Key, group => group.Last().Serial);
        return [.. kept.Select(one => one.SchemeId).Union(decisions.Select(decision => decision.SchemeId)).Select(schemeId => Of(
            personId, schemeId, kept.FirstOrDefault(one => one.SchemeId == schemeId),
            today,
            proposals.FirstOrDefault(proposal => proposal.SchemeId == schemeId),
            [.. decisions.Where(decision => decision.SchemeId == schemeId).Select(decision => new DecisionLine(
                decision.Outcome == DecisionOutcome.Granted, decision.DecidedOn, decision.LeadId, newest.GetValueOrDefault(decision.Id),
                newest.TryGetValue(decision.Id, out var serial) && forMachines.Contains(serial), decision.ReadReasons(),
                [.. decision.Evidence.OrderBy(evidence => evidence.Position).Select(evidence => results.FirstOrDefault(line =>
                    line.Result.ResultId is { } id && id == (evidence.SittingResultId ?? evidence.ScoresheetResultId))).OfType<ResultLine>()],
                [.. decision.Exceptions.Select(exception => new SeparationException(exception.ScoresheetResultId, exception.ScorerId, exception.Reason))]))]))];
    }

    private static Holding Of(
        Guid personId, string schemeId, KeptCertification? kept, DateOnly today, OpenProposal? proposal, IReadOnlyList<DecisionLine> decisions)
    {
        if (kept is null) return new(new(personId, schemeId, [], [], []), null, null, null, null, null, decisions);
        var held = kept.Held;
        var open = held.Suspensions.LastOrDefault(suspension => suspension.Reinstatement is null
            && !held.Withdrawals.Any(withdrawal => suspension.From <= withdrawal.On));
        return new(held, kept, Standings.On(held, today), Standings.ExpiresOn(held, today), open, proposal, decisions);
    }

    private async Task<IReadOnlyList<WorkLine>> WorkAsync(Guid personId, CancellationToken cancellation)
    {
        var employments = await (from row in records.Employments
                                 where row.PersonId == personId
                                 join employer in records.Employers on row.EmployerId equals employer.Id
                                 orderby row.StartsOn descending
                                 select new { row.EmployerId, employer.Name, row.StartsOn, row.EndsOn }).Take(MostWork).ToListAsync(cancellation);
        var badges = await records.Badges.AsNoTracking().Where(row => row.PersonId == personId).OrderByDescending(row => row.StartsOn).Take(MostWork).ToListAsync(cancellation);
        var sites = await (from row in records.SiteAssignments
                           where row.PersonId == personId
                           join site in records.Sites on row.SiteId equals site.Id
                           orderby row.StartsOn descending
                           select new { site.EmployerId, site.Name, row.StartsOn, row.EndsOn }).Take(MostWork).ToListAsync(cancellation);
        return [.. employments.Select(row =>
        {
            // What held on the last day of the employment that is known: today's for one that lasts.
            var last = row.EndsOn ?? DateOnly.MaxValue;
            var badge = badges.Where(other => other.EmployerId == row.EmployerId && other.StartsOn <= last).MaxBy(other => other.StartsOn);
            var site = sites.Where(other => other.EmployerId == row.EmployerId && other.StartsOn <= last).MaxBy(other => other.StartsOn);
            return new WorkLine(row.Name, badge?.Number, site?.Name, row.StartsOn, row.EndsOn);
        })];
    }

    private static IEnumerable<Guid> PeopleIn(Guid personId, IReadOnlyList<ResultLine> results, IReadOnlyList<Holding> holdings) =>
    [
        personId,
        .. results.SelectMany(line => line.TaughtBy.Concat(line.DecidedBy.OfType<Guid>()).Concat(
            line.Result.ScorerId is { } scorer ? [scorer] : [])),
        .. holdings.SelectMany(holding => holding.Decisions.Select(decision => decision.LeadId).OfType<Guid>()
            .Concat(holding.Decisions.SelectMany(decision => decision.Exceptions.Select(exception => exception.ScorerId)))
            .Concat(holding.Held.Suspensions.SelectMany(suspension => new[] { suspension.By, suspension.Reinstatement?.By ?? suspension.By }))
            .Concat(holding.Held.Withdrawals.SelectMany(withdrawal => new[] { withdrawal.By, withdrawal.ConfirmedBy }))
            .Concat(holding.Proposal is { } proposal ? [proposal.LeadId] : [])
            .Concat(holding.Decisions.SelectMany(decision => decision.Reasons.OfType<DecisionReason.ScorerTaught>().Select(reason => reason.ScorerId)))),
    ];
}

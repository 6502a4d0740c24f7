using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Records;
using Training.Web.Doors;
using Route = Training.Certification.Route;

namespace Training.Web.Features.Workforce;

/// <summary>What an employer may read about one of its people; never answers or questions.</summary>
/// <param name="Person">Who.</param>
/// <param name="File">Results, teachings, and what they hold.</param>
/// <param name="Kept">What they hold or held, with the rows that it is told from.</param>
/// <param name="Decisions">Newest first.</param>
/// <param name="Papers">Newest first.</param>
/// <param name="Names">Of instructors who taught or scored; an erased name is left out.</param>
public sealed record PersonEvidence(
    EmployedPerson Person,
    PersonFile File,
    IReadOnlyList<KeptCertification> Kept,
    IReadOnlyList<DecisionLine> Decisions,
    IReadOnlyList<PaperLine> Papers,
    IReadOnlyDictionary<Guid, string> Names);

/// <summary>One decision.</summary>
/// <param name="SchemeId">Under which scheme.</param>
/// <param name="DecidedOn">The day, in the zone kept with it.</param>
/// <param name="Route">Grant or renewal.</param>
/// <param name="Outcome">What it said.</param>
/// <param name="IsByLead">A programme lead decided; else the published rule.</param>
public sealed record DecisionLine(string SchemeId, DateOnly DecidedOn, Route Route, DecisionOutcome Outcome, bool IsByLead);

/// <summary>One paper.</summary>
/// <param name="SchemeId">Under which scheme.</param>
/// <param name="Serial">As stored.</param>
/// <param name="Revision">1 for the first.</param>
/// <param name="ExpiresOn">Last day of its period.</param>
/// <param name="IsReplaced">A later paper took its place.</param>
public sealed record PaperLine(string SchemeId, string Serial, int Revision, DateOnly ExpiresOn, bool IsReplaced);

/// <summary>Reads the evidence about one person.</summary>
public static class EvidenceQueries
{
    private const int MostRows = 500;

    /// <summary>Somebody whom the employer employs today; null where the visitor may not see the employer, or it does not employ them.</summary>
    public static async Task<EmployedPerson?> FindEmployedAsync(
        this RecordsContext records, Visitor visitor, Guid employerId, Guid personId, CancellationToken cancellation)
    {
        return await records.PeopleSeenBy(visitor, employerId).AnyAsync(person => person.Id == personId, cancellation)
            ? (await records.EmployedAsync([personId], employerId, visitor.Today, cancellation)).SingleOrDefault()
            : null;
    }

    /// <summary>Everything about somebody whom the visitor may see.</summary>
    public static async Task<PersonEvidence> EvidenceOfAsync(
        this RecordsContext records, EmployedPerson person, DateOnly today, CancellationToken cancellation)
    {
        var file = (await records.PersonFilesAsync([person.PersonId], cancellation))[person.PersonId];
        var instructors = file.TaughtBy.Select(teaching => teaching.InstructorId)
            .Concat(file.Evidence.OfType<Evidence.OfPractical>().Select(sheet => sheet.ScorerId)).Distinct().ToList();
        return new(
            person, file, await records.KeptCertificationsAsync(person.PersonId, cancellation),
            await records.DecisionsOfAsync(person.PersonId, cancellation),
            await records.PapersOfAsync(person.PersonId, cancellation),
            await records.NamesInUseAsync(instructors, today, cancellation));
    }

    private static async Task<IReadOnlyList<DecisionLine>> DecisionsOfAsync(
        this RecordsContext records, Guid personId, CancellationToken cancellation) =>
        await records.Decisions.Where(decision => decision.PersonId == personId)
            .OrderByDescending(decision => decision.DecidedOn).ThenByDescending(decision => decision.KeptAt)
            .Select(decision => new DecisionLine(
                decision.SchemeId, decision.DecidedOn, decision.Route, decision.Outcome, decision.LeadId != null))
            .Take(MostRows).ToListAsync(cancellation);

    private static async Task<IReadOnlyList<PaperLine>> PapersOfAsync(
        this RecordsContext records, Guid personId, CancellationToken cancellation) =>
        await (from paper in records.Papers
               join period in records.Periods on paper.DecisionId equals period.DecisionId
               where period.PersonId == personId
               orderby paper.IssuedAt descending
               select new PaperLine(
                   period.SchemeId, paper.Serial, paper.Revision, period.ExpiresOn,
                   records.Papers.Any(other => other.DecisionId == paper.DecisionId && other.Revision > paper.Revision)
                       || (from later in records.Periods
                           where later.PersonId == personId && later.SchemeId == period.SchemeId && later.Number > period.Number
                           join other in records.Papers on later.DecisionId equals other.DecisionId
                           select other.Id).Any()))
            .Take(MostRows).ToListAsync(cancellation);

    private static async Task<IReadOnlyDictionary<Guid, string>> NamesInUseAsync(
        this RecordsContext records, List<Guid> ids, DateOnly day, CancellationToken cancellation)
    {
        var names = await records.PersonNames.AsNoTracking().Where(name => ids.Contains(name.PersonId) && name.StartsOn <= day)
            .OrderByDescending(name => name.StartsOn).Take(MostRows).ToListAsync(cancellation);
        return names.DistinctBy(name => name.PersonId).Where(name => name.Text is not null)
            .ToDictionary(name => name.PersonId, name => name.Text!); // not null: filtered in the line above
    }
}

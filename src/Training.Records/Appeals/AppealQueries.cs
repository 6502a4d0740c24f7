using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;

namespace Training.Records;

/// <summary>What is contested, to be put in words.</summary>
/// <param name="Of">Quiz, checklist or scheme id.</param>
/// <param name="Subject">Model or live; null where it is no practical.</param>
/// <param name="On">Its day.</param>
public sealed record ContestedThing(string Of, Subject? Subject, DateOnly On);

/// <summary>An appeal with everything that became of it.</summary>
public sealed record AppealCase(
    AppealRecord Appeal, AppealTakeUpRecord? TakeUp, AppealDecisionRecord? Decision, SetAsideLookRecord? Look, ContestedThing? Contested)
{
    /// <summary>How far it has come.</summary>
    public AppealCourse Course => new(Appeal.ReceivedOn, TakeUp?.TakenUpOn, Decision?.DecidedOn);
}

/// <summary>Something that rested on a result before an appeal set it aside, and that a lead has to look at.</summary>
/// <param name="AppealId">The appeal.</param>
/// <param name="PersonId">Whose result.</param>
/// <param name="SetAsideOn">Since when it does not count.</param>
/// <param name="Grants">Decisions that rest on it.</param>
/// <param name="LiveSheets">Live sheets that were scored because of it, a pass on the model.</param>
public sealed record RestedCase(Guid AppealId, Guid PersonId, DateOnly SetAsideOn, int Grants, int LiveSheets);

/// <summary>A result or decision that its person may contest.</summary>
/// <param name="Matter">What sort.</param>
/// <param name="ContestedId">As in <see cref="NewAppeal"/>.</param>
/// <param name="Thing">Which.</param>
public sealed record Contestable(AppealMatter Matter, Guid ContestedId, ContestedThing Thing);

/// <summary>Reads appeals. Every list is bounded.</summary>
public static class AppealQueries
{
    /// <summary>Most rows of each list.</summary>
    public const int Most = 200;

    /// <summary>One appeal, or null.</summary>
    public static async Task<AppealCase?> FindAppealAsync(this RecordsContext records, Guid id, CancellationToken cancellation) =>
        (await records.ReadAsync(records.Appeals.Where(appeal => appeal.Id == id).OrderBy(appeal => appeal.Id), cancellation)) is [var one] ? one : null;

    /// <summary>The appeals of one person, the newest first.</summary>
    public static Task<IReadOnlyList<AppealCase>> AppealsOfAsync(this RecordsContext records, Guid personId, CancellationToken cancellation) =>
        records.ReadAsync(records.Appeals.Where(appeal => appeal.PersonId == personId).OrderByDescending(appeal => appeal.KeptAt).ThenBy(appeal => appeal.Id), cancellation);

    /// <summary>Appeals without a decision, what is due first first.</summary>
    public static async Task<IReadOnlyList<AppealCase>> OpenAppealsAsync(this RecordsContext records, CancellationToken cancellation) =>
    [
        .. (await records.ReadAsync(
                records.Appeals.Where(appeal => !records.AppealDecisions.Any(end => end.AppealId == appeal.Id)).OrderBy(appeal => appeal.ReceivedOn).ThenBy(appeal => appeal.Id),
                cancellation))
            .OrderBy(one => one.Course.NextBy).ThenBy(one => one.Appeal.Id),
    ];

    /// <summary>Decided appeals, the newest decision first: earlier similar ones are found here.</summary>
    public static async Task<IReadOnlyList<AppealCase>> DecidedAppealsAsync(this RecordsContext records, CancellationToken cancellation) =>
        await records.ReadAsync(
            from appeal in records.Appeals
            join end in records.AppealDecisions on appeal.Id equals end.AppealId
            orderby end.KeptAt descending, appeal.Id
            select appeal,
            cancellation);

    /// <summary>What had rested on results that were set aside and nobody has looked at yet, the oldest first.</summary>
    public static async Task<IReadOnlyList<RestedCase>> RestedCasesAsync(this RecordsContext records, CancellationToken cancellation)
    {
        var rows = await (from appeal in records.Appeals
                          join end in records.AppealDecisions on appeal.Id equals end.AppealId
                          where end.Remedy == AppealRemedy.SetAside && !records.SetAsideLooks.Any(look => look.AppealId == appeal.Id)
                          orderby end.KeptAt, appeal.Id
                          select new RestedCase(
                              appeal.Id, appeal.PersonId, end.DecidedOn,
                              records.Set<DecisionEvidenceRecord>().Count(evidence =>
                                  records.ScoresheetResults.Any(result => result.Id == evidence.ScoresheetResultId && result.ScoresheetId == appeal.ScoresheetId)
                                  || records.SittingResults.Any(result => result.Id == evidence.SittingResultId && result.SittingId == appeal.SittingId)),
                              records.Set<LiveConditionsRecord>().Count(live => live.ModelPassId == appeal.ScoresheetId
                                  && records.Scoresheets.Any(sheet => sheet.Id == live.ScoresheetId && sheet.Copy == 1))))
            .Take(Most).ToListAsync(cancellation);
        return [.. rows.Where(row => row.Grants + row.LiveSheets > 0)];
    }

    /// <summary>What the person may contest and has not, the newest first.</summary>
    public static async Task<IReadOnlyList<Contestable>> ContestablesOfAsync(this RecordsContext records, Guid personId, CancellationToken cancellation)
    {
        var sittings = await records.CountingSittings()
            .Where(row => row.PersonId == personId && !records.Appeals.Any(appeal => appeal.SittingId == row.Id))
            .OrderByDescending(row => row.TakenOn).Take(Most).Select(row => new { row.FormId, row.QuizId, row.TakenOn }).ToListAsync(cancellation);
        var sheets = await records.CountingScoresheets()
            .Where(row => row.CandidateId == personId && !records.Appeals.Any(appeal => appeal.ScoresheetId == row.Id))
            .OrderByDescending(row => row.ScoredOn).Take(Most).Select(row => new { row.FormId, row.ChecklistId, row.Subject, row.ScoredOn }).ToListAsync(cancellation);
        var decisions = await records.Decisions
            .Where(row => row.PersonId == personId && row.Outcome != DecisionOutcome.Granted && !records.Appeals.Any(appeal => appeal.DecisionId == row.Id))
            .OrderByDescending(row => row.DecidedOn).Take(Most).Select(row => new { row.Id, row.SchemeId, row.DecidedOn }).ToListAsync(cancellation);
        return
        [
            .. sittings.Select(row => new Contestable(AppealMatter.Sitting, row.FormId, new(row.QuizId, null, row.TakenOn)))
                .Concat(sheets.Select(row => new Contestable(AppealMatter.Scoresheet, row.FormId, new(row.ChecklistId, row.Subject, row.ScoredOn))))
                .Concat(decisions.Select(row => new Contestable(AppealMatter.Decision, row.Id, new(row.SchemeId, null, row.DecidedOn))))
                .OrderByDescending(one => one.Thing.On).Take(Most),
        ];
    }

    /// <summary>Leads appointed on that day who may decide the appeal.</summary>
    public static async Task<IReadOnlyList<Guid>> IndependentLeadsAsync(
        this RecordsContext records, AppealRecord appeal, DateOnly on, CancellationToken cancellation)
    {
        var leads = await records.Appointments
            .Where(row => row.Role == AppointedRole.ProgrammeLead && row.StartsOn <= on && (row.EndsOn == null || row.EndsOn >= on))
            .Select(row => row.PersonId).Distinct().OrderByDescending(id => id).Take(Most).ToListAsync(cancellation);
        var file = await records.AppealFileAsync(appeal.PersonId, appeal.DecisionId, cancellation);
        return [.. leads.Where(lead => AppealIndependence.BondsOf(file, lead, on).Count == 0)];
    }

    /// <summary>Who had to do with an appeal before it came.</summary>
    public static async Task<AppealFile> AppealFileAsync(this RecordsContext records, Guid personId, Guid? decisionId, CancellationToken cancellation)
    {
        var scored = await records.Scoresheets.Where(sheet => sheet.CandidateId == personId)
            .Select(sheet => new { sheet.InstructorId, sheet.ScoredOn }).Distinct().OrderByDescending(row => row.ScoredOn).Take(Bounds.RowsOfOnePerson).ToListAsync(cancellation);
        var decidedBy = await records.Decisions.Where(row => row.Id == decisionId).Select(row => row.LeadId).SingleOrDefaultAsync(cancellation);
        return new(personId, await records.TeachingsOfAsync(personId, cancellation), scored.ConvertAll(row => (row.InstructorId, row.ScoredOn)), decidedBy);
    }

    private static async Task<IReadOnlyList<AppealCase>> ReadAsync(
        this RecordsContext records, IQueryable<AppealRecord> appeals, CancellationToken cancellation)
    {
        var rows = await (from appeal in appeals.AsNoTracking().Take(Most)
                          select new
                          {
                              Appeal = appeal,
                              TakeUp = records.AppealTakeUps.FirstOrDefault(row => row.AppealId == appeal.Id),
                              Decision = records.AppealDecisions.FirstOrDefault(row => row.AppealId == appeal.Id),
                              Look = records.SetAsideLooks.FirstOrDefault(row => row.AppealId == appeal.Id),
                              Sitting = records.Sittings.Where(row => row.Id == appeal.SittingId).Select(row => new { row.QuizId, row.TakenOn }).FirstOrDefault(),
                              Sheet = records.Scoresheets.Where(row => row.Id == appeal.ScoresheetId)
                                  .Select(row => new { row.ChecklistId, row.Subject, row.ScoredOn }).FirstOrDefault(),
                              Made = records.Decisions.Where(row => row.Id == appeal.DecisionId).Select(row => new { row.SchemeId, row.DecidedOn }).FirstOrDefault(),
                          }).ToListAsync(cancellation);
        return rows.ConvertAll(row => new AppealCase(
            row.Appeal, row.TakeUp, row.Decision, row.Look,
            row.Sitting is { } sitting ? new(sitting.QuizId, null, sitting.TakenOn)
            : row.Sheet is { } sheet ? new(sheet.ChecklistId, sheet.Subject, sheet.ScoredOn)
            : row.Made is { } made ? new ContestedThing(made.SchemeId, null, made.DecidedOn)
            : null));
    }
}

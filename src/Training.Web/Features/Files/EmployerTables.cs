using System.Runtime.CompilerServices;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Localization;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Scoring;
using Training.Web.Features.Shared;
using Training.Web.Features.Workforce;
using Training.Web.Shelf;
using Route = Training.Certification.Route;

namespace Training.Web.Features.Files;

/// <summary>What an employer takes along as tables: who lapses, class days, evidence. Read while they are written, people by name.</summary>
public sealed class EmployerTables(IStringLocalizer<FilesText> text, StandingWords standings, CourseShelf shelf)
{
    private const int MostLapses = 100_000;
    private const int MostClasses = 5_000;

    /// <summary>Everything that the first page counts for this day and site, in its order: lapsed and still to be renewed, then what lapses.</summary>
    public SheetTable Lapses(RecordsContext records, SeenEmployer employer, TodayFilter filter, Language language, CancellationToken cancellation) => new(
        text["SheetLapses"],
        [text["Name"], text["Badge"], text["Site"], text["Crew"], text["Scheme"], text["Standing"], text["LastDay"], text["RenewThrough"]],
        LapseRowsAsync(records, employer, filter, language, cancellation));

    /// <summary>Class days at the employer's sites within a span, the earliest first, with how many of its people had a seat.</summary>
    public SheetTable Classes(
        RecordsContext records, SeenEmployer employer, DateOnly from, DateOnly through, Guid? siteId, Language language, CancellationToken cancellation) => new(
        text["SheetClasses"],
        [text["Day"], text["Course"], text["Site"], text["Seats"], text["SeatsTaken"], text["SeatsOurs"], text["ClassId"]],
        ClassRowsAsync(records, employer, from, through, siteId, language, cancellation));

    /// <summary>Results and decisions about the employer's people of today within a span.</summary>
    public SheetTable Evidence(
        RecordsContext records, SeenEmployer employer, DateOnly from, DateOnly through, Guid? siteId, Language language, CancellationToken cancellation) => new(
        text["SheetEvidence"],
        [text["Name"], text["Badge"], text["Site"], text["Day"], text["Kind"], text["What"], text["Outcome"], text["Exception"], text["RecordId"]],
        EvidenceRowsAsync(records, employer, from, through, siteId, language, cancellation));

    private async IAsyncEnumerable<IReadOnlyList<object?>> LapseRowsAsync(
        RecordsContext records, SeenEmployer employer, TodayFilter filter, Language language, [EnumeratorCancellation] CancellationToken cancellation)
    {
        var today = employer.Today;
        var inGrace = await records.InGraceAsync(employer.Id, filter.SiteId, today, MostLapses, cancellation);
        var lapsing = await records.LapsingAsync(employer.Id, filter.SiteId, today, filter.Before.AddDays(-1), MostLapses, cancellation);
        foreach (var batch in inGrace.Rows.Concat(lapsing.Rows).Chunk(PersonFileQueries.MostFiles))
        {
            var people = (await records.EmployedAsync(batch.Select(row => row.PersonId).Distinct(), employer.Id, today, cancellation)).ToDictionary(person => person.PersonId);
            foreach (var row in batch)
            {
                var person = people[row.PersonId];
                yield return
                [
                    NameOf(person), person.Badge, person.SiteName, person.CrewName, shelf.TitleOf(row.SchemeId, language), standings[row.Standing],
                    row.ExpiresOn, row.GraceEndsOn,
                ];
            }
        }
    }

    private async IAsyncEnumerable<IReadOnlyList<object?>> ClassRowsAsync(
        RecordsContext records, SeenEmployer employer, DateOnly from, DateOnly through, Guid? siteId, Language language, [EnumeratorCancellation] CancellationToken cancellation)
    {
        var days = await (from day in records.StandingClasses()
                          where day.HeldOn >= @from && day.HeldOn <= through
                          join site in records.Sites on day.SiteId equals site.Id
                          where site.EmployerId == employer.Id && (siteId == null || site.Id == siteId)
                          orderby day.HeldOn, day.Id
                          select new
                          {
                              day.Id, day.HeldOn, day.CourseId, site.Name, day.Capacity,
                              Taken = records.SeatsHeld().Count(seat => seat.ClassId == day.Id),
                              Ours = records.SeatsHeld().Count(seat => seat.ClassId == day.Id && records.Employments.Any(row => row.PersonId == seat.PersonId
                                  && row.EmployerId == employer.Id && row.StartsOn <= day.HeldOn && (row.EndsOn == null || row.EndsOn >= day.HeldOn))),
                          }).Take(MostClasses).ToListAsync(cancellation);
        foreach (var day in days)
            yield return [day.HeldOn, shelf.TitleOf(day.CourseId, language), day.Name, day.Capacity, day.Taken, day.Ours, day.Id.ToString()];
    }

    private async IAsyncEnumerable<IReadOnlyList<object?>> EvidenceRowsAsync(
        RecordsContext records, SeenEmployer employer, DateOnly from, DateOnly through, Guid? siteId, Language language, [EnumeratorCancellation] CancellationToken cancellation)
    {
        var people = await records.PeopleAsync(new() { EmployerId = employer.Id, Day = employer.Today, SiteId = siteId }, 0, WorkforceQueries.MostPeople, cancellation);
        foreach (var batch in people.Chunk(PersonFileQueries.MostFiles))
        {
            Guid[] ids = [.. batch.Select(person => person.PersonId)];
            var files = await records.PersonFilesAsync(ids, cancellation);
            var decisions = (await records.DecisionsWithinAsync(ids, from, through, cancellation)).ToLookup(decision => decision.PersonId);
            foreach (var person in batch)
            {
                var results = files[person.PersonId].Evidence.Where(result => result.On >= from && result.On <= through).Select(result => (result.On, result.ResultId, Cells: Cells(result, language)));
                var made = decisions[person.PersonId].Select(decision => (On: decision.DecidedOn, ResultId: decision.Id, Cells: Cells(decision, language)));
                foreach (var (on, id, cells) in results.Concat(made).OrderBy(row => row.On).ThenBy(row => row.ResultId))
                    yield return [NameOf(person), person.Badge, person.SiteName, on, .. cells, id.ToString()];
            }
        }
    }

    private object?[] Cells(Evidence result, Language language) => result switch
    {
        Certification.Evidence.OfQuiz quiz => [text["KindQuiz"].Value, QuizTitle(quiz.QuizId, language), quiz.IsPassed ? text["Passed"].Value : text["NotPassed"].Value, null],
        Certification.Evidence.OfPractical sheet =>
        [
            sheet.Subject == Subject.Model ? text["KindModel"].Value : text["KindLive"].Value,
            ChecklistTitle(sheet.ChecklistId, language),
            sheet.Outcome switch
            {
                PracticalOutcome.Passed => text["Passed"].Value,
                PracticalOutcome.Failed => text["NotPassed"].Value,
                PracticalOutcome.Incomplete => text["Incomplete"].Value,
            },
            sheet.SeparationReason,
        ],
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private object?[] Cells(DecisionWithin decision, Language language) =>
    [
        decision.IsByLead ? text["KindDecisionLead"].Value : text["KindDecisionRule"].Value,
        shelf.TitleOf(decision.SchemeId, language),
        (decision.Outcome, decision.Route) switch
        {
            (DecisionOutcome.Granted, Route.Grant) => text["Granted"].Value,
            (DecisionOutcome.Granted, Route.Renewal) => text["Renewed"].Value,
            (DecisionOutcome.NotYet, _) => text["NotYet"].Value,
            (DecisionOutcome.Refused, _) => text["Refused"].Value,
            _ => throw new System.Diagnostics.UnreachableException(),
        },
        decision.Exceptions == 0 ? null : text["ByException"].Value,
    ];

    private string NameOf(EmployedPerson person) => person.Name ?? text["NameErased"].Value;

    private string QuizTitle(string quizId, Language language) =>
        shelf.Courses.FirstOrDefault(course => course.Quiz.Id == quizId)?.Scheme.Words[language].Title ?? quizId;

    private string ChecklistTitle(string checklistId, Language language) =>
        shelf.Courses.SelectMany(course => course.Checklists).FirstOrDefault(list => list.Id == checklistId)?.Words[language].Title ?? checklistId;
}

using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Features.Certificates;
using Training.Web.Shelf;

namespace Training.Web.Features.Decisions;

/// <summary>Grants certificates of training by their published rule, as soon as everything is there. A certification waits for a lead.</summary>
/// <remarks>Rule: docs/rules.md, "Two kinds".</remarks>
public sealed class RuleDecisions(CourseShelf shelf, CertificateIssue papers, ILogger<RuleDecisions> log)
{
    /// <summary>
    /// Decides by rule under every certificate of training that asks for the quiz, where that grants something, and issues the papers.
    /// "Not yet" is not kept: nobody asked for a decision.
    /// </summary>
    /// <param name="records">Where from and where to.</param>
    /// <param name="personId">Who passed it.</param>
    /// <param name="quizId">What was passed.</param>
    /// <param name="zone">IANA zone of the person's site.</param>
    /// <param name="now">UTC.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public async Task DecideAsync(
        RecordsContext records, Guid personId, string quizId, string zone, DateTimeOffset now, CancellationToken cancellation)
    {
        var today = DecisionDay.On(now, TimeZoneInfo.FindSystemTimeZoneById(zone));
        foreach (var course in shelf.Courses.Where(course => IsAsked(course.Scheme, quizId)))
        {
            var file = await records.FindCaseFileAsync(personId, course.Scheme, cancellation)
                ?? throw new InvalidOperationException($"Person {personId} submitted a sitting and is not there.");
            // Another zone may have decided on a day that has not come here yet.
            if (file.Held.Any(held => held.SchemeId == course.Scheme.Id && held.Periods[^1].DecidedOn > today)) continue;
            if (Certification.Decisions.Decide(file, new Decider.Rule(), today) is Decision.Granted granted)
                await GrantAsync(records, file, course, granted, today, zone, now, cancellation);
        }
    }

    private static bool IsAsked(Scheme scheme, string quizId) =>
        scheme.Kind == SchemeKind.CertificateOfTraining
        && scheme.Grant.Concat(scheme.Renewal).OfType<Requirement.PassedQuiz>().Any(asked => asked.QuizId == quizId);

    private async Task GrantAsync(
        RecordsContext records, CaseFile file, Course course, Decision.Granted granted, DateOnly today, string zone, DateTimeOffset now,
        CancellationToken cancellation)
    {
        var problems = new List<Problem>();
        var made = await records.DecideAsync(
            Guid.CreateVersion7(now), file.PersonId, course, new Decider.Rule(), today, zone, now, problems, cancellation);
        if (made is not null) await papers.IssueAsync(records, PaperOrder.First(made, file.CountedFrom(granted)), course, now, problems, cancellation);

        // The result stands all the same, and so does a period whose paper cannot be printed: somebody has to look.
        foreach (var problem in problems) Log.RuleDecisionProblem(log, file.PersonId, course.Id, problem.Code);
    }
}

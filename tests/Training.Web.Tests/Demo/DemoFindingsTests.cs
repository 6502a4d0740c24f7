using Training.Records;
using Training.Scoring;

namespace Training.Web.Tests.Demo;

/// <summary>The demo has something to find on each page of statistics, and the figures find it.</summary>
public sealed class DemoFindingsTests(MadeDemo demo) : IClassFixture<MadeDemo>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_question_that_people_learned_otherwise_is_found_by_what_strong_candidates_choose()
    {
        var course = demo.Courses["awareness"];
        var tally = new QuizTally(course.Quiz, course.Questions);
        await using var records = demo.Open();
        await foreach (var sitting in records.AnsweredSittingsAsync(course.Quiz.Id, [course.Hash], Cancel)) tally.Add(sitting);

        var flagged = tally.Analyse().Questions.Where(question => question.Flags.Any(flag => flag is QuestionFlag.StrongChoose)).ToList();

        Assert.Equal("bullsnake-friend", Assert.Single(flagged).QuestionId);
        Assert.Equal("half-line", Assert.Single(flagged[0].Flags.OfType<QuestionFlag.StrongChoose>()).OptionId);
    }

    [Fact]
    public async Task One_instructor_is_lenient_and_nobody_is_strict()
    {
        var checklist = demo.Courses["handler"].Checklists.Single(list => list.Id == "move-to-bucket");
        await using var records = demo.Open();
        var performances = await records.PerformancesAsync(checklist.Id, Cancel);

        var severity = ScorerSeverity.Of(checklist, performances);

        var names = await records.NamesOfAsync([.. severity.Select(one => one.ScorerId)], MadeDemo.Today, Cancel);
        Assert.Equal(["Hollis Draper"], severity.Where(one => one.Finding == SeverityFinding.Lenient).Select(one => names[one.ScorerId]));
        Assert.DoesNotContain(severity, one => one.Finding == SeverityFinding.Strict);
        Assert.NotEmpty(ScorerAgreement.Of(checklist, performances).Critical);
    }
}

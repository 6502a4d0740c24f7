using Training.Courses;
using static Training.Scoring.Tests.TestCourse;

namespace Training.Scoring.Tests.Sittings;

public sealed class SittingProblemsTests
{
    public static TheoryData<string, string, Sitting> Refused => new()
    {
        { SittingProblems.CourseDiffers, "draw", AllRightBut() with { Draw = Draw(Standard) with { CourseHash = "other" } } },
        { SittingProblems.QuizDiffers, "draw", AllRightBut() with { Draw = Draw(Standard) with { QuizId = "other-quiz" } } },
        { SittingProblems.QuestionVersionDiffers, "question stop", AllRightBut() with { Draw = Drawn(q => q.QuestionId == "stop" ? q with { QuestionVersion = "v2" } : q) } },
        { SittingProblems.DrawnOptionsDiffer, "question stop", AllRightBut() with { Draw = Drawn(q => q.QuestionId == "stop" ? q with { OptionIds = ["back", "back", "wait"] } : q) } },
        { SittingProblems.DrawOffBlueprint, "topic bite", Sitting() with { Draw = Draw("stop", "kinds", "steps", "reach", "call", "call") } },
        { SittingProblems.AnswerNotDrawn, "question quiet", AllRightBut(Given("quiet", ["still"])) },
        { SittingProblems.AnswerTwice, "question stop", Sitting(Right("stop"), Right("stop")) },
        { SittingProblems.OptionUnknown, "question stop", AllRightBut(Given("stop", ["run"])) },
        { SittingProblems.OptionTwice, "question kinds", AllRightBut(Given("kinds", ["pit", "pit"])) },
        { SittingProblems.AnswerShape, "question stop", AllRightBut(Given("stop", ["back", "wait"])) },
        { SittingProblems.AnswerShape, "question stop", AllRightBut(Given("stop", ["back"], 1)) },
        { SittingProblems.AnswerShape, "question kinds", AllRightBut(Given("kinds", [])) },
        { SittingProblems.AnswerShape, "question steps", AllRightBut(Given("steps", ["one", "two"])) },
        { SittingProblems.AnswerShape, "question reach", AllRightBut(Given("reach", [])) },
        { SittingProblems.SubmittedBeforeStart, "submission", AllRightBut() with { SubmittedAt = Start.AddSeconds(-1) } },
    };

    [Theory, MemberData(nameof(Refused))]
    public void A_sitting_that_does_not_answer_its_quiz_is_refused_whole(string code, string part, Sitting sitting)
    {
        var problems = new List<Problem>();

        Assert.Null(SittingGrader.Grade(Course(), sitting, problems));
        Assert.Equal((code, part), (Assert.Single(problems).Code, problems[0].Place.Part));
    }

    [Fact]
    public void A_drawn_question_that_the_pool_lacks_is_named()
    {
        var problems = new List<Problem>();
        var sitting = Sitting() with { Draw = Drawn(q => q.QuestionId == "stop" ? q with { QuestionId = "gone" } : q) };

        Assert.Null(SittingGrader.Grade(Course(), sitting, problems));
        Assert.Equal([SittingProblems.DrawnQuestionUnknown, SittingProblems.DrawOffBlueprint], problems.Select(problem => problem.Code));
    }

    [Fact]
    public void All_problems_are_listed_at_once()
    {
        var problems = new List<Problem>();

        SittingGrader.Grade(Course(), AllRightBut(Given("stop", ["run"]), Given("quiet", ["still"])) with { SubmittedAt = Start.AddDays(-1) }, problems);

        Assert.Equal(
            [SittingProblems.SubmittedBeforeStart, SittingProblems.OptionUnknown, SittingProblems.AnswerNotDrawn],
            problems.Select(problem => problem.Code));
    }

    private static Draw Drawn(Func<DrawnQuestion, DrawnQuestion> change) => Draw(Standard) with { Questions = [.. Draw(Standard).Questions.Select(change)] };
}

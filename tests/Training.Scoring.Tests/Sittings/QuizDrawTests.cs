using CsCheck;
using Training.Courses;

namespace Training.Scoring.Tests.Sittings;

public sealed class QuizDrawTests
{
    private static readonly Course Course = TestCourse.Course();

    [Fact]
    public void A_draw_has_what_the_blueprint_asks_of_each_topic() => Gen.ULong.Sample(seed =>
    {
        var drawn = Drawn(seed);
        return Course.Quiz.Blueprint.All(row =>
            drawn.Count(question => question.Topic == row.Topic) == row.Questions
            && drawn.Count(question => question.Topic == row.Topic && question.IsCritical) == row.Critical);
    });

    [Fact]
    public void No_question_is_drawn_twice() =>
        Gen.ULong.Sample(seed => Drawn(seed).Distinct().Count() == 6);

    [Fact]
    public void Every_option_is_shown_once() => Gen.ULong.Sample(seed => QuizDraw.From(Course, seed).Questions
        .All(shown => shown.OptionIds.Order().SequenceEqual(TestCourse.Find(shown.QuestionId).OptionIds.Order())));

    [Fact]
    public void Steps_are_never_shown_in_the_right_order() => Gen.ULong.Sample(seed => QuizDraw.From(Course, seed).Questions
        .Where(shown => shown.QuestionId == "steps")
        .All(shown => !shown.OptionIds.SequenceEqual(["one", "two", "three"])));

    /// <summary>The sequence is part of the stored evidence: a change here is a change of every past explanation.</summary>
    [Fact]
    public void The_same_seed_gives_the_draw_that_it_always_gave() => Assert.Equal(
        "kinds(rat,coral,gopher,pit) quiet(safe,still) place(road,rock,roof) ice(soon,never) call(office,emergency) steps(three,one,two)",
        string.Join(" ", QuizDraw.From(Course, 20260101).Questions.Select(shown => $"{shown.QuestionId}({string.Join(',', shown.OptionIds)})")));

    [Fact]
    public void Each_question_of_a_kind_is_drawn_as_often_as_another()
    {
        var often = Enumerable.Range(0, 20_000).SelectMany(seed => Drawn((ulong)seed)).CountBy(question => question.Id).ToDictionary();

        // 4 places for 1 of 2 critical and 3 of 4 others; 1 of 1 and 1 of 2 in the other topic. Tolerance: four standard errors.
        Assert.InRange(often["stop"], 9_717, 10_283);
        Assert.InRange(often["place"], 14_755, 15_245);
        Assert.InRange(often["ice"], 9_717, 10_283);
        Assert.Equal(20_000, often["call"]);
    }

    [Fact]
    public void What_is_drawn_can_be_graded_as_it_is() => Gen.ULong.Sample(seed =>
    {
        var draw = QuizDraw.From(Course, seed);
        var sitting = TestCourse.Sitting() with { Draw = draw, Answers = [.. draw.Questions.Select(shown => TestCourse.Right(shown.QuestionId))] };
        var problems = new List<Problem>();
        return SittingGrader.Grade(Course, sitting, problems) is { IsPassed: true, Points: 6 } && problems.Count == 0;
    });

    private static List<Question> Drawn(ulong seed) =>
        [.. QuizDraw.From(Course, seed).Questions.Select(shown => TestCourse.Find(shown.QuestionId))];
}

using CsCheck;
using Training.Courses;
using static Training.Scoring.Tests.TestCourse;

namespace Training.Scoring.Tests.Sittings;

public sealed class SittingGraderTests
{
    [Fact]
    public void Everything_right_passes()
    {
        var result = Graded(AllRightBut());

        Assert.True(result.IsPassed);
        Assert.Equal((6, 6), (result.Points, result.MaxPoints));
        Assert.Empty(result.Reasons);
        Assert.Equal([new TopicResult("meeting", 4, 4), new TopicResult("bite", 2, 2)], result.Topics);
    }

    public static TheoryData<int, bool> Pass_percent_for_five_of_six => new()
    {
        { 83, true },    // 500 >= 498
        { 84, false },   // 500 < 504: 83.33 % is never rounded to 84
        { 100, false },
        { 1, true },
    };

    [Theory, MemberData(nameof(Pass_percent_for_five_of_six))]
    public void The_overall_share_is_compared_without_rounding(int pass, bool passes) =>
        Assert.Equal(passes, Graded(AllRightBut(Given("kinds", ["pit"])), Course(pass)).IsPassed);

    [Fact]
    public void A_topic_has_a_minimum_of_its_own()
    {
        var result = Graded(AllRightBut(Given("rings", ["on"])), Course(pass: 50, bitePass: 51));

        Assert.Equal([new SittingReason.TopicBelowPass("bite", 1, 2, 51)], result.Reasons);
    }

    [Fact]
    public void A_missed_critical_question_fails_whatever_the_score()
    {
        var result = Graded(AllRightBut(Given("stop", ["wait"])));

        Assert.Equal([new SittingReason.CriticalMissed("stop")], result.Reasons);
    }

    [Fact]
    public void All_reasons_are_given_at_once()
    {
        var result = Graded(Sitting(Given("stop", ["prod"])));

        Assert.Equal(
            [
                new SittingReason.BelowPass(0, 6, 80),
                new SittingReason.TopicBelowPass("bite", 0, 2, 50),
                new SittingReason.CriticalMissed("stop"),
                new SittingReason.CriticalMissed("call"),
            ],
            result.Reasons);
    }

    [Fact]
    public void A_question_without_an_answer_is_blank() =>
        Assert.Equal([Mark.Right, Mark.Right, Mark.Right, Mark.Blank, Mark.Right, Mark.Right],
            Graded(Sitting([.. Standard.Where(id => id != "reach").Select(id => Right(id))])).Questions.Select(question => question.Mark));

    public static TheoryData<int, Mark> Seconds_after_the_start => new()
    {
        { 599, Mark.Right },
        { 600, Mark.Right },     // saved at the limit is saved in time
        { 601, Mark.Late },
    };

    [Theory, MemberData(nameof(Seconds_after_the_start))]
    public void An_answer_after_the_limit_is_kept_and_marked(int seconds, Mark mark) =>
        Assert.Equal(mark, MarkOf("place", Graded(Sitting() with { Draw = Draw("stop", "kinds", "steps", "place", "call", "rings"), Answers = [Right("place", seconds)] }, Course(minutes: 10))));

    [Fact]
    public void Without_a_limit_no_answer_is_late() =>
        Assert.Equal(Mark.Right, MarkOf("rings", Graded(AllRightBut(Right("rings", seconds: 90_000)))));

    public static TheoryData<string, string, decimal?, Mark> Answers_and_marks => new()
    {
        { "stop", "back", null, Mark.Right },
        { "stop", "wait", null, Mark.Wrong },
        { "kinds", "coral pit", null, Mark.Right },         // order means nothing
        { "kinds", "pit", null, Mark.Wrong },               // all or nothing
        { "kinds", "pit coral rat", null, Mark.Wrong },
        { "steps", "one two three", null, Mark.Right },
        { "steps", "one three two", null, Mark.Wrong },
        { "reach", "", 109m, Mark.Right },                  // tolerance 1, both ends included
        { "reach", "", 111m, Mark.Right },
        { "reach", "", 111.0001m, Mark.Wrong },
        { "reach", "", 108.9999m, Mark.Wrong },
        { "reach", "", -110m, Mark.Wrong },
    };

    [Theory, MemberData(nameof(Answers_and_marks))]
    public void Each_type_is_marked_by_its_key(string id, string options, decimal? number, Mark mark) =>
        Assert.Equal(mark, MarkOf(id, Graded(AllRightBut(Given(id, options.Split(' ', StringSplitOptions.RemoveEmptyEntries), number)))));

    [Fact]
    public void Grading_never_depends_on_the_order_shown() => Gen.ULong.Sample(seed =>
    {
        var chance = new SplitMix64(seed);
        var sitting = AllRightBut(Given("kinds", ["pit"]));
        var shuffled = sitting with
        {
            Draw = sitting.Draw with { Questions = chance.Shuffle([.. sitting.Draw.Questions.Select(q => q with { OptionIds = chance.Shuffle(q.OptionIds) })]) },
            Answers = chance.Shuffle(sitting.Answers),
        };
        return Graded(shuffled).Points == 5 && MarkOf("kinds", Graded(shuffled)) == Mark.Wrong;
    });

    [Fact]
    public void No_score_rescues_a_missed_critical_question() => Gen.Int[1, 100].Sample(pass =>
        !Graded(AllRightBut(Given("call", ["office"])), Course(pass, bitePass: 0)).IsPassed);

    [Fact]
    public void Feedback_names_what_to_reread_and_never_the_key()
    {
        var course = Course();
        var result = Graded(AllRightBut(Given("kinds", ["pit"]), Given("call", ["office"])), course);

        Assert.Equal(
            [new Reread("bite", new Passage("bite", "call"), true), new Reread("meeting", new Passage("meeting", "kinds"), false)],
            SittingFeedback.For(course, result));
    }

    private static Mark MarkOf(string id, SittingResult result) => result.Questions.Single(question => question.QuestionId == id).Mark;

    private static SittingResult Graded(Sitting sitting, Course? course = null)
    {
        var problems = new List<Problem>();
        var result = SittingGrader.Grade(course ?? Course(), sitting, problems);
        Assert.Empty(problems);
        return result!;
    }
}

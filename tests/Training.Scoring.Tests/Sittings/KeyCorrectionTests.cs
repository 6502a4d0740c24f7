using CsCheck;
using Training.Courses;

namespace Training.Scoring.Tests;

/// <summary>When a question turns out wrong: left out, or marked by the key of a later text. Rule: docs/rules.md.</summary>
public sealed class KeyCorrectionTests
{
    private static readonly Question Plain = TestCourse.Question("plain", new QuestionKey.One("a"), ["a", "b", "c"]);
    private static readonly Question Critical = TestCourse.Question("critical", new QuestionKey.One("a"), ["a", "b", "c"], isCritical: true);
    private static readonly Question Other = TestCourse.Question("other", new QuestionKey.One("a"), ["a", "b", "c"]);
    private static readonly Course Course = TestCourse.DrawingAll(100, Plain, Critical, Other);

    [Fact]
    public void Without_a_correction_of_what_was_drawn_nothing_changes() =>
        Gen.Select(Gen.ULong, Gen.Enum<Behaviour>().Array[10]).Sample((seed, behaviours) =>
        {
            var course = TestCourse.Timed;
            var sitting = TestSitting.Of(course, seed, question => behaviours[course.Questions.ToList().IndexOf(question) % 10]);
            KeyCorrection[] elsewhere =
            [
                new KeyCorrection.LeaveOut("meeting-1", "another-version"), new KeyCorrection.LeaveOut("never-drawn", "version-of-never-drawn"),
            ];

            Assert.Equivalent(TestSitting.Grade(course, sitting), SittingGrader.Regrade(course, sitting, elsewhere, []), strict: true);
        });

    [Fact]
    public void The_same_key_again_changes_nothing_but_its_version() =>
        Gen.Select(Gen.ULong, Gen.Enum<Behaviour>().Array[10]).Sample((seed, behaviours) =>
        {
            var sitting = TestSitting.Of(TestCourse.Timed, seed, question => behaviours[TestCourse.Timed.Questions.ToList().IndexOf(question) % 10]);
            var same = sitting.Draw.Questions.Select(drawn => TestCourse.Timed.Questions.Single(question => question.Id == drawn.QuestionId))
                .Select(question => new KeyCorrection.OtherKey(question.Id, question.Version, question with { Version = "later" })).ToList();

            var regraded = SittingGrader.Regrade(TestCourse.Timed, sitting, same, [])!; // not null: it was graded before

            var before = TestSitting.Grade(TestCourse.Timed, sitting);
            Assert.All(regraded.Questions, question => Assert.Equal("later", question.QuestionVersion));
            Assert.Equivalent(before with { Questions = [] }, regraded with { Questions = [] }, strict: true);
            Assert.Equal(before.Questions.Select(question => question.Mark), regraded.Questions.Select(question => question.Mark));
        });

    [Fact]
    public void A_question_left_out_earns_nothing_and_asks_nothing()
    {
        var sitting = TestSitting.Of(Course, 1, question => question.Id == "plain" ? Behaviour.Wrong : Behaviour.Right);

        var result = Regrade(sitting, new KeyCorrection.LeaveOut(Plain.Id, Plain.Version));

        Assert.Equal((true, 2, 2), (result.IsPassed, result.Points, result.MaxPoints));
        Assert.Equal([new TopicResult("meeting", 2, 2)], result.Topics);
        Assert.Equal(Mark.LeftOut, result.Questions.Single(question => question.QuestionId == "plain").Mark);
    }

    [Fact]
    public void A_critical_question_left_out_fails_nobody()
    {
        var sitting = TestSitting.Of(Course, 1, question => question.IsCritical ? Behaviour.Blank : Behaviour.Right);

        Assert.Empty(Regrade(sitting, new KeyCorrection.LeaveOut(Critical.Id, Critical.Version)).Reasons);
    }

    [Fact]
    public void Leaving_out_what_somebody_had_right_can_fail_them()
    {
        var course = TestCourse.DrawingAll(75, Plain, Critical, Other, TestCourse.Question("fourth", new QuestionKey.One("a"), ["a", "b"]));
        var sitting = TestSitting.Of(course, 1, question => question.Id == "other" ? Behaviour.Wrong : Behaviour.Right);

        Assert.True(TestSitting.Grade(course, sitting).IsPassed);
        var result = SittingGrader.Regrade(course, sitting, [new KeyCorrection.LeaveOut(Plain.Id, Plain.Version)], [])!; // not null: as above
        Assert.Equal([new SittingReason.BelowPass(2, 3, 75)], result.Reasons);
    }

    [Fact]
    public void Who_was_asked_nothing_that_counts_has_shown_nothing()
    {
        var sitting = TestSitting.AllRight(Course);

        var result = Regrade(sitting, [.. Course.Questions.Select(question => new KeyCorrection.LeaveOut(question.Id, question.Version))]);

        Assert.Equal((false, 0, 0), (result.IsPassed, result.Points, result.MaxPoints));
        Assert.Equal([new SittingReason.BelowPass(0, 0, 100)], result.Reasons);
    }

    [Fact]
    public void Another_key_marks_the_answers_that_were_given()
    {
        var corrected = Plain with { Key = new QuestionKey.One("b"), Version = "corrected" };
        var sitting = TestSitting.AllRight(Course);
        var chosenB = sitting with { Answers = [.. sitting.Answers.Select(answer => answer.QuestionId == "plain" ? answer with { OptionIds = ["b"] } : answer)] };
        var correction = new KeyCorrection.OtherKey(Plain.Id, Plain.Version, corrected);

        Assert.Equal((false, true), (TestSitting.Grade(Course, chosenB).IsPassed, Regrade(chosenB, correction).IsPassed));
        Assert.Equal((true, false), (TestSitting.Grade(Course, sitting).IsPassed, Regrade(sitting, correction).IsPassed));
        Assert.Equal("corrected", Regrade(chosenB, correction).Questions.Single(question => question.QuestionId == "plain").QuestionVersion);
    }

    [Fact]
    public void An_answer_that_came_too_late_stays_late_under_another_key()
    {
        var course = Course with { Quiz = Course.Quiz with { TimeLimitMinutes = 30 } };
        var sitting = TestSitting.Of(course, 1, question => question.Id == "plain" ? Behaviour.Late : Behaviour.Right);

        var result = SittingGrader.Regrade(course, sitting, [new KeyCorrection.OtherKey(Plain.Id, Plain.Version, Plain with { Version = "later" })], [])!;

        Assert.Equal(Mark.Late, result.Questions.Single(question => question.QuestionId == "plain").Mark);
    }

    [Fact]
    public void What_is_left_out_is_not_to_be_reread()
    {
        var sitting = TestSitting.Of(Course, 1, question => question.Id == "plain" ? Behaviour.Wrong : Behaviour.Right);

        Assert.Empty(SittingFeedback.For(Course, Regrade(sitting, new KeyCorrection.LeaveOut(Plain.Id, Plain.Version))));
    }

    [Fact]
    public void A_key_fits_the_same_question_with_the_same_type_options_and_matches()
    {
        var pairs = TestCourse.Pairs("pairs");

        Assert.True(KeyCorrection.Fits(Plain, Plain with { Key = new QuestionKey.One("c"), OptionIds = ["c", "b", "a"] }));
        Assert.False(KeyCorrection.Fits(Plain, Plain with { Id = "another" }));
        Assert.False(KeyCorrection.Fits(Plain, Plain with { OptionIds = ["a", "b", "d"] }));
        Assert.False(KeyCorrection.Fits(Plain, Plain with { Key = new QuestionKey.Several(["a"]) }));
        Assert.False(KeyCorrection.Fits(pairs, pairs with { Key = new QuestionKey.Match(["p", "q", "r"], [new("a", "q"), new("b", "p"), new("c", "r")]) }));
    }

    [Fact]
    public void A_key_that_does_not_fit_is_a_mistake_of_the_caller() => Assert.Throws<ArgumentException>(() =>
        Regrade(TestSitting.AllRight(Course), new KeyCorrection.OtherKey(Plain.Id, Plain.Version, Plain with { OptionIds = ["a", "z"] })));

    private static SittingResult Regrade(Sitting sitting, params KeyCorrection[] corrections)
    {
        var problems = new List<Problem>();
        var result = SittingGrader.Regrade(Course, sitting, corrections, problems);
        Assert.Empty(problems);
        return result!; // not null: there was no problem
    }
}

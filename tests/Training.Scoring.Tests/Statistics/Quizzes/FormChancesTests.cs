using Training.Courses;

namespace Training.Scoring.Tests;

/// <summary>Chances of whole forms, worked out by hand.</summary>
public sealed class FormChancesTests
{
    private static Question One(string id, int options, bool isCritical = false) =>
        TestCourse.Question(id, new QuestionKey.One("a"), [.. "abcdef"[..options].Select(letter => letter.ToString())], isCritical: isCritical);

    private static Quiz Quiz(int questions, int critical, int pass) => new("quiz", pass, null, [new("meeting", questions, critical, 0)]);

    [Fact]
    public void Two_of_two_questions_with_four_answers_are_hit_once_in_sixteen() =>
        Assert.Equal(1 / 16.0, FormChances.PassByGuessing(Quiz(2, 0, 100), [One("q1", 4), One("q2", 4)]).Known(), 1e-15);

    [Fact]
    public void A_critical_question_must_be_hit_whatever_the_points() =>
        // One of two points passes, but the critical one must be right: a quarter.
        Assert.Equal(0.25, FormChances.PassByGuessing(Quiz(2, 1, 50), [One("q1", 2), One("q2", 4, isCritical: true)]).Known(), 1e-15);

    [Fact]
    public void The_easiest_draw_counts() =>
        Assert.Equal(0.5, FormChances.PassByGuessing(Quiz(1, 0, 100), [One("q1", 4), One("q2", 2), One("q3", 3)]).Known(), 1e-15);

    [Theory]
    [InlineData("several", 7)]
    [InlineData("order", 6)]
    [InlineData("pairs", 24)]
    [InlineData("spot", 4)]
    public void Each_type_has_its_number_of_answers(string type, int ways)
    {
        var question = type switch
        {
            "several" => TestCourse.Question("q", new QuestionKey.Several(["a"]), ["a", "b", "c"]),
            "order" => TestCourse.Question("q", new QuestionKey.Order(["c", "a", "b"]), ["a", "b", "c"]),
            "pairs" => TestCourse.Pairs("q"),
            _ => TestCourse.Spot("q"),
        };

        Assert.Equal(1.0 / ways, FormChances.PassByGuessing(Quiz(1, 0, 100), [question]).Known(), 1e-15);
    }

    [Fact]
    public void A_typed_number_is_not_guessed() =>
        Assert.True(FormChances.PassByGuessing(Quiz(1, 0, 100), [TestCourse.Question("q", new QuestionKey.Number(130, 5, "cm"), [])]).Known() <= 1e-6);

    [Fact]
    public void Two_draws_share_what_their_rows_share_on_average() =>
        // Two of four plain and one of two critical: (2·2/4 + 1·1/2)/3.
        Assert.Equal(0.5, FormChances.Overlap(Quiz(3, 1, 80),
            [One("q1", 4), One("q2", 4), One("q3", 4), One("q4", 4), One("q5", 4, isCritical: true), One("q6", 4, isCritical: true)]).Known(), 1e-12);

    [Fact]
    public void A_pool_that_does_not_cover_the_blueprint_has_no_chances()
    {
        FormChances.PassByGuessing(Quiz(2, 0, 80), [One("q1", 4)]).IsUnknown(Obstacle.PoolTooSmall);
        FormChances.Overlap(Quiz(2, 0, 80), [One("q1", 4)]).IsUnknown(Obstacle.PoolTooSmall);
        FormChances.Overlap(new("quiz", 80, null, []), []).IsUnknown(Obstacle.TooFewItems);
    }
}

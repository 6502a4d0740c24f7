using CsCheck;
using Training.Courses;

namespace Training.Scoring.Tests;

public sealed class QuizDrawTests
{
    private static readonly Course Course = TestCourse.Mixed;

    /// <summary>Upper 0.1 % points of the chi-square distribution, from any printed table, by degrees of freedom.</summary>
    private static readonly Dictionary<int, double> ChiSquareLimit = new() { [4] = 18.467, [9] = 27.877, [23] = 49.728 };

    /// <summary>Pinned for ever: worked out once by a program in another language that followed docs/rules.md, "Draws".</summary>
    public static TheoryData<ulong, string> Seed_and_what_is_shown => new()
    {
        {
            0,
            "meeting-6:bacd meeting-1:acdb bite-6:cbad bite-7:bca meeting-9:abdc " +
            "distances-5:dcba bite-8: distances-4: distances-1:dcab meeting-3:bac"
        },
        {
            1234567,
            "bite-9:dbac meeting-1:dcba distances-5:bdac meeting-3:abc distances-1:cdba " +
            "meeting-6:cdba bite-4: bite-8: distances-2:bcad meeting-9:dabc"
        },
        {
            ulong.MaxValue,
            "distances-1:dbca distances-3:bac meeting-4: meeting-6:cbda bite-1:cbad " +
            "meeting-7:acb meeting-1:cabd bite-7:abc distances-2:acbd bite-9:cbda"
        },
    };

    [Theory, MemberData(nameof(Seed_and_what_is_shown))]
    public void A_seed_shows_the_same_quiz_for_ever(ulong seed, string shown)
    {
        var draw = QuizDraw.From(Course, seed);

        Assert.Equal(shown, string.Join(' ', draw.Questions.Select(drawn => $"{drawn.QuestionId}:{string.Concat(drawn.OptionIds)}")));
    }

    /// <summary>Pinned for ever, by the same program as above; of pairs, the options stand before the matches.</summary>
    public static TheoryData<ulong, string> Seed_and_what_is_shown_of_pairs_and_spots => new()
    {
        { 0, "spot-4:acdb match-4:bacrqsp match-6:bcasprq spot-1:cdba spot-5:bacd" },
        { 1234567, "spot-3:cdba match-6:bcaqrsp match-5:abcpsrq spot-2:cdab match-3:abcqprs" },
        { ulong.MaxValue, "spot-3:acdb match-6:cbarspq spot-5:bacd spot-4:abdc spot-2:bcda" },
    };

    [Theory, MemberData(nameof(Seed_and_what_is_shown_of_pairs_and_spots))]
    public void A_seed_shows_the_same_pairs_and_spots_for_ever(ulong seed, string shown)
    {
        var draw = QuizDraw.From(TestCourse.Marked, seed);

        Assert.Equal(shown, string.Join(' ', draw.Questions.Select(drawn => $"{drawn.QuestionId}:{string.Concat(drawn.OptionIds)}")));
    }

    [Fact]
    public void Pairs_show_every_option_and_after_them_every_match() => Gen.ULong.Sample(seed =>
    {
        var question = TestCourse.Pairs("pairs");

        var drawn = QuizDraw.From(TestCourse.DrawingAll(80, question), seed).Questions[0];

        Assert.Equal(["a", "b", "c"], drawn.OptionsOf(question).Order(StringComparer.Ordinal));
        Assert.Equal(["p", "q", "r", "s"], drawn.MatchesOf(question).Order(StringComparer.Ordinal));
    });

    [Fact]
    public void A_draw_names_what_it_was_drawn_from()
    {
        var draw = QuizDraw.From(Course, 7);

        Assert.Equal((TestCourse.Hash, "mixed-quiz", 7UL), (draw.CourseHash, draw.QuizId, draw.Seed));
        Assert.All(draw.Questions, drawn => Assert.Equal($"version-of-{drawn.QuestionId}", drawn.QuestionVersion));
    }

    [Fact]
    public void Every_draw_has_the_blueprints_counts_and_no_question_twice() => Gen.ULong.Sample(seed =>
    {
        var drawn = QuizDraw.From(Course, seed).Questions.Select(QuestionOf).ToList();

        Assert.Equal(10, drawn.Select(question => question.Id).Distinct(StringComparer.Ordinal).Count());
        Assert.All(Course.Quiz.Blueprint, row =>
        {
            var ofTopic = drawn.Where(question => question.Topic == row.Topic).ToList();
            Assert.Equal((row.Questions, row.Critical), (ofTopic.Count, ofTopic.Count(question => question.IsCritical)));
        });
    });

    [Fact]
    public void Every_draw_shows_every_option_exactly_once() => Gen.ULong.Sample(seed =>
        Assert.All(
            QuizDraw.From(Course, seed).Questions,
            drawn => Assert.Equal(QuestionOf(drawn).OptionIds.Order(StringComparer.Ordinal), drawn.OptionIds.Order(StringComparer.Ordinal))));

    [Fact]
    public void No_order_question_is_shown_in_its_right_order() => Gen.ULong.Sample(seed =>
        Assert.DoesNotContain(
            QuizDraw.From(Course, seed).Questions,
            drawn => QuestionOf(drawn).Key is QuestionKey.Order && string.Concat(drawn.OptionIds) == "cab"));

    [Fact]
    public void An_order_question_of_one_step_is_shown_as_it_is()
    {
        var course = TestCourse.DrawingAll(80, TestCourse.Question("lone", new QuestionKey.Order(["a"]), ["a"]));

        Assert.Equal(["a"], QuizDraw.From(course, 1).Questions[0].OptionIds);
    }

    [Fact]
    public void Every_question_of_a_pool_is_drawn_about_equally_often()
    {
        var pool = Enumerable.Range(0, 10).Select(number => One($"q{number}", "a", "b")).ToArray();
        var course = TestCourse.Of(new Quiz("one-quiz", 80, null, [new("meeting", 1, 0, 0)]), pool);

        Assert.InRange(ChiSquare(10, 20_000, course, draw => draw.Questions[0].QuestionId), 0, ChiSquareLimit[9]);
    }

    [Fact]
    public void Every_order_of_the_questions_is_about_equally_frequent()
    {
        var course = TestCourse.DrawingAll(80, One("p", "a"), One("q", "a"), One("r", "a"), One("s", "a"));

        Assert.InRange(
            ChiSquare(24, 48_000, course, draw => string.Concat(draw.Questions.Select(drawn => drawn.QuestionId))), 0, ChiSquareLimit[23]);
    }

    [Fact]
    public void Every_order_of_the_options_is_about_equally_frequent()
    {
        var course = TestCourse.DrawingAll(80, One("q", "a", "b", "c", "d"));

        Assert.InRange(ChiSquare(24, 48_000, course, draw => string.Concat(draw.Questions[0].OptionIds)), 0, ChiSquareLimit[23]);
    }

    [Fact]
    public void Every_order_of_the_matches_is_about_equally_frequent()
    {
        var question = TestCourse.Pairs("pairs");

        Assert.InRange(
            ChiSquare(24, 48_000, TestCourse.DrawingAll(80, question), draw => string.Concat(draw.Questions[0].MatchesOf(question))),
            0,
            ChiSquareLimit[23]);
    }

    [Fact]
    public void Every_wrong_order_of_the_steps_is_about_equally_frequent()
    {
        var course = TestCourse.DrawingAll(80, TestCourse.Question("q", new QuestionKey.Order(["a", "b", "c"]), ["a", "b", "c"]));

        Assert.InRange(ChiSquare(5, 20_000, course, draw => string.Concat(draw.Questions[0].OptionIds)), 0, ChiSquareLimit[4]);
    }

    [Theory]
    [InlineData(4, 1)]
    [InlineData(1, 1)]
    [InlineData(3, 0)]
    public void A_pool_smaller_than_the_blueprint_is_a_broken_promise(int questions, int critical)
    {
        var pool = new[] { One("p", "a"), One("q", "a") };
        var course = TestCourse.Of(new Quiz("big-quiz", 80, null, [new("meeting", questions, critical, 0)]), pool);

        Assert.Throws<ArgumentException>(() => QuizDraw.From(course, 1));
    }

    /// <summary>Over the seeds 0, 1, 2 …, so that the test gives the same figure every time.</summary>
    private static double ChiSquare(int kinds, int draws, Course course, Func<Draw, string> kind)
    {
        var counts = Enumerable.Range(0, draws).CountBy(seed => kind(QuizDraw.From(course, (ulong)seed)), StringComparer.Ordinal).ToList();
        Assert.Equal(kinds, counts.Count);
        return Statistics.ChiSquare([.. counts.Select(count => count.Value)]);
    }

    private static Question One(string id, params string[] options) => TestCourse.Question(id, new QuestionKey.One("a"), options);

    private static Question QuestionOf(DrawnQuestion drawn) => Course.Questions.Single(question => question.Id == drawn.QuestionId);
}

using CsCheck;
using Training.Courses;

namespace Training.Scoring.Tests;

public sealed class SittingGraderTests
{
    private static readonly Gen<Behaviour> AnyBehaviour = Gen.Enum<Behaviour>();

    [Fact]
    public void All_right_passes_without_a_reason()
    {
        var result = TestSitting.Grade(TestCourse.Mixed, TestSitting.AllRight(TestCourse.Mixed));

        Assert.True(result.IsPassed);
        Assert.Empty(result.Reasons);
        Assert.Equal((10, 10, TestCourse.Hash), (result.Points, result.MaxPoints, result.CourseHash));
        Assert.Equal([new("meeting", 4, 4), new("distances", 3, 3), new("bite", 3, 3)], result.Topics);
    }

    [Fact]
    public void Results_stand_in_the_order_shown_and_name_the_version()
    {
        var sitting = TestSitting.AllRight(TestCourse.Mixed);

        var result = TestSitting.Grade(TestCourse.Mixed, sitting);

        Assert.Equal(
            sitting.Draw.Questions.Select(drawn => new QuestionResult(drawn.QuestionId, drawn.QuestionVersion, Mark.Right)), result.Questions);
    }

    [Fact]
    public void All_blank_gives_every_reason_overall_then_topics_then_critical_questions()
    {
        var sitting = TestSitting.Of(TestCourse.Mixed, 1, _ => Behaviour.Blank);

        var result = TestSitting.Grade(TestCourse.Mixed, sitting);

        var critical = sitting.Draw.Questions.Where(drawn => drawn.QuestionId[^1] is '7' or '8' or '9');
        Assert.False(result.IsPassed);
        Assert.Equal<SittingReason>(
            [
                new SittingReason.BelowPass(0, 10, 80),
                new SittingReason.TopicBelowPass("meeting", 0, 4, 50),
                new SittingReason.TopicBelowPass("bite", 0, 3, 67),
                .. critical.Select(drawn => new SittingReason.CriticalMissed(drawn.QuestionId)),
            ],
            result.Reasons);
        Assert.All(result.Questions, question => Assert.Equal(Mark.Blank, question.Mark));
    }

    public static TheoryData<int, int, int, bool> Right_of_questions_and_pass_percent => new()
    {
        { 8, 10, 80, true },        // exactly at the pass mark
        { 7, 10, 80, false },
        { 2, 3, 66, true },         // 66.7 % is enough for 66 …
        { 2, 3, 67, false },        // … and not for 67: nothing is rounded up
        { 1, 3, 33, true },
        { 1, 3, 34, false },
        { 29, 40, 72, true },       // 72.5 %
        { 29, 40, 73, false },      // 72.5 % would round to 73
        { 199, 200, 100, false },   // 99.5 % would round to 100
        { 200, 200, 100, true },
        { 0, 3, 1, false },
        { 1, 100, 1, true },
    };

    [Theory, MemberData(nameof(Right_of_questions_and_pass_percent))]
    public void The_pass_mark_is_compared_unrounded(int right, int of, int passPercent, bool isPassed)
    {
        var course = TestCourse.DrawingAll(passPercent, [.. Enumerable.Range(0, of).Select(number => One($"q{number:D3}"))]);

        var result = TestSitting.Grade(course, TestSitting.Of(course, 1, question => FirstOnes(question, right)));

        Assert.Equal((isPassed, right, of), (result.IsPassed, result.Points, result.MaxPoints));
        SittingReason[] reasons = isPassed ? [] : [new SittingReason.BelowPass(right, of, passPercent)];
        Assert.Equal(reasons, result.Reasons);
    }

    [Theory]
    [InlineData(2, 66, true)]
    [InlineData(2, 67, false)]
    [InlineData(0, 0, true)]
    [InlineData(0, 1, false)]
    [InlineData(3, 100, true)]
    public void A_topics_own_minimum_is_compared_unrounded(int right, int passPercent, bool isPassed)
    {
        var pool = Enumerable.Range(0, 3).Select(number => One($"q{number:D3}")).ToArray();
        var course = TestCourse.Of(new Quiz("topic-quiz", 1, null, [new("meeting", 3, 0, passPercent), new("bite", 1, 0, 0)]),
            [.. pool, One("q900", "bite")]);

        var result = TestSitting.Grade(
            course, TestSitting.Of(course, 1, question => question.Topic == "bite" ? Behaviour.Right : FirstOnes(question, right)));

        Assert.Equal(isPassed, result.IsPassed);
        SittingReason[] reasons = isPassed ? [] : [new SittingReason.TopicBelowPass("meeting", right, 3, passPercent)];
        Assert.Equal(reasons, result.Reasons);
    }

    [Theory]
    [InlineData(Behaviour.Wrong)]
    [InlineData(Behaviour.Blank)]
    [InlineData(Behaviour.Late)]
    public void One_missed_critical_question_fails_a_quiz_that_is_otherwise_all_right(Behaviour behaviour)
    {
        var course = TestCourse.Timed with { Quiz = TestCourse.Timed.Quiz with { PassPercent = 50, Blueprint = [new("bite", 9, 3, 0)] } };

        var result = TestSitting.Grade(course, TestSitting.Of(course, 1, question => question.Id == "bite-7" ? behaviour : Behaviour.Right));

        Assert.False(result.IsPassed);
        Assert.Equal<SittingReason>([new SittingReason.CriticalMissed("bite-7")], result.Reasons);
    }

    public static TheoryData<QuestionKey, string, decimal?, Mark> Key_answer_and_mark => new()
    {
        { new QuestionKey.One("b"), "b", null, Mark.Right },
        { new QuestionKey.One("b"), "a", null, Mark.Wrong },
        { new QuestionKey.Several(["a", "c"]), "ac", null, Mark.Right },
        { new QuestionKey.Several(["a", "c"]), "ca", null, Mark.Right },        // order means nothing
        { new QuestionKey.Several(["a", "c"]), "a", null, Mark.Wrong },         // all or nothing
        { new QuestionKey.Several(["a", "c"]), "abc", null, Mark.Wrong },
        { new QuestionKey.Several(["a", "c"]), "bd", null, Mark.Wrong },
        { new QuestionKey.Several(["a", "c"]), "", null, Mark.Blank },          // none chosen is no answer
        { new QuestionKey.Order(["d", "b", "c", "a"]), "dbca", null, Mark.Right },
        { new QuestionKey.Order(["d", "b", "c", "a"]), "dbac", null, Mark.Wrong },
        { new QuestionKey.Number(130, 5, "cm"), "", 125m, Mark.Right },         // both ends are included
        { new QuestionKey.Number(130, 5, "cm"), "", 135m, Mark.Right },
        { new QuestionKey.Number(130, 5, "cm"), "", 124.9999m, Mark.Wrong },
        { new QuestionKey.Number(130, 5, "cm"), "", 135.0001m, Mark.Wrong },
        { new QuestionKey.Number(0.3m, 0, "m"), "", 0.30m, Mark.Right },        // no binary fractions: 0.30 is 0.3
        { new QuestionKey.Number(-5, 1, "°C"), "", -6m, Mark.Right },
        { new QuestionKey.Number(-5, 1, "°C"), "", decimal.MaxValue, Mark.Wrong },   // typed by somebody who plays
        { new QuestionKey.Number(130, 5, "cm"), "", decimal.MinValue, Mark.Wrong },
        { new QuestionKey.Spot("b", "figures/place.svg", []), "b", null, Mark.Right },
        { new QuestionKey.Spot("b", "figures/place.svg", []), "c", null, Mark.Wrong },
    };

    [Theory, MemberData(nameof(Key_answer_and_mark))]
    public void Each_type_is_right_or_wrong_as_a_whole(QuestionKey key, string options, decimal? number, Mark mark)
    {
        var question = TestCourse.Question("q", key, key is QuestionKey.Number ? [] : ["a", "b", "c", "d"]);
        var course = TestCourse.DrawingAll(100, question);
        var answer = TestSitting.Options(question, [.. options.Select(option => option.ToString())]) with { Number = number };

        var result = TestSitting.Grade(course, TestSitting.AllRight(course) with { Answers = [answer] });

        Assert.Equal(mark, Assert.Single(result.Questions).Mark);
    }

    [Theory]
    [InlineData("a=q b=p c=s", Mark.Right)]
    [InlineData("c=s a=q b=p", Mark.Right)]         // the order of the pairs means nothing
    [InlineData("a=q b=s c=p", Mark.Wrong)]         // all or nothing
    [InlineData("a=q b=p c=r", Mark.Wrong)]         // one that is left over
    [InlineData("a=p b=q c=r", Mark.Wrong)]
    public void Pairs_are_right_or_wrong_as_a_whole(string pairs, Mark mark)
    {
        var question = TestCourse.Pairs("q");
        var course = TestCourse.DrawingAll(100, question);

        var result = TestSitting.Grade(
            course, TestSitting.AllRight(course) with { Answers = [TestSitting.Options(question, pairs.Split(' '))] });

        Assert.Equal(mark, Assert.Single(result.Questions).Mark);
    }

    public static TheoryData<int, int, Mark> Seconds_milliseconds_and_mark => new()
    {
        { 0, 0, Mark.Right },
        { 1799, 999, Mark.Right },
        { 1800, 0, Mark.Right },    // exactly at the limit counts
        { 1800, 1, Mark.Late },
        { 3600, 0, Mark.Late },
    };

    [Theory, MemberData(nameof(Seconds_milliseconds_and_mark))]
    public void An_answer_counts_until_the_limit_inclusive(int seconds, int milliseconds, Mark mark)
    {
        var sitting = TestSitting.AllRight(TestCourse.Timed);
        var savedAt = sitting.StartedAt.AddSeconds(seconds).AddMilliseconds(milliseconds);
        sitting = sitting with { Answers = [sitting.Answers[0] with { SavedAt = savedAt }, .. sitting.Answers.Skip(1)] };

        var result = TestSitting.Grade(TestCourse.Timed, sitting);

        Assert.Equal(mark, MarkOf(result, sitting.Answers[0].QuestionId));
        Assert.Equal(mark is Mark.Right ? 10 : 9, result.Points);
    }

    [Fact]
    public void Without_a_limit_nothing_is_late()
    {
        var result = TestSitting.Grade(TestCourse.Mixed, TestSitting.Of(TestCourse.Mixed, 1, _ => Behaviour.Late));

        Assert.True(result.IsPassed);
    }

    [Fact]
    public void A_wrong_answer_after_the_limit_is_late_not_wrong()
    {
        var sitting = TestSitting.Of(TestCourse.Timed, 1, _ => Behaviour.Wrong);
        sitting = sitting with { Answers = [.. sitting.Answers.Select(answer => answer with { SavedAt = TestSitting.Start.AddMinutes(45) })] };

        Assert.All(TestSitting.Grade(TestCourse.Timed, sitting).Questions, question => Assert.Equal(Mark.Late, question.Mark));
    }

    [Fact]
    public void The_order_in_which_questions_and_options_are_shown_changes_no_mark() =>
        Gen.Select(Gen.ULong, Gen.ULong, AnyBehaviour.Array[27]).Sample((seed, reorder, behaviours) =>
        {
            var sitting = TestSitting.Of(TestCourse.Timed, seed, question => BehaviourOf(question, behaviours));
            var random = new SplitMix64(reorder);
            var shown = sitting.Draw.Questions
                .Select(drawn => drawn with { OptionIds = Shuffled(drawn.OptionIds, random) }).ToList();
            var reordered = sitting with
            {
                Draw = sitting.Draw with { Questions = Shuffled(shown, random) },
                Answers = Shuffled(sitting.Answers, random),
            };

            var before = TestSitting.Grade(TestCourse.Timed, sitting);
            var after = TestSitting.Grade(TestCourse.Timed, reordered);

            Assert.Equal((before.IsPassed, before.Points), (after.IsPassed, after.Points));
            Assert.Equal(before.Topics, after.Topics);
            Assert.All(before.Questions, question => Assert.Equal(question.Mark, MarkOf(after, question.QuestionId)));
            Assert.Equal(before.Reasons.ToHashSet(), after.Reasons.ToHashSet());
        });

    [Fact]
    public void It_is_passed_exactly_where_each_condition_holds_by_itself() =>
        Gen.Select(Gen.ULong, Gen.Int[0, 9], AnyBehaviour.Array[27]).Sample(
            (seed, misses, behaviours) =>
            {
                // Mostly right, so that passes and near misses both come up.
                var mostly = behaviours.Select((behaviour, index) => index % 10 < misses ? Behaviour.Right : behaviour).ToArray();
                var course = TestCourse.Timed;
                var sitting = TestSitting.Of(course, seed, question => BehaviourOf(question, mostly));
                var right = sitting.Draw.Questions.Select(drawn => course.Questions.Single(question => question.Id == drawn.QuestionId))
                    .Where(question => BehaviourOf(question, mostly) is Behaviour.Right).ToList();

                var isEnough = right.Count >= 8;                                                   // 80 % of 10
                var isEnoughMeeting = right.Count(question => question.Topic == "meeting") >= 2;   // 50 % of 4
                var isEnoughBite = right.Count(question => question.Topic == "bite") >= 3;         // 67 % of 3
                var isCriticalRight = right.Count(question => question.IsCritical) == 3;

                var result = TestSitting.Grade(course, sitting);
                Assert.Equal(isEnough && isEnoughMeeting && isEnoughBite && isCriticalRight, result.IsPassed);
                Assert.Equal(right.Count, result.Points);
            },
            iter: 5_000);

    [Fact]
    public void One_more_right_answer_never_lowers_anything() =>
        Gen.Select(Gen.ULong, AnyBehaviour.Array[27], Gen.Int[0, 26]).Sample((seed, behaviours, better) =>
        {
            var sitting = TestSitting.Of(TestCourse.Timed, seed, question => BehaviourOf(question, behaviours));
            behaviours[better] = Behaviour.Right;
            var improved = TestSitting.Of(TestCourse.Timed, seed, question => BehaviourOf(question, behaviours));

            var before = TestSitting.Grade(TestCourse.Timed, sitting);
            var after = TestSitting.Grade(TestCourse.Timed, improved);

            Assert.True(after.Points >= before.Points);
            Assert.True(after.IsPassed || !before.IsPassed);
            Assert.True(after.Reasons.Count <= before.Reasons.Count);
            Assert.All(before.Topics.Zip(after.Topics), pair => Assert.True(pair.Second.Points >= pair.First.Points));
        });

    [Fact]
    public void Grading_again_with_an_unchanged_key_changes_nothing() => Gen.Select(Gen.ULong, AnyBehaviour.Array[27]).Sample((seed, behaviours) =>
    {
        var sitting = TestSitting.Of(TestCourse.Timed, seed, question => BehaviourOf(question, behaviours));

        var (first, second) = (TestSitting.Grade(TestCourse.Timed, sitting), TestSitting.Grade(TestCourse.Timed, sitting));

        Assert.Equal((first.IsPassed, first.Points, first.MaxPoints), (second.IsPassed, second.Points, second.MaxPoints));
        Assert.Equal(first.Questions, second.Questions);
        Assert.Equal(first.Topics, second.Topics);
        Assert.Equal(first.Reasons, second.Reasons);
    });

    private static Question One(string id, string topic = "meeting") => TestCourse.Question(id, new QuestionKey.One("b"), ["a", "b"], topic);

    private static Behaviour FirstOnes(Question question, int right) => int.Parse(question.Id[1..]) < right ? Behaviour.Right : Behaviour.Wrong;

    private static Behaviour BehaviourOf(Question question, Behaviour[] behaviours) =>
        behaviours[TestCourse.Timed.Questions.Select((one, index) => (one, index)).Single(pair => pair.one.Id == question.Id).index];

    private static Mark MarkOf(SittingResult result, string questionId) =>
        result.Questions.Single(question => question.QuestionId == questionId).Mark;

    private static T[] Shuffled<T>(IEnumerable<T> items, SplitMix64 random)
    {
        var shuffled = items.ToArray();
        random.Shuffle<T>(shuffled);
        return shuffled;
    }
}

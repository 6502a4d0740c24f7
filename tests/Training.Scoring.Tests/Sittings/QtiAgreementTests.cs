using System.Diagnostics;
using CsCheck;
using Training.Courses;
using static Training.Scoring.Tests.QtiResponseProcessing;

namespace Training.Scoring.Tests;

/// <summary>Our marks against the semantics of QTI 3.0 (<see cref="QtiResponseProcessing"/>).</summary>
public sealed class QtiAgreementTests
{
    private static readonly string[] Letters = ["a", "b", "c", "d", "e", "f"];

    private static readonly Gen<(Question, Answer)> One =
        from options in Options(2)
        from right in Gen.Int[0, options.Length - 1]
        from chosen in Gen.Int[0, options.Length - 1]
        select Pair(new QuestionKey.One(options[right]), options, [options[chosen]]);

    private static readonly Gen<(Question, Answer)> Several =
        from options in Options(3)
        from right in Subset(options)
        from chosen in Gen.Frequency((1, Gen.Shuffle(right)), (1, Subset(options)), (1, Gen.Const(right[..^1])))
        select Pair(new QuestionKey.Several(right), options, chosen);

    private static readonly Gen<(Question, Answer)> Order =
        from options in Options(3)
        from right in Gen.Shuffle(options)
        from chosen in Gen.Frequency((1, Gen.Const(right)), (2, Gen.Shuffle(options)))
        select Pair(new QuestionKey.Order(right), options, chosen);

    // Few digits and small tolerances, so that answers often fall on a bound or one digit beside it.
    private static readonly Gen<(Question, Answer)> Number =
        from hundredths in Gen.Int[-500, 500]
        from tolerance in Gen.Int[0, 5]
        from away in Gen.Int[-7, 7]
        from thousandths in Gen.Int[-1, 1]
        select NumberPair(hundredths / 100m, tolerance / 100m, ((hundredths + away) / 100m) + (thousandths / 1000m));

    [Fact]
    public void Every_type_agrees_with_match_correct_and_equal_on_random_answers()
    {
        var scores = new int[4, 2];
        Gen.OneOf(One, Several, Order, Number).Sample(
            pair =>
            {
                var (question, answer) = pair;
                var course = TestCourse.DrawingAll(100, question);

                var result = TestSitting.Grade(course, TestSitting.AllRight(course) with { Answers = [answer] });

                var score = Score(Condition(question.Key, answer));
                Interlocked.Increment(ref scores[TypeOf(question.Key), score]);
                Assert.Equal(score, result.Points);
                Assert.Equal(score == 1, result.Questions[0].Mark is Mark.Right);
            },
            iter: 20_000);

        // A comparison in which nearly all is right or nearly all is wrong would prove little.
        Assert.All(scores.Cast<int>(), count => Assert.True(count > 500, $"only {count} of one kind"));
    }

    [Fact]
    public void No_answer_scores_as_NULL_does() => Gen.OneOf(One, Several, Order, Number).Sample(pair =>
    {
        var course = TestCourse.DrawingAll(100, pair.Item1);

        var result = TestSitting.Grade(course, TestSitting.AllRight(course) with { Answers = [] });

        Assert.Equal(Score(Condition(pair.Item1.Key, pair.Item2 with { OptionIds = [], Number = null })), result.Points);
    });

    private static bool? Condition(QuestionKey key, Answer answer) => key switch
    {
        QuestionKey.One one => Match(Cardinality.Single, answer.OptionIds, [one.OptionId]),
        QuestionKey.Several several => Match(Cardinality.Multiple, answer.OptionIds, several.OptionIds),
        QuestionKey.Order order => Match(Cardinality.Ordered, answer.OptionIds, order.OptionIds),
        QuestionKey.Number number => EqualAbsolute(answer.Number, number.Value, number.Tolerance, number.Tolerance),
        _ => throw new UnreachableException(),
    };

    private static int TypeOf(QuestionKey key) => key switch
    {
        QuestionKey.One => 0,
        QuestionKey.Several => 1,
        QuestionKey.Order => 2,
        _ => 3,
    };

    private static Gen<string[]> Options(int least) => Gen.Int[least, Letters.Length].Select(count => Letters[..count]);

    private static Gen<string[]> Subset(string[] options) =>
        from shuffled in Gen.Shuffle(options)
        from count in Gen.Int[1, options.Length]
        select shuffled[..count];

    private static (Question, Answer) Pair(QuestionKey key, string[] options, string[] chosen)
    {
        var question = TestCourse.Question("q", key, options);
        return (question, TestSitting.Options(question, chosen));
    }

    private static (Question, Answer) NumberPair(decimal value, decimal tolerance, decimal typed)
    {
        var question = TestCourse.Question("q", new QuestionKey.Number(value, tolerance, "m"), []);
        return (question, TestSitting.Number(question, typed));
    }
}

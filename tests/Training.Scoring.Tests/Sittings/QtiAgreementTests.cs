using System.Diagnostics;
using CsCheck;
using Training.Courses;
using static Training.Scoring.Tests.QtiResponseProcessing;

namespace Training.Scoring.Tests;

/// <summary>Our marks against the semantics of QTI 3.0 (<see cref="QtiResponseProcessing"/>).</summary>
public sealed class QtiAgreementTests
{
    private static readonly string[] Letters = ["a", "b", "c", "d", "e", "f"];
    private static readonly string[] Matches = ["p", "q", "r", "s", "t", "u", "v", "w"];

    /// <summary>Three areas in our form and in QTI's: shape and coordinates.</summary>
    private static readonly (SpotRegion Region, string Shape, int[] Coords)[] Areas =
    [
        (new("a", new SpotShape.Circle(new(25, 25), 25), new(25, 25)), "circle", [25, 25, 25]),
        (new("b", new SpotShape.Rectangle(new(51, 0), 49, 40), new(75, 20)), "rect", [51, 0, 100, 40]),
        (new("c", new SpotShape.Polygon([new(0, 100), new(30, 51), new(90, 60), new(100, 100)]), new(50, 80)), "poly", [0, 100, 30, 51, 90, 60, 100, 100]),
    ];

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

    private static readonly Gen<(Question, Answer)> Pairs =
        from options in Options(2)
        from more in Gen.Int[0, 2]
        from right in Gen.Shuffle(Matches[..(options.Length + more)])
        from chosen in Gen.Frequency((1, Gen.Const(right)), (2, Gen.Shuffle(right)))
        from order in Gen.Shuffle(Enumerable.Range(0, options.Length).ToArray())
        select MatchPairs(options, right, chosen, order);

    // Where somebody points, a hot spot takes the area in which the point lies: the list of regions says the same in words.
    private static readonly Gen<(Question, Answer)> Spot =
        from right in Gen.Int[0, 2]
        from x in Gen.Int[0, 100]
        from y in Gen.Int[0, 100]
        let pointed = Areas.FirstOrDefault(area => area.Region.Shape.Contains(new(x, y))).Region
        where pointed is not null
        select SpotPair(right, pointed.Id);

    [Fact]
    public void A_point_lies_in_the_area_that_inside_says() => Assert.All(
        from area in Areas from x in Enumerable.Range(-1, 103) from y in Enumerable.Range(-1, 103) select (area, x, y),
        at => Assert.Equal(Inside((at.x, at.y), at.area.Shape, at.area.Coords), at.area.Region.Shape.Contains(new(at.x, at.y))));

    [Fact]
    public void Every_type_agrees_with_match_correct_and_equal_on_random_answers()
    {
        var scores = new int[6, 2];
        Gen.OneOf(One, Several, Order, Number, Pairs, Spot).Sample(
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
            iter: 30_000);

        // A comparison in which nearly all is right or nearly all is wrong would prove little.
        Assert.All(scores.Cast<int>(), count => Assert.True(count > 500, $"only {count} of one kind"));
    }

    [Fact]
    public void No_answer_scores_as_NULL_does() => Gen.OneOf(One, Several, Order, Number, Pairs, Spot).Sample(pair =>
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
        QuestionKey.Match match => Match(
            Cardinality.Multiple,
            [.. answer.OptionIds.Select(pair => DirectedPair(pair.Split('=')[0], pair.Split('=')[1]))],
            [.. match.Pairs.Select(pair => DirectedPair(pair.OptionId, pair.MatchId))]),
        QuestionKey.Spot spot => Match(Cardinality.Single, answer.OptionIds, [spot.RegionId]),
        _ => throw new UnreachableException(),
    };

    private static int TypeOf(QuestionKey key) => key switch
    {
        QuestionKey.One => 0,
        QuestionKey.Several => 1,
        QuestionKey.Order => 2,
        QuestionKey.Number => 3,
        QuestionKey.Match => 4,
        _ => 5,
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

    private static (Question, Answer) MatchPairs(string[] options, string[] right, string[] chosen, int[] order)
    {
        var key = new QuestionKey.Match([.. right.Order(StringComparer.Ordinal)], [.. options.Zip(right, (option, match) => new MatchPair(option, match))]);
        return Pair(key, options, [.. order.Select(place => $"{options[place]}={chosen[place]}")]);
    }

    private static (Question, Answer) SpotPair(int right, string pointed) => Pair(
        new QuestionKey.Spot(Areas[right].Region.Id, "figures/place.svg", [.. Areas.Select(area => area.Region)]),
        [.. Areas.Select(area => area.Region.Id)],
        [pointed]);

    private static (Question, Answer) NumberPair(decimal value, decimal tolerance, decimal typed)
    {
        var question = TestCourse.Question("q", new QuestionKey.Number(value, tolerance, "m"), []);
        return (question, TestSitting.Number(question, typed));
    }
}

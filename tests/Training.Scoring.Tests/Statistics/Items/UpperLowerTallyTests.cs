using CsCheck;

namespace Training.Scoring.Tests;

public sealed class UpperLowerTallyTests
{
    [Theory, InlineData(1, 0), InlineData(2, 1), InlineData(19, 5), InlineData(50, 14), InlineData(150, 41), InlineData(1000, 270)]
    public void Groups_are_27_percent_with_halves_rounded_up(int people, int expected) => Assert.Equal(
        expected, Tallies.UpperLower([.. Enumerable.Range(0, people).Select(person => new[] { person % 2.0 })]).GroupSize);

    [Fact]
    public void Order_of_people_and_items_changes_nothing() => Gen.Select(AnyTable.RightOrWrong, Gen.ULong).Sample((table, seed) =>
    {
        var tally = Tallies.UpperLower(table);
        var reordered = Tallies.UpperLower(AnyTable.Reordered(table, seed, out var order));

        for (var item = 0; item < order.Length; item++) tally.Index(order[item]).IsSameAs(reordered.Index(item));
    });

    /// <summary>By hand: groups of 1; two people tie at the top, one of whom has the first item right, and one is alone at the bottom.</summary>
    [Fact]
    public void People_tied_at_the_border_share_its_seats()
    {
        var tally = Tallies.UpperLower([[1, 0, 1], [0, 1, 1], [0, 0, 1]]);

        Assert.Equal(1, tally.GroupSize);
        Assert.Equal(0.5, tally.Index(0).Known(), 1e-12);
        Assert.Equal(0, tally.Index(2).Known(), 1e-12);
    }

    [Fact]
    public void Without_people_above_others_there_is_no_index()
    {
        new UpperLowerTally(1).Index(0).IsUnknown(Obstacle.NoAnswers);
        Tallies.UpperLower([[1, 0]]).Index(0).IsUnknown(Obstacle.TooFewPeople);
        Tallies.UpperLower([[1, 0], [0, 1], [1, 0]]).Index(0).IsUnknown(Obstacle.NoTotalVariance);
        Tallies.UpperLower([[1, 0], [double.NaN, 1], [1, 1]]).Index(0).IsUnknown(Obstacle.NotANumber);
    }

    [Fact]
    public void A_row_of_another_length_is_a_mistake_of_the_caller() => Assert.Throws<ArgumentException>(() => new UpperLowerTally(2).Add([1.0]));
}

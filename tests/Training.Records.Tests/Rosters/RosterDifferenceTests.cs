using Training.Courses;

namespace Training.Records.Tests;

/// <summary>What a roster changes, row by row, without a database.</summary>
public sealed class RosterDifferenceTests
{
    private static readonly Guid East = Guid.CreateVersion7();
    private static readonly Guid West = Guid.CreateVersion7();
    private static readonly DateOnly Day = new(2026, 11, 25);

    private static readonly RosterPerson Somebody = new(
        Guid.CreateVersion7(), ["A-1", "A-0"], "A-1", "Solveig Amaro", East, "East", "North", Language.Spanish, "s@example.org",
        IsEmployed: true, IsPlacedElsewhere: false, LeftOn: null);

    private static readonly RosterRow Same = new(2, " a-1", "Solveig Amaro", East, "East", "north", null, "s@example.org", Day);

    public static TheoryData<RosterRow, string> Changes => new()
    {
        { Same, "" },
        { Same with { Language = Language.Spanish }, "" },
        { Same with { Name = "Solveig Quist" }, "Name" },
        { Same with { SiteId = West, SiteName = "West" }, "Site" },
        { Same with { Crew = "South" }, "Crew" },
        { Same with { Crew = null }, "Crew" },
        { Same with { Language = Language.English }, "Language" },
        { Same with { MailAddress = null }, "MailAddress" },
        { Same with { StartsOn = Day.AddDays(-9) }, "" },
        { Same with { Name = "S", SiteId = West, Crew = null, Language = Language.English, MailAddress = "q@example.org" }, "Name Site Crew Language MailAddress" },
    };

    private static RosterDifference Between(RosterPerson person, Roster roster) => RosterDifference.Between([person], roster);

    private static Roster Of(params RosterRow[] rows) => new(rows, SaysCrew: true, SaysMailAddress: true);

    [Theory, MemberData(nameof(Changes))]
    public void Each_thing_that_the_file_says_otherwise_is_a_change(RosterRow row, string fields)
    {
        var difference = Between(Somebody, Of(row));

        Assert.Equal(fields, string.Join(' ', difference.Changed.SelectMany(change => change.Fields).Select(field => field.Field)));
        Assert.Equal(fields.Length == 0 ? 1 : 0, difference.UnchangedCount);
        Assert.Empty(difference.New.Concat(difference.Returning.Select(change => change.Row)));
        Assert.Empty(difference.Missing);
    }

    [Fact]
    public void A_column_that_is_not_there_changes_nothing_but_a_move_leaves_the_crew()
    {
        var silent = Of(Same with { Crew = null, MailAddress = null }) with { SaysCrew = false, SaysMailAddress = false };
        var moved = silent with { Rows = [silent.Rows[0] with { SiteId = West, SiteName = "West" }] };

        Assert.True(Between(Somebody, silent).IsNothing);
        Assert.Equal([RosterField.Site, RosterField.Crew], Between(Somebody, moved).Changed.Single().Fields.Select(field => field.Field));
    }

    [Theory]
    [InlineData(-30, 1)]
    [InlineData(0, 1)]
    [InlineData(1, 1)]
    [InlineData(2, 2)]
    public void Who_left_returns_at_the_earliest_the_day_after(int starts, int returns)
    {
        var difference = Between(Somebody with { IsEmployed = false, LeftOn = Day }, Of(Same with { StartsOn = Day.AddDays(starts) }));

        Assert.Equal(Day.AddDays(returns), Assert.Single(difference.Returning).ReturnsOn);
    }

    [Fact]
    public void Who_is_placed_elsewhere_is_not_moved()
    {
        var elsewhere = Somebody with { IsPlacedElsewhere = true, SiteId = null, SiteName = null, Crew = null };

        Assert.True(Between(elsewhere, Of(Same)).IsNothing);
    }

    [Fact]
    public void A_number_that_nobody_had_is_somebody_new_and_who_is_not_named_is_missing()
    {
        var difference = Between(Somebody, Of(Same with { Badge = "A-2" }));

        Assert.Equal(("A-2", Somebody.PersonId), (difference.New.Single().BadgeKey, difference.Missing.Single().PersonId));
        Assert.Empty(Between(Somebody with { IsEmployed = false }, Of(Same with { Badge = "A-2" })).Missing);
    }

    [Fact]
    public void One_person_by_two_numbers_is_a_problem_that_names_both_lines()
    {
        var problem = Assert.Single(Between(Somebody, Of(Same, Same with { Badge = "A-0", Line = 7 })).Problems);

        Assert.Equal((RecordsProblems.RosterNamesTwice, 7, "2"), (problem.Code, problem.Place.Line, problem.Arguments[1]));
    }

    [Fact]
    public void Any_other_difference_has_another_fingerprint()
    {
        var prints = Changes.Select(change => Between(Somebody, Of(change.Data.Item1))).Append(Between(Somebody, Of()))
            .Append(Between(Somebody, Of(Same with { Badge = "A-2" }))).Append(Between(Somebody, Of(Same with { Badge = "A-2", Crew = "East" })))
            .Where(difference => !difference.IsNothing).Select(difference => difference.Fingerprint()).ToList();

        Assert.Equal(prints.Count, prints.Distinct(StringComparer.Ordinal).Count());
        Assert.Equal(Between(Somebody, Of()).Fingerprint(), Between(Somebody, Of()).Fingerprint());
    }
}

using Training.Courses;

namespace Training.Scoring.Tests;

public sealed class SignatureCheckTests
{
    public static TheoryData<string, string?, Impression?, string[]> Sheets => new()
    {
        { "ddddd", null, Impression.Ready, [] },
        { "dddnd", null, Impression.NotReady, [] },                                          // seen whole, whatever it came to
        { "ddddd", null, null, ["scoresheet.impression-missing @ Impression"] },
        { "dd-dd", null, null, [] },                                                         // broken off
        { "dd-dd", null, Impression.Assured, ["scoresheet.impression-of-a-part @ Impression"] },
        { "ddn--", "reach", null, [] },                                                      // stopped
        { "ddddn", "report", Impression.Borderline, ["scoresheet.impression-of-a-part @ Impression"] },  // stopped at the last step
    };

    [Theory, MemberData(nameof(Sheets))]
    public void An_impression_belongs_to_what_was_seen_whole(string letters, string? stoppedAt, Impression? impression, string[] refused) =>
        Assert.Equal(refused, Refusals(Read(TestScoresheet.Of(letters, stoppedAt)) with { Impression = impression }));

    [Fact]
    public void A_sheet_whose_instructions_were_not_read_is_refused_and_graded_again_all_the_same()
    {
        var sheet = TestScoresheet.AllDone with { Impression = Impression.Ready };

        Assert.Equal(["scoresheet.instructions-not-read @ InstructionsReadAt"], Refusals(sheet));
        Assert.Equal(PracticalOutcome.Passed, TestScoresheet.Grade(sheet).Outcome);
    }

    [Theory]
    [InlineData("ddddd")]
    [InlineData("nnddn")]
    public void No_impression_changes_what_grading_finds(string letters)
    {
        var sheet = TestScoresheet.Of(letters) with { Impression = null };
        var without = TestScoresheet.Grade(sheet);

        foreach (var impression in Enum.GetValues<Impression>())
        {
            var with = TestScoresheet.Grade(sheet with { Impression = impression });
            Assert.Equal((without.Outcome, without.Points, without.Reasons.Count), (with.Outcome, with.Points, with.Reasons.Count));
        }
    }

    [Fact]
    public void The_impressions_are_the_ratings_that_a_borderline_regression_reads() =>
        Assert.Equal([1, 2, 3, 4], Enum.GetValues<Impression>().Select(impression => (int)impression));

    [Fact]
    public void A_sheet_without_a_piece_of_the_register_is_refused_and_graded_again_all_the_same()
    {
        var sheet = Read(TestScoresheet.AllDone) with { Impression = Impression.Ready };
        sheet = sheet with { Conditions = sheet.Conditions with { Pieces = [] } };

        Assert.Equal(["scoresheet.kit-not-registered @ Kit"], Refusals(sheet));
        Assert.Equal(PracticalOutcome.Passed, TestScoresheet.Grade(sheet).Outcome);
    }

    private static Scoresheet Read(Scoresheet sheet) => sheet with { InstructionsReadAt = sheet.SignedAt.AddMinutes(-30) };

    private static IReadOnlyList<string> Refusals(Scoresheet sheet)
    {
        var problems = new List<Problem>();
        SignatureCheck.Run(sheet, problems);
        return [.. problems.Select(problem => $"{problem.Code} @ {problem.Place.Part}")];
    }
}

using Training.Courses;
using Training.Documents.Certificates;
using Training.Documents.Fonts;
using Training.Documents.Typesetting;

namespace Training.Documents.Tests.Certificates;

public sealed class CertificateChecksTests
{
    [Theory]
    [InlineData(Language.English)]
    [InlineData(Language.Spanish)]
    public void An_ordinary_page_can_be_printed(Language language) => Assert.Empty(Check(Pages.Of(language)));

    [Fact]
    public void The_longest_texts_can_be_printed_and_one_character_more_cannot()
    {
        var page = Pages.Of(Language.English);

        Assert.Empty(Check(page with { WorkerName = new('a', 120) }));
        var problem = Assert.Single(Check(page with { WorkerName = new('a', 121) }));
        Assert.Equal((PaperProblems.FieldTooLong, "worker-name"), (problem.Code, problem.Place.Part));
        Assert.Equal(["121", "120"], problem.Arguments);
    }

    [Fact]
    public void Length_is_counted_after_accents_were_joined_to_their_letters() =>
        Assert.Empty(Check(Pages.Of(Language.English) with { WorkerName = string.Concat(Enumerable.Repeat("e\u0301", 120)) }));

    [Fact]
    public void A_character_without_a_glyph_is_named()
    {
        var problem = Assert.Single(Check(Pages.Of(Language.English) with { WorkerName = "Mei 李 Ortiz 李龍 😀" }));

        Assert.Equal(PaperProblems.CharacterMissing, problem.Code);
        Assert.Equal(["李 龍 😀"], problem.Arguments);
    }

    [Fact]
    public void All_problems_are_found_at_once()
    {
        var found = Check(Pages.Of(Language.English) with { WorkerName = " ", Serial = "", ProviderName = new('W', 101), Place = "龍" });

        Assert.Equal(
            [("provider-name", PaperProblems.FieldTooLong), ("worker-name", PaperProblems.FieldEmpty), ("place", PaperProblems.CharacterMissing), ("serial", PaperProblems.FieldEmpty)],
            found.Select(problem => (problem.Place.Part!, problem.Code)));
    }

    private static List<Problem> Check(CertificatePage page)
    {
        var problems = new List<Problem>();
        Assert.Equal(CertificateChecks.CanPrint(page, FontFaces.Default, problems), problems.Count == 0);
        return problems;
    }
}

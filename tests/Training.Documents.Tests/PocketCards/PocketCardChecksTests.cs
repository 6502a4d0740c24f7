using CsCheck;
using Training.Courses;
using Training.Documents.Fonts;
using Training.Documents.PocketCards;
using Training.Documents.Tests.Typesetting;
using Training.Documents.Typesetting;

namespace Training.Documents.Tests.PocketCards;

public sealed class PocketCardChecksTests
{
    [Fact]
    public void All_problems_are_found_at_once() => Assert.Equal(
        [("provider-name", PaperProblems.FieldTooLong), ("worker-name", PaperProblems.CharacterMissing), ("serial", PaperProblems.FieldEmpty)],
        Check(Cards.Of(Language.English) with { ProviderName = new('W', 101), WorkerName = "李小龍", Serial = " " }));

    [Fact]
    public void A_name_too_long_for_the_smallest_type_is_a_problem_and_not_a_smaller_type() =>
        Assert.Equal([("scheme-title", PaperProblems.DoesNotFit)], Check(Cards.Of(Language.English) with { SchemeTitle = new('W', 100) }));

    // Two bytes a letter: more modules than a card has room for.
    [Fact]
    public void An_address_whose_modules_would_be_too_small_is_a_problem() =>
        Assert.Contains(("check-address", PaperProblems.DoesNotFit), Check(Cards.Of(Language.English) with { CheckAddress = "https://" + new string('ŵ', 192) }));

    [Theory]
    [InlineData(Language.English)]
    [InlineData(Language.Spanish)]
    public void A_card_of_the_longest_ordinary_texts_is_printed_whole(Language language)
    {
        const string Words = "María de los Ángeles Fernández-Villaseñor Etxeberria y Goñi, hija de Ignacio, ";
        var card = Cards.Stuffed(Cards.Of(language), length => string.Concat(Enumerable.Repeat(Words, 3))[..length].Trim());

        Assert.Empty(Check(card));
        PrintedPage.AssertTidy(Cards.Print(card), margin: 6);
    }

    [Fact]
    public void Whatever_the_texts_a_card_is_printed_tidily_or_says_what_does_not_fit()
    {
        var texts = Gen.String[Gen.Char["aeiouñáéWMil '-/@"], 1, 120];

        Gen.Select(texts, texts, texts).Sample(
            (name, title, number) =>
            {
                var card = Cards.Of(Language.Spanish) with { WorkerName = name, SchemeTitle = title, Serial = number[..Math.Min(24, number.Length)] };
                if (Check(card).Count == 0) PrintedPage.AssertTidy(Cards.Print(card), margin: 6);
                else Assert.Throws<ArgumentException>(() => Cards.Print(card));
            },
            iter: 40,
            threads: 1);
    }

    private static List<(string Field, string Code)> Check(PocketCardPage page)
    {
        var problems = new List<Problem>();
        Assert.Equal(PocketCardChecks.CanPrint(page, FontFaces.Default, problems), problems.Count == 0);
        return [.. problems.Select(problem => (problem.Place.Part!, problem.Code))];
    }
}

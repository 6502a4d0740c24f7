using CsCheck;
using Training.Courses;
using Training.Documents.Fonts;
using Training.Documents.SignInSheets;
using Training.Documents.Tests.Typesetting;
using Training.Documents.Typesetting;

namespace Training.Documents.Tests.SignInSheets;

public sealed class SignInSheetTests : PaperTests
{
    protected override string Golden => "SignInSheets/Golden/reading-order";

    protected override byte[] Print(Language language, PaperSize paper, bool isDemonstration) => ClassSheets.Print(ClassSheets.Of(language, paper, isDemonstration));

    protected override IReadOnlyList<string> Sentences(Language language) => language == Language.English
        ? ["Sign in here: Tool-only snake handler, 7 December 2026.", "When: 7 December 2026, 07:30 to 15:00.", "Where: Cedar Flat Solar. Meet at: Gate 2, beside the water tank",
            "Kit: Hook Tongs Bucket with a lid that locks", "Weather: Called off above 38 °C", "Teaches: Rosa Delgado Güemes. Scores: Ivo Marsh, Lena Castell.",
            "Your signature says that you were here, nothing else.", "1 José Ángel Ibáñez-Núñez KR-1042", "3 name erased KR-0311", "Enter it afterwards", "“Came” or “Did not come”",
            "Class 0192f3a4-7c11-7e52-9a08-2b6d5c4e1f90", "Roster: Tool-only snake handler, 7 December 2026", "Tobias Quill English number 1 in line", "3 of 12 seats taken."]
        : ["Firme aquí: Manejo de serpientes solo con herramientas, 7 de diciembre de 2026.", "Cuándo: 7 de diciembre de 2026, de 07:30 a 15:00.", "Da la clase: Rosa Delgado Güemes. Evalúa: Ivo Marsh, Lena Castell.",
            "Su firma dice que estuvo aquí y nada más.", "3 nombre borrado KR-0311", "Después, páselo al sistema", "Tobias Quill English 1.º en la lista de espera", "3 de 12 lugares ocupados."];

    [Fact]
    public void Each_row_to_sign_is_ten_millimetres_tall_and_the_blank_ones_come_last()
    {
        var page = PrintedPage.ReadAll(ClassSheets.Print(ClassSheets.Of(Language.English)))[0];

        // The numbers of the rows, at the left edge of the table.
        var rows = page.Words.Where(word => word.Left < 60 && word.Text is [>= '1' and <= '7']).ToList();
        Assert.Equal(["1", "2", "3", "4", "5", "6", "7"], rows.Select(word => word.Text));
        Assert.All(rows.Zip(rows.Skip(1)), pair => Assert.True(pair.Second.Top - pair.First.Top >= (10 / 25.4 * 72) - 0.01, $"{pair}"));
    }

    [Fact]
    public void A_full_class_takes_several_pages_and_the_roster_one_of_its_own()
    {
        var line = new SignInLine("Maren Oakleaf", "KR-0077", "Kestrel Ridge Energy", Language.English);
        var pages = PrintedPage.ReadAll(ClassSheets.Print(ClassSheets.Of(Language.English) with { Seated = [.. Enumerable.Repeat(line, 40)], Seats = 40 }));

        Assert.True(pages.Count >= 4);
        Assert.StartsWith("Roster:", string.Join(' ', pages.First(page => page.Words[0].Text == "Roster:").Words.Take(2).Select(word => word.Text)), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_not_said_is_left_out()
    {
        var text = DebianTool.Text(ClassSheets.Print(ClassSheets.Of(Language.English) with
        {
            MeetingPlace = "", Kit = "", Weather = "", Teachers = [], Seated = [], Waiting = [], BlankRows = 0,
        }));

        Assert.Contains("Where: Cedar Flat Solar. Teaches: nobody named yet.", text);
        Assert.Contains("Nobody has a seat yet, and nobody waits.", text);
        Assert.DoesNotContain("Kit:", text);
        Assert.DoesNotContain("Weather:", text);
        Assert.DoesNotContain("rows without a name", text);
    }

    [Fact]
    public void The_longest_texts_are_printed_whole_on_as_many_pages_as_they_need()
    {
        foreach (var paper in Enum.GetValues<PaperSize>())
        foreach (var text in (Func<int, string>[])[length => new('W', length), length => string.Concat(Enumerable.Repeat("WÑWÁWÜ ", length))[..length].Trim()])
        {
            PrintedPage.AssertTidy(ClassSheets.Print(ClassSheets.Stuffed(ClassSheets.Of(Language.Spanish, paper, isDemonstration: true), text)), Margin);
        }
    }

    [Fact]
    public void Whatever_the_texts_a_sheet_is_printed_whole_or_says_what_is_wrong()
    {
        var texts = Gen.String[Gen.Char["aeiouñáéWMil '-/龍\n"], 0, SignInSheetPage.LongestName + 5];

        Gen.Select(texts, texts, Gen.Int[-1, SignInSheetPage.MostBlankRows + 1]).Sample(
            (name, title, blank) =>
            {
                var page = ClassSheets.Of(Language.English) with { ClassTitle = title, BlankRows = blank, Seated = [new(name, null, null, Language.Spanish)] };
                var problems = new List<Problem>();
                if (SignInSheetChecks.CanPrint(page, FontFaces.Default, problems)) PrintedPage.AssertTidy(ClassSheets.Print(page), Margin);
                else Assert.NotEmpty(problems);
            },
            iter: 40,
            threads: 1);
    }

    [Fact]
    public void All_problems_are_found_at_once_each_with_its_row()
    {
        var problems = new List<Problem>();

        SignInSheetChecks.CanPrint(
            ClassSheets.Of(Language.English) with { Scorers = ["Ivo Marsh", ""], BlankRows = 41, Seated = [new("李", null, null, Language.English)] }, FontFaces.Default, problems);

        Assert.Equal(
            [("blank-rows", PaperProblems.OutOfRange), ("scorer 2", PaperProblems.FieldEmpty), ("seated 1: name", PaperProblems.CharacterMissing)],
            problems.Select(problem => (problem.Place.Part!, problem.Code)));
        Assert.Equal(["41", "0", "40"], problems[0].Arguments);
    }
}

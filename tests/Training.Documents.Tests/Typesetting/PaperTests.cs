using Training.Courses;
using Training.Documents.Typesetting;

namespace Training.Documents.Tests.Typesetting;

/// <summary>What holds for every paper but the certificate, whose tests are older. Judges: poppler, qpdf.</summary>
public abstract class PaperTests
{
    public static TheoryData<Language, PaperSize, bool> Every_print
    {
        get
        {
            var all = new TheoryData<Language, PaperSize, bool>();
            foreach (var language in Enum.GetValues<Language>())
            foreach (var paper in Enum.GetValues<PaperSize>())
            {
                all.Add(language, paper, false);
                all.Add(language, paper, true);
            }

            return all;
        }
    }

    /// <summary>Where its reading order is written down: folder and first part of the file.</summary>
    protected abstract string Golden { get; }

    protected virtual double Margin => 18;

    /// <summary>What pdfinfo says of its size.</summary>
    protected virtual string Size(PaperSize paper) => paper == PaperSize.A4 ? @"Page size:\s+595.276 x 841.89 pts \(A4\)" : @"Page size:\s+612 x 792 pts \(letter\)";

    protected abstract byte[] Print(Language language, PaperSize paper, bool isDemonstration);

    /// <summary>Sentences that stand on it, each with what was filled in.</summary>
    protected abstract IReadOnlyList<string> Sentences(Language language);

    [Theory, MemberData(nameof(Every_print))]
    public void The_file_is_sound_tagged_in_its_language_and_of_its_size(Language language, PaperSize paper, bool isDemonstration)
    {
        var pdf = Print(language, paper, isDemonstration);

        // The package closes its compressed streams in a way that qpdf warns of; an error still fails.
        DebianTool.Qpdf(pdf, "--check", "--warning-exit-0");
        var info = DebianTool.Info(pdf);
        Assert.Matches(Size(paper), info);
        Assert.Matches(@"Tagged:\s+yes", info);
        Assert.Matches(@"Title:\s+\S", info);
        var objects = DebianTool.Qpdf(pdf, "--json=2", "--json-key=qpdf");
        Assert.Contains($"\"/Lang\": \"u:{language.Tag()}\"", objects);
        Assert.Contains("\"/DisplayDocTitle\": true", objects);
    }

    [Theory, MemberData(nameof(Every_print))]
    public void Every_font_is_embedded_as_a_subset_with_its_characters(Language language, PaperSize paper, bool isDemonstration)
    {
        var fonts = DebianTool.Fonts(Print(language, paper, isDemonstration)).Split('\n', StringSplitOptions.RemoveEmptyEntries)[2..];

        Assert.NotEmpty(fonts);
        Assert.All(fonts, font => Assert.Matches(@"^[A-Z]{6}\+.*CID TrueType\s+Identity-H\s+yes yes yes", font));
    }

    [Theory, MemberData(nameof(Every_print))]
    public void Nothing_leaves_the_page_and_nothing_lies_on_anything(Language language, PaperSize paper, bool isDemonstration) =>
        PrintedPage.AssertTidy(Print(language, paper, isDemonstration), Margin);

    [Theory]
    [InlineData(Language.English)]
    [InlineData(Language.Spanish)]
    public void The_reading_order_is_the_one_written_down(Language language)
    {
        var expected = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, $"{Golden}.{language.Tag()}.txt"));

        var tagged = DebianTool.Info(Print(language, PaperSize.UsLetter, isDemonstration: true), "-struct-text");

        Assert.Equal(expected.Trim(), tagged.Trim());
    }

    [Theory]
    [InlineData(Language.English)]
    [InlineData(Language.Spanish)]
    public void The_sentences_stand_on_every_print_of_their_language(Language language)
    {
        foreach (var paper in Enum.GetValues<PaperSize>())
        {
            var text = DebianTool.Text(Print(language, paper, isDemonstration: false));

            Assert.All(Sentences(language), sentence => Assert.Contains(sentence, text, StringComparison.Ordinal));
        }
    }

    [Theory, MemberData(nameof(Every_print))]
    public void The_caution_stands_on_every_print(Language language, PaperSize paper, bool isDemonstration)
    {
        var text = DebianTool.Text(Print(language, paper, isDemonstration));

        Assert.Contains(language == Language.English ? "emergency services" : "emergencia", text, StringComparison.OrdinalIgnoreCase);
        Assert.Contains(language == Language.English ? "snake" : "serpiente", text, StringComparison.OrdinalIgnoreCase);
    }

    // R-17024-7.2.4 of the project's requirements: what no paper of ours may say, in either language.
    [Theory, MemberData(nameof(Every_print))]
    public void No_print_claims_what_nobody_gave(Language language, PaperSize paper, bool isDemonstration)
    {
        var text = DebianTool.Text(Print(language, paper, isDemonstration));

        string[] claims = ["OSHA", "ISO/", "ISO 1", "17024", "ANSI", "1910", "accredit", "acredit", "government", "gobierno", "approved", "guarantee", "garantiz", "safe distance", "distancia segura"];
        Assert.All(claims, claim => Assert.DoesNotContain(claim, text, StringComparison.OrdinalIgnoreCase));
    }

    [Theory]
    [InlineData(Language.English, "DEMO: demonstration, not valid")]
    [InlineData(Language.Spanish, "DEMO: demostración, sin validez")]
    public void Only_a_demonstration_says_that_it_is_one(Language language, string stamp)
    {
        Assert.Contains(stamp, DebianTool.Text(Print(language, PaperSize.A4, isDemonstration: true)));
        Assert.DoesNotContain("DEMO", DebianTool.Text(Print(language, PaperSize.A4, isDemonstration: false)));
    }
}

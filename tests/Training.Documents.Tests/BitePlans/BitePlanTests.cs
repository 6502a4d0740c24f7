using System.Globalization;
using System.Text.RegularExpressions;
using CsCheck;
using Training.Courses;
using Training.Documents.BitePlans;
using Training.Documents.Fonts;
using Training.Documents.Tests.Typesetting;
using Training.Documents.Typesetting;

namespace Training.Documents.Tests.BitePlans;

public sealed class BitePlanTests : PaperTests
{
    protected override string Golden => "BitePlans/Golden/reading-order";

    protected override byte[] Print(Language language, PaperSize paper, bool isDemonstration) => Plans.Print(Plans.Of(language, paper, isDemonstration));

    protected override IReadOnlyList<string> Sentences(Language language) => language == Language.English
        ? ["Snakebite? Call 911 first.", "Emergency services decide where to go.", "No telephone signal: Radio channel 4", "Say where you are (WGS 84): 34.89512, -117.02244 34° 53.707' north, 117° 01.346' west",
            "How the ambulance gets in: From Ocotillo Road, gate 2", "First aid: do 1. Get out of reach", "Do not × No tourniquet.", "Guidance: US first-aid list, reprinted 2023, in force from 24 May 2023.",
            "Then poison control: 1-800-222-1222", "Times as somebody entered them. Emergency services decide where to go.", "25 min Sagebrush District Hospital", "70 min Ocotillo Regional Medical Center",
            "Antivenom: hearsay Sagebrush District Hospital: six vials, for pit vipers. Told by Dana Whitlock on 2 October 2026; ask again.", "Last checked on 1 September 2026 by Rosa Delgado Güemes.",
            "Next review by 1 March 2027.", "local protocol", "licensed medical care decide on treatment"]
        : ["¿Mordedura? Llame primero al 911.", "Los servicios de emergencia deciden adónde ir.", "34.89512, -117.02244 34° 53.707' norte; 117° 01.346' oeste", "Primeros auxilios: qué hacer 1. Salga del alcance", "Qué no hacer × Nada de torniquete.",
            "Después, centro de control de envenenamientos: 1-800-222-1222", "Lo dijo Dana Whitlock el 2 de octubre de 2026; pregunte otra vez.", "Última revisión: 1 de septiembre de 2026, por Rosa Delgado Güemes.", "Próxima revisión: a más tardar el 1 de marzo de 2027.",
            "protocolo local", "atención médica con licencia deciden el tratamiento"];

    [Theory, MemberData(nameof(Every_print))]
    public void It_is_one_page(Language language, PaperSize paper, bool isDemonstration) =>
        Assert.Matches(@"Pages:\s+1\n", DebianTool.Info(Print(language, paper, isDemonstration)));

    [Theory]
    [InlineData(Language.English, "This plan is overdue for review. It was to be reviewed by 1 March 2027, 30 days ago.")]
    [InlineData(Language.Spanish, "Este plan tiene la revisión atrasada. Había que revisarlo a más tardar el 1 de marzo de 2027, hace 30 días.")]
    public void Overdue_it_says_so_first_of_all_to_eyes_and_ears_alike(Language language, string first)
    {
        foreach (var paper in Enum.GetValues<PaperSize>())
        {
            var pdf = Plans.Print(Plans.Overdue(language, paper));

            Assert.StartsWith(first, DebianTool.Text(pdf), StringComparison.Ordinal);
            Assert.Contains(first, DebianTool.Info(pdf, "-struct-text").Split('\n')[2], StringComparison.Ordinal);
            var words = PrintedPage.ReadAll(pdf).Single().Words;
            Assert.Equal(words.Min(word => word.Top), words[0].Top);
            PrintedPage.AssertTidy(pdf, Margin);
        }
    }

    [Theory]
    [InlineData("2027-03-01", false)]
    [InlineData("2027-03-02", true)]
    public void The_day_of_the_review_itself_is_in_time(string printedOn, bool isOverdue)
    {
        var plan = Plans.Of(Language.English) with { PrintedOn = DateOnly.Parse(printedOn, CultureInfo.InvariantCulture) };

        Assert.Equal(isOverdue, plan.IsOverdue);
        Assert.Equal(isOverdue, DebianTool.Text(Plans.Print(plan)).Contains("overdue for review. It was to be reviewed by 1 March 2027, one day ago.", StringComparison.Ordinal));
    }

    [Fact]
    public void Emergency_services_come_before_everything_and_in_the_largest_letters()
    {
        var pdf = Plans.Print(Plans.Of(Language.English));
        var text = DebianTool.Text(pdf);

        string[] order = ["Call 911 first", "No telephone signal", "34.89512", "gate 2", "First aid", "poison control", "Hospitals", "Antivenom", "Last checked"];
        Assert.Equal(order, order.OrderBy(part => text.IndexOf(part, StringComparison.OrdinalIgnoreCase)));
        var words = PrintedPage.ReadAll(pdf).Single().Words;
        Assert.Equal("Snakebite?", words.MaxBy(word => word.Bottom - word.Top)!.Text);
    }

    [Fact]
    public void Hospitals_stand_by_drive_time_whatever_the_order_of_the_records()
    {
        var text = DebianTool.Text(Plans.Print(Plans.Of(Language.English)));

        Assert.True(text.IndexOf("25 min", StringComparison.Ordinal) < text.IndexOf("70 min", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(Language.English, "Nothing was entered.")]
    [InlineData(Language.Spanish, "No se anotó nada.")]
    public void What_nobody_entered_is_named(Language language, string expected)
    {
        var text = DebianTool.Text(Plans.Print(Plans.Of(language) with { Hospitals = [], Antivenom = [] }));

        Assert.Equal(2, Regex.Count(text, Regex.Escape(expected)));
    }

    // Nine points: "never clipped or smaller".
    [Fact]
    public void No_letter_is_smaller_than_nine_points_however_full_the_page()
    {
        var pdf = Plans.Print(Fullest(Plans.Overdue(Language.English)));

        Assert.All(LetterSizes(pdf), size => Assert.True(size >= 9, $"{size} points"));
        Assert.Equal(9, LetterSizes(pdf).Min());
        Assert.Equal(9, BitePlanLook.Largest.Min(look => look.Body));
    }

    [Fact]
    public void A_line_more_than_the_page_holds_is_a_problem_that_says_by_how_much()
    {
        var full = Fullest(Plans.Of(Language.English));

        var problem = Assert.Single(Check(full with { FirstAid = full.FirstAid! with { Do = [.. full.FirstAid.Do, Line] } }));

        Assert.Equal((PaperProblems.PageFull, "page"), (problem.Code, problem.Place.Part));
        Assert.InRange(int.Parse(problem.Arguments[0], CultureInfo.InvariantCulture), 1, 20);
    }

    [Fact]
    public void What_fills_its_page_in_time_is_not_to_be_kept_since_it_could_not_say_that_it_is_overdue()
    {
        var full = Fullest(Plans.Of(Language.English));
        var problems = new List<Problem>();

        Assert.Empty(Check(full));
        Assert.False(BitePlanChecks.CanPrintAlsoOverdue(full, FontFaces.Default, problems));
        Assert.Equal(PaperProblems.PageFull, Assert.Single(problems).Code);
    }

    [Theory, MemberData(nameof(Every_print))]
    public void A_plan_with_a_good_deal_on_it_fits_also_when_it_is_overdue(Language language, PaperSize paper, bool isDemonstration)
    {
        var plan = Plans.Of(language, paper, isDemonstration) with { PrintedOn = new(2027, 3, 31) };
        plan = plan with
        {
            Hospitals = [.. plan.Hospitals, plan.Hospitals[0] with { DriveMinutes = 95 }],
            Antivenom = [.. plan.Antivenom, plan.Antivenom[0] with { HospitalName = "Ocotillo Regional Medical Center" }],
            FirstAid = plan.FirstAid! with { DoNot = [.. plan.FirstAid.DoNot, plan.FirstAid.DoNot[0], plan.FirstAid.DoNot[1]] },
        };

        PrintedPage.AssertTidy(Plans.Print(plan), Margin);
    }

    [Fact]
    public void Whatever_the_texts_a_plan_is_printed_on_one_page_or_says_what_is_wrong()
    {
        var texts = Gen.String[Gen.Char["aeiouñáéWMil '-/龍\n"], 0, BitePlanPage.LongestPath + 5];
        var lines = Gen.String[Gen.Char["aeiouñáéWMil '-/"], 1, BitePlanPage.LongestLine].List[0, BitePlanPage.MostSteps + 1];

        Gen.Select(texts, lines, Gen.Decimal[-200, 200], Gen.Int[0, 700]).Sample(
            (path, steps, degrees, minutes) =>
            {
                var plan = Plans.Of(Language.Spanish, PaperSize.A4);
                plan = plan with
                {
                    WithoutSignal = path,
                    Longitude = degrees,
                    Hospitals = [plan.Hospitals[0] with { DriveMinutes = minutes }],
                    FirstAid = plan.FirstAid! with { Do = steps },
                };
                if (Check(plan).Count == 0)
                {
                    var pdf = Plans.Print(plan);
                    Assert.Matches(@"Pages:\s+1\n", DebianTool.Info(pdf));
                    PrintedPage.AssertTidy(pdf, Margin);
                }
                else Assert.Throws<ArgumentException>(() => Plans.Print(plan));
            },
            iter: 60,
            threads: 1);
    }

    [Fact]
    public void All_problems_of_fields_are_found_at_once_each_with_its_row()
    {
        var plan = Plans.Of(Language.English);
        var found = Check(plan with
        {
            EmergencyServices = "",
            Latitude = 91,
            Hospitals = [plan.Hospitals[0], plan.Hospitals[1] with { DriveMinutes = 0 }],
            Antivenom = [plan.Antivenom[0] with { ToldBy = "李" }],
            FirstAid = plan.FirstAid! with { DoNot = [new('a', 201)] },
        });

        Assert.Equal(
            [("emergency-services", PaperProblems.FieldEmpty), ("latitude", PaperProblems.OutOfRange), ("do-not 1", PaperProblems.FieldTooLong),
                ("hospital 2: drive-minutes", PaperProblems.OutOfRange), ("antivenom 1: told-by", PaperProblems.CharacterMissing)],
            found.Select(problem => (problem.Place.Part!, problem.Code)));
    }

    private const string Line = "Keep calm and still, and let the others do the rest.";

    // Lines of first aid until no more fit.
    private static BitePlanPage Fullest(BitePlanPage plan)
    {
        plan = plan with { AccessWords = string.Concat(Enumerable.Repeat("Gate 2 on Ocotillo Road; ", 20)).Trim(), WithoutSignal = string.Concat(Enumerable.Repeat("Radio channel 4, then 5; ", 20)).Trim() };
        while (true)
        {
            var more = plan with { FirstAid = plan.FirstAid! with { Do = [.. plan.FirstAid.Do, Line] } };
            if (Check(more).Count > 0) return plan;
            plan = more;
        }
    }

    private static List<Problem> Check(BitePlanPage plan)
    {
        var problems = new List<Problem>();
        Assert.Equal(BitePlanChecks.CanPrint(plan, FontFaces.Default, problems), problems.Count == 0);
        return problems;
    }

    // Sizes as the content stream sets them: "/F0 9 Tf" and the like.
    private static IReadOnlyList<double> LetterSizes(byte[] pdf) =>
        [.. Regex.Matches(DebianTool.Streams(pdf), @"/F\d+ (?<size>-?[\d.]+) Tf", RegexOptions.NonBacktracking).Select(match => Math.Abs(double.Parse(match.Groups["size"].Value, CultureInfo.InvariantCulture)))];
}

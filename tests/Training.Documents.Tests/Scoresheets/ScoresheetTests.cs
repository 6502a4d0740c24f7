using CsCheck;
using Training.Courses;
using Training.Documents.Fonts;
using Training.Documents.Scoresheets;
using Training.Documents.Tests.Typesetting;
using Training.Documents.Typesetting;
using Training.Scoring;

namespace Training.Documents.Tests.Scoresheets;

public sealed class ScoresheetTests : PaperTests
{
    protected override string Golden => "Scoresheets/Golden/reading-order";

    protected override byte[] Print(Language language, PaperSize paper, bool isDemonstration) => SignedSheets.Print(SignedSheets.Of(language, paper, isDemonstration));

    protected override IReadOnlyList<string> Sentences(Language language) => language == Language.English
        ? ["Not passed: stopped at step 4.", "5 of 10 points; 80 percent pass.", "Critical step 4 was not done as it must be.", "Stopped at step 4; what follows was not observed.",
            "Candidate José Ángel Ibáñez-Núñez, badge KR-1042", "Practical Move a snake into a bucket, on the model, try 1", "Instructions read in Spanish, 7 December 2026, 09:02 (UTC-08:00)", "Air 18 °C",
            "1 Looks for the snake before each step done", "critical step done", "3 Lifts at two points done after a prompt", "4 Closes the lid with the tool critical step not done", "5 Counts the tools back in not observed",
            "Signed: Ivo Marsh, 7 December 2026, 09:31 (UTC-08:00)", "Objects to what was written: The lid had no latch. Signed: José Ibáñez, 7 December 2026, 09:34 (UTC-08:00) The objection is an appeal.",
            "Record 0192f3a4-7c11-7e52-9a08-2b6d5c4e1f91, hash 0123456789abcdef"]
        : ["No aprobado: alto en el paso 4.", "5 de 10 puntos; se aprueba con 80 por ciento.", "Candidato José Ángel Ibáñez-Núñez, gafete KR-1042", "con el modelo, intento 1", "en español; 7 de diciembre de 2026, 09:02 (UTC-08:00)",
            "4 Cierra la tapa con la herramienta paso crítico no hecho", "Firma: Ivo Marsh, 7 de diciembre de 2026, 09:31 (UTC-08:00)", "No está de acuerdo con lo escrito: La tapa no tenía seguro.", "La objeción es una apelación."];

    public static TheoryData<Language, ScoresheetWord?, string> Words_of_candidates => new()
    {
        { Language.English, null, "Nothing was kept." },
        { Language.English, new ScoresheetWord.Agreed("José Ibáñez", new(2026, 12, 7, 9, 34, 0, TimeSpan.Zero)), "Agrees with what was written. Signed: José Ibáñez, 7 December 2026, 09:34 (UTC+00:00)" },
        { Language.English, new ScoresheetWord.DidNotSign("Called away", new(2026, 12, 7, 9, 34, 0, TimeSpan.Zero)), "Did not sign. The instructor wrote why: Called away Kept on 7 December 2026, 09:34 (UTC+00:00)." },
        { Language.Spanish, null, "No se guardó nada." },
        { Language.Spanish, new ScoresheetWord.Agreed("José Ibáñez", new(2026, 12, 7, 9, 34, 0, TimeSpan.Zero)), "Está de acuerdo con lo escrito." },
        { Language.Spanish, new ScoresheetWord.DidNotSign("Lo llamaron", new(2026, 12, 7, 9, 34, 0, TimeSpan.Zero)), "No firmó. El instructor escribió por qué: Lo llamaron" },
    };

    [Theory, MemberData(nameof(Words_of_candidates))]
    public void The_candidate_s_word_stands_on_it(Language language, ScoresheetWord? word, string expected) =>
        Assert.Contains(expected, DebianTool.Text(SignedSheets.Print(SignedSheets.Of(language) with { CandidateWord = word })));

    public static TheoryData<Language, PracticalOutcome, string> Outcomes => new()
    {
        { Language.English, PracticalOutcome.Passed, "Passed with 9 of 10 points." },
        { Language.English, PracticalOutcome.Failed, "Not passed: 9 of 10 points." },
        { Language.English, PracticalOutcome.Incomplete, "Not decided: the practical is repeated." },
        { Language.Spanish, PracticalOutcome.Passed, "Aprobado con 9 de 10 puntos." },
        { Language.Spanish, PracticalOutcome.Failed, "No aprobado: 9 de 10 puntos." },
        { Language.Spanish, PracticalOutcome.Incomplete, "Sin decidir: la práctica se repite." },
    };

    [Theory, MemberData(nameof(Outcomes))]
    public void The_first_sentence_says_what_it_came_to(Language language, PracticalOutcome outcome, string expected) =>
        Assert.Contains(expected, DebianTool.Text(SignedSheets.Print(SignedSheets.Of(language) with { Result = new("v", outcome, 9, 10, []) })));

    [Fact]
    public void A_live_sheet_says_what_stood_before_the_snake_was_used()
    {
        var text = DebianTool.Text(SignedSheets.Print(SignedSheets.Of(Language.English) with
        {
            Subject = Subject.Live,
            Live = new("CA-2026-0187", new(2026, 11, 2), new(2026, 12, 7, 8, 40, 0, TimeSpan.FromHours(-8)), "Lena Castell"),
            Seconds = 275,
            Impression = Impression.Borderline,
            SeparationReason = "No other scorer within 300 miles",
        }));

        string[] facts = ["live snake, try 1", "Permit CA-2026-0187", "Bite plan checked on 2 November 2026", "Call for help tried on 7 December 2026, 08:40 (UTC-08:00)", "Watcher Lena Castell", "Time taken 4:35",
            "Overall impression borderline", "No other scorer within 300 miles"];
        Assert.All(facts, fact => Assert.Contains(fact, text));
    }

    [Fact]
    public void Steps_not_observed_stand_in_one_sentence() =>
        Assert.Contains("Steps not observed: 1, 5.", DebianTool.Text(SignedSheets.Print(SignedSheets.Of(Language.English) with
        {
            Result = new("v", PracticalOutcome.Incomplete, 6, 10, [new ScoresheetReason.StepNotObserved("look"), new ScoresheetReason.StepNotObserved("count")]),
        })));

    [Fact]
    public void A_reason_that_names_no_step_of_the_sheet_is_refused() =>
        Assert.Throws<ArgumentException>(() => SignedSheets.Print(SignedSheets.Of(Language.English) with
        {
            Result = new("v", PracticalOutcome.Failed, 6, 10, [new ScoresheetReason.CriticalStepFailed("nowhere")]),
        }));

    [Fact]
    public void The_longest_texts_are_printed_whole_on_as_many_pages_as_they_need()
    {
        foreach (var paper in Enum.GetValues<PaperSize>())
        foreach (var text in (Func<int, string>[])[length => new('W', length), length => string.Concat(Enumerable.Repeat("WÑWÁWÜ ", length))[..length].Trim()])
        {
            PrintedPage.AssertTidy(SignedSheets.Print(SignedSheets.Stuffed(SignedSheets.Of(Language.Spanish, paper, isDemonstration: true), text)), Margin);
        }
    }

    [Fact]
    public void Whatever_the_texts_a_sheet_is_printed_whole_or_says_what_is_wrong()
    {
        var texts = Gen.String[Gen.Char["aeiouñáéWMil '-/龍\n"], 0, ScoresheetPage.LongestConditions + 5];

        Gen.Select(texts, texts, Gen.Int[0, 40]).Sample(
            (surroundings, remarks, steps) =>
            {
                var page = SignedSheets.Of(Language.English) with
                {
                    Surroundings = surroundings,
                    Remarks = remarks,
                    Steps = [.. Enumerable.Range(0, steps).Select(number => new ScoresheetStep($"{number}", "Looks first", number % 3 == 0, Observation.Done))],
                    Result = new("v", PracticalOutcome.Passed, 1, 1, []),
                };
                var problems = new List<Problem>();
                if (ScoresheetPageChecks.CanPrint(page, FontFaces.Default, problems)) PrintedPage.AssertTidy(SignedSheets.Print(page), Margin);
                else Assert.NotEmpty(problems);
            },
            iter: 40,
            threads: 1);
    }

    [Fact]
    public void All_problems_are_found_at_once_each_with_its_step()
    {
        var problems = new List<Problem>();
        var page = SignedSheets.Of(Language.English);

        ScoresheetPageChecks.CanPrint(
            page with { SignedName = "", CandidateWord = new ScoresheetWord.DidNotSign("龍", page.SignedAt), Steps = [page.Steps[0], page.Steps[1] with { Text = new('a', 501) }] },
            FontFaces.Default,
            problems);

        Assert.Equal(
            [("signed-name", PaperProblems.FieldEmpty), ("candidate-reason", PaperProblems.CharacterMissing), ("step 2", PaperProblems.FieldTooLong)],
            problems.Select(problem => (problem.Place.Part!, problem.Code)));
    }
}

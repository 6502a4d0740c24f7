using Training.Courses;
using Training.Documents.Fonts;
using Training.Documents.Scoresheets;
using Training.Documents.Typesetting;
using Training.Scoring;

namespace Training.Documents.Tests.Scoresheets;

/// <summary>An invented practical on the model, stopped at a critical step, to which the candidate objects.</summary>
internal static class SignedSheets
{
    private static readonly TimeSpan Pacific = TimeSpan.FromHours(-8);

    public static ScoresheetPage Of(Language language, PaperSize paper = PaperSize.UsLetter, bool isDemonstration = false)
    {
        var isEnglish = language == Language.English;
        return new()
        {
            Language = language,
            Paper = paper,
            ProviderName = "Quillback Field Safety",
            CandidateName = "José Ángel Ibáñez-Núñez",
            BadgeNumber = "KR-1042",
            InstructorName = "Ivo Marsh",
            SiteName = "Cedar Flat Solar, Kestrel Ridge Energy",
            ChecklistTitle = isEnglish ? "Move a snake into a bucket" : "Pasar una serpiente a una cubeta",
            ChecklistVersion = new('7', 64),
            Subject = Subject.Model,
            Try = 1,
            ScoredOn = new(2026, 12, 7),
            IdentityConfirmed = true,
            InstructionsLanguage = Language.Spanish,
            InstructionsReadAt = new(2026, 12, 7, 9, 2, 0, Pacific),
            Surroundings = isEnglish ? "Gravel, overcast, light wind" : "Grava, nublado, viento leve",
            AirTemperature = 18,
            Kit = "H-12, T-04, B-07",
            Live = null,
            Steps =
            [
                new("look", isEnglish ? "Looks for the snake before each step" : "Busca la serpiente antes de cada paso", IsCritical: false, Observation.Done),
                new("stand", isEnglish ? "Keeps body and hands outside the reach and its margin" : "Mantiene cuerpo y manos fuera del alcance y su margen", IsCritical: true, Observation.Done),
                new("lift", isEnglish ? "Lifts at two points" : "Levanta por dos puntos", IsCritical: false, Observation.DoneAfterPrompt),
                new("lid", isEnglish ? "Closes the lid with the tool" : "Cierra la tapa con la herramienta", IsCritical: true, Observation.NotDone),
                new("count", isEnglish ? "Counts the tools back in" : "Cuenta las herramientas de vuelta", IsCritical: false, Observation.NotObserved),
            ],
            Result = new(new('7', 64), PracticalOutcome.Failed, 5, 10,
            [
                new ScoresheetReason.BelowPass(5, 10, 80), new ScoresheetReason.CriticalStepFailed("lid"), new ScoresheetReason.Stopped("lid"),
            ]),
            Impression = null,
            Seconds = null,
            Remarks = isEnglish ? "The model slid off twice." : "El modelo se resbaló dos veces.",
            SeparationReason = null,
            SignedName = "Ivo Marsh",
            SignedAt = new(2026, 12, 7, 9, 31, 0, Pacific),
            CandidateWord = new ScoresheetWord.Objected(
                "José Ibáñez", isEnglish ? "The lid had no latch." : "La tapa no tenía seguro.", new(2026, 12, 7, 9, 34, 0, Pacific)),
            RecordId = new("0192f3a4-7c11-7e52-9a08-2b6d5c4e1f91"),
            RecordHash = string.Concat(Enumerable.Repeat("0123456789abcdef", 4)),
            IsDemonstration = isDemonstration,
        };
    }

    public static byte[] Print(ScoresheetPage page) => ScoresheetWriter.Write(page, FontFaces.Default);

    /// <summary>Every text as long as it may be.</summary>
    public static ScoresheetPage Stuffed(ScoresheetPage page, Func<int, string> text) => page with
    {
        ProviderName = text(ScoresheetPage.LongestName),
        CandidateName = text(ScoresheetPage.LongestName),
        BadgeNumber = text(ScoresheetPage.LongestNumber),
        InstructorName = text(ScoresheetPage.LongestName),
        SiteName = text(ScoresheetPage.LongestName),
        ChecklistTitle = text(ScoresheetPage.LongestName),
        ChecklistVersion = text(ScoresheetPage.LongestHash),
        Surroundings = text(ScoresheetPage.LongestConditions),
        Kit = text(ScoresheetPage.LongestConditions),
        Live = new(text(ScoresheetPage.LongestNumber), new(2026, 9, 30), page.SignedAt, text(ScoresheetPage.LongestName)),
        Steps = [.. page.Steps.Select(step => step with { Text = text(ScoresheetPage.LongestConditions) })],
        Impression = Impression.Assured,
        Seconds = 275,
        Remarks = text(ScoresheetPage.LongestRemarks),
        SeparationReason = text(ScoresheetPage.LongestRemarks),
        SignedName = text(ScoresheetPage.LongestName),
        CandidateWord = new ScoresheetWord.Objected(text(ScoresheetPage.LongestName), text(ScoresheetPage.LongestRemarks), page.SignedAt),
        RecordHash = text(ScoresheetPage.LongestHash),
    };
}

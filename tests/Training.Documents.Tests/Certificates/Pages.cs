using Training.Courses;
using Training.Documents.Certificates;
using Training.Documents.Fonts;
using Training.Documents.Typesetting;

namespace Training.Documents.Tests.Certificates;

/// <summary>Invented pages: a provider, a worker and a lead that do not exist.</summary>
internal static class Pages
{
    /// <summary>Every language, kind, paper and stamp: sixteen pages.</summary>
    public static TheoryData<Language, SchemeKind, PaperSize, bool> All
    {
        get
        {
            var all = new TheoryData<Language, SchemeKind, PaperSize, bool>();
            foreach (var language in Enum.GetValues<Language>())
            foreach (var kind in Enum.GetValues<SchemeKind>())
            foreach (var paper in Enum.GetValues<PaperSize>())
            {
                all.Add(language, kind, paper, false);
                all.Add(language, kind, paper, true);
            }

            return all;
        }
    }

    public static CertificatePage Of(
        Language language, SchemeKind kind = SchemeKind.Certification, PaperSize paper = PaperSize.UsLetter, bool isDemonstration = false) => new()
    {
        Language = language,
        Kind = kind,
        Paper = paper,
        IsDemonstration = isDemonstration,
        ProviderName = "Quillback Field Safety",
        ProviderAddress = "410 Ocotillo Road, Barstow, California 92311",
        WorkerName = "José Ángel Ibáñez-Núñez",
        TraineeNumber = "QFS-004127",
        SchemeTitle = language == Language.English ? "Tool-only snake handler" : "Manejo de serpientes solo con herramientas",
        SchemeEffectiveFrom = new(2026, 1, 1),
        SchemeRevision = "3f9a1c72",
        ShownText = language == Language.English
            ? "Tell venomous snakes of the region apart, keep the minimum working length, move a snake with hook and tongs into a bucket, first a model and then live."
            : "Distinguir las serpientes venenosas de la región, guardar la longitud mínima de trabajo, pasar una serpiente con gancho y pinza a una cubeta, primero un modelo y después viva.",
        Place = "Patio Peña, Barstow",
        Hours = 6.5m,
        DecidedBy = kind == SchemeKind.Certification ? "Rosa Delgado Güemes" : null,
        DecidedOn = new(2026, 11, 25),
        EffectiveOn = new(2026, 11, 26),
        CountedFrom = new(2026, 12, 7),
        Validity = new(12, DurationUnit.Months),
        ExpiresOn = new(2027, 12, 7),
        Serial = "4G7K29QXPDABC3DE",
        Revision = "B",
        CheckAddress = "https://training.quillback.example/verify/4G7K29QXPDABC3DE",
        CodeAddress = "https://training.quillback.example/verify/4G7K29QXPDABC3DE",
    };

    public static byte[] Print(CertificatePage page) => CertificateWriter.Write(page, FontFaces.Default);

    /// <summary>The page with every text as long as it may be.</summary>
    public static CertificatePage Stuffed(CertificatePage page, Func<int, string> text) => page with
    {
        ProviderName = text(CertificatePage.LongestTitle),
        ProviderAddress = text(CertificatePage.LongestAddress),
        WorkerName = text(CertificatePage.LongestName),
        TraineeNumber = text(CertificatePage.LongestNumber),
        SchemeTitle = text(CertificatePage.LongestTitle),
        SchemeRevision = text(CertificatePage.LongestNumber),
        ShownText = text(CertificatePage.LongestShown),
        Place = text(CertificatePage.LongestTitle),
        Credits = text(CertificatePage.LongestTitle),
        Hours = 12345.25m,
        DecidedBy = text(CertificatePage.LongestName),
        Serial = new('W', CertificatePage.LongestNumber),
        Revision = text(CertificatePage.LongestNumber),
        CheckAddress = "https://" + new string('W', CertificatePage.LongestCheckAddress - 8),
    };
}

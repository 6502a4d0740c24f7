using Training.Courses;
using Training.Documents.Certificates;
using Training.Documents.Typesetting;

namespace Training.Documents.Tests.Certificates;

public sealed class CertificateWordsTests
{
    public static TheoryData<Language, SchemeKind, PaperSize, bool> Every_page => Pages.All;

    // R-17024-9.4.8 (name, unique identification, certification body, scheme with its date, scope with conditions and limits,
    // effective and expiry date) and R-Z490.1-7.4 (title, date, place and hours, completion, provider's address, refresher date,
    // unique trainee number, kind, credits, legal items) of the project's requirements.
    public static TheoryData<Language, SchemeKind, string[]> Required_fields => new()
    {
        { Language.English, SchemeKind.Certification, ["Certification", "This certification is granted to", "who met all requirements of this scheme and is certified under it", "Decided by Rosa Delgado Güemes, responsible person on 25 November 2026", .. InEnglish] },
        { Language.English, SchemeKind.CertificateOfTraining, ["Certificate of training", "who completed this training and met all of its requirements", "Decided by the published rule of the scheme on 25 November 2026", .. InEnglish] },
        { Language.Spanish, SchemeKind.Certification, ["Certificación", "Esta certificación se otorga a", "que cumplió todos los requisitos de este esquema y obtuvo su certificación", "Decisión de Rosa Delgado Güemes, persona responsable el 25 de noviembre de 2026", .. InSpanish] },
        { Language.Spanish, SchemeKind.CertificateOfTraining, ["Constancia de capacitación", "que completó esta capacitación y cumplió todos sus requisitos", "Decisión de la regla publicada del esquema el 25 de noviembre de 2026", .. InSpanish] },
    };

    private static string[] InEnglish =>
    [
        "Quillback Field Safety", "410 Ocotillo Road, Barstow, California 92311", "José Ángel Ibáñez-Núñez", "Trainee number QFS-004127", "Tool-only snake handler",
        "Rules of the scheme in force since 1 January 2026, revision 3f9a1c72", "Scope: what was shown Tell venomous snakes", "first a model and then live.",
        "In effect from 26 November 2026", "Current through 7 December 2027", "Counted from 7 December 2026: the same calendar day 12 months on, that day included.",
        "Place Patio Peña, Barstow", "Hours 6.5 hours", "Credits none", "neither a permit nor a license, and it is not an order to handle a snake", "only while the check page shows it as current",
        "Serial 4G7K 29QX PDAB C3DE", "Revision B · English", "remains the property of Quillback Field Safety and must be returned if it is withdrawn",
    ];

    private static string[] InSpanish =>
    [
        "Quillback Field Safety", "410 Ocotillo Road, Barstow, California 92311", "José Ángel Ibáñez-Núñez", "Número de participante QFS-004127", "Manejo de serpientes solo con herramientas",
        "Reglas del esquema vigentes desde el 1 de enero de 2026, revisión 3f9a1c72", "Alcance: lo que se demostró Distinguir las serpientes", "primero un modelo y después viva.",
        "Vigente desde el 26 de noviembre de 2026", "Vigente hasta el 7 de diciembre de 2027", "Contado desde el 7 de diciembre de 2026: el mismo día del calendario, 12 meses después, ese día incluido.",
        "Lugar Patio Peña, Barstow", "Horas 6.5 horas", "Créditos ninguno", "No es un permiso ni una licencia, y no es una orden de manejar una serpiente", "Solo cuenta mientras la página de verificación lo muestre vigente",
        "Serie 4G7K 29QX PDAB C3DE", "Revisión B · español", "sigue siendo propiedad de Quillback Field Safety y debe devolverse si se retira",
    ];

    [Theory, MemberData(nameof(Required_fields))]
    public void Every_required_field_stands_on_the_page(Language language, SchemeKind kind, string[] fields)
    {
        foreach (var paper in Enum.GetValues<PaperSize>())
        {
            var text = DebianTool.Text(Pages.Print(Pages.Of(language, kind, paper)));

            Assert.All(fields, field => Assert.Contains(field, text, StringComparison.Ordinal));
            Assert.Contains("https://training.quillback.example/verify/4G7K29QXPDABC3DE", text.Replace("/ ", "/", StringComparison.Ordinal), StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData(Language.English, "Place not stated Hours not stated")]
    [InlineData(Language.Spanish, "Lugar sin indicar Horas sin indicar")]
    public void Blank_fields_are_named(Language language, string expected) =>
        Assert.Contains(expected, DebianTool.Text(Pages.Print(Pages.Of(language) with { Place = null, Hours = null })));

    [Theory, MemberData(nameof(Every_page))]
    public void The_caution_stands_on_every_page(Language language, SchemeKind kind, PaperSize paper, bool isDemonstration)
    {
        var text = DebianTool.Text(Pages.Print(Pages.Of(language, kind, paper, isDemonstration)));

        string[] parts = language == Language.English
            ? ["Caution", "always keep a tool between hand and snake", "Site rules and local codes", "emergency services", "poison control", "licensed medical care"]
            : ["Precaución", "siempre una herramienta entre la mano y la serpiente", "reglas del sitio y los códigos locales", "emergencias", "centro de control de envenenamientos", "atención médica con licencia"];
        Assert.All(parts, part => Assert.Contains(part, text, StringComparison.Ordinal));
    }

    // R-17024-7.2.4: what no paper of ours may say, in either language.
    [Theory, MemberData(nameof(Every_page))]
    public void No_page_claims_what_nobody_gave(Language language, SchemeKind kind, PaperSize paper, bool isDemonstration)
    {
        var text = DebianTool.Text(Pages.Print(Pages.Of(language, kind, paper, isDemonstration)));

        string[] claims = ["OSHA", "ISO/", "ISO 1", "17024", "ANSI", "1910", "accredit", "acredit", "government", "gobierno", "approved", "aprobado", "guarantee", "garantiz", "safe distance", "distancia segura"];
        Assert.All(claims, claim => Assert.DoesNotContain(claim, text, StringComparison.OrdinalIgnoreCase));
    }

    [Theory]
    [InlineData(Language.English, SchemeKind.CertificateOfTraining, "certification", "certified")]
    [InlineData(Language.English, SchemeKind.Certification, "certificate", "completed this training")]
    [InlineData(Language.Spanish, SchemeKind.CertificateOfTraining, "certificación", "certificada")]
    [InlineData(Language.Spanish, SchemeKind.Certification, "certificado", "completó esta capacitación")]
    public void A_paper_of_one_kind_never_uses_the_words_of_the_other(Language language, SchemeKind kind, params string[] others)
    {
        var pdf = Pages.Print(Pages.Of(language, kind, isDemonstration: true));

        Assert.All(others, other => Assert.DoesNotContain(other, DebianTool.Text(pdf) + DebianTool.Info(pdf), StringComparison.OrdinalIgnoreCase));
    }

    [Theory]
    [InlineData(Language.English, "DEMO: demonstration, not valid")]
    [InlineData(Language.Spanish, "DEMO: demostración, sin validez")]
    public void Only_a_demonstration_says_that_it_is_one(Language language, string stamp)
    {
        Assert.Contains(stamp, DebianTool.Text(Pages.Print(Pages.Of(language, isDemonstration: true))));
        Assert.DoesNotContain("DEMO", DebianTool.Text(Pages.Print(Pages.Of(language, isDemonstration: false))));
    }

    public static TheoryData<Language, DateOnly, Duration, DateOnly, string> Ways_of_counting => new()
    {
        { Language.English, new(2026, 12, 7), new(1, DurationUnit.Years), new(2027, 12, 7), "Counted from 7 December 2026: the same calendar day 1 year on, that day included." },
        { Language.English, new(2026, 12, 7), new(2, DurationUnit.Years), new(2028, 12, 7), "the same calendar day 2 years on" },
        { Language.English, new(2028, 2, 29), new(12, DurationUnit.Months), new(2029, 2, 28), "Counted from 29 February 2028: the last day of the month 12 months on, that day included." },
        { Language.English, new(2026, 12, 7), new(1, DurationUnit.Months), new(2027, 1, 7), "the same calendar day 1 month on" },
        { Language.English, new(2026, 12, 7), new(90, DurationUnit.Days), new(2027, 3, 7), "Counted from 7 December 2026: 90 days on, that day included." },
        { Language.English, new(2026, 12, 7), new(1, DurationUnit.Days), new(2026, 12, 8), "1 day on, that day included." },
        { Language.Spanish, new(2028, 2, 29), new(1, DurationUnit.Years), new(2029, 2, 28), "Contado desde el 29 de febrero de 2028: el último día del mes, 1 año después, ese día incluido." },
        { Language.Spanish, new(2026, 12, 7), new(2, DurationUnit.Years), new(2028, 12, 7), "el mismo día del calendario, 2 años después" },
        { Language.Spanish, new(2026, 12, 7), new(1, DurationUnit.Months), new(2027, 1, 7), "1 mes después" },
        { Language.Spanish, new(2026, 12, 7), new(90, DurationUnit.Days), new(2027, 3, 7), "Contado desde el 7 de diciembre de 2026: 90 días después, ese día incluido." },
        { Language.Spanish, new(2026, 12, 7), new(1, DurationUnit.Days), new(2026, 12, 8), "1 día después" },
    };

    [Theory, MemberData(nameof(Ways_of_counting))]
    public void The_page_says_how_the_expiry_was_counted(Language language, DateOnly from, Duration validity, DateOnly expires, string sentence) =>
        Assert.Contains(sentence, new CertificateWords(Pages.Of(language) with { CountedFrom = from, Validity = validity, ExpiresOn = expires }).Counted);

    [Theory]
    [InlineData("1", Language.English, "1 hour")]
    [InlineData("0.5", Language.English, "0.5 hours")]
    [InlineData("12", Language.English, "12 hours")]
    [InlineData("1", Language.Spanish, "1 hora")]
    [InlineData("2.25", Language.Spanish, "2.25 horas")]
    public void Hours_are_counted_in_words_of_the_language(string hours, Language language, string expected) =>
        Assert.Equal(expected, new CertificateWords(Pages.Of(language) with { Hours = decimal.Parse(hours) }).Hours);

    [Theory]
    [InlineData("ABCD", "ABCD")]
    [InlineData("ABCDE", "ABCD E")]
    [InlineData("ABCDEFGH", "ABCD EFGH")]
    public void A_serial_is_printed_in_groups_of_four(string serial, string expected) =>
        Assert.Equal(expected, new CertificateWords(Pages.Of(Language.English) with { Serial = serial }).Serial);
}

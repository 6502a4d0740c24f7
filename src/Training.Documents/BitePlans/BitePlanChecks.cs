using System.Globalization;
using Training.Courses;
using Training.Documents.Fonts;
using Training.Documents.Typesetting;

namespace Training.Documents.BitePlans;

/// <summary>Finds what would keep a bite plan from being printed as written, on one page and in no type below 9 points.</summary>
public static class BitePlanChecks
{
    /// <summary>Adds every problem of the plan, each with its field, and the number of its row, as the place.</summary>
    /// <param name="page">The plan.</param>
    /// <param name="fonts">The faces that it would be printed in.</param>
    /// <param name="problems">Receives the problems (<see cref="PaperProblems"/>).</param>
    /// <returns>True where nothing was added.</returns>
    public static bool CanPrint(BitePlanPage page, FontFaces fonts, ICollection<Problem> problems)
    {
        var before = problems.Count;
        CheckFields(page, new(fonts, problems));
        // What is too long by itself is named alone: it may be why the page is full.
        if (problems.Count > before) return false;

        using var ruler = new Ruler(fonts);
        var excess = BitePlanLayout.Compose(page, ruler).Excess;
        if (excess > 0)
        {
            var millimetres = Math.Ceiling(excess / Look.Millimetre).ToString(CultureInfo.InvariantCulture);
            problems.Add(new(PaperProblems.PageFull, Place.Of("page"), millimetres));
        }

        return problems.Count == before;
    }

    /// <summary>The same for a plan that is to be kept: it is printed again when it is overdue, and needs room for saying so.</summary>
    /// <param name="page">The plan.</param>
    /// <param name="fonts">The faces that it would be printed in.</param>
    /// <param name="problems">Receives the problems (<see cref="PaperProblems"/>).</param>
    /// <returns>True where nothing was added.</returns>
    public static bool CanPrintAlsoOverdue(BitePlanPage page, FontFaces fonts, ICollection<Problem> problems)
    {
        const int YearsOfDays = 1000;
        var later = DateOnly.FromDayNumber(Math.Min(page.ReviewOn.DayNumber + YearsOfDays, DateOnly.MaxValue.DayNumber));
        return CanPrint(page.IsOverdue ? page : page with { PrintedOn = later }, fonts, problems);
    }

    private static void CheckFields(BitePlanPage page, FieldChecks fields)
    {
        fields.Required("provider-name", page.ProviderName, BitePlanPage.LongestName);
        fields.Required("employer-name", page.EmployerName, BitePlanPage.LongestName);
        fields.Required("site-name", page.SiteName, BitePlanPage.LongestName);
        fields.Required("emergency-services", page.EmergencyServices, BitePlanPage.LongestNumber);
        fields.Required("without-signal", page.WithoutSignal, BitePlanPage.LongestPath);
        fields.Between("latitude", page.Latitude, -90, 90);
        fields.Between("longitude", page.Longitude, -180, 180);
        fields.Required("access-words", page.AccessWords, BitePlanPage.LongestPath);
        fields.Required("on-site", page.OnSite, BitePlanPage.LongestName);
        fields.Required("poison-control", page.PoisonControl, BitePlanPage.LongestNumber);
        fields.Optional("checked-by", page.CheckedBy, BitePlanPage.LongestName);
        if (page.FirstAid is { } firstAid)
        {
            fields.Required("guidance-source", firstAid.Source, BitePlanPage.LongestLine);
            CheckLines(fields, "do", firstAid.Do);
            CheckLines(fields, "do-not", firstAid.DoNot);
        }

        fields.AtMost("hospitals", page.Hospitals.Count, BitePlanPage.MostHospitals);
        foreach (var (index, hospital) in page.Hospitals.Index())
        {
            fields.Required($"hospital {Row(index)}: name", hospital.Name, BitePlanPage.LongestName);
            fields.Required($"hospital {Row(index)}: contact", hospital.Contact, BitePlanPage.LongestLine);
            fields.Between($"hospital {Row(index)}: drive-minutes", hospital.DriveMinutes, 1, BitePlanPage.MostDriveMinutes);
        }

        fields.AtMost("antivenom", page.Antivenom.Count, BitePlanPage.MostAntivenom);
        foreach (var (index, hearsay) in page.Antivenom.Index())
        {
            fields.Required($"antivenom {Row(index)}: hospital-name", hearsay.HospitalName, BitePlanPage.LongestName);
            fields.Required($"antivenom {Row(index)}: said", hearsay.Said, BitePlanPage.LongestLine);
            fields.Required($"antivenom {Row(index)}: told-by", hearsay.ToldBy, BitePlanPage.LongestName);
        }
    }

    private static void CheckLines(FieldChecks fields, string list, IReadOnlyList<string> lines)
    {
        fields.AtMost(list, lines.Count, BitePlanPage.MostSteps);
        foreach (var (index, line) in lines.Index()) fields.Required($"{list} {Row(index)}", line, BitePlanPage.LongestLine);
    }

    private static string Row(int index) => (index + 1).ToString(CultureInfo.InvariantCulture);
}

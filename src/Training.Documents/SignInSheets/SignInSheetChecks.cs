using System.Globalization;
using Training.Courses;
using Training.Documents.Fonts;
using Training.Documents.Typesetting;

namespace Training.Documents.SignInSheets;

/// <summary>Finds what would keep a sign-in sheet from being printed as written.</summary>
public static class SignInSheetChecks
{
    /// <summary>Adds every problem of the sheet, each with its field, and the number of its row, as the place.</summary>
    /// <param name="page">The sheet.</param>
    /// <param name="fonts">The faces that it would be printed in.</param>
    /// <param name="problems">Receives the problems (<see cref="PaperProblems"/>).</param>
    /// <returns>True where nothing was added.</returns>
    public static bool CanPrint(SignInSheetPage page, FontFaces fonts, ICollection<Problem> problems)
    {
        var before = problems.Count;
        var fields = new FieldChecks(fonts, problems);
        fields.Required("provider-name", page.ProviderName, SignInSheetPage.LongestName);
        fields.Required("class-title", page.ClassTitle, SignInSheetPage.LongestName);
        fields.Required("site-name", page.SiteName, SignInSheetPage.LongestName);
        fields.Required("employer-name", page.EmployerName, SignInSheetPage.LongestName);
        fields.Optional("meeting-place", page.MeetingPlace, SignInSheetPage.LongestPlace);
        fields.Optional("kit", page.Kit, SignInSheetPage.LongestText);
        fields.Optional("weather", page.Weather, SignInSheetPage.LongestText);
        fields.Required("enter-address", page.EnterAddress, SignInSheetPage.LongestAddress);
        fields.Between("seats", page.Seats, 0, SignInSheetPage.MostPeople);
        fields.Between("blank-rows", page.BlankRows, 0, SignInSheetPage.MostBlankRows);
        CheckNames(fields, "teacher", page.Teachers);
        CheckNames(fields, "scorer", page.Scorers);
        CheckLines(fields, "seated", page.Seated);
        CheckLines(fields, "waiting", page.Waiting);
        return problems.Count == before;
    }

    private static void CheckNames(FieldChecks fields, string list, IReadOnlyList<string> names)
    {
        fields.AtMost(list, names.Count, SignInSheetPage.MostInstructors);
        foreach (var (index, name) in names.Index()) fields.Required($"{list} {Row(index)}", name, SignInSheetPage.LongestName);
    }

    private static void CheckLines(FieldChecks fields, string list, IReadOnlyList<SignInLine> lines)
    {
        fields.AtMost(list, lines.Count, SignInSheetPage.MostPeople);
        foreach (var (index, line) in lines.Index())
        {
            fields.Optional($"{list} {Row(index)}: name", line.Name, SignInSheetPage.LongestName);
            fields.Optional($"{list} {Row(index)}: badge-number", line.BadgeNumber, SignInSheetPage.LongestNumber);
            fields.Optional($"{list} {Row(index)}: employer-name", line.EmployerName, SignInSheetPage.LongestName);
        }
    }

    private static string Row(int index) => (index + 1).ToString(CultureInfo.InvariantCulture);
}

using System.Text.RegularExpressions;

namespace Training.Courses;

/// <summary>The forms of ids (docs/course-format.md).</summary>
internal static partial class Ids
{
    public static bool IsId(string text) => IdForm().IsMatch(text);

    public static bool IsFactId(string text) => FactForm().IsMatch(text);

    /// <summary>A guidance value in words; may begin with a digit, as a telephone number does.</summary>
    public static bool IsCode(string text) => CodeForm().IsMatch(text);

    public static bool IsRegion(string text) => RegionForm().IsMatch(text);

    [GeneratedRegex("^[a-z][a-z0-9-]{0,79}\\z", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1_000)]
    private static partial Regex IdForm();

    [GeneratedRegex("^F(-[A-Z0-9]{1,12}){2,4}\\z", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1_000)]
    private static partial Regex FactForm();

    [GeneratedRegex("^[a-z0-9][a-z0-9-]{0,79}\\z", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1_000)]
    private static partial Regex CodeForm();

    [GeneratedRegex("^(any|[A-Z]{2,8}(-[A-Z0-9]{1,3})?)\\z", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1_000)]
    private static partial Regex RegionForm();
}

using System.Globalization;
using Training.Courses;
using Training.Documents.Fonts;

namespace Training.Documents.Typesetting;

/// <summary>Finds what would keep fields from being printed as written (<see cref="PaperProblems"/>).</summary>
/// <param name="fonts">The faces that the page would be printed in.</param>
/// <param name="problems">Receives the problems, each with its field as the place.</param>
internal sealed class FieldChecks(FontFaces fonts, ICollection<Problem> problems)
{
    /// <summary>A field that must say something.</summary>
    public void Required(string field, string text, int longest)
    {
        if (Composed.Of(text).Length == 0) problems.Add(new(PaperProblems.FieldEmpty, Place.Of(field)));
        Optional(field, text, longest);
    }

    /// <summary>A field that may be left out.</summary>
    public void Optional(string field, string? text, int longest)
    {
        if (text is null) return;
        var composed = Composed.Of(text);
        if (composed.Length > longest) problems.Add(new(PaperProblems.FieldTooLong, Place.Of(field), Written(composed.Length), Written(longest)));
        var missing = fonts.FindMissing(composed);
        if (missing.Count > 0) problems.Add(new(PaperProblems.CharacterMissing, Place.Of(field), string.Join(' ', missing)));
    }

    /// <summary>A list of rows.</summary>
    public void AtMost(string field, int count, int most)
    {
        if (count > most) problems.Add(new(PaperProblems.TooMany, Place.Of(field), Written(count), Written(most)));
    }

    /// <summary>A number, the ends of its range included.</summary>
    public void Between(string field, decimal number, decimal least, decimal most)
    {
        if (number < least || number > most) problems.Add(new(PaperProblems.OutOfRange, Place.Of(field), Written(number), Written(least), Written(most)));
    }

    private static string Written(IFormattable number) => number.ToString(null, CultureInfo.InvariantCulture);
}

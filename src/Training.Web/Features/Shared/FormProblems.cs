using System.Globalization;
using Microsoft.AspNetCore.Mvc.ModelBinding;
using Training.Courses;
using Training.Web.Languages;
using Training.Web.Problems;

namespace Training.Web.Features;

/// <summary>Puts problems beside the field of a form, in words.</summary>
public static class FormProblems
{
    /// <summary>Adds what is wrong and what to do about it, in the page's language; days are written out.</summary>
    public static void Add(this ModelStateDictionary fields, string field, Problem problem)
    {
        var written = problem.WrittenOut();
        var culture = CultureInfo.CurrentUICulture;
        fields.AddModelError(field, $"{ProblemText.Sentence(written, culture)} {ProblemText.Mend(written, culture)}");
    }

    /// <summary>The problem with its days written out, in the page's language.</summary>
    public static Problem WrittenOut(this Problem problem) => problem with { Arguments = [.. problem.Arguments.Select(WriteOut)] };

    /// <summary>One line of a form; beside its field stands what is wrong where it is empty or too long.</summary>
    /// <param name="fields">Receives what is wrong.</param>
    /// <param name="field">Which field.</param>
    /// <param name="typed">As typed.</param>
    /// <param name="most">Characters.</param>
    /// <param name="missing">What to say where it is empty.</param>
    public static string ReadLine(this ModelStateDictionary fields, string field, string? typed, int most, string missing)
    {
        var line = FormValues.ReadLine(typed);
        if (line.Length == 0) fields.AddModelError(field, missing);
        if (line.Length > most) fields.AddModelError(field, Written.TooLong(most, line.Length));
        return line;
    }

    private static string WriteOut(string argument) =>
        DateOnly.TryParseExact(argument, "O", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? Written.Date(day) : argument;
}

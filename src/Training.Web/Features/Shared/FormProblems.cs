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
        var written = problem with { Arguments = [.. problem.Arguments.Select(WriteOut)] };
        var culture = CultureInfo.CurrentUICulture;
        fields.AddModelError(field, $"{ProblemText.Sentence(written, culture)} {ProblemText.Mend(written, culture)}");
    }

    private static string WriteOut(string argument) =>
        DateOnly.TryParseExact(argument, "O", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? Written.Date(day) : argument;
}

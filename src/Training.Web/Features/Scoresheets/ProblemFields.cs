using System.Globalization;
using Microsoft.AspNetCore.Mvc.ModelBinding;
using Training.Courses;
using Training.Web.Problems;

namespace Training.Web.Features.Scoresheets;

/// <summary>Ties problems to the fields of a form: a problem's place is its field; what has no field stands at the top.</summary>
internal static class ProblemFields
{
    /// <summary>Key of what stands at the top.</summary>
    public const string Top = "Top";

    /// <param name="state">Receives each problem in words.</param>
    /// <param name="problems">What was found.</param>
    /// <param name="fields">Fields that the visitor can type in.</param>
    /// <param name="culture">Of the page.</param>
    public static void AddProblems(this ModelStateDictionary state, IEnumerable<Problem> problems, IReadOnlySet<string> fields, CultureInfo culture)
    {
        foreach (var problem in problems)
        {
            var field = problem.Place.Part is { } part && fields.Contains(part) ? part : Top;
            var written = problem.WrittenOut();
            state.AddModelError(field, $"{ProblemText.Sentence(written, culture)} {ProblemText.Mend(written, culture)}");
        }
    }
}

using Microsoft.AspNetCore.Mvc;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Languages;

namespace Training.Web.Features.Seats;

/// <summary>What the pages of seats and classes answer to their forms.</summary>
internal static class SeatAnswers
{
    /// <summary>Why a seat is given back, on one line; empty where nothing was said, null where it is too long to keep.</summary>
    public static string? ReadReason(this Controller controller, ReturnForm form)
    {
        var reason = FormValues.ReadLine(form.Reason);
        if (reason.Length <= Bounds.Conditions) return reason;
        controller.ModelState.AddModelError(nameof(form.Reason), Written.TooLong(Bounds.Conditions, reason.Length));
        return null;
    }

    /// <summary>The form again: 409 where other content came before under the same id, else 422.</summary>
    public static ViewResult MendOrDispute(this Controller controller, string view, object page, IEnumerable<Problem> problems)
    {
        var answer = controller.Mend(view, page);
        if (problems.Any(problem => problem.Code == RecordsProblems.OtherContent)) controller.Response.StatusCode = StatusCodes.Status409Conflict;
        return answer;
    }
}

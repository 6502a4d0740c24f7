namespace Training.Courses;

/// <summary>How judges came to a pass mark.</summary>
public enum CutMethod
{
    /// <summary>Judges rated every question or step; <c>angoff</c>.</summary>
    Angoff,

    /// <summary>Judges gave bounds for cut and failures, met with stored scores; <c>hofstee</c>.</summary>
    Hofstee,

    /// <summary>Read off at a borderline impression of instructors, for a checklist; <c>borderline-regression</c>.</summary>
    BorderlineRegression,
}

/// <summary>Where a pass mark comes from (docs/course-format.md, "Where a pass mark comes from"). Without one the provider set it alone.</summary>
/// <param name="PanelId">The panel in the records of the provider who set it.</param>
/// <param name="Method">How.</param>
/// <param name="SetOn">The day it was adopted.</param>
/// <param name="SetBy">Name or initials of the lead who adopted it.</param>
/// <param name="Judges">How many judges it is the mean of, or how many instructors' impressions it rests on; at least 1.</param>
/// <param name="Rounds">How many rounds they judged, 1 or 2.</param>
/// <param name="Mean">The cut in percent, 0–100, with decimals; the pass mark is the next whole number.</param>
/// <param name="StandardError">Of the mean, in percentage points; null where the method gives none.</param>
public sealed record Cut(
    Guid PanelId, CutMethod Method, DateOnly SetOn, string SetBy, int Judges, int Rounds, decimal Mean, decimal? StandardError);

using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Scoring;

namespace Training.Web.Features.Sittings;

/// <summary>What becomes of a submitted sitting: graded by the snapshot that it was drawn from, then kept with its result.</summary>
public static class SittingSubmission
{
    /// <summary>Grades and keeps a sitting; the same one again changes nothing.</summary>
    /// <param name="records">Where to.</param>
    /// <param name="course">The snapshot named by the draw.</param>
    /// <param name="sitting">As submitted.</param>
    /// <param name="corrections">Questions of the course that turned out wrong, and how they are graded since.</param>
    /// <param name="zone">IANA zone of the person's site on the day, else the provider's.</param>
    /// <param name="now">UTC.</param>
    /// <param name="problems">Receives everything for which it is refused or disputed.</param>
    /// <param name="cancellation">Ends the wait.</param>
    /// <returns>The result, or null where a problem was found; then nothing was graded.</returns>
    public static async Task<SittingResult?> SubmitAsync(
        this RecordsContext records, Course course, Sitting sitting, IReadOnlyCollection<KeyCorrection> corrections, string zone, DateTimeOffset now,
        ICollection<Problem> problems, CancellationToken cancellation)
    {
        if (SittingGrader.Regrade(course, sitting, corrections, problems) is not { } result) return null;
        var takenOn = DecisionDay.On(sitting.StartedAt, TimeZoneInfo.FindSystemTimeZoneById(zone));
        var kept = await records.KeepAsync(sitting, result, takenOn, zone, now, cancellation);
        return kept.IsKept(problems) ? result : null;
    }
}

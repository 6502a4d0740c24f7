using Training.Courses;
using Training.Records;

namespace Training.Web.Features.Cover;

/// <summary>The cover of all places of an employer, with the names that its words need.</summary>
/// <param name="Places">Most urgent first.</param>
/// <param name="Names">Of everybody who stops counting, by id; who was erased is missing.</param>
/// <param name="Today">First day of the forecasts.</param>
public sealed record EmployerCover(IReadOnlyList<PlaceCover> Places, IReadOnlyDictionary<Guid, string> Names, DateOnly Today);

/// <summary>Reads cover.</summary>
public static class CoverReading
{
    /// <summary>How far ahead cover is shown.</summary>
    public static readonly Duration Ahead = new(12, DurationUnit.Months);

    /// <summary>The cover of an employer's places from today on.</summary>
    /// <param name="records">Where from.</param>
    /// <param name="employerId">Whose; the caller has seen to it that the visitor may see them.</param>
    /// <param name="today">The visitor's.</param>
    /// <param name="courses">All courses.</param>
    /// <param name="language">Of titles.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<EmployerCover> CoverAsync(
        this RecordsContext records, Guid employerId, DateOnly today, IReadOnlyList<Course> courses, Language language, CancellationToken cancellation)
    {
        var through = Ahead.After(today);
        var facts = await records.CoverFactsAsync(employerId, today, through, cancellation);
        var places = PlaceCover.MostUrgentFirst(facts.Places.Select(place => PlaceCover.Of(place, facts, courses, today, through, language)));
        var leaving = places.SelectMany(place => place.AsHeld.Runs.Concat(place.WithSeats.Runs)).SelectMany(run => run.Leaving).Select(span => span.PersonId);
        return new(places, await records.NamesOfAsync([.. leaving.Distinct()], today, cancellation), today);
    }
}

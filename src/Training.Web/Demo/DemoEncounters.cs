using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Records;

namespace Training.Web.Demo;

/// <summary>Snakes that the demo's crews met, and what leads concluded from it.</summary>
/// <param name="data">What happened.</param>
/// <param name="certifications">Ids of the schemes whose kind is a certification.</param>
/// <param name="ids">Of people and sites, by row id.</param>
/// <param name="at">An hour of a day so many days ago, UTC.</param>
internal sealed class DemoEncounters(
    DemoData data, IReadOnlySet<string> certifications, IReadOnlyDictionary<string, Guid> ids, Func<int, DateTimeOffset> at)
{
    private readonly Dictionary<string, Guid> kept = new(StringComparer.Ordinal);

    /// <summary>Keeps a report with what it opens.</summary>
    public Task<Kept> ReportAsync(RecordsContext records, DemoEncounter row, CancellationToken cancellation)
    {
        var now = at(row.DaysAgo);
        var day = DecisionDay.On(now, TimeZoneInfo.FindSystemTimeZoneById(data.Sites.Single(site => site.Site == row.Site).Zone));
        var id = kept[row.Encounter] = Guid.CreateVersion7(now);
        var encounter = new EncounterRecord
        {
            Id = id, SiteId = ids[row.Site], ReporterId = ids[row.Reporter], Kind = row.Kind, MetOn = day,
            MetAt = TimeOnly.ParseExact(row.Time, "HH:mm", CultureInfo.InvariantCulture), Place = row.Place, Latitude = null, Longitude = null,
            SpeciesId = Known(row.Species), Done = row.Done, FollowUp = row.FollowUp, CourseId = Known(row.Course), ReportedOn = day, KeptAt = now,
            Handling = row.Handler switch { "" => EncounterHandling.Nobody, "other" => EncounterHandling.Other, _ => EncounterHandling.Named },
            HandlerId = row.Handler is "" or "other" ? null : ids[row.Handler],
        };
        var moved = row.DistanceMetres is null ? null : new RelocationRecord
        {
            EncounterId = id, DistanceMetres = row.DistanceMetres, Tools = row.Tools, Container = row.Container, MinutesHeld = row.MinutesHeld,
            AirTemperature = row.AirTemperature, ReleaseCover = row.ReleaseCover, PermitNumber = row.Permit,
        };
        return records.KeepAsync(encounter, moved, certifications, cancellation);
    }

    /// <summary>Concludes the review that a report opened.</summary>
    public async Task<Kept> ConcludeAsync(RecordsContext records, DemoEncounter row, CancellationToken cancellation)
    {
        var (id, now) = (kept[row.Encounter], at(row.ReviewedDaysAgo!.Value)); // not null: only such rows come here
        var review = await records.Reviews.Where(one => one.EventId == id).Select(one => one.Id).SingleAsync(cancellation);
        var day = DecisionDay.On(now, TimeZoneInfo.FindSystemTimeZoneById(data.Provider.Zone));
        return await records.ConcludeReviewAsync(review, new(day, ids[row.ReviewedBy], row.Conclusion), now, cancellation);
    }

    private static string? Known(string text) => text.Length > 0 ? text : null;
}

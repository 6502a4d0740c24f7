using Training.Certification;
using Training.Records;

namespace Training.Web.Features.People;

/// <summary>Which day it is where somebody works.</summary>
/// <param name="Zone">IANA zone of the person's site, else the provider's.</param>
/// <param name="Today">The date there.</param>
/// <remarks>Rule: docs/rules.md, "Validity": the zone of the person's site on the day of the decision.</remarks>
public sealed record PersonDay(string Zone, DateOnly Today)
{
    /// <summary>The person's day at an instant.</summary>
    public static async Task<PersonDay> OfAsync(
        RecordsContext records, Guid personId, string providerZone, DateTimeOffset now, CancellationToken cancellation)
    {
        var providersToday = DecisionDay.On(now, TimeZoneInfo.FindSystemTimeZoneById(providerZone));
        var zone = (await records.FindSiteAsync(personId, providersToday, cancellation))?.Zone ?? providerZone;
        return new(zone, DecisionDay.On(now, TimeZoneInfo.FindSystemTimeZoneById(zone)));
    }
}

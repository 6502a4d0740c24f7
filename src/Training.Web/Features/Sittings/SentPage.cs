using Training.Records;

namespace Training.Web.Features.Sittings;

/// <summary>What the page of an answer that came too late for its sitting is given.</summary>
/// <param name="SittingId">For addresses.</param>
/// <param name="Number">The question, from 1.</param>
/// <param name="SentAt">When the sitting was sent, in its zone.</param>
public sealed record SentPage(Guid SittingId, int Number, DateTimeOffset SentAt)
{
    /// <summary>The page of a stored sitting.</summary>
    public static SentPage Of(StoredSitting stored, int number) => new(
        stored.Sitting.Id, number, TimeZoneInfo.ConvertTimeBySystemTimeZoneId(stored.Sitting.SubmittedAt, stored.Zone));
}

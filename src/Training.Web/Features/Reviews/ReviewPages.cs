using Training.Records;

namespace Training.Web.Features.Reviews;

/// <summary>All reviews, for leads.</summary>
/// <param name="Today">The lead's.</param>
/// <param name="Open">Oldest first.</param>
/// <param name="Concluded">Newest first.</param>
/// <param name="Names">By person; erased ones are not there.</param>
public sealed record ReviewsPage(
    DateOnly Today, IReadOnlyList<OpenReview> Open, IReadOnlyList<ConcludedReview> Concluded, IReadOnlyDictionary<Guid, string> Names)
{
    /// <summary>How many of the open ones are overdue.</summary>
    public int Overdue => Open.Count(one => Certification.Reviews.IsOverdue(one.Review.OpenedOn, Today));
}

/// <summary>One review, for a lead.</summary>
/// <param name="Case">All of it.</param>
/// <param name="Today">The lead's.</param>
/// <param name="IsOwn">It is about the visitor, who does not conclude it.</param>
/// <param name="Names">By person; erased ones are not there.</param>
/// <param name="Form">As typed.</param>
public sealed record ReviewCasePage(ReviewCase Case, DateOnly Today, bool IsOwn, IReadOnlyDictionary<Guid, string> Names, ConclusionForm Form);

/// <summary>The form of something new at a site.</summary>
/// <param name="SiteId">Which site.</param>
/// <param name="SiteName">Its name.</param>
/// <param name="Handlers">Current handlers there, by name.</param>
/// <param name="Form">As typed.</param>
public sealed record SiteEventPage(Guid SiteId, string SiteName, IReadOnlyList<(Guid PersonId, string Name)> Handlers, SiteEventForm Form);

/// <summary>The form of an event about a person.</summary>
/// <param name="PersonId">Whom.</param>
/// <param name="Name">Their name; null where it was erased.</param>
/// <param name="Form">As typed.</param>
public sealed record PersonEventPage(Guid PersonId, string? Name, PersonEventForm Form);

/// <summary>What the visitor reported about themselves, and the form.</summary>
/// <param name="Reports">Newest first, each with the day of the conclusion, or null while it is open.</param>
/// <param name="Form">As typed.</param>
public sealed record CapabilityPage(IReadOnlyList<(CapabilityReport Report, DateOnly? ConcludedOn)> Reports, CapabilityForm Form);

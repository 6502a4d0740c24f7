namespace Training.Certification;

/// <summary>
/// "Do not handle until reviewed": set by the machine after an event, about one person's hands, whatever schemes they hold. It changes no
/// standing, suspends nothing and is no punishment.
/// </summary>
/// <param name="ReviewId">The review that it waits for; a review sets at most one hold.</param>
/// <param name="PersonId">Who does not handle.</param>
/// <param name="From">First day; the day on which the event became known, never before.</param>
/// <param name="Cause">What kind of event it was.</param>
/// <param name="EventId">The encounter, report or entry that the review was opened after.</param>
/// <param name="Conclusion">What ended it, or null while it lasts.</param>
/// <remarks>Rule: docs/rules.md, "Reviews and holds".</remarks>
public sealed record Hold(Guid ReviewId, Guid PersonId, DateOnly From, ReviewCause Cause, Guid EventId, ReviewConclusion? Conclusion);

/// <summary>The end of a review by a named lead, and of the hold that it set.</summary>
/// <param name="On">Day of the conclusion. A hold still touches that day.</param>
/// <param name="By">The lead; never whom the review is about.</param>
/// <param name="Words">What was concluded.</param>
public sealed record ReviewConclusion(DateOnly On, Guid By, string Words);

/// <summary>After which kind of event a review is opened.</summary>
public enum ReviewCause
{
    /// <summary>A snake bit somebody.</summary>
    Bite,

    /// <summary>Nearly a bite.</summary>
    NearMiss,

    /// <summary>A snake was moved by somebody who was not certified that day: the cover of the site is looked at, not the person.</summary>
    MovedWithoutHandler,

    /// <summary>A kind of tool that is new at a site.</summary>
    NewTool,

    /// <summary>A species that is new on a site's list.</summary>
    NewSpecies,

    /// <summary>Somebody works at a site whose region or species they did not train for.</summary>
    NewSite,

    /// <summary>Guidance changed since somebody trained.</summary>
    GuidanceChanged,

    /// <summary>A person reported something that may affect what they are able to do.</summary>
    ReportedCapability,

    /// <summary>Anything else that a lead entered.</summary>
    Other,
}

namespace Training.Certification;

/// <summary>The review that an encounter opens.</summary>
/// <param name="Cause">What kind of event it is.</param>
/// <param name="Subject">Of whom or what.</param>
public sealed record DueReview(ReviewCause Cause, ReviewSubject Subject);

/// <summary>Whom or what a review after an encounter is about.</summary>
public enum ReviewSubject
{
    /// <summary>Whoever handled the snake. It sets a hold on them.</summary>
    Handler,

    /// <summary>The site. It sets no hold on anybody.</summary>
    Site,
}

/// <summary>Works out which review an encounter opens.</summary>
/// <remarks>Rule: docs/rules.md, "Reviews and holds". Who reported it is not asked: reporting never punishes.</remarks>
public static class EncounterReviews
{
    /// <summary>The review that is opened, or null.</summary>
    /// <param name="kind">What it came to.</param>
    /// <param name="day">The day of the encounter, in the zone of the site.</param>
    /// <param name="certifications">
    /// What whoever handled the snake holds or held under schemes whose kind is a certification; empty where nobody is named.
    /// </param>
    /// <param name="holds">Theirs.</param>
    /// <exception cref="ArgumentException">As for <see cref="Standings.On"/>.</exception>
    public static DueReview? After(EncounterKind kind, DateOnly day, IReadOnlyList<HeldCertification> certifications, IReadOnlyList<Hold> holds) => kind switch
    {
        EncounterKind.Sighting => null,
        EncounterKind.Moved => MayHandle(certifications, holds, day) ? null : new DueReview(ReviewCause.MovedWithoutHandler, ReviewSubject.Site),
        EncounterKind.NearMiss => new DueReview(ReviewCause.NearMiss, SubjectOf(certifications, day)),
        EncounterKind.Bite => new DueReview(ReviewCause.Bite, SubjectOf(certifications, day)),
    };

    /// <summary>Whether somebody with these certifications and holds is a handler on the day: one is current or renewal due, and no hold touches the day.</summary>
    /// <exception cref="ArgumentException">As for <see cref="Standings.On"/>.</exception>
    public static bool MayHandle(IEnumerable<HeldCertification> certifications, IEnumerable<Hold> holds, DateOnly day) =>
        certifications.Any(held => Standings.On(held, day) is Standing.Current or Standing.RenewalDue) && !Holds.IsOn(holds, day);

    // Also lapsed or suspended: a renewal or a reinstatement tomorrow would put the hand back without anybody having looked.
    private static ReviewSubject SubjectOf(IEnumerable<HeldCertification> certifications, DateOnly day) =>
        certifications.Any(held => Standings.On(held, day) is not (null or Standing.Withdrawn)) ? ReviewSubject.Handler : ReviewSubject.Site;
}

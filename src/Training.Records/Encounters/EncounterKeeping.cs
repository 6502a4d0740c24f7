using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Training.Certification;

namespace Training.Records;

/// <summary>Keeps reports of encounters with what they open, and what is said about them later.</summary>
public static class EncounterKeeping
{
    /// <summary>
    /// Keeps a report, with the review and the hold that it opens: all or nothing. The same id again with the same content is the same report;
    /// with other content it is refused.
    /// </summary>
    /// <param name="records">Where to.</param>
    /// <param name="encounter">What was reported.</param>
    /// <param name="relocation">What was written down about the move, or null; only of a snake that was moved.</param>
    /// <param name="certifications">Ids of the schemes whose kind is a certification.</param>
    /// <param name="cancellation">Ends the wait.</param>
    /// <exception cref="ArgumentException">A relocation of a snake that was not moved.</exception>
    public static async Task<Kept> KeepAsync(
        this RecordsContext records, EncounterRecord encounter, RelocationRecord? relocation, IReadOnlySet<string> certifications,
        CancellationToken cancellation)
    {
        if (relocation is not null && encounter.Kind != EncounterKind.Moved) throw new ArgumentException("Only a snake that was moved was relocated.", nameof(relocation));
        object[] rows = [encounter, .. relocation is null ? [] : new object[] { relocation }, .. await records.OpensAsync(encounter, certifications, cancellation)];
        if (await records.TryInsertAsync(cancellation, rows)) return new Kept.Stored(encounter.Id);
        var stored = await records.Encounters.AsNoTracking().SingleAsync(row => row.Id == encounter.Id, cancellation);
        var moved = await records.Relocations.AsNoTracking().SingleOrDefaultAsync(row => row.EncounterId == encounter.Id, cancellation);
        return Equals(ContentOf(stored), ContentOf(encounter)) && Equals(ContentOf(moved), ContentOf(relocation))
            ? new Kept.AlreadyStored(encounter.Id)
            : new Kept.Refused([RecordsProblems.At("encounter", RecordsProblems.OtherContent, encounter.Id.ToString())]);
    }

    /// <summary>Keeps what somebody adds. The same id again with the same words is the same addition.</summary>
    public static async Task<Kept> KeepAsync(this RecordsContext records, EncounterAddition addition, CancellationToken cancellation)
    {
        if (await records.TryInsertAsync(cancellation, addition)) return new Kept.Stored(addition.Id);
        var there = await records.EncounterAdditions.AsNoTracking().SingleAsync(row => row.Id == addition.Id, cancellation);
        return (there.EncounterId, there.PersonId, there.Words) == (addition.EncounterId, addition.PersonId, addition.Words)
            ? new Kept.AlreadyStored(addition.Id)
            : new Kept.Refused([RecordsProblems.At("addition", RecordsProblems.OtherContent, addition.Id.ToString())]);
    }

    /// <summary>Keeps that a lead looked. The first one's words stand.</summary>
    public static async Task<Kept> KeepAsync(this RecordsContext records, EncounterLook look, CancellationToken cancellation)
    {
        if (await records.TryInsertAsync(cancellation, look)) return new Kept.Stored(look.EncounterId);
        var there = await records.EncounterLooks.AsNoTracking().SingleAsync(row => row.EncounterId == look.EncounterId, cancellation);
        return (there.LeadId, there.Words) == (look.LeadId, look.Words)
            ? new Kept.AlreadyStored(look.EncounterId)
            : new Kept.Refused([RecordsProblems.At("look", RecordsProblems.LookedBefore, there.LookedOn.ToString("O", CultureInfo.InvariantCulture))]);
    }

    private static async Task<object[]> OpensAsync(
        this RecordsContext records, EncounterRecord encounter, IReadOnlySet<string> certifications, CancellationToken cancellation)
    {
        var (held, holds) = encounter.HandlerId is { } handler
            ? ((await records.HeldCertificationsAsync(handler, cancellation)).Where(one => certifications.Contains(one.SchemeId)), await records.HoldsOfAsync(handler, cancellation))
            : ([], []);
        return EncounterReviews.After(encounter.Kind, encounter.MetOn, [.. held], holds) switch
        {
            null => [],
            { Subject: ReviewSubject.Handler } due => ReviewRecord.OfPerson(
                due.Cause, encounter.Id, encounter.HandlerId!.Value, encounter.SiteId, encounter.ReportedOn, encounter.KeptAt).WithHold(), // not null: somebody named holds something
            var due => [ReviewRecord.OfSite(due.Cause, encounter.Id, encounter.SiteId, encounter.ReportedOn, encounter.KeptAt)],
        };
    }

    // What a person gave; the clock of the server is left out, so that a repeat is recognised.
    private static object ContentOf(EncounterRecord one) => (
        one.SiteId, one.ReporterId, one.Kind, one.MetOn, one.MetAt, one.Place, one.Latitude, one.Longitude,
        (one.SpeciesId, one.Done, one.Handling, one.HandlerId, one.FollowUp, one.CourseId));

    private static object? ContentOf(RelocationRecord? one) =>
        one is null ? null : (one.DistanceMetres, one.Tools, one.Container, one.MinutesHeld, one.AirTemperature, one.ReleaseCover, one.PermitNumber);
}

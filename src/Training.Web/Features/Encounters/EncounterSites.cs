using Training.Records;
using Training.Web.Doors;

namespace Training.Web.Features.Encounters;

/// <summary>Which sites a visitor may report from, and which encounters they may see.</summary>
public static class EncounterSites
{
    /// <summary>
    /// Sites of whoever employs the visitor today or is represented by them, and sites of class days where they teach or score; for a lead
    /// all. Somebody may meet a snake at another site than their own.
    /// </summary>
    public static IQueryable<Records.Site> SitesReportedFromBy(this RecordsContext records, Visitor visitor)
    {
        if (visitor.Is(Role.ProgrammeLead)) return records.Sites;
        var (personId, today, represented) = (visitor.PersonId, visitor.Today, visitor.EmployerIds);
        return records.Sites.Where(site => represented.Contains(site.EmployerId)
            || records.Employments.Any(row => row.PersonId == personId && row.EmployerId == site.EmployerId && row.StartsOn <= today
                && (row.EndsOn == null || row.EndsOn >= today))
            || records.Classes.Any(day => day.SiteId == site.Id
                && (records.ClassScorers.Any(row => row.ClassId == day.Id && row.InstructorId == personId)
                    || records.ClassTeachings.Any(row => row.ClassId == day.Id && row.InstructorId == personId))));
    }

    /// <summary>Encounters at sites of an employer; none where the visitor may not see that employer.</summary>
    public static IQueryable<EncounterRecord> EncountersSeenBy(this RecordsContext records, Visitor visitor, Guid employerId) =>
        from employer in records.EmployersSeenBy(visitor)
        where employer.Id == employerId
        join site in records.Sites on employer.Id equals site.EmployerId
        join encounter in records.Encounters on site.Id equals encounter.SiteId
        select encounter;
}

using Training.Records;

namespace Training.Web.Doors;

/// <summary>Where queries start: what the visitor may see, so that a forgotten check finds nothing.</summary>
/// <remarks>The record side of <see cref="DoorTable"/>. What a worker may see of themselves starts from <see cref="Visitor.PersonId"/>.</remarks>
public static class VisibleRecords
{
    /// <summary>Employers whose people the visitor may see: those they represent; for a programme lead, all.</summary>
    public static IQueryable<Employer> EmployersSeenBy(this RecordsContext records, Visitor visitor)
    {
        var own = visitor.EmployerIds;
        return visitor.Is(Role.ProgrammeLead) ? records.Employers : records.Employers.Where(employer => own.Contains(employer.Id));
    }

    /// <summary>People whom an employer employs on the visitor's today; nobody where the visitor may not see that employer.</summary>
    public static IQueryable<Person> PeopleSeenBy(this RecordsContext records, Visitor visitor, Guid employerId)
    {
        var today = visitor.Today;
        return from employer in records.EmployersSeenBy(visitor)
               where employer.Id == employerId
               join employment in records.Employments on employer.Id equals employment.EmployerId
               where employment.StartsOn <= today && (employment.EndsOn == null || employment.EndsOn >= today)
               join person in records.Persons on employment.PersonId equals person.Id
               select person;
    }

    /// <summary>Sites whose bite plan the visitor may read: where they work today, and those of employers they represent; for instructors and programme leads, all.</summary>
    public static IQueryable<Records.Site> SitesSeenBy(this RecordsContext records, Visitor visitor)
    {
        if (visitor.Is(Role.ProgrammeLead) || visitor.Is(Role.Instructor)) return records.Sites;
        var (me, today, own) = (visitor.PersonId, visitor.Today, visitor.EmployerIds);
        return records.Sites.Where(site => own.Contains(site.EmployerId) || records.SiteAssignments.Any(row =>
            row.SiteId == site.Id && row.PersonId == me && row.StartsOn <= today && (row.EndsOn == null || row.EndsOn >= today)));
    }

    /// <summary>Who worked for an employer through the visitor's today and from when to when; nobody where the visitor may not see that employer.</summary>
    public static IQueryable<Employment> EmploymentsSeenBy(this RecordsContext records, Visitor visitor, Guid employerId)
    {
        var today = visitor.Today;
        return from employer in records.EmployersSeenBy(visitor)
               where employer.Id == employerId
               join employment in records.Employments on employer.Id equals employment.EmployerId
               where employment.StartsOn <= today
               select employment;
    }
}

using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Records;

namespace Training.Web.Doors;

/// <summary>Reads who a session belongs to.</summary>
public static class VisitorReading
{
    /// <summary>The visitor, or null where the session was ended, was idle for too long or began too long ago.</summary>
    /// <param name="records">Where from; a session that is used is kept alive there.</param>
    /// <param name="sessionId">Out of the cookie.</param>
    /// <param name="providerZone">IANA zone for people without a site.</param>
    /// <param name="now">UTC.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<Visitor?> FindVisitorAsync(
        this RecordsContext records, Guid sessionId, string providerZone, DateTimeOffset now, CancellationToken cancellation)
    {
        var found = await (from session in records.AccountSessions
                           where session.Id == sessionId && session.EndedAt == null
                           join account in records.Accounts on session.AccountId equals account.Id
                           select new { Session = session, account.PersonId, account.UserName }).AsNoTracking().SingleOrDefaultAsync(cancellation);
        if (found is null || Sessions.IsOver(found.Session, now)) return null;
        await records.KeepAliveAsync(found.Session, now, cancellation);

        var personId = found.PersonId;
        var providersToday = DecisionDay.On(now, TimeZoneInfo.FindSystemTimeZoneById(providerZone));
        var zone = (await records.FindSiteAsync(personId, providersToday, cancellation))?.Zone ?? providerZone;
        var today = DecisionDay.On(now, TimeZoneInfo.FindSystemTimeZoneById(zone));
        var name = await records.FindNameAsync(personId, today, cancellation);
        var appointed = await records.Appointments
            .Where(row => row.PersonId == personId && row.StartsOn <= today && (row.EndsOn == null || row.EndsOn >= today))
            .Select(row => row.Role).ToListAsync(cancellation);
        var employers = await records.Representatives
            .Where(row => row.PersonId == personId && row.StartsOn <= today && (row.EndsOn == null || row.EndsOn >= today))
            .Select(row => row.EmployerId).ToListAsync(cancellation);
        return new(
            found.Session.AccountId, sessionId, personId, name?.Text ?? found.UserName!, RolesOf(appointed, employers), // not null: the column is required
            employers.ToHashSet(), zone, today);
    }

    private static HashSet<Role> RolesOf(List<AppointedRole> appointed, List<Guid> employers)
    {
        var roles = new HashSet<Role> { Role.Worker };
        foreach (var role in appointed)
        {
            roles.Add(role switch
            {
                AppointedRole.Instructor => Role.Instructor,
                AppointedRole.ProgrammeLead => Role.ProgrammeLead,
            });
        }

        if (employers.Count > 0) roles.Add(Role.Employer);
        return roles;
    }
}

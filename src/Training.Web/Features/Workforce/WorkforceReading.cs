using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Training.Records;
using Training.Web.Doors;

namespace Training.Web.Features.Workforce;

/// <summary>Reads an employer's people, starting from what the visitor may see.</summary>
public static class WorkforceReading
{
    /// <summary>The people whom the employer employs today; null where the visitor may not see that employer.</summary>
    public static async Task<EmployedPeople?> FindWorkforceAsync(
        this RecordsContext records, Visitor visitor, Guid employerId, CancellationToken cancellation)
    {
        var employer = await records.EmployersSeenBy(visitor).AsNoTracking().SingleOrDefaultAsync(row => row.Id == employerId, cancellation);
        if (employer is null) return null;
        var people = records.PeopleSeenBy(visitor, employerId).Select(person => person.Id);
        var employed = await records.EmployedAsync(people, employerId, visitor.Today, cancellation);
        var held = await records.HeldCertificationsAsync(people, cancellation);
        return new(
            employerId,
            employer.Name,
            visitor.Today,
            await records.SitesOfAsync(employerId, cancellation),
            [.. employed.OrderBy(person => person.Name is null)
                .ThenBy(person => person.Name, StringComparer.Create(CultureInfo.CurrentCulture, ignoreCase: true)).ThenBy(person => person.PersonId)],
            held.ToLookup(certification => certification.PersonId));
    }
}

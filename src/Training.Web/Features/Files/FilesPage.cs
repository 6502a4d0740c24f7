using Training.Records;
using Training.Web.Features.Workforce;

namespace Training.Web.Features.Files;

/// <summary>What there is to take along.</summary>
/// <param name="Employer">Whose.</param>
/// <param name="Form">What was asked for.</param>
/// <param name="SiteId">One of its sites; null for all.</param>
/// <param name="DaysAreGood">Whether the days that were typed can be used; else the days below are those of an empty form.</param>
/// <param name="From">First day.</param>
/// <param name="Through">Last day.</param>
/// <param name="NextFolder">Id of the folder that the form makes.</param>
/// <param name="IsLead">A programme lead asks: their folder has questions and keys.</param>
/// <param name="Made">The last folders about this employer's people, newest first.</param>
/// <param name="Names">Of who made them.</param>
/// <param name="Zone">Whose days the instants are told in.</param>
public sealed record FilesPage(
    SeenEmployer Employer,
    FilesForm Form,
    Guid? SiteId,
    bool DaysAreGood,
    DateOnly From,
    DateOnly Through,
    Guid NextFolder,
    bool IsLead,
    IReadOnlyList<AuditFolder> Made,
    IReadOnlyDictionary<Guid, string> Names,
    TimeZoneInfo Zone)
{
    /// <summary>The address of a table for these days and this site, below the employer's.</summary>
    public string Address(string file) => file + QueryString.Create(
        new (string Name, string? Value)[] { ("from", From.Iso()), ("through", Through.Iso()), ("site", SiteId?.ToString()) }
            .Where(one => one.Value is not null).Select(one => KeyValuePair.Create(one.Name, one.Value)));
}

using Training.Records;

namespace Training.Web.Features.AuditFolders;

/// <summary>What a lead can make, and what was made.</summary>
/// <param name="FormId">Of the next folder.</param>
/// <param name="DaysAreGood">Whether the days that were typed can be used.</param>
/// <param name="From">First day.</param>
/// <param name="Through">Last day.</param>
/// <param name="IsTooLarge">The last try did not fit into the bounds.</param>
/// <param name="Employers">To choose from, by name.</param>
/// <param name="Made">The last ones, newest first.</param>
/// <param name="Names">Of who made them.</param>
/// <param name="Zone">Whose days the instants are told in.</param>
public sealed record AuditFoldersPage(
    Guid FormId,
    bool DaysAreGood,
    DateOnly From,
    DateOnly Through,
    bool IsTooLarge,
    IReadOnlyList<(Guid Id, string Name)> Employers,
    IReadOnlyList<AuditFolder> Made,
    IReadOnlyDictionary<Guid, string> Names,
    TimeZoneInfo Zone);

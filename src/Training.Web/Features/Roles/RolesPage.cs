using Training.Courses;
using Training.Records;

namespace Training.Web.Features.Roles;

/// <summary>What somebody may do beyond their own training.</summary>
/// <param name="PersonId">Who.</param>
/// <param name="Name">Today's; null where it was erased.</param>
/// <param name="IsSelf">Whether the visitor looks at their own.</param>
/// <param name="Today">The visitor's.</param>
/// <param name="Roles">Those that last or ended, newest first.</param>
/// <param name="Employers">To choose from.</param>
/// <param name="HasAccount">Whether they can sign in.</param>
/// <param name="Form">As typed.</param>
public sealed record RolesPage(
    Guid PersonId, string? Name, bool IsSelf, DateOnly Today, IReadOnlyList<RoleLine> Roles, IReadOnlyList<(Guid Id, string Name)> Employers, bool HasAccount,
    RoleForm Form);

/// <summary>One role of somebody.</summary>
/// <param name="Id">Of its row.</param>
/// <param name="Appointed">To what; null where they represent an employer.</param>
/// <param name="Languages">In which; empty where they represent an employer.</param>
/// <param name="Employer">Whom they represent, or null.</param>
/// <param name="StartsOn">First day.</param>
/// <param name="EndsOn">Last day; null while it lasts.</param>
public sealed record RoleLine(Guid Id, AppointedRole? Appointed, IReadOnlyList<Language> Languages, string? Employer, DateOnly StartsOn, DateOnly? EndsOn);

using Training.Courses;
using Training.Records;

namespace Training.Web.Features.Roles;

/// <summary>The form of another role of somebody.</summary>
public sealed class RoleForm
{
    /// <summary>Made when the form was: the same twice is one row.</summary>
    public Guid Id { get; set; }

    /// <summary><c>Instructor</c>, <c>ProgrammeLead</c>, or the id of an employer whose people they are to see.</summary>
    public string? Role { get; set; }

    /// <summary>Tags of the languages in which they teach, score and decide; means nothing for an employer's own.</summary>
    public List<string> Languages { get; set; } = [];

    /// <summary>First day, as typed.</summary>
    public string? StartsOn { get; set; }

    /// <summary>What it appoints to, or null where it names an employer or nothing.</summary>
    public AppointedRole? Appointed => Role switch
    {
        nameof(AppointedRole.Instructor) => AppointedRole.Instructor,
        nameof(AppointedRole.ProgrammeLead) => AppointedRole.ProgrammeLead,
        _ => null,
    };

    /// <summary>The languages that were ticked.</summary>
    public IReadOnlyList<Language> SpokenLanguages => [.. LanguageTags.All.Where(language => Languages.Contains(language.Tag()))];
}

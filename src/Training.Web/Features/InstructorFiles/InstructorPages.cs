using Training.Certification;
using Training.Records;

namespace Training.Web.Features.InstructorFiles;

/// <summary>All instructors of today.</summary>
/// <param name="Today">In the provider's zone.</param>
/// <param name="Lines">Without a file first, then by name.</param>
/// <param name="Titles">Of courses, by id.</param>
public sealed record InstructorsPage(DateOnly Today, IReadOnlyList<InstructorLine> Lines, IReadOnlyDictionary<string, string> Titles);

/// <summary>One instructor in the list.</summary>
/// <param name="PersonId">Who.</param>
/// <param name="Name">Null where it was erased.</param>
/// <param name="HasFile">A lead has made their file.</param>
/// <param name="Ending">Competence that ends within 60 days.</param>
/// <param name="StatementThrough">Last day of their last statement, or null.</param>
public sealed record InstructorLine(Guid PersonId, string? Name, bool HasFile, IReadOnlyList<Competence> Ending, DateOnly? StatementThrough);

/// <summary>The file of one instructor, for a lead or for themselves.</summary>
/// <param name="PersonId">Who.</param>
/// <param name="Name">Null where it was erased.</param>
/// <param name="Today">In the provider's zone.</param>
/// <param name="IsAppointed">As an instructor today.</param>
/// <param name="IsOwn">The visitor's own: they read it, and state.</param>
/// <param name="File">What the rules read.</param>
/// <param name="Competences">Newest first.</param>
/// <param name="Conflicts">Newest first.</param>
/// <param name="StatementThrough">Last day of the last statement, or null.</param>
/// <param name="Titles">Of courses, by id.</param>
/// <param name="Names">Of leads and people in conflict.</param>
/// <param name="Courses">To choose from, by id.</param>
/// <param name="Employers">To choose from.</param>
/// <param name="Form">As typed.</param>
/// <param name="Conflict">As typed.</param>
/// <param name="StatementId">For the next statement.</param>
public sealed record InstructorPage(
    Guid PersonId, string? Name, DateOnly Today, bool IsAppointed, bool IsOwn, InstructorFile File, IReadOnlyList<CompetenceLine> Competences,
    IReadOnlyList<ConflictLine> Conflicts, DateOnly? StatementThrough, IReadOnlyDictionary<string, string> Titles, IReadOnlyDictionary<Guid, string> Names,
    IReadOnlyList<string> Courses, IReadOnlyList<(Guid Id, string Name)> Employers, CompetenceForm Form, ConflictForm Conflict, Guid StatementId)
{
    /// <summary>Ends within 60 days.</summary>
    public IReadOnlyList<Competence> Ending => Assignments.EndingSoon(File, Today);
}

/// <summary>A competence with its end.</summary>
public sealed record CompetenceLine(InstructorCompetence Row, InstructorCompetenceEnd? End);

/// <summary>A conflict with its end, and the employer's name where it is one.</summary>
public sealed record ConflictLine(InstructorConflict Row, InstructorConflictEnd? End, string? Employer);

using Training.Courses;

namespace Training.Certification;

/// <summary>What an instructor is to do. A closed family.</summary>
/// <param name="CourseId">Of which course.</param>
public abstract record Assignment(string CourseId)
{
    /// <summary>Teaches at a class.</summary>
    public sealed record Teaching(string CourseId) : Assignment(CourseId);

    /// <summary>May score at a class at an employer's site; each sheet is looked at again.</summary>
    public sealed record Scoring(string CourseId, Guid EmployerId) : Assignment(CourseId);

    /// <summary>Scores one sheet.</summary>
    /// <param name="CourseId">Of the checklist.</param>
    /// <param name="Subject">On what.</param>
    /// <param name="Language">In which the instructions are read.</param>
    /// <param name="CandidateId">Whom.</param>
    /// <param name="EmployerIds">For whom the candidate works on that day.</param>
    public sealed record Sheet(string CourseId, Subject Subject, Language Language, Guid CandidateId, IReadOnlyList<Guid> EmployerIds) : Assignment(CourseId);
}

/// <summary>Why an instructor may not be assigned. A closed family.</summary>
public abstract record AssignmentReason
{
    private AssignmentReason()
    {
    }

    /// <summary>A lead has not made their file yet: nothing is known, so nothing is allowed.</summary>
    public sealed record NoFile : AssignmentReason;

    /// <summary>No competence for it on the day, and none before. <paramref name="Subject"/> is null where either would do.</summary>
    public sealed record NotCompetent(Duty Duty, Subject? Subject) : AssignmentReason;

    /// <summary>The competence for it ended; <paramref name="Through"/> was its last day.</summary>
    public sealed record CompetenceOver(Duty Duty, Subject? Subject, DateOnly Through) : AssignmentReason;

    /// <summary>They do not score in that language.</summary>
    public sealed record LanguageMissing(Language Language) : AssignmentReason;

    /// <summary>They never stated that nothing else stands in the way.</summary>
    public sealed record StatementMissing : AssignmentReason;

    /// <summary>Their last statement counted through <paramref name="Through"/>.</summary>
    public sealed record StatementOver(DateOnly Through) : AssignmentReason;

    /// <summary>A conflict with the candidate, since that day.</summary>
    public sealed record WithCandidate(DateOnly From) : AssignmentReason;

    /// <summary>A conflict with the employer, since that day.</summary>
    public sealed record WithEmployer(DateOnly From) : AssignmentReason;
}

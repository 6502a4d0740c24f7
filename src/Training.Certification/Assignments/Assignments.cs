using System.Diagnostics;
using Training.Courses;

namespace Training.Certification;

/// <summary>Whether an instructor may be assigned to something on a day.</summary>
/// <remarks>Rule: docs/rules.md, "Instructors".</remarks>
public static class Assignments
{
    /// <summary>How many days ahead leads are told of a competence that ends.</summary>
    public const int DaysAhead = 60;

    private static readonly Duration StatementCounts = new(12, DurationUnit.Months);

    /// <summary>All reasons against it; empty where nothing is in the way.</summary>
    /// <param name="file">Of the instructor.</param>
    /// <param name="assignment">To what.</param>
    /// <param name="on">The day of the class.</param>
    public static IReadOnlyList<AssignmentReason> Check(InstructorFile file, Assignment assignment, DateOnly on)
    {
        // Without a file every other reason would only repeat that nothing was written down.
        if (file.Competences.Count == 0) return [new AssignmentReason.NoFile()];
        return
        [
            .. assignment switch
            {
                Assignment.Teaching => OfCompetence(file, assignment.CourseId, Duty.Teach, null, on),
                Assignment.Scoring => OfCompetence(file, assignment.CourseId, Duty.Score, null, on),
                Assignment.Sheet sheet => OfCompetence(file, assignment.CourseId, Duty.Score, sheet.Subject, on),
                _ => throw new UnreachableException(),
            },
            .. assignment is Assignment.Sheet { Language: var language } && !file.Languages.Contains(language)
                ? [new AssignmentReason.LanguageMissing(language)]
                : Array.Empty<AssignmentReason>(),
            .. OfStatement(file, on),
            .. assignment switch
            {
                Assignment.Teaching => [],
                Assignment.Scoring scoring => OfConflicts(file, null, [scoring.EmployerId], on),
                Assignment.Sheet sheet => OfConflicts(file, sheet.CandidateId, sheet.EmployerIds, on),
                _ => throw new UnreachableException(),
            },
        ];
    }

    /// <summary>The last day through which a statement of that day counts: the same calendar day a year on.</summary>
    public static DateOnly CountsThrough(DateOnly statedOn) => StatementCounts.After(statedOn);

    /// <summary>
    /// What ends within <see cref="DaysAhead"/> days, today and the last of them included, soonest first; not what another row of the same
    /// sort carries further.
    /// </summary>
    public static IReadOnlyList<Competence> EndingSoon(InstructorFile file, DateOnly today) =>
    [
        .. file.Competences.GroupBy(one => (one.CourseId, one.Duty, one.Subject))
            .Select(group => group.MaxBy(one => one.Through)!) // not null: no group is empty
            .Where(one => one.Through >= today && one.Through <= today.AddDays(DaysAhead))
            .OrderBy(one => one.Through).ThenBy(one => one.CourseId, StringComparer.Ordinal).ThenBy(one => one.Duty).ThenBy(one => one.Subject),
    ];

    private static IEnumerable<AssignmentReason> OfCompetence(InstructorFile file, string courseId, Duty duty, Subject? subject, DateOnly on)
    {
        var begun = file.Competences
            .Where(one => one.CourseId == courseId && one.Duty == duty && (subject is null || one.Subject == subject) && one.From <= on).ToList();
        if (begun.Exists(one => one.Through >= on)) yield break;
        yield return begun.Count == 0
            ? new AssignmentReason.NotCompetent(duty, subject)
            : new AssignmentReason.CompetenceOver(duty, subject, begun.Max(one => one.Through));
    }

    private static IEnumerable<AssignmentReason> OfStatement(InstructorFile file, DateOnly on)
    {
        var last = file.StatedOn.Where(day => day <= on).Max(day => (DateOnly?)day);
        if (last is not { } statedOn) yield return new AssignmentReason.StatementMissing();
        else if (CountsThrough(statedOn) < on) yield return new AssignmentReason.StatementOver(CountsThrough(statedOn));
    }

    private static IEnumerable<AssignmentReason> OfConflicts(InstructorFile file, Guid? candidateId, IReadOnlyList<Guid> employerIds, DateOnly on)
    {
        var standing = file.Conflicts.Where(conflict => conflict.Stands(on)).ToList();
        var withCandidate = standing.Where(conflict => conflict.PersonId is { } id && id == candidateId).Min(conflict => (DateOnly?)conflict.From);
        if (withCandidate is { } since) yield return new AssignmentReason.WithCandidate(since);
        var withEmployer = standing.Where(conflict => conflict.EmployerId is { } id && employerIds.Contains(id)).Min(conflict => (DateOnly?)conflict.From);
        if (withEmployer is { } from) yield return new AssignmentReason.WithEmployer(from);
    }
}

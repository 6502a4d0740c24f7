using Training.Courses;

namespace Training.Scoring;

/// <summary>How many questions of one kind a blueprint asks for beyond what the pool has.</summary>
/// <param name="Topic">Id of the topic.</param>
/// <param name="IsCritical">Whether critical ones are missing, or the others.</param>
/// <param name="Missing">How many; at least 1.</param>
public sealed record PoolGap(string Topic, bool IsCritical, int Missing);

/// <summary>The part of a pool that may be asked, and whether a quiz can be drawn from it.</summary>
/// <remarks>Rule: docs/rules.md, "Which questions are drawn".</remarks>
public static class AskedPool
{
    private static readonly bool[] CriticalFirst = [true, false];

    /// <summary>The same text of the course with only these questions in its pool, in file order; ids that it does not have mean nothing.</summary>
    public static Course Asking(this Course course, IReadOnlySet<string> questionIds) =>
        course with { Questions = [.. course.Questions.Where(question => questionIds.Contains(question.Id))] };

    /// <summary>The same text of the course without the questions about snakes that do not live at a place.</summary>
    public static Course AskedAt(this Course course, SnakesOfPlace place) =>
        course with { Questions = [.. course.Questions.Where(question => place.Has(question.Snakes))] };

    /// <summary>
    /// What the pool lacks, in blueprint order, critical ones first; empty where a quiz can be drawn, at whatever place: a question about some
    /// snakes fills no gap, since a site may lack them.
    /// </summary>
    public static IReadOnlyList<PoolGap> Gaps(this Course course) =>
    [
        .. from row in course.Quiz.Blueprint
           from isCritical in CriticalFirst
           let asked = isCritical ? row.Critical : row.Questions - row.Critical
           let missing = asked - course.Questions.Count(
               question => question.Snakes.Count == 0 && question.Topic == row.Topic && question.IsCritical == isCritical)
           where missing > 0
           select new PoolGap(row.Topic, isCritical, missing),
    ];
}

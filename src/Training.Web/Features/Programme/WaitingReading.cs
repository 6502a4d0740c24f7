using Training.Courses;
using Training.Records;

namespace Training.Web.Features.Programme;

/// <summary>What waits under all schemes on the shelf.</summary>
public static class WaitingReading
{
    /// <summary>Who is overdue under changed rules. A query for each scheme whose transition has a day that went by.</summary>
    public static async Task<IReadOnlyList<OverdueTransition>> OverdueTransitionsAsync(
        this RecordsContext records, IReadOnlyList<Course> courses, DateOnly today, CancellationToken cancellation)
    {
        var overdue = new List<OverdueTransition>();
        foreach (var course in courses) overdue.AddRange(await records.OverdueTransitionsAsync(course.Scheme, today, cancellation));
        return overdue;
    }

    /// <summary>Decisions that wait for a lead, longest first. A query for each certification on the shelf; certificates of training never wait.</summary>
    public static async Task<IReadOnlyList<WaitingDecision>> WaitingDecisionsAsync(
        this RecordsContext records, IReadOnlyList<Course> courses, DateOnly today, CancellationToken cancellation)
    {
        var waiting = new List<WaitingDecision>();
        foreach (var course in courses) waiting.AddRange(await records.WaitingDecisionsAsync(course.Scheme, today, cancellation));
        return [.. waiting.OrderBy(one => one.Since).ThenBy(one => one.PersonId)];
    }
}

namespace Training.Courses;

/// <summary>
/// What our courses ask of themselves beyond what the format needs (docs/writing-questions.md, docs/course-format.md). Kept apart from
/// reading: a snapshot of years ago must be readable under rules that came later.
/// </summary>
internal static class HouseRules
{
    /// <summary>Adds what one course breaks.</summary>
    /// <param name="id">The course.</param>
    /// <param name="folder">What reading it gave.</param>
    /// <param name="library">Which snakes there are; null where a file of theirs has a finding, and nothing is said about snakes then.</param>
    /// <param name="problems">Where findings go.</param>
    public static void Check(string id, ReadFolder folder, SpeciesLibrary? library, ICollection<Problem> problems)
    {
        TeachingRules.Check(id, folder, problems);
        if (folder.Course is { } course) WritingRules.Check(course, folder, problems);
        if (library is not null) CheckSnakes(folder, library, problems);
    }

    private static void CheckSnakes(ReadFolder folder, SpeciesLibrary library, ICollection<Problem> problems)
    {
        var known = SnakesOfPlace.AllNames(library);
        foreach (var (snake, place) in folder.Snakes.Where(use => !known.Contains(use.Snake))) problems.Add(new(CourseProblems.SnakeUnknown, place, snake));
    }
}

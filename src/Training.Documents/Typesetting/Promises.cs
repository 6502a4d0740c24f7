using Training.Courses;

namespace Training.Documents.Typesetting;

/// <summary>What a writer does with a page that its check refuses: who calls it was to ask first.</summary>
internal static class Promises
{
    /// <exception cref="ArgumentException">There are problems.</exception>
    public static void ThrowIfAny(IReadOnlyCollection<Problem> problems, string argument)
    {
        if (problems.Count == 0) return;
        throw new ArgumentException($"The page cannot be printed: {string.Join("; ", problems.Select(problem => $"{problem.Place.Part} {problem.Code}"))}.", argument);
    }
}

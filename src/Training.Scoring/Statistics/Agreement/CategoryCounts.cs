namespace Training.Scoring;

/// <summary>How many raters put each subject into each category: all that agreement among interchangeable raters rests on.</summary>
/// <remarks>A missing rating is counted nowhere. Subjects may have different numbers of ratings; those without any are dropped.</remarks>
public sealed class CategoryCounts
{
    private readonly int[][] _rated;

    private CategoryCounts(int categories, IEnumerable<int[]> subjects)
    {
        Categories = categories;
        _rated = [.. subjects.Where(counts => counts.Sum() > 0)];
    }

    /// <summary>How many categories the scale offers, used or not.</summary>
    public int Categories { get; }

    /// <summary>Subjects with at least one rating.</summary>
    internal IReadOnlyList<int[]> Rated => _rated;

    /// <summary>Subjects with at least two ratings.</summary>
    internal IReadOnlyList<int[]> Compared => [.. _rated.Where(counts => counts.Sum() > 1)];

    /// <summary>From counts: a row a subject, a column a category.</summary>
    /// <exception cref="ArgumentException">A row has another number of columns than the scale has categories, or a count is negative.</exception>
    public static CategoryCounts Of(int categories, IReadOnlyList<IReadOnlyList<int>> subjects)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(categories);
        if (subjects.Any(counts => counts.Count != categories || counts.Any(count => count < 0)))
        {
            throw new ArgumentException("A subject has not one count, 0 or more, for each category.", nameof(subjects));
        }

        return new(categories, subjects.Select(counts => counts.ToArray()));
    }

    /// <summary>
    /// From ratings: a row a subject, in it the number of the category, from 0, that each rater chose; null where a rating is missing.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">A rating is no category of the scale: whoever read it should have refused it.</exception>
    public static CategoryCounts FromRatings(int categories, IReadOnlyList<IReadOnlyList<int?>> subjects)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(categories);
        return new(categories, subjects.Select(ratings => Count(categories, ratings)));
    }

    private static int[] Count(int categories, IReadOnlyList<int?> ratings)
    {
        var counts = new int[categories];
        foreach (var rating in ratings)
        {
            if (rating is not { } category) continue;
            ArgumentOutOfRangeException.ThrowIfNegative(category, nameof(ratings));
            ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(category, categories, nameof(ratings));
            counts[category]++;
        }

        return counts;
    }
}

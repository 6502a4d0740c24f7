namespace Training.Scoring;

/// <summary>How often a first rater chose one category and a second rater another, for the subjects that both rated.</summary>
public sealed class PairTable
{
    private readonly int[,] _counts;

    private PairTable(int[,] counts)
    {
        _counts = counts;
        Subjects = counts.Cast<int>().Sum();
    }

    /// <summary>How many categories the scale offers, used or not.</summary>
    public int Categories => _counts.GetLength(0);

    /// <summary>How many subjects both rated.</summary>
    public int Subjects { get; }

    /// <summary>Subjects that the first rater put into one category and the second into another, both from 0.</summary>
    internal int this[int first, int second] => _counts[first, second];

    /// <summary>From counts: a row a category of the first rater, a column a category of the second.</summary>
    /// <exception cref="ArgumentException">The table is empty or not square, or a count is negative.</exception>
    public static PairTable Of(IReadOnlyList<IReadOnlyList<int>> counts)
    {
        if (counts.Count == 0 || counts.Any(row => row.Count != counts.Count || row.Any(count => count < 0)))
        {
            throw new ArgumentException("The table is not square, or a count is negative.", nameof(counts));
        }

        var table = new int[counts.Count, counts.Count];
        for (var first = 0; first < counts.Count; first++)
        {
            for (var second = 0; second < counts.Count; second++) table[first, second] = counts[first][second];
        }

        return new(table);
    }

    /// <summary>From ratings: the number of the category, from 0, or null where a rating is missing; such a subject is left out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A rating is no category of the scale: whoever read it should have refused it.</exception>
    public static PairTable FromRatings(int categories, IReadOnlyList<(int? First, int? Second)> subjects)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(categories);
        var table = new int[categories, categories];
        foreach (var rated in subjects)
        {
            if (rated is not ({ } first, { } second)) continue;
            ArgumentOutOfRangeException.ThrowIfNegative(Math.Min(first, second), nameof(subjects));
            ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(Math.Max(first, second), categories, nameof(subjects));
            table[first, second]++;
        }

        return new(table);
    }
}

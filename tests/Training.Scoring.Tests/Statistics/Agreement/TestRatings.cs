using CsCheck;

namespace Training.Scoring.Tests;

/// <summary>Ratings to try: 4 categories, 2 to 5 raters, some ratings missing.</summary>
internal static class TestRatings
{
    public const int Categories = 4;

    public static readonly Gen<int?[][]> Any =
        from raters in Gen.Int[2, 5]
        from subjects in Gen.Int[-1, Categories - 1].Select(category => category < 0 ? (int?)null : category).Array[raters].Array[2, 25]
        select subjects;

    public static readonly Gen<int?[][]> Complete =
        from raters in Gen.Int[2, 5]
        from subjects in Gen.Int[0, Categories - 1].Select(category => (int?)category).Array[raters].Array[2, 25]
        select subjects;

    /// <summary>Raters who know nothing of the subjects nor of each other.</summary>
    public static int?[][] Independent(int subjects, int raters)
    {
        var random = new SplitMix64(20260301);
        return [.. Enumerable.Range(0, subjects).Select(_ => Ratings().Take(raters).ToArray())];

        IEnumerable<int?> Ratings()
        {
            while (true) yield return (int)random.NextBelow(Categories);
        }
    }

    public static CategoryCounts Counts(int?[][] subjects) => CategoryCounts.FromRatings(Categories, subjects);

    public static double?[][] Numbers(int?[][] subjects) =>
        [.. subjects.Select(ratings => ratings.Select(rating => (double?)rating).ToArray())];

    public static T[] Shuffled<T>(T[] subjects, ulong seed)
    {
        var shuffled = subjects.ToArray();
        new SplitMix64(seed).Shuffle<T>(shuffled);
        return shuffled;
    }
}

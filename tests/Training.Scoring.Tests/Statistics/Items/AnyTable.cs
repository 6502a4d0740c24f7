using CsCheck;

namespace Training.Scoring.Tests;

/// <summary>Score tables for properties, among them tables in which everybody or nobody is right.</summary>
internal static class AnyTable
{
    /// <summary>Right or wrong, 2 to 30 people, 2 to 7 items.</summary>
    public static readonly Gen<double[][]> RightOrWrong = Of(Gen.Int[0, 1].Select(score => (double)score));

    /// <summary>Ratings from 0 to 9.</summary>
    public static readonly Gen<double[][]> Ratings = Of(Gen.Int[0, 9].Select(score => (double)score));

    private static Gen<double[][]> Of(Gen<double> score) => Gen.Int[2, 7].SelectMany(items => score.Array[items].Array[2, 30]);

    public static double[][] Reordered(double[][] table, ulong seed, out int[] order)
    {
        var random = new SplitMix64(seed);
        var rows = table.ToArray();
        random.Shuffle<double[]>(rows);
        var columns = Enumerable.Range(0, table[0].Length).ToArray();
        random.Shuffle<int>(columns);
        order = columns;
        return [.. rows.Select(row => columns.Select(column => row[column]).ToArray())];
    }
}

namespace Training.Web.Features.Shared;

/// <summary>
/// Keeps cells that begin like a formula from being computed: they are written with an apostrophe before them, and read without it.
/// What begins with apostrophes and then like a formula gets one more, so that every cell reads back as it was.
/// </summary>
public static class SpreadsheetCell
{
    private const string Starts = "=+-@\t\r";

    /// <summary>The cell as it goes into a file.</summary>
    public static string Write(string cell) => IsLikeFormula(cell) ? $"'{cell}" : cell;

    /// <summary>The cell as it was before <see cref="Write"/>; any other apostrophe stays.</summary>
    public static string Read(string cell) => cell.StartsWith('\'') && IsLikeFormula(cell) ? cell[1..] : cell;

    private static bool IsLikeFormula(string cell)
    {
        var bare = cell.AsSpan().TrimStart('\'');
        return bare.Length > 0 && Starts.Contains(bare[0], StringComparison.Ordinal);
    }
}

namespace Training.Web.Features.Shared;

/// <summary>Which part of a long list a page shows.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Count">Of how many, at least 1.</param>
/// <param name="Address">Of the list, without the number: ends in <c>?</c> or <c>&amp;</c>.</param>
public sealed record Turning(int Number, int Count, string Address)
{
    /// <summary>Rows of one page.</summary>
    public const int Rows = 50;

    /// <summary>The page asked for, or the nearest that there is.</summary>
    public static Turning To(int? asked, int rows, string address)
    {
        var count = Math.Max(1, (rows + Rows - 1) / Rows);
        return new(Math.Clamp(asked ?? 1, 1, count), count, address);
    }

    /// <summary>Rows that come before this page.</summary>
    public int Before => (Number - 1) * Rows;
}

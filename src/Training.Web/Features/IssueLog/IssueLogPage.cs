namespace Training.Web.Features.IssueLog;

/// <summary>The newest signed head, for people.</summary>
/// <param name="Size">Entries of the log.</param>
/// <param name="Root">Hexadecimal.</param>
/// <param name="SignedAt">In the provider's zone.</param>
/// <param name="Age">Since then.</param>
public sealed record IssueLogPage(long Size, string Root, DateTimeOffset SignedAt, TimeSpan Age)
{
    /// <summary>Within how many minutes a head shows what happened: an hour without one, and the next look of the clock.</summary>
    public const int LatestMinutes = 65;

    /// <summary>Whether it is older than is promised.</summary>
    public bool IsLate => Age > TimeSpan.FromMinutes(LatestMinutes);
}

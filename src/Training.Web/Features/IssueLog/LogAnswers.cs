using Training.Documents.IssueLog;
using Training.Records;

namespace Training.Web.Features.IssueLog;

/// <summary>Signed heads, newest first.</summary>
/// <param name="Heads">At most <see cref="IssueLogController.MostHeads"/>.</param>
public sealed record PublishedHeads(IReadOnlyList<PublishedHead> Heads);

/// <summary>Leaves in their order.</summary>
/// <param name="From">Index of the first.</param>
/// <param name="Entries">Their bytes, hexadecimal.</param>
public sealed record PublishedEntries(long From, IReadOnlyList<string> Entries);

/// <summary>That the log only grew between two sizes.</summary>
/// <param name="From">The smaller size.</param>
/// <param name="To">The larger one.</param>
/// <param name="Path">The RFC's list, hexadecimal.</param>
public sealed record PublishedConsistency(long From, long To, IReadOnlyList<string> Path);

/// <summary>What the log holds about one paper.</summary>
/// <param name="Serial">Of the paper.</param>
/// <param name="Head">The head that the leaves are proven against.</param>
/// <param name="Leaves">Oldest first; empty where the paper is older than the log, or was erased from it.</param>
public sealed record PublishedProofs(string Serial, PublishedHead Head, IReadOnlyList<PublishedLeaf> Leaves);

/// <summary>One leaf, opened.</summary>
/// <param name="Index">In the log.</param>
/// <param name="Opening">What it commits to, hexadecimal: version, salt and seven texts.</param>
/// <param name="Path">The RFC's list from leaf to root, hexadecimal; null where the head was signed before the leaf came.</param>
public sealed record PublishedLeaf(long Index, string Opening, IReadOnlyList<string>? Path)
{
    /// <summary>A leaf with its proof.</summary>
    /// <param name="leaf">As the records open it.</param>
    /// <param name="size">Of the tree to prove it in.</param>
    /// <param name="nodes">Hashes of the tree.</param>
    public static PublishedLeaf Of(OpenedLeaf leaf, long size, Func<LogNode, LogHash> nodes) => new(
        leaf.Index,
        Convert.ToHexStringLower(leaf.Entry.Opening(leaf.Salt.Span)),
        leaf.Index < size ? [.. InclusionProof.Make(leaf.Index, size, nodes).Path.Select(hash => hash.ToString())] : null);
}

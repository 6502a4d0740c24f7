namespace Training.Documents.IssueLog;

/// <summary>The place of a complete subtree: 2^<paramref name="Level"/> leaves from leaf <paramref name="Index"/> × 2^<paramref name="Level"/> on.</summary>
/// <param name="Level">0 for a leaf.</param>
/// <param name="Index">From 0, among the subtrees of that level.</param>
/// <remarks>
/// The hash of a complete subtree never changes again, so it is stored once, with the leaf that completed it: the row of leaf
/// <see cref="CompletedBy"/> holds the hashes of all subtrees that this leaf completed, level 0 first, and this one from byte
/// <see cref="Offset"/> on. A log of n leaves stores fewer than 2n hashes in n rows.
/// </remarks>
public readonly record struct LogNode(int Level, long Index)
{
    /// <summary>Index of the leaf whose row holds the hash of this subtree.</summary>
    public long CompletedBy => ((Index + 1) << Level) - 1;

    /// <summary>Where in that row's hashes it begins, in bytes.</summary>
    public int Offset => Level * LogHash.Size;
}

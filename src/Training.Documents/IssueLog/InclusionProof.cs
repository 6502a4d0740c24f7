namespace Training.Documents.IssueLog;

/// <summary>Proves that a leaf is in a tree (RFC 9162 §2.1.3, RFC 6962 §2.1.1).</summary>
/// <param name="Index">Of the leaf, from 0.</param>
/// <param name="Size">Leaves of the tree.</param>
/// <param name="Path">The hashes beside the way from the leaf to the root, lowest first.</param>
public sealed record InclusionProof(long Index, long Size, IReadOnlyList<LogHash> Path)
{
    /// <summary>Makes the proof: PATH(index, D[size]).</summary>
    /// <param name="index">From 0, below <paramref name="size"/>.</param>
    /// <param name="size">Of the tree to prove it in; it may have grown since.</param>
    /// <param name="nodes">The hash of a complete subtree.</param>
    public static InclusionProof Make(long index, long size, Func<LogNode, LogHash> nodes)
    {
        MerkleTree.ThrowIfNoSize(size);
        ArgumentOutOfRangeException.ThrowIfNegative(index);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(index, size);
        var path = new List<LogHash>();
        var (first, count) = (0L, size);
        while (count > 1)
        {
            var left = MerkleTree.LeftPart(count);
            if (index < first + left)
            {
                path.Add(MerkleTree.HashRange(first + left, count - left, nodes));
                count = left;
            }
            else
            {
                path.Add(MerkleTree.HashRange(first, left, nodes));
                (first, count) = (first + left, count - left);
            }
        }

        // Walked from the root down; the RFC lists from the leaf up.
        path.Reverse();
        return new(index, size, path);
    }

    /// <summary>The subtrees that <see cref="Make"/> will ask for: whoever keeps them in a database fetches them at once.</summary>
    public static IReadOnlyList<LogNode> NodesFor(long index, long size) => NodeList.Of(nodes => Make(index, size, nodes));

    /// <summary>Whether the proof leads from the leaf to the root; false for anything that is no proof (RFC 9162 §2.1.3.2).</summary>
    /// <param name="leaf">The leaf's hash.</param>
    /// <param name="root">Of the tree of <see cref="Size"/> leaves, from a signed head.</param>
    public bool Proves(LogHash leaf, LogHash root)
    {
        if (Index < 0 || Index >= Size || Size > MerkleTree.MostLeaves) return false;
        var (node, last, hash) = (Index, Size - 1, leaf);
        foreach (var beside in Path)
        {
            if (last == 0) return false;
            if ((node & 1) == 1 || node == last)
            {
                hash = MerkleTree.HashNode(beside, hash);
                // On the right edge a level without a sibling is passed over.
                while ((node & 1) == 0 && node != 0) (node, last) = (node >> 1, last >> 1);
            }
            else
            {
                hash = MerkleTree.HashNode(hash, beside);
            }

            (node, last) = (node >> 1, last >> 1);
        }

        return last == 0 && hash == root;
    }
}

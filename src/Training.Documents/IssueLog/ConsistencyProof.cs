using System.Numerics;

namespace Training.Documents.IssueLog;

/// <summary>Proves that a tree only grew: the older tree's leaves are the newer one's first (RFC 9162 §2.1.4, RFC 6962 §2.1.2).</summary>
/// <param name="OldSize">Leaves of the older tree, at least 1: the empty tree begins every tree, and nothing need be proven.</param>
/// <param name="NewSize">Leaves of the newer tree, at least <paramref name="OldSize"/>.</param>
/// <param name="Path">The RFC's list; empty where both sizes are the same.</param>
public sealed record ConsistencyProof(long OldSize, long NewSize, IReadOnlyList<LogHash> Path)
{
    /// <summary>Makes the proof: PROOF(oldSize, D[newSize]).</summary>
    /// <param name="oldSize">At least 1.</param>
    /// <param name="newSize">At least <paramref name="oldSize"/>.</param>
    /// <param name="nodes">The hash of a complete subtree.</param>
    public static ConsistencyProof Make(long oldSize, long newSize, Func<LogNode, LogHash> nodes)
    {
        MerkleTree.ThrowIfNoSize(newSize);
        ArgumentOutOfRangeException.ThrowIfLessThan(oldSize, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(oldSize, newSize);
        var path = new List<LogHash>();
        var (first, count, old, isWholeOldTree) = (0L, newSize, oldSize, true);
        while (old < count)
        {
            var left = MerkleTree.LeftPart(count);
            if (old <= left)
            {
                path.Add(MerkleTree.HashRange(first + left, count - left, nodes));
                count = left;
            }
            else
            {
                path.Add(MerkleTree.HashRange(first, left, nodes));
                (first, count, old, isWholeOldTree) = (first + left, count - left, old - left, false);
            }
        }

        // SUBPROOF(m, D[m], b): the verifier knows the old root already where the whole old tree is left.
        if (!isWholeOldTree) path.Add(MerkleTree.HashRange(first, count, nodes));
        path.Reverse();
        return new(oldSize, newSize, path);
    }

    /// <summary>The subtrees that <see cref="Make"/> will ask for: whoever keeps them in a database fetches them at once.</summary>
    public static IReadOnlyList<LogNode> NodesFor(long oldSize, long newSize) => NodeList.Of(nodes => Make(oldSize, newSize, nodes));

    /// <summary>Whether the proof leads to both roots; false for anything that is no proof (RFC 9162 §2.1.4.2).</summary>
    public bool Proves(LogHash oldRoot, LogHash newRoot)
    {
        if (OldSize < 1 || OldSize > NewSize || NewSize > MerkleTree.MostLeaves) return false;
        if (OldSize == NewSize) return Path.Count == 0 && oldRoot == newRoot;

        IReadOnlyList<LogHash> path = BitOperations.IsPow2(OldSize) ? [oldRoot, .. Path] : Path;
        if (path.Count == 0) return false;
        var (node, last) = (OldSize - 1, NewSize - 1);
        while ((node & 1) == 1) (node, last) = (node >> 1, last >> 1);
        var (old, grown) = (path[0], path[0]);
        foreach (var beside in path.Skip(1))
        {
            if (last == 0) return false;
            if ((node & 1) == 1 || node == last)
            {
                (old, grown) = (MerkleTree.HashNode(beside, old), MerkleTree.HashNode(beside, grown));
                while ((node & 1) == 0 && node != 0) (node, last) = (node >> 1, last >> 1);
            }
            else
            {
                grown = MerkleTree.HashNode(grown, beside);
            }

            (node, last) = (node >> 1, last >> 1);
        }

        return last == 0 && old == oldRoot && grown == newRoot;
    }
}

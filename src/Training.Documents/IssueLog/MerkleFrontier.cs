namespace Training.Documents.IssueLog;

/// <summary>The right edge of a hash tree: all that is needed to append and to know the root, at most 41 hashes.</summary>
/// <remarks>Appending costs O(log n), one hash on average twice; the root O(log n). Not safe for several threads.</remarks>
public sealed class MerkleFrontier
{
    // The hashes of MerkleTree.Peaks(Size), in that order.
    private readonly List<LogHash> _peaks;

    /// <summary>The edge of the empty tree.</summary>
    public MerkleFrontier()
        : this(0, [])
    {
    }

    private MerkleFrontier(long size, List<LogHash> peaks) => (Size, _peaks) = (size, peaks);

    /// <summary>Leaves so far.</summary>
    public long Size { get; private set; }

    /// <summary>MTH of all leaves so far (RFC 9162 §2.1.1).</summary>
    public LogHash Root
    {
        get
        {
            if (_peaks.Count == 0) return MerkleTree.EmptyRoot;
            var root = _peaks[^1];
            for (var peak = _peaks.Count - 2; peak >= 0; peak--) root = MerkleTree.HashNode(_peaks[peak], root);
            return root;
        }
    }

    /// <summary>The edge of a stored tree.</summary>
    /// <param name="size">Its leaves.</param>
    /// <param name="nodes">Asked for <see cref="MerkleTree.Peaks"/> of that size, nothing else.</param>
    public static MerkleFrontier Read(long size, Func<LogNode, LogHash> nodes) => new(size, [.. MerkleTree.Peaks(size).Select(nodes)]);

    /// <summary>Appends a leaf.</summary>
    /// <param name="leaf">The leaf's hash (<see cref="MerkleTree.HashLeaf"/>).</param>
    /// <returns>The hashes of the subtrees that it completed, level 0 (itself) first: what its row stores (<see cref="LogNode"/>).</returns>
    /// <exception cref="InvalidOperationException">The tree is full.</exception>
    public IReadOnlyList<LogHash> Append(LogHash leaf)
    {
        if (Size == MerkleTree.MostLeaves) throw new InvalidOperationException("The tree is full.");
        List<LogHash> completed = [leaf];
        // Each bit that carries joins the last peak with what has grown beside it.
        for (var carried = Size; (carried & 1) == 1; carried >>= 1)
        {
            completed.Add(MerkleTree.HashNode(_peaks[^1], completed[^1]));
            _peaks.RemoveAt(_peaks.Count - 1);
        }

        _peaks.Add(completed[^1]);
        Size++;
        return completed;
    }
}

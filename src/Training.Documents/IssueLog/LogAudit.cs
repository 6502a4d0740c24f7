namespace Training.Documents.IssueLog;

/// <summary>Computes a stored log again from its leaves and compares all that was stored or saved of it.</summary>
/// <param name="saved">Heads to hold it against, from wherever they were kept; their signatures are the caller's to check.</param>
/// <remarks>It is fed leaf by leaf, so that it runs beside a reader of rows in constant memory. Of the rows and of the heads it names the first that is wrong.</remarks>
public sealed class LogAudit(IEnumerable<TreeHead> saved)
{
    private readonly Queue<TreeHead> _saved = new(saved.OrderBy(head => head.Size).ThenBy(head => head.At));
    private readonly List<LogFinding> _findings = [];
    private readonly MerkleFrontier _computed = new();

    /// <summary>Takes the next leaf.</summary>
    /// <param name="leaf">Its bytes.</param>
    /// <param name="stored">The hashes of its row, level 0 first (<see cref="LogNode"/>).</param>
    public void Add(ReadOnlySpan<byte> leaf, IReadOnlyList<LogHash> stored)
    {
        CompareHeads();
        var index = _computed.Size;
        var completed = _computed.Append(MerkleTree.HashLeaf(leaf));
        if (_findings.Count == 0 && Compare(index, completed, stored) is { } finding) _findings.Add(finding);
    }

    /// <summary>All that was found, once the last leaf was taken; nothing where the log is whole.</summary>
    public IReadOnlyList<LogFinding> Finish()
    {
        CompareHeads();
        // The greatest of the heads beyond the end says the most; the others would repeat it.
        if (_saved.Count > 0) _findings.Add(new LogFinding.Truncated(_computed.Size, _saved.Last()));
        return _findings;
    }

    private void CompareHeads()
    {
        while (_saved.TryPeek(out var head) && head.Size == _computed.Size)
        {
            _saved.Dequeue();
            var isFirst = !_findings.Exists(finding => finding is LogFinding.RootDiffers);
            if (isFirst && head.Root != _computed.Root) _findings.Add(new LogFinding.RootDiffers(_computed.Root, head));
        }
    }

    private static LogFinding? Compare(long index, IReadOnlyList<LogHash> completed, IReadOnlyList<LogHash> stored)
    {
        for (var level = 0; level < Math.Min(completed.Count, stored.Count); level++)
        {
            if (completed[level] == stored[level]) continue;
            return level == 0 ? new LogFinding.LeafChanged(index) : new LogFinding.NodeChanged(new(level, index >> level));
        }

        return completed.Count == stored.Count ? null : new LogFinding.NodesMissing(index);
    }
}

using Training.Documents.IssueLog;

namespace Training.Documents.Tests.IssueLog;

/// <summary>A log as the records keep it: a row for each leaf with its bytes and the hashes that it completed.</summary>
internal sealed class StoredLog
{
    private readonly MerkleFrontier _frontier = new();

    public StoredLog(IEnumerable<byte[]> leaves)
    {
        foreach (var leaf in leaves) Append(leaf);
    }

    public List<(byte[] Leaf, LogHash[] Hashes)> Rows { get; } = [];

    public LogHash Root => _frontier.Root;

    public LogHash Node(LogNode node) => Rows[(int)node.CompletedBy].Hashes[node.Offset / LogHash.Size];

    public void Append(byte[] leaf) => Rows.Add((leaf, [.. _frontier.Append(MerkleTree.HashLeaf(leaf))]));

    /// <summary>So many leaves of one to four bytes, no two alike.</summary>
    public static byte[][] Leaves(int count) => [.. Enumerable.Range(0, count).Select(number => Convert.FromHexString($"{number:x8}"[..(2 * (1 + (number % 4)))] + $"{number:x8}"))];
}

using System.Numerics;
using System.Security.Cryptography;

namespace Training.Documents.IssueLog;

/// <summary>The hash tree of the log of issues: RFC 9162 §2.1.1 (the same as RFC 6962 §2.1) over SHA-256.</summary>
/// <remarks>
/// The prefixes 0x00 and 0x01 keep a leaf from being passed off as a node. What needs hashes below the root takes a function from
/// a complete subtree to its hash, so that the leaves need not lie in memory; the sizes of trees are at most <see cref="MostLeaves"/>.
/// </remarks>
public static class MerkleTree
{
    /// <summary>2^40: far more than papers will ever be issued, and small enough that no index overflows.</summary>
    public const long MostLeaves = 1L << 40;

    /// <summary>MTH of no leaves: the hash of nothing.</summary>
    public static LogHash EmptyRoot { get; } = new(SHA256.HashData([]));

    /// <summary>MTH of one leaf: SHA-256(0x00 ‖ leaf).</summary>
    public static LogHash HashLeaf(ReadOnlySpan<byte> leaf)
    {
        var input = new byte[1 + leaf.Length];
        leaf.CopyTo(input.AsSpan(1));
        return new(SHA256.HashData(input));
    }

    /// <summary>The hash of two subtrees side by side: SHA-256(0x01 ‖ left ‖ right).</summary>
    public static LogHash HashNode(LogHash left, LogHash right)
    {
        Span<byte> input = stackalloc byte[1 + (2 * LogHash.Size)];
        input[0] = 1;
        left.WriteTo(input[1..]);
        right.WriteTo(input[(1 + LogHash.Size)..]);
        Span<byte> hash = stackalloc byte[LogHash.Size];
        SHA256.HashData(input, hash);
        return new(hash);
    }

    /// <summary>The greatest complete subtrees of a tree, from the left: one for each bit of its size that is set.</summary>
    /// <param name="size">Leaves, 0 or more.</param>
    public static IReadOnlyList<LogNode> Peaks(long size)
    {
        ThrowIfNoSize(size);
        var peaks = new List<LogNode>(BitOperations.PopCount((ulong)size));
        for (var level = BitOperations.Log2((ulong)size | 1); level >= 0; level--)
        {
            if ((size >> level & 1) == 1) peaks.Add(new(level, (size >> level) - 1));
        }

        return peaks;
    }

    /// <summary>The hash of <paramref name="count"/> leaves from <paramref name="first"/> on, where they are a subtree of the RFC's definition.</summary>
    internal static LogHash HashRange(long first, long count, Func<LogNode, LogHash> nodes)
    {
        if (BitOperations.IsPow2(count))
        {
            var level = BitOperations.Log2((ulong)count);
            return nodes(new(level, first >> level));
        }

        var left = LeftPart(count);
        return HashNode(HashRange(first, left, nodes), HashRange(first + left, count - left, nodes));
    }

    /// <summary>The RFC's k: the largest power of two below <paramref name="count"/>, which is at least 2.</summary>
    internal static long LeftPart(long count) => 1L << BitOperations.Log2((ulong)count - 1);

    internal static void ThrowIfNoSize(long size)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(size);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(size, MostLeaves);
    }
}

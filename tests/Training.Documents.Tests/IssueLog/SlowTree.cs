using System.Security.Cryptography;

namespace Training.Documents.Tests.IssueLog;

/// <summary>RFC 6962 §2.1 word for word: recursive, over all leaves at once, with nothing kept and nothing shared with the code under test.</summary>
internal static class SlowTree
{
    public static byte[] Mth(ReadOnlySpan<byte[]> leaves)
    {
        if (leaves.Length == 0) return SHA256.HashData([]);
        if (leaves.Length == 1) return SHA256.HashData([0, .. leaves[0]]);
        var k = K(leaves.Length);
        return SHA256.HashData([1, .. Mth(leaves[..k]), .. Mth(leaves[k..])]);
    }

    public static List<byte[]> Path(int m, ReadOnlySpan<byte[]> leaves)
    {
        if (leaves.Length == 1) return [];
        var k = K(leaves.Length);
        return m < k ? [.. Path(m, leaves[..k]), Mth(leaves[k..])] : [.. Path(m - k, leaves[k..]), Mth(leaves[..k])];
    }

    public static List<byte[]> Proof(int m, ReadOnlySpan<byte[]> leaves) => Subproof(m, leaves, true);

    private static List<byte[]> Subproof(int m, ReadOnlySpan<byte[]> leaves, bool isWhole)
    {
        if (m == leaves.Length) return isWhole ? [] : [Mth(leaves)];
        var k = K(leaves.Length);
        return m <= k
            ? [.. Subproof(m, leaves[..k], isWhole), Mth(leaves[k..])]
            : [.. Subproof(m - k, leaves[k..], false), Mth(leaves[..k])];
    }

    private static int K(int n)
    {
        var k = 1;
        while (k * 2 < n) k *= 2;
        return k;
    }
}

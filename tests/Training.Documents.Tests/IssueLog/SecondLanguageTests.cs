using System.Text.Json;
using Training.Documents.IssueLog;

namespace Training.Documents.Tests.IssueLog;

/// <summary>The same numbers from <c>issue_log.py</c>, which was written from the RFC's text with Python's standard library alone.</summary>
public sealed class SecondLanguageTests
{
    private const int Size = 77;

    private static readonly IssueEntry Entry = new(
        "4G7K29QXPDABC3DE", "manejo-señalado", new('a', 64), new(2026, 11, 26), new(2027, 12, 7), IssueEvent.Issued, new(2026, 11, 25, 18, 30, 15, 123, TimeSpan.FromHours(-7)));

    private static readonly byte[] Salt = [.. Enumerable.Range(200, IssueEntry.SaltSize).Select(number => (byte)number)];

    [Fact]
    public void Roots_proofs_leaf_and_head_are_the_same_in_both_languages()
    {
        var leaves = StoredLog.Leaves(Size);
        var log = new StoredLog(leaves);
        int[][] inclusion = [.. from size in new[] { 1, 2, 3, 31, 64, Size } from index in Enumerable.Range(0, size) select new[] { index, size }];
        int[][] consistency = [.. from size in new[] { 1, 2, 3, 31, 64, Size } from old in Enumerable.Range(1, size) select new[] { old, size }];
        var head = new TreeHead(Size, log.Root, new(2026, 11, 25, 18, 0, 0, 7, TimeSpan.Zero));

        var theirs = Ask(new
        {
            leaves = leaves.Select(Convert.ToHexStringLower),
            inclusion,
            consistency,
            entry = new { salt = Convert.ToHexStringLower(Salt), texts = new[] { Entry.Serial, Entry.SchemeId, Entry.SchemeVersion, "2026-11-26", "2027-12-07", "issued", "2026-11-26T01:30:15.123Z" } },
            head = new { size = Size, root = log.Root.ToString(), milliseconds = head.At.ToUnixTimeMilliseconds() },
        });

        Assert.Equal(theirs.Roots, Enumerable.Range(0, Size + 1).Select(size => new StoredLog(leaves[..size]).Root.ToString()));
        Assert.Equal(theirs.Inclusion, inclusion.Select(asked => Text(InclusionProof.Make(asked[0], asked[1], log.Node).Path)));
        Assert.Equal(theirs.Consistency, consistency.Select(asked => Text(ConsistencyProof.Make(asked[0], asked[1], log.Node).Path)));
        Assert.Equal(theirs.Leaf, Convert.ToHexStringLower(Entry.Leaf(Salt)));
        Assert.Equal(theirs.Head, Convert.ToHexStringLower(head.SignedBytes()));
    }

    private static string[] Text(IEnumerable<LogHash> hashes) => [.. hashes.Select(hash => hash.ToString())];

    private static Answer Ask(object question)
    {
        var file = Path.GetTempFileName();
        try
        {
            File.WriteAllText(file, JsonSerializer.Serialize(question));
            var script = Path.Combine(AppContext.BaseDirectory, "IssueLog", "issue_log.py");
            var answer = DebianTool.Run("/bin/sh", "python3", ["-c", "exec python3 \"$0\" < \"$1\"", script, file]);
            return JsonSerializer.Deserialize<Answer>(answer, JsonSerializerOptions.Web)!;
        }
        finally
        {
            File.Delete(file);
        }
    }

    private sealed record Answer(string[] Roots, string[][] Inclusion, string[][] Consistency, string Leaf, string Head);
}

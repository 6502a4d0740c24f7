using CsCheck;
using Training.Documents.IssueLog;

namespace Training.Documents.Tests.IssueLog;

public sealed class LogAuditTests
{
    private const int Size = 100;

    [Fact]
    public void A_log_that_nobody_touched_has_no_findings() => Assert.Empty(Audit(Log(), Heads(Size)));

    [Fact]
    public void A_flipped_byte_in_a_leaf_is_named() =>
        Gen.Int[0, Size - 1].Sample(
            index =>
            {
                var log = Log();
                log.Rows[index].Leaf[0] ^= 1;

                Assert.Equal(new LogFinding.LeafChanged(index), Audit(log, [])[0]);
            },
            iter: 50);

    [Fact]
    public void A_flipped_byte_in_any_stored_hash_is_named()
    {
        foreach (var (index, row) in Log().Rows.Index())
        foreach (var level in Enumerable.Range(0, row.Hashes.Length))
        {
            var log = Log();
            var bytes = row.Hashes[level].ToArray();
            bytes[index % LogHash.Size] ^= 0x80;
            log.Rows[index].Hashes[level] = new(bytes);

            LogFinding expected = level == 0 ? new LogFinding.LeafChanged(index) : new LogFinding.NodeChanged(new(level, index >> level));
            Assert.Equal([expected], Audit(log, Heads(Size)));
        }
    }

    [Fact]
    public void A_hash_that_is_missing_from_a_row_is_named()
    {
        var log = Log();
        log.Rows[7] = (log.Rows[7].Leaf, log.Rows[7].Hashes[..^1]);

        Assert.Equal([new LogFinding.NodesMissing(7)], Audit(log, []));
    }

    [Fact]
    public void A_cut_tail_is_found_by_a_head_that_was_saved_before() =>
        Gen.Int[0, Size - 1].Sample(
            kept =>
            {
                var whole = Log();
                var head = new TreeHead(Size, whole.Root, At);

                Assert.Equal([new LogFinding.Truncated(kept, head)], Audit(new(StoredLog.Leaves(Size)[..kept]), [head]));
            },
            iter: 50);

    [Fact]
    public void A_log_rewritten_with_all_its_hashes_is_found_by_a_saved_head_behind_the_change_and_not_by_one_before_it()
    {
        var leaves = StoredLog.Leaves(Size);
        leaves[40][0] ^= 1;
        var rewritten = new StoredLog(leaves);
        var heads = Heads(40, 41, 60);

        Assert.Equal([new LogFinding.RootDiffers(new StoredLog(leaves[..41]).Root, heads[1])], Audit(rewritten, heads));
    }

    private static readonly DateTimeOffset At = new(2026, 11, 25, 18, 0, 0, TimeSpan.Zero);

    private static StoredLog Log() => new(StoredLog.Leaves(Size));

    private static TreeHead[] Heads(params int[] sizes) => [.. sizes.Select(size => new TreeHead(size, new StoredLog(StoredLog.Leaves(size)).Root, At))];

    private static IReadOnlyList<LogFinding> Audit(StoredLog log, IReadOnlyList<TreeHead> saved)
    {
        var audit = new LogAudit(saved);
        foreach (var (leaf, hashes) in log.Rows) audit.Add(leaf, hashes);
        return audit.Finish();
    }
}

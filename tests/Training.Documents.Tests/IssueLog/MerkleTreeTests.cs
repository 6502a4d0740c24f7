using CsCheck;
using Training.Documents.IssueLog;

namespace Training.Documents.Tests.IssueLog;

public sealed class MerkleTreeTests
{
    public static TheoryData<int> Sizes => [.. Enumerable.Range(0, 9)];

    [Theory, MemberData(nameof(Sizes))]
    public void The_root_is_the_published_one(int size) =>
        Assert.Equal(PublishedRoots.Roots[size], new StoredLog(PublishedRoots.Leaves[..size]).Root.ToString());

    [Fact]
    public void The_root_of_every_size_is_the_one_of_the_RFC_s_recursive_definition()
    {
        var leaves = StoredLog.Leaves(300);
        var log = new StoredLog([]);

        foreach (var (index, leaf) in leaves.Index())
        {
            Assert.Equal(SlowTree.Mth(leaves.AsSpan(0, index)), log.Root.ToArray());
            log.Append(leaf);
        }
    }

    [Fact]
    public void An_inclusion_proof_is_the_RFC_s_and_leads_to_the_root_from_its_own_leaf_alone() =>
        Gen.Int[1, 700].SelectMany(size => Gen.Int[0, size - 1], (size, index) => (size, index)).Sample(
            (size, index) =>
            {
                var leaves = StoredLog.Leaves(size);
                var log = new StoredLog(leaves);

                var proof = InclusionProof.Make(index, size, log.Node);

                Assert.Equal(SlowTree.Path(index, leaves), proof.Path.Select(hash => hash.ToArray()));
                Assert.True(proof.Proves(MerkleTree.HashLeaf(leaves[index]), log.Root));
                Assert.False(proof.Proves(MerkleTree.HashLeaf([0xff]), log.Root));
                Assert.False(proof.Proves(MerkleTree.HashLeaf(leaves[index]), MerkleTree.EmptyRoot));
            },
            iter: 400);

    [Fact]
    public void A_consistency_proof_is_the_RFC_s_and_leads_to_both_roots_alone() =>
        Gen.Int[1, 700].SelectMany(size => Gen.Int[1, size], (size, old) => (size, old)).Sample(
            (size, old) =>
            {
                var leaves = StoredLog.Leaves(size);
                var log = new StoredLog(leaves);
                var oldRoot = new StoredLog(leaves[..old]).Root;

                var proof = ConsistencyProof.Make(old, size, log.Node);

                Assert.Equal(SlowTree.Proof(old, leaves), proof.Path.Select(hash => hash.ToArray()));
                Assert.True(proof.Proves(oldRoot, log.Root));
                Assert.False(proof.Proves(MerkleTree.EmptyRoot, log.Root));
                Assert.False(proof.Proves(oldRoot, MerkleTree.EmptyRoot));
            },
            iter: 400);

    [Fact]
    public void No_proof_holds_with_a_hash_changed_left_out_or_added_or_with_another_place()
    {
        var leaves = StoredLog.Leaves(43);
        var log = new StoredLog(leaves);
        foreach (var index in Enumerable.Range(0, 43))
        {
            var proof = InclusionProof.Make(index, 43, log.Node);
            var leaf = MerkleTree.HashLeaf(leaves[index]);
            Assert.All(Damaged(proof.Path), path => Assert.False((proof with { Path = path }).Proves(leaf, log.Root)));
            Assert.All(Enumerable.Range(-1, 50).Where(other => other != index), other => Assert.False((proof with { Index = other }).Proves(leaf, log.Root)));
        }

        foreach (var old in Enumerable.Range(1, 43))
        {
            var proof = ConsistencyProof.Make(old, 43, log.Node);
            var oldRoot = new StoredLog(leaves[..old]).Root;
            Assert.All(Damaged(proof.Path), path => Assert.False((proof with { Path = path }).Proves(oldRoot, log.Root)));
            Assert.All(Enumerable.Range(-1, 46).Where(other => other != old), other => Assert.False((proof with { OldSize = other }).Proves(oldRoot, log.Root)));
        }
    }

    [Fact]
    public void A_path_that_is_longer_than_its_tree_is_high_proves_nothing()
    {
        var log = new StoredLog(StoredLog.Leaves(2));
        var second = log.Node(new(0, 1));

        // The way of the second of two leaves, passed off as that of the only one.
        Assert.False(new InclusionProof(0, 1, [log.Node(new(0, 0))]).Proves(second, log.Root));
    }

    [Fact]
    public void What_is_no_size_is_no_proof_and_ends()
    {
        LogHash[] path = [MerkleTree.EmptyRoot];

        foreach (var (small, large) in new[] { (0L, 0L), (-1, 5), (5, -1), (long.MinValue, long.MaxValue), (1, long.MaxValue), (0, long.MaxValue), (long.MaxValue, long.MaxValue) })
        {
            Assert.False(new InclusionProof(small, large, path).Proves(path[0], path[0]));
            Assert.False(new ConsistencyProof(small, large, path).Proves(path[0], path[0]));
        }
    }

    [Fact]
    public void A_proof_says_beforehand_which_rows_it_needs_and_they_are_few()
    {
        const long Size = 1_000_003;
        var asked = new List<LogNode>();

        InclusionProof.Make(654_321, Size, Remember);
        Assert.Equal(asked, InclusionProof.NodesFor(654_321, Size));
        Assert.InRange(asked.Count, 15, 40);
        Assert.All(asked, node => Assert.InRange(node.CompletedBy, 0, Size - 1));

        asked.Clear();
        ConsistencyProof.Make(654_321, Size, Remember);
        Assert.Equal(asked, ConsistencyProof.NodesFor(654_321, Size));
        Assert.InRange(asked.Count, 15, 60);

        LogHash Remember(LogNode node)
        {
            asked.Add(node);
            return default;
        }
    }

    [Fact]
    public void A_stored_tree_of_any_size_is_taken_up_where_it_ended() =>
        Gen.Int[0, 300].Sample(
            size =>
            {
                var leaves = StoredLog.Leaves(size + 1);
                var log = new StoredLog(leaves[..size]);

                var frontier = MerkleFrontier.Read(size, log.Node);
                Assert.Equal((size, log.Root), (frontier.Size, frontier.Root));
                frontier.Append(MerkleTree.HashLeaf(leaves[size]));
                Assert.Equal(SlowTree.Mth(leaves), frontier.Root.ToArray());
            },
            iter: 200);

    [Fact]
    public void A_million_leaves_are_appended_with_ten_thousand_roots_on_the_way()
    {
        var frontier = new MerkleFrontier();
        var stored = 0;
        var clock = System.Diagnostics.Stopwatch.StartNew();

        for (var number = 0; number < 1_000_000; number++)
        {
            stored += frontier.Append(MerkleTree.HashLeaf(BitConverter.GetBytes(number))).Count;
            if (number % 100 == 0) _ = frontier.Root;
        }

        // 2n less the bits of n: at most two hashes a row on average. The bound is loose: machines that run tests are busy.
        Assert.Equal(2_000_000 - int.PopCount(1_000_000), stored);
        Assert.InRange(clock.Elapsed, TimeSpan.Zero, TimeSpan.FromSeconds(60));
    }

    private static IEnumerable<LogHash[]> Damaged(IReadOnlyList<LogHash> path)
    {
        yield return [.. path, MerkleTree.EmptyRoot];
        yield return [MerkleTree.EmptyRoot, .. path];
        foreach (var at in Enumerable.Range(0, path.Count))
        {
            yield return [.. path.Take(at), .. path.Skip(at + 1)];
            var bytes = path[at].ToArray();
            bytes[at % LogHash.Size] ^= 1;
            yield return [.. path.Take(at), new(bytes), .. path.Skip(at + 1)];
        }
    }
}

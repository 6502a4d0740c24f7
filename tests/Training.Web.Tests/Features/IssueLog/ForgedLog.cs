using Microsoft.EntityFrameworkCore;
using Training.Documents.IssueLog;
using Training.Records;

namespace Training.Web.Tests.Features.IssueLog;

/// <summary>Does to a stored log what whoever has the database can do.</summary>
internal static class ForgedLog
{
    /// <summary>Flips a bit of a leaf and leaves everything else.</summary>
    public static async Task FlipAsync(this RecordsContext records, long index)
    {
        var leaf = (await records.LogLeaves.AsNoTracking().SingleAsync(row => row.Index == index)).Leaf;
        leaf[20] ^= 1;
        await records.LogLeaves.Where(row => row.Index == index).ExecuteUpdateAsync(set => set.SetProperty(row => row.Leaf, leaf));
    }

    /// <summary>Changes a leaf and computes every hash again that follows from it.</summary>
    public static async Task RewriteAsync(this RecordsContext records, long index)
    {
        var edge = new MerkleFrontier();
        foreach (var row in await records.LogLeaves.AsNoTracking().OrderBy(row => row.Index).ToListAsync())
        {
            if (row.Index == index) row.Leaf[20] ^= 1;
            byte[] hashes = [.. edge.Append(MerkleTree.HashLeaf(row.Leaf)).SelectMany(hash => hash.ToArray())];
            await records.LogLeaves.Where(other => other.Index == row.Index)
                .ExecuteUpdateAsync(set => set.SetProperty(other => other.Leaf, row.Leaf).SetProperty(other => other.Hashes, hashes));
        }
    }

    /// <summary>Takes away one leaf and what opens it.</summary>
    public static async Task TakeOutAsync(this RecordsContext records, long index)
    {
        await records.LogOpenings.Where(row => row.LeafIndex == index).ExecuteDeleteAsync();
        await records.LogLeaves.Where(row => row.Index == index).ExecuteDeleteAsync();
    }

    /// <summary>Takes away the leaves from one on, what opens them, and every head over them.</summary>
    public static async Task CutAsync(this RecordsContext records, long from)
    {
        await records.LogOpenings.Where(row => row.LeafIndex >= from).ExecuteDeleteAsync();
        await records.LogLeaves.Where(row => row.Index >= from).ExecuteDeleteAsync();
        await records.TreeHeads.Where(row => row.Size > from).ExecuteDeleteAsync();
    }
}

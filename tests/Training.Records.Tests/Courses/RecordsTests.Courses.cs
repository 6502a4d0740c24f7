using Microsoft.EntityFrameworkCore;

namespace Training.Records.Tests;

public abstract partial class RecordsTests
{
    [Fact]
    public async Task The_last_good_text_of_a_course_serves_and_earlier_ones_stay()
    {
        var cast = await Cast.CreateAsync(Database);
        var (second, third) = (Cast.NewHash(), Cast.NewHash());
        await using var records = Database.Open();

        await records.KeepSnapshotAsync(cast.CourseId, second, "second", Cast.Now, Cancellation);
        await records.KeepSnapshotAsync(cast.CourseId, third, "third — ñ", Cast.Now, Cancellation);
        await records.KeepSnapshotAsync(cast.CourseId, third, "third — ñ", Cast.Now.AddDays(1), Cancellation);

        var good = Assert.Single(await records.LastGoodSnapshotsAsync(Cancellation), snapshot => snapshot.CourseId == cast.CourseId);
        Assert.Equal(new GoodSnapshot(cast.CourseId, third, "third — ñ", Cast.Now), good);
        Assert.Equal("second", await records.FindSnapshotAsync(second, Cancellation));
        Assert.Null(await records.FindSnapshotAsync(Cast.NewHash(), Cancellation));
    }

    [Fact]
    public async Task A_text_that_comes_back_is_in_force_again_without_a_second_copy()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        await records.KeepSnapshotAsync(cast.CourseId, Cast.NewHash(), "second", Cast.Now, Cancellation);

        await records.KeepSnapshotAsync(cast.CourseId, cast.CourseHash, "snapshot", Cast.Now.AddDays(2), Cancellation);

        var good = Assert.Single(await records.LastGoodSnapshotsAsync(Cancellation), snapshot => snapshot.CourseId == cast.CourseId);
        Assert.Equal((cast.CourseHash, Cast.Now.AddDays(2)), (good.Hash, good.SinceAt));
        Assert.Equal(3, await records.CoursesInForce.CountAsync(row => row.CourseId == cast.CourseId, Cancellation));
    }

    [Fact]
    public async Task Ten_nodes_that_load_a_new_text_at_once_put_it_in_force_once()
    {
        var cast = await Cast.CreateAsync(Database);
        var hash = Cast.NewHash();

        await Task.WhenAll(Enumerable.Range(0, 10).Select(_ => Task.Run(async () =>
        {
            await using var node = Database.Open();
            await node.KeepSnapshotAsync(cast.CourseId, hash, "new", Cast.Now, Cancellation);
        })));

        await using var records = Database.Open();
        Assert.Equal(1, await records.CoursesInForce.CountAsync(row => row.Hash == hash, Cancellation));
    }

    [Fact]
    public async Task A_hash_with_other_content_is_no_content_address()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();

        await Assert.ThrowsAsync<ArgumentException>(() => records.KeepSnapshotAsync(cast.CourseId, cast.CourseHash, "forged", Cast.Now, Cancellation));
    }
}

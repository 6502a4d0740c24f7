using Microsoft.EntityFrameworkCore;

namespace Training.Records.Tests;

/// <summary>What must hold alike on every engine; one derived class an engine. Every test owns its rows.</summary>
public abstract partial class RecordsTests(TestDatabase database) : IAsyncLifetime
{
    protected TestDatabase Database => database;

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    public ValueTask InitializeAsync()
    {
        if (database.Options is null) Assert.Skip("SQL Server: not run");
        return ValueTask.CompletedTask;
    }

    public ValueTask DisposeAsync()
    {
        GC.SuppressFinalize(this);
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task Migrating_again_does_nothing()
    {
        await using var records = database.Open();
        var before = await records.Database.GetAppliedMigrationsAsync(Cancellation);

        await records.Database.MigrateAsync(Cancellation);

        Assert.NotEmpty(before);
        Assert.Equal(before, await records.Database.GetAppliedMigrationsAsync(Cancellation));
        Assert.Empty(await records.Database.GetPendingMigrationsAsync(Cancellation));
    }

    [Fact]
    public async Task Two_who_change_a_row_at_once_do_not_overwrite_each_other()
    {
        var cast = await Cast.CreateAsync(database);
        await using var mine = database.Open();
        await using var theirs = database.Open();
        var read = await mine.Persons.SingleAsync(person => person.Id == cast.Worker, Cancellation);
        var readToo = await theirs.Persons.SingleAsync(person => person.Id == cast.Worker, Cancellation);

        read.Language = Courses.Language.Spanish;
        await mine.SaveChangesAsync(Cancellation);
        readToo.Language = Courses.Language.English;

        // English is what they read, so only the version tells that it changed meanwhile.
        theirs.Entry(readToo).Property(person => person.Language).IsModified = true;
        await Assert.ThrowsAsync<DbUpdateConcurrencyException>(() => theirs.SaveChangesAsync(Cancellation));
    }

    [Fact]
    public async Task Text_longer_than_its_column_is_refused_on_every_engine()
    {
        await using var records = database.Open();
        records.Add(new Employer { Id = Guid.CreateVersion7(), Name = new('x', Bounds.Name + 1) });

        await Assert.ThrowsAsync<ArgumentException>(() => records.SaveChangesAsync(Cancellation));
    }

    [Fact]
    public async Task Instants_read_back_in_utc_cut_to_the_millisecond()
    {
        var cast = await Cast.CreateAsync(database);
        var hash = Cast.NewHash();
        await using var records = database.Open();

        await records.KeepSnapshotAsync(
            cast.CourseId, hash, "text", new DateTimeOffset(2026, 3, 1, 9, 30, 15, TimeSpan.FromHours(-7)).AddTicks(1_239_999), Cancellation);

        var kept = await records.CourseSnapshots.AsNoTracking().SingleAsync(snapshot => snapshot.Hash == hash, Cancellation);
        Assert.Equal(new DateTimeOffset(2026, 3, 1, 16, 30, 15, 123, TimeSpan.Zero), kept.FirstLoadedAt);
        Assert.Equal(TimeSpan.Zero, kept.FirstLoadedAt.Offset);
        Assert.True(await records.CourseSnapshots.AnyAsync(
            snapshot => snapshot.Hash == hash && snapshot.FirstLoadedAt < kept.FirstLoadedAt.AddMilliseconds(1), Cancellation));
    }
}

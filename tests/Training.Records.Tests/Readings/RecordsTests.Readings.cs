using Training.Courses;

namespace Training.Records.Tests;

public abstract partial class RecordsTests
{
    [Fact]
    public async Task A_part_read_twice_is_kept_once_as_it_was_read_first()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();

        await records.KeepAsync(Reading(cast, "kit", Cast.Now), Cancellation);
        await records.KeepAsync(Reading(cast, "kit", Cast.Now.AddDays(1)), Cancellation);

        Assert.Equal([new("kit", Cast.Now)], await records.ReadModulesAsync(cast.Worker, cast.CourseId, Cancellation));
    }

    [Fact]
    public async Task A_new_text_of_the_course_is_read_anew_and_counts_as_one_part()
    {
        var cast = await Cast.CreateAsync(Database);
        var newer = Cast.NewHash();
        await using var records = Database.Open();
        await records.KeepSnapshotAsync(cast.CourseId, newer, "snapshot", Cast.Now, Cancellation);

        await records.KeepAsync(Reading(cast, "kit", Cast.Now), Cancellation);
        await records.KeepAsync(Reading(cast, "kit", Cast.Now.AddDays(1), newer), Cancellation);
        await records.KeepAsync(Reading(cast, "bite", Cast.Now), Cancellation);

        var read = await records.ReadModulesAsync(cast.Worker, cast.CourseId, Cancellation);
        Assert.Equal([new("bite", Cast.Now), new("kit", Cast.Now.AddDays(1))], read.OrderBy(part => part.ModuleId, StringComparer.Ordinal));
        Assert.Equal(2, (await records.ReadModuleCountsAsync(cast.Worker, Cancellation))[cast.CourseId]);
    }

    [Fact]
    public async Task What_one_person_read_is_read_by_nobody_else()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();

        await records.KeepAsync(Reading(cast, "kit", Cast.Now), Cancellation);

        Assert.Empty(await records.ReadModulesAsync(cast.Instructor, cast.CourseId, Cancellation));
        Assert.Empty(await records.ReadModuleCountsAsync(cast.Instructor, Cancellation));
    }

    [Fact]
    public async Task Ten_presses_at_once_are_one_reading()
    {
        var cast = await Cast.CreateAsync(Database);

        await Task.WhenAll(Enumerable.Range(0, 10).Select(_ => Task.Run(async () =>
        {
            await using var records = Database.Open();
            await records.KeepAsync(Reading(cast, "kit", Cast.Now), Cancellation);
        })));

        await using var read = Database.Open();
        Assert.Single(await read.ReadModulesAsync(cast.Worker, cast.CourseId, Cancellation));
    }

    private static ModuleReading Reading(Cast cast, string moduleId, DateTimeOffset at, string? hash = null) => new()
    {
        PersonId = cast.Worker, CourseHash = hash ?? cast.CourseHash, ModuleId = moduleId, CourseId = cast.CourseId, Language = Language.Spanish, ReadAt = at,
    };
}

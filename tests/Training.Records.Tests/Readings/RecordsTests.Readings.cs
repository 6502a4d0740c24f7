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

        Assert.Equal([new("kit", Cast.Now)], (await records.ReadModulesAsync(cast.Worker, Cancellation))[cast.CourseId]);
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

        var read = (await records.ReadModulesAsync(cast.Worker, Cancellation))[cast.CourseId];
        Assert.Equal([new("bite", Cast.Now), new("kit", Cast.Now.AddDays(1))], read.OrderBy(part => part.ModuleId, StringComparer.Ordinal));
    }

    [Fact]
    public async Task What_one_person_read_is_read_by_nobody_else()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();

        await records.KeepAsync(Reading(cast, "kit", Cast.Now), Cancellation);

        Assert.Empty(await records.ReadModulesAsync(cast.Instructor, Cancellation));
    }

    [Fact]
    public async Task A_part_about_a_site_is_read_there_alone()
    {
        var cast = await Cast.CreateAsync(Database);
        var other = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var reading = new SiteReading
        {
            PersonId = cast.Worker, SiteId = cast.Site, CourseHash = cast.CourseHash, ModuleId = "site-plan", CourseId = cast.CourseId,
            Language = Language.Spanish, ReadAt = Cast.Now,
        };

        await records.KeepAsync(reading, Cancellation);
        await records.KeepAsync(reading, Cancellation);

        Assert.Equal([(cast.CourseId, "site-plan")], await records.ReadAtSiteAsync(cast.Worker, cast.Site, Cancellation));
        Assert.Empty(await records.ReadAtSiteAsync(cast.Worker, other.Site, Cancellation));
        Assert.Empty(await records.ReadAtSiteAsync(cast.Instructor, cast.Site, Cancellation));
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
        Assert.Single((await read.ReadModulesAsync(cast.Worker, Cancellation))[cast.CourseId]);
    }

    private static ModuleReading Reading(Cast cast, string moduleId, DateTimeOffset at, string? hash = null) => new()
    {
        PersonId = cast.Worker, CourseHash = hash ?? cast.CourseHash, ModuleId = moduleId, CourseId = cast.CourseId, Language = Language.Spanish, ReadAt = at,
    };
}

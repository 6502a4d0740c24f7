using Microsoft.EntityFrameworkCore;

namespace Training.Records.Tests;

public abstract partial class RecordsTests
{
    private static async Task<Guid> NewClassAsync(RecordsContext records, Cast cast)
    {
        var day = new ClassRecord { Id = Guid.CreateVersion7(), SiteId = cast.Site, HeldOn = Cast.Today, CourseId = cast.CourseId, Capacity = 8 };
        return Assert.IsType<Kept.Stored>(await records.KeepAsync(day, Cancellation)).Id;
    }

    [Fact]
    public async Task Of_many_who_want_a_seat_at_once_as_many_get_one_as_there_are()
    {
        var cast = await Cast.CreateAsync(Database);
        Guid day;
        var people = Enumerable.Range(0, 12).Select(_ => Guid.CreateVersion7()).ToList();
        await using (var records = Database.Open())
        {
            records.AddRange(people.Select(id => new Person { Id = id, Language = Courses.Language.English }));
            await records.SaveChangesAsync(Cancellation);
            day = await NewClassAsync(records, cast);
        }

        var kept = await Task.WhenAll(people.Select(person => Task.Run(async () =>
        {
            await using var records = Database.Open();
            return await records.AttendAsync(day, person, Cancellation);
        })));

        Assert.Equal(8, kept.OfType<Kept.Stored>().Count());
        Assert.All(kept.OfType<Kept.Refused>(), refused => Assert.Equal([RecordsProblems.ClassFull], Codes(refused)));
        await using var read = Database.Open();
        Assert.Equal(8, await read.ClassAttendances.CountAsync(row => row.ClassId == day, Cancellation));
    }

    [Fact]
    public async Task One_person_has_one_seat()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var day = await NewClassAsync(records, cast);

        Assert.IsType<Kept.Stored>(await records.AttendAsync(day, cast.Worker, Cancellation));
        Assert.IsType<Kept.AlreadyStored>(await records.AttendAsync(day, cast.Worker, Cancellation));
        Assert.Equal([RecordsProblems.ClassUnknown], Codes(await records.AttendAsync(Guid.CreateVersion7(), cast.Worker, Cancellation)));
        Assert.Equal([RecordsProblems.PersonUnknown], Codes(await records.AttendAsync(day, Guid.CreateVersion7(), Cancellation)));
    }

    [Fact]
    public async Task Only_an_instructor_in_force_on_the_day_teaches_or_scores()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var day = await NewClassAsync(records, cast);

        Assert.IsType<Kept.Stored>(await records.TeachAsync(day, cast.Instructor, Cancellation));
        Assert.IsType<Kept.AlreadyStored>(await records.TeachAsync(day, cast.Instructor, Cancellation));
        Assert.IsType<Kept.Stored>(await records.LetScoreAsync(day, cast.Instructor, Cancellation));
        Assert.Equal([RecordsProblems.NotAnInstructor], Codes(await records.TeachAsync(day, cast.Lead, Cancellation)));
        Assert.Equal([RecordsProblems.NotAnInstructor], Codes(await records.LetScoreAsync(day, cast.Worker, Cancellation)));
    }

    [Fact]
    public async Task The_same_class_again_is_the_stored_one_and_another_under_its_id_is_refused()
    {
        var cast = await Cast.CreateAsync(Database);
        var id = Guid.CreateVersion7();
        ClassRecord Day(int seats, Guid? site = null) =>
            new() { Id = id, SiteId = site ?? cast.Site, HeldOn = Cast.Today, CourseId = cast.CourseId, Capacity = seats };
        await using var records = Database.Open();

        Assert.IsType<Kept.Stored>(await records.KeepAsync(Day(6), Cancellation));
        Assert.IsType<Kept.AlreadyStored>(await records.KeepAsync(Day(6), Cancellation));
        Assert.Equal([RecordsProblems.OtherContent], Codes(await records.KeepAsync(Day(7), Cancellation)));
        Assert.Equal([RecordsProblems.SiteUnknown], Codes(await records.KeepAsync(Day(6, Guid.CreateVersion7()), Cancellation)));
    }
}

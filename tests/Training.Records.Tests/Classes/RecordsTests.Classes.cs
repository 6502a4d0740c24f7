using Microsoft.EntityFrameworkCore;

namespace Training.Records.Tests;

public abstract partial class RecordsTests
{
    [Fact]
    public async Task Of_many_who_want_a_seat_at_once_as_many_get_one_as_there_are()
    {
        var cast = await Cast.CreateAsync(Database);
        var people = Enumerable.Range(0, 12).Select(_ => Guid.CreateVersion7()).ToList();
        await using (var records = Database.Open())
        {
            records.AddRange(people.Select(id => new Person { Id = id, Language = Courses.Language.English }));
            await records.SaveChangesAsync(Cancellation);
        }

        var kept = await Task.WhenAll(people.Select(person => Task.Run(async () =>
        {
            await using var records = Database.Open();
            return await records.AttendAsync(cast.Class, person, Cancellation);
        })));

        Assert.Equal(8, kept.OfType<Kept.Stored>().Count());
        Assert.All(kept.OfType<Kept.Refused>(), refused => Assert.Equal([RecordsProblems.ClassFull], Codes(refused)));
        await using var read = Database.Open();
        Assert.Equal(8, await read.ClassAttendances.CountAsync(row => row.ClassId == cast.Class, Cancellation));
    }

    [Fact]
    public async Task One_person_has_one_seat()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();

        Assert.IsType<Kept.Stored>(await records.AttendAsync(cast.Class, cast.Worker, Cancellation));
        Assert.IsType<Kept.AlreadyStored>(await records.AttendAsync(cast.Class, cast.Worker, Cancellation));
        Assert.Equal([RecordsProblems.ClassUnknown], Codes(await records.AttendAsync(Guid.CreateVersion7(), cast.Worker, Cancellation)));
        Assert.Equal([RecordsProblems.PersonUnknown], Codes(await records.AttendAsync(cast.Class, Guid.CreateVersion7(), Cancellation)));
    }

    [Fact]
    public async Task Only_an_instructor_in_force_on_the_day_teaches_or_scores()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();

        Assert.IsType<Kept.Stored>(await records.TeachAsync(cast.Class, cast.Instructor, Cancellation));
        Assert.IsType<Kept.AlreadyStored>(await records.TeachAsync(cast.Class, cast.Instructor, Cancellation));
        Assert.IsType<Kept.Stored>(await records.LetScoreAsync(cast.Class, cast.Instructor, Cancellation));
        Assert.Equal([RecordsProblems.NotAnInstructor], Codes(await records.TeachAsync(cast.Class, cast.Lead, Cancellation)));
        Assert.Equal([RecordsProblems.NotAnInstructor], Codes(await records.LetScoreAsync(cast.Class, cast.Worker, Cancellation)));
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

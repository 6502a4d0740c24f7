using System.Data.Common;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;
using Training.Courses;

namespace Training.Records.Tests;

public abstract partial class RecordsTests
{
    private static readonly DateOnly LongAgo = new(2020, 1, 1);

    [Fact]
    public async Task An_employed_person_has_name_badge_site_and_crew_of_the_day()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var crew = new Crew { Id = Guid.CreateVersion7(), SiteId = cast.Site, Name = "Crew A" };
        records.AddRange(
            crew,
            new PersonName { Id = Guid.CreateVersion7(), PersonId = cast.Worker, Text = "Íñigo Peña-Ruiz O’Dowd", StartsOn = Cast.Today },
            new PersonName { Id = Guid.CreateVersion7(), PersonId = cast.Worker, Text = "Not yet", StartsOn = Cast.Today.AddDays(1) },
            Employ(cast, cast.Employer, LongAgo, null),
            new Badge { Id = Guid.CreateVersion7(), PersonId = cast.Worker, EmployerId = cast.Employer, Number = "M-0417", StartsOn = LongAgo },
            Assignment(cast, LongAgo, null),
            new CrewAssignment { Id = Guid.CreateVersion7(), PersonId = cast.Worker, CrewId = crew.Id, StartsOn = LongAgo });
        await records.SaveChangesAsync(Cancellation);

        var employed = Assert.Single(await Employed(records, cast.Employer, Cast.Today));

        Assert.Equal(new(cast.Worker, "Íñigo Peña-Ruiz O’Dowd", "M-0417", cast.Site, "Block 7", "Crew A"), employed);
        Assert.Equal("Íñigo Peña-Ruiz", Assert.Single(await Employed(records, cast.Employer, Cast.Today.AddDays(-1))).Name);
    }

    public static TheoryData<int, bool> Days_after_an_employment_of_ten_days => new() { { -1, false }, { 0, true }, { 9, true }, { 10, false } };

    [Theory, MemberData(nameof(Days_after_an_employment_of_ten_days))]
    public async Task Who_is_not_employed_that_day_is_not_among_the_people(int after, bool isEmployed)
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        records.Add(Employ(cast, cast.Employer, Cast.Today, Cast.Today.AddDays(9)));
        await records.SaveChangesAsync(Cancellation);

        Assert.Equal(isEmployed, (await Employed(records, cast.Employer, Cast.Today.AddDays(after))).Count == 1);
    }

    [Fact]
    public async Task What_another_employer_has_about_the_same_person_stays_there()
    {
        var (cast, other) = (await Cast.CreateAsync(Database), await Cast.CreateAsync(Database));
        await using var records = Database.Open();
        var crew = new Crew { Id = Guid.CreateVersion7(), SiteId = other.Site, Name = "Night" };
        records.AddRange(
            crew,
            Employ(cast, cast.Employer, LongAgo, null),
            Employ(cast, other.Employer, LongAgo, null),
            new Badge { Id = Guid.CreateVersion7(), PersonId = cast.Worker, EmployerId = other.Employer, Number = "X-1", StartsOn = LongAgo },
            new SiteAssignment { Id = Guid.CreateVersion7(), PersonId = cast.Worker, SiteId = other.Site, StartsOn = LongAgo },
            new CrewAssignment { Id = Guid.CreateVersion7(), PersonId = cast.Worker, CrewId = crew.Id, StartsOn = LongAgo });
        await records.SaveChangesAsync(Cancellation);

        Assert.Equal(
            new(cast.Worker, "Íñigo Peña-Ruiz", null, null, null, null), Assert.Single(await Employed(records, cast.Employer, Cast.Today)));
        Assert.Equal("Night", Assert.Single(await Employed(records, other.Employer, Cast.Today)).CrewName);
    }

    [Fact]
    public async Task Class_days_ahead_are_the_employers_own_with_the_seats_that_nobody_has()
    {
        var (cast, other) = (await Cast.CreateAsync(Database), await Cast.CreateAsync(Database));
        await using var records = Database.Open();
        var later = new ClassRecord { Id = Guid.CreateVersion7(), SiteId = cast.Site, HeldOn = Cast.Today.AddDays(7), CourseId = cast.CourseId, Capacity = 1 };
        records.AddRange(
            later,
            new ClassAttendance { ClassId = later.Id, PersonId = cast.Worker },
            new ClassAttendance { ClassId = later.Id, PersonId = cast.Lead });
        await records.SaveChangesAsync(Cancellation);

        var ahead = await records.ClassesAheadAsync(cast.Employer, Cast.Today, Cancellation);

        Assert.Equal(
            [new(cast.Class, cast.CourseId, Cast.Today, "Block 7", 7), new(later.Id, cast.CourseId, Cast.Today.AddDays(7), "Block 7", 0)], ahead);
        Assert.Equal(later.Id, Assert.Single(await records.ClassesAheadAsync(cast.Employer, Cast.Today.AddDays(1), Cancellation)).Id);
        Assert.DoesNotContain(ahead, day => day.Id == other.Class);
        Assert.Equal(
            [new SeatAhead(cast.Worker, cast.CourseId, Cast.Today), new(cast.Worker, cast.CourseId, Cast.Today.AddDays(7))],
            await records.SeatsAheadAsync([cast.Worker], Cast.Today, Cancellation));
        Assert.Equal(later.HeldOn, Assert.Single(await records.SeatsAheadAsync([cast.Worker], Cast.Today.AddDays(1), Cancellation)).HeldOn);
    }

    [Fact]
    public async Task Files_of_several_people_are_each_their_own()
    {
        var (one, other) = (await Cast.CreateAsync(Database), await Cast.CreateAsync(Database));
        foreach (var cast in new[] { one, other }) await cast.KeepGrantedAsync(Database);
        await using var records = Database.Open();
        records.Add(new ClassTeaching { ClassId = one.Class, InstructorId = one.Instructor });
        await records.SaveChangesAsync(Cancellation);

        var files = await records.PersonFilesAsync([one.Worker, other.Worker, one.Lead], Cancellation);

        foreach (var cast in new[] { one, other })
        {
            var alone = (await records.FindCaseFileAsync(cast.Worker, SchemeOf(cast), Cancellation))!;
            Assert.Equal(alone.Evidence, files[cast.Worker].Evidence);
            Assert.Equal(alone.TaughtBy, files[cast.Worker].TaughtBy);
            Assert.Equal(alone.Held.Select(held => held.SchemeId), files[cast.Worker].Under(SchemeOf(cast)).Held.Select(held => held.SchemeId));
        }

        Assert.Equal([new(one.Class, one.Worker, one.Instructor, Cast.Today)], files[one.Worker].TaughtBy);
        Assert.Empty(files[other.Worker].TaughtBy);
        Assert.Empty(files[one.Lead].Held);
    }

    [Theory, InlineData(1), InlineData(40)]
    public async Task However_many_people_there_are_the_queries_are_as_many(int people)
    {
        var cast = await Cast.CreateAsync(Database);
        var ids = Enumerable.Range(0, people).Select(_ => Guid.CreateVersion7()).ToList();
        await using (var writing = Database.Open())
        {
            writing.AddRange(ids.Select(id => new Person { Id = id, Language = Language.English }));
            writing.AddRange(ids.Select(id => Employ(cast, cast.Employer, LongAgo, null, id)));
            await writing.SaveChangesAsync(Cancellation);
        }

        var asked = new CountedQueries();
        await using var records = Database.Open(asked);
        var employed = records.Employments.Where(row => row.EmployerId == cast.Employer).Select(row => row.PersonId);

        Assert.Equal(people, (await records.EmployedAsync(ids, cast.Employer, Cast.Today, Cancellation)).Count);
        await records.HeldCertificationsAsync(employed, Cancellation);
        Assert.Equal(people, (await records.PersonFilesAsync(ids, Cancellation)).Count);
        Assert.Equal(1 + 3 + 6, asked.Count);
    }

    [Fact]
    public async Task More_files_than_one_page_shows_are_refused()
    {
        await using var records = Database.Open();
        var tooMany = Enumerable.Range(0, PersonFileQueries.MostFiles + 1).Select(_ => Guid.CreateVersion7()).ToList();

        await Assert.ThrowsAsync<ArgumentOutOfRangeException>(() => records.PersonFilesAsync(tooMany, Cancellation));
    }

    private static Task<IReadOnlyList<EmployedPerson>> Employed(RecordsContext records, Guid employerId, DateOnly day) =>
        records.PeopleAsync(new() { EmployerId = employerId, Day = day }, 0, 100, Cancellation);

    private static Employment Employ(Cast cast, Guid employerId, DateOnly startsOn, DateOnly? endsOn, Guid? personId = null) => new()
    {
        Id = Guid.CreateVersion7(), PersonId = personId ?? cast.Worker, EmployerId = employerId, StartsOn = startsOn, EndsOn = endsOn,
    };

    private sealed class CountedQueries : DbCommandInterceptor
    {
        public int Count { get; private set; }

        public override ValueTask<InterceptionResult<DbDataReader>> ReaderExecutingAsync(
            DbCommand command, CommandEventData eventData, InterceptionResult<DbDataReader> result, CancellationToken cancellationToken = default)
        {
            Count++;
            return new(result);
        }
    }
}

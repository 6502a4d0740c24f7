using Microsoft.EntityFrameworkCore;

namespace Training.Records.Tests;

public abstract partial class RecordsTests
{
    public static TheoryData<DateOnly, DateOnly?, bool> Beside_an_assignment_of_may => new()
    {
        { new(2026, 4, 1), new(2026, 4, 30), true },     // ends the day before
        { new(2026, 4, 1), new(2026, 5, 1), false },     // shares the first day
        { new(2026, 5, 31), null, false },               // shares the last day
        { new(2026, 6, 1), null, true },                 // starts the day after
        { new(2026, 4, 1), null, false },                // still lasts
        { new(2026, 5, 10), new(2026, 5, 10), false },   // one day within
    };

    [Theory, MemberData(nameof(Beside_an_assignment_of_may))]
    public async Task A_person_is_on_one_site_at_a_time(DateOnly startsOn, DateOnly? endsOn, bool isKept)
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        await records.KeepAsync(Assignment(cast, new(2026, 5, 1), new(2026, 5, 31)), Cancellation);

        var kept = await records.KeepAsync(Assignment(cast, startsOn, endsOn), Cancellation);

        if (isKept) Assert.IsType<Kept.Stored>(kept);
        else Assert.Equal([RecordsProblems.Overlap], Codes(kept));
    }

    [Fact]
    public async Task Of_ten_overlapping_assignments_at_once_one_is_kept()
    {
        var cast = await Cast.CreateAsync(Database);

        var kept = await Task.WhenAll(Enumerable.Range(1, 10).Select(day => Task.Run(async () =>
        {
            await using var records = Database.Open();
            return await records.KeepAsync(Assignment(cast, new(2026, 5, day), null), Cancellation);
        })));

        Assert.Single(kept.OfType<Kept.Stored>());
        Assert.Equal(9, kept.OfType<Kept.Refused>().Count());
        await using var read = Database.Open();
        Assert.Equal(1, await read.SiteAssignments.CountAsync(row => row.PersonId == cast.Worker, Cancellation));
    }

    [Fact]
    public async Task The_same_row_again_is_the_stored_one_and_a_row_that_ends_before_it_starts_is_refused()
    {
        var cast = await Cast.CreateAsync(Database);
        var row = Assignment(cast, new(2026, 5, 1), null);
        await using var records = Database.Open();

        Assert.Equal(new Kept.Stored(row.Id), await records.KeepAsync(row, Cancellation));
        Assert.Equal(new Kept.AlreadyStored(row.Id), await records.KeepAsync(row, Cancellation));
        Assert.Equal([RecordsProblems.EndsBeforeStart], Codes(await records.KeepAsync(Assignment(cast, new(2026, 5, 2), new(2026, 5, 1)), Cancellation)));
    }

    [Fact]
    public async Task Two_employers_at_once_are_two_employments()
    {
        var cast = await Cast.CreateAsync(Database);
        var other = await Cast.CreateAsync(Database);
        await using var records = Database.Open();

        foreach (var employer in new[] { cast.Employer, other.Employer })
        {
            Assert.IsType<Kept.Stored>(await records.KeepAsync(
                new Employment { Id = Guid.CreateVersion7(), PersonId = cast.Worker, EmployerId = employer, StartsOn = Cast.Today }, Cancellation));
        }
    }

    [Fact]
    public async Task A_badge_number_names_one_person_of_an_employer_whatever_its_case()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        await records.KeepAsync(Badge(cast, cast.Worker, "ab-é7"), Cancellation);

        Assert.Equal([RecordsProblems.BadgeTaken], Codes(await records.KeepAsync(Badge(cast, cast.Lead, " AB-É7"), Cancellation)));
        Assert.Equal(cast.Worker, await records.FindPersonByBadgeAsync(cast.Employer, "Ab-É7 ", Cancellation));
        Assert.Null(await records.FindPersonByBadgeAsync(cast.Site, "AB-É7", Cancellation));
    }

    [Fact]
    public async Task The_index_forbids_a_badge_number_of_two_people()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        records.AddRange(Badge(cast, cast.Worker, "x1"), Badge(cast, cast.Lead, "X1"));

        var refused = await Assert.ThrowsAsync<DbUpdateException>(() => records.SaveChangesAsync(Cancellation));

        Assert.True(UniqueViolation.Is(refused));
    }

    [Fact]
    public async Task Site_and_name_are_those_of_the_day()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        await records.KeepAsync(Assignment(cast, new(2026, 5, 1), new(2026, 5, 31)), Cancellation);
        records.Add(new PersonName { Id = Guid.CreateVersion7(), PersonId = cast.Worker, Text = "Íñigo Ruiz", StartsOn = new(2026, 5, 20) });
        await records.SaveChangesAsync(Cancellation);

        Assert.Equal("America/Phoenix", (await records.FindSiteAsync(cast.Worker, new(2026, 5, 31), Cancellation))!.Zone);
        Assert.Null(await records.FindSiteAsync(cast.Worker, new(2026, 6, 1), Cancellation));
        Assert.Equal("Íñigo Peña-Ruiz", (await records.FindNameAsync(cast.Worker, new(2026, 5, 19), Cancellation))!.Text);
        Assert.Equal("Íñigo Ruiz", (await records.FindNameAsync(cast.Worker, new(2026, 5, 20), Cancellation))!.Text);
    }

    [Fact]
    public async Task An_appointment_keeps_its_languages_and_ends_after_its_last_day()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var row = await records.Appointments.SingleAsync(appointment => appointment.PersonId == cast.Instructor, Cancellation);
        row.EndsOn = Cast.Today;
        await records.SaveChangesAsync(Cancellation);

        Assert.Equal([Courses.Language.English, Courses.Language.Spanish], row.Languages);
        Assert.True(await records.IsAppointedAsync(cast.Instructor, AppointedRole.Instructor, Cast.Today, Cancellation));
        Assert.False(await records.IsAppointedAsync(cast.Instructor, AppointedRole.Instructor, Cast.Today.AddDays(1), Cancellation));
        Assert.False(await records.IsAppointedAsync(cast.Instructor, AppointedRole.ProgrammeLead, Cast.Today, Cancellation));
    }

    private static SiteAssignment Assignment(Cast cast, DateOnly startsOn, DateOnly? endsOn) =>
        new() { Id = Guid.CreateVersion7(), PersonId = cast.Worker, SiteId = cast.Site, StartsOn = startsOn, EndsOn = endsOn };

    private static Badge Badge(Cast cast, Guid person, string number) =>
        new() { Id = Guid.CreateVersion7(), PersonId = person, EmployerId = cast.Employer, Number = number, StartsOn = Cast.Today };
}

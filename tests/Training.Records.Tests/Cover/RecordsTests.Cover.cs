using Training.Certification;

namespace Training.Records.Tests;

public abstract partial class RecordsTests
{
    private static CoverNeed NeedOf(Cast cast, int handlers, DateOnly? from = null, Guid? id = null, Guid? crew = null, int minute = 0) => new()
    {
        Id = id ?? Guid.CreateVersion7(), SiteId = cast.Site, CrewId = crew, SchemeId = cast.CourseId, Handlers = handlers, StartsOn = from ?? new(2026, 1, 1),
        SetById = cast.Lead, KeptAt = Cast.Now.AddMinutes(minute),
    };

    /// <summary>The worker, employed and assigned, holds the scheme through 4 May 2027.</summary>
    private async Task<Cast> HandlerAtSiteAsync()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        records.Add(new Employment { Id = Guid.CreateVersion7(), PersonId = cast.Worker, EmployerId = cast.Employer, StartsOn = new(2024, 1, 1), EndsOn = new(2026, 12, 31) });
        records.Add(new SiteAssignment { Id = Guid.CreateVersion7(), PersonId = cast.Worker, SiteId = cast.Site, StartsOn = new(2024, 1, 1), EndsOn = new(2027, 6, 30) });
        await records.SaveChangesAsync(Cancellation);
        records.ChangeTracker.Clear();
        Assert.IsType<Kept.Stored>(await records.KeepAsync(cast.Granted(1, [await cast.KeepPassedSittingAsync(Database)]), Cast.Now, Cancellation));
        return cast;
    }

    [Fact]
    public async Task A_need_is_kept_once_and_of_two_for_one_day_the_later_serves()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var id = Guid.CreateVersion7();

        Assert.IsType<Kept.Stored>(await records.KeepAsync(NeedOf(cast, 2, id: id), Cancellation));
        Assert.IsType<Kept.AlreadyStored>(await records.KeepAsync(NeedOf(cast, 2, id: id), Cancellation));
        Assert.Equal([RecordsProblems.OtherContent], Codes(await records.KeepAsync(NeedOf(cast, 3, id: id), Cancellation)));
        Assert.IsType<Kept.Stored>(await records.KeepAsync(NeedOf(cast, 4, minute: 5), Cancellation));
        Assert.IsType<Kept.Stored>(await records.KeepAsync(NeedOf(cast, 1, new(2026, 6, 1), minute: 6), Cancellation));

        var place = Assert.Single(await records.CoverPlacesAsync(cast.Employer, Cancellation));
        Assert.Equal([(new DateOnly(2026, 1, 1), 4), (new(2026, 6, 1), 1)], place.Needs.Select(need => (need.StartsOn, need.Handlers)));
    }

    [Fact]
    public async Task A_need_of_a_crew_of_another_site_is_refused()
    {
        var cast = await Cast.CreateAsync(Database);
        var other = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var crew = new Crew { Id = Guid.CreateVersion7(), SiteId = other.Site, Name = "Night" };
        records.Add(crew);
        await records.SaveChangesAsync(Cancellation);
        records.ChangeTracker.Clear();

        Assert.Equal([RecordsProblems.CrewUnknown], Codes(await records.KeepAsync(NeedOf(cast, 2, crew: crew.Id), Cancellation)));
        Assert.IsType<Kept.Stored>(await records.KeepAsync(NeedOf(other, 2, crew: crew.Id), Cancellation));
    }

    [Fact]
    public async Task Facts_hold_who_counts_while_employed_and_assigned_and_their_seats()
    {
        var cast = await HandlerAtSiteAsync();
        await using var records = Database.Open();
        await records.KeepAsync(NeedOf(cast, 1), Cancellation);

        var facts = await records.CoverFactsAsync(cast.Employer, Cast.Today, Cast.Today.AddYears(1), Cancellation);

        var person = Assert.Single(facts.People);
        Assert.Equal((cast.Worker, cast.CourseId), (person.Held.PersonId, person.Held.SchemeId));
        Assert.Equal([new DaySpan(new(2024, 1, 1), new(2026, 12, 31))], person.At(facts.Places[0]));
        Assert.Equal([Cast.Today], facts.Seats[cast.Worker].Select(seat => seat.HeldOn));
    }

    [Fact]
    public async Task Facts_say_from_when_a_hold_keeps_somebody_off_handling()
    {
        var cast = await HandlerAtSiteAsync();
        await using var records = Database.Open();
        await records.KeepAsync(NeedOf(cast, 1), Cancellation);
        records.AddRange(ReviewRecord.OfPerson(ReviewCause.NearMiss, Guid.CreateVersion7(), cast.Worker, cast.Site, Cast.Today, Cast.Now).WithHold());
        await records.SaveChangesAsync(Cancellation);

        var facts = await records.CoverFactsAsync(cast.Employer, Cast.Today, Cast.Today.AddYears(1), Cancellation);

        Assert.Equal([new DaySpan(Cast.Today, null)], Assert.Single(facts.People).HeldOff);
    }

    [Fact]
    public async Task Nobody_is_read_for_an_employer_without_a_need_or_of_another_employer()
    {
        var cast = await HandlerAtSiteAsync();
        var other = await Cast.CreateAsync(Database);
        await using var records = Database.Open();

        Assert.Empty((await records.CoverFactsAsync(cast.Employer, Cast.Today, Cast.Today.AddYears(1), Cancellation)).People);
        await records.KeepAsync(NeedOf(other, 1), Cancellation);
        Assert.Empty((await records.CoverFactsAsync(other.Employer, Cast.Today, Cast.Today.AddYears(1), Cancellation)).People);
    }
}

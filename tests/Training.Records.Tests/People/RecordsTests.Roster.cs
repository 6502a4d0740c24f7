using Microsoft.EntityFrameworkCore;
using Training.Courses;

namespace Training.Records.Tests;

public abstract partial class RecordsTests
{
    private static NewPerson Somebody(Cast cast, string? badge = null, Guid? site = null) => new(
        Guid.CreateVersion7(), "Solveig Amaro Quist", Language.Spanish, Cast.Today,
        new(cast.Employer, badge ?? $"N-{Guid.CreateVersion7():N}", site ?? cast.Site));

    [Fact]
    public async Task Somebody_new_is_kept_whole_or_not_at_all()
    {
        var cast = await Cast.CreateAsync(Database);
        var somebody = Somebody(cast);
        await using var records = Database.Open();

        Assert.Equal(new Kept.Stored(somebody.Id), await records.RegisterAsync(somebody, Cancellation));
        var taken = Somebody(cast, somebody.Work!.Badge);
        Assert.Equal([RecordsProblems.BadgeTaken], Codes(await records.RegisterAsync(taken, Cancellation)));
        var elsewhere = Somebody(cast, site: Guid.CreateVersion7());
        Assert.Equal([RecordsProblems.SiteUnknown], Codes(await records.RegisterAsync(elsewhere, Cancellation)));

        await using var read = Database.Open();
        Assert.False(await read.Persons.AnyAsync(person => person.Id == taken.Id || person.Id == elsewhere.Id, Cancellation));
        Assert.Equal(somebody.Id, await read.FindPersonByBadgeAsync(cast.Employer, somebody.Work!.Badge, Cancellation));
        Assert.Equal(cast.Site, (await read.FindSiteAsync(somebody.Id, Cast.Today, Cancellation))?.Id);
        Assert.Equal("Solveig Amaro Quist", (await read.NamesOfAsync([somebody.Id], Cast.Today.AddDays(-5), Cancellation))[somebody.Id]);
    }

    [Fact]
    public async Task One_of_the_providers_own_people_is_kept_without_work()
    {
        var own = new NewPerson(Guid.CreateVersion7(), "Wanda Trujillo", Language.English, Cast.Today, Work: null);
        await using var records = Database.Open();

        Assert.Equal(new Kept.Stored(own.Id), await records.RegisterAsync(own, Cancellation));
        Assert.Equal(new Kept.AlreadyStored(own.Id), await records.RegisterAsync(own, Cancellation));

        Assert.Equal("Wanda Trujillo", (await records.FindNameAsync(own.Id, Cast.Today, Cancellation))?.Text);
        Assert.False(await records.Employments.AnyAsync(row => row.PersonId == own.Id, Cancellation));
    }

    [Fact]
    public async Task The_same_person_again_is_the_stored_one_and_another_under_the_id_is_refused()
    {
        var cast = await Cast.CreateAsync(Database);
        var somebody = Somebody(cast);

        var kept = await Task.WhenAll(Enumerable.Range(0, 5).Select(_ => Task.Run(async () =>
        {
            await using var records = Database.Open();
            return await records.RegisterAsync(somebody, Cancellation);
        })));

        Assert.Single(kept.OfType<Kept.Stored>());
        Assert.Equal(4, kept.OfType<Kept.AlreadyStored>().Count());
        await using var read = Database.Open();
        Assert.Equal([RecordsProblems.OtherContent], Codes(await read.RegisterAsync(somebody with { Name = "Anselm Pike" }, Cancellation)));
    }

    [Fact]
    public async Task Work_elsewhere_ends_the_site_before_and_keeps_a_badge_that_stays()
    {
        var cast = await Cast.CreateAsync(Database);
        var somebody = Somebody(cast);
        var site = new Site { Id = Guid.CreateVersion7(), EmployerId = cast.Employer, Name = "Block 8", Zone = "America/Denver", Region = "US" };
        await using var records = Database.Open();
        await records.RegisterAsync(somebody, Cancellation);
        Assert.IsType<Kept.Stored>(await records.KeepAsync(site, Cancellation));

        var kept = await records.KeepAsync(
            new NewWork(somebody.Id, Cast.Today.AddDays(30), cast.Employer, somebody.Work!.Badge.ToLowerInvariant(), site.Id), Cancellation);

        Assert.IsType<Kept.Stored>(kept);
        Assert.Equal(cast.Site, (await records.FindSiteAsync(somebody.Id, Cast.Today.AddDays(29), Cancellation))?.Id);
        Assert.Equal(site.Id, (await records.FindSiteAsync(somebody.Id, Cast.Today.AddDays(30), Cancellation))?.Id);
        Assert.Null(Assert.Single(await records.Badges.AsNoTracking().Where(row => row.PersonId == somebody.Id).ToListAsync(Cancellation)).EndsOn);
    }

    [Fact]
    public async Task Employers_and_sites_have_names_of_their_own()
    {
        var cast = await Cast.CreateAsync(Database);
        var employer = new Employer { Id = Guid.CreateVersion7(), Name = $"Dry Fork {cast.Lead}" };
        Site Named(string name, Guid? id = null) =>
            new() { Id = id ?? Guid.CreateVersion7(), EmployerId = employer.Id, Name = name, Zone = "America/Denver", Region = "US" };
        var site = Named("Bench 1");
        await using var records = Database.Open();

        Assert.IsType<Kept.Stored>(await records.KeepAsync(employer, Cancellation));
        Assert.IsType<Kept.AlreadyStored>(await records.KeepAsync(employer, Cancellation));
        Assert.Equal(
            [RecordsProblems.NameTaken],
            Codes(await records.KeepAsync(new Employer { Id = Guid.CreateVersion7(), Name = employer.Name.ToUpperInvariant() }, Cancellation)));
        Assert.IsType<Kept.Stored>(await records.KeepAsync(site, Cancellation));
        Assert.IsType<Kept.AlreadyStored>(await records.KeepAsync(Named("Bench 1", site.Id), Cancellation));
        Assert.Equal([RecordsProblems.NameTaken], Codes(await records.KeepAsync(Named(" bench 1"), Cancellation)));
    }
}

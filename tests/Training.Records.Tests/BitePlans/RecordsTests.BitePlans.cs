using Microsoft.EntityFrameworkCore;

namespace Training.Records.Tests;

public abstract partial class RecordsTests
{
    private static BitePlan APlan(Cast cast, DateTimeOffset at, string words = "Gate 2, code 4417") => new()
    {
        Id = Guid.CreateVersion7(), SiteId = cast.Site, LeadId = cast.Lead, KeptAt = at, CheckedOn = Cast.Today, ReviewOn = Cast.Today.AddDays(90),
        Latitude = 34.89512m, Longitude = -117.02244m, AccessWords = words,
        Hospitals =
        [
            new("Sagebrush District Hospital", "18 Juniper Street; 760-555-0119", 25, new("seis frascos, “quizá”", "Núria Peña", new(2026, 10, 2))),
            new("Ocotillo Regional", "200 Mesa Avenue", 70, null),
        ],
    };

    private static EmergencyNumbers SomeNumbers(Cast cast, DateTimeOffset at) => new()
    {
        Id = Guid.CreateVersion7(), SiteId = cast.Site, LeadId = cast.Lead, KeptAt = at, CheckedOn = Cast.Today, EmergencyServices = "911",
        PoisonControl = "1-800-222-1222", OnSite = "Radio 4", WithoutSignal = "Radio 4: control calls",
    };

    [Fact]
    public async Task A_bite_plan_is_read_as_it_was_kept_and_the_newest_serves()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var (first, second) = (APlan(cast, Cast.Now), APlan(cast, Cast.Now.AddMinutes(1), "Gate 3"));
        Assert.Null(await records.FindBitePlanAsync(cast.Site, Cancellation));

        await records.KeepAsync(first, SomeNumbers(cast, Cast.Now), Cancellation);
        var kept = await records.FindBitePlanAsync(cast.Site, Cancellation);
        await records.KeepAsync(second, SomeNumbers(cast, Cast.Now.AddMinutes(1)), Cancellation);

        Assert.Equivalent(first, kept, strict: true);
        Assert.Equal("Gate 3", (await records.FindBitePlanAsync(cast.Site, Cancellation))?.AccessWords);
        Assert.Equal("Gate 3", Assert.Single(await records.BitePlansOfAsync([cast.Site, Guid.CreateVersion7()], Cancellation)).Value.AccessWords);
        Assert.Equal(2, await records.BitePlans.CountAsync(plan => plan.SiteId == cast.Site, Cancellation));
    }

    [Fact]
    public async Task The_same_form_twice_is_one_plan_with_one_set_of_numbers()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var plan = APlan(cast, Cast.Now);

        await records.KeepAsync(plan, SomeNumbers(cast, Cast.Now), Cancellation);
        await records.KeepAsync(plan, SomeNumbers(cast, Cast.Now.AddMinutes(1)), Cancellation);

        Assert.Equal(1, await records.BitePlans.CountAsync(row => row.SiteId == cast.Site, Cancellation));
        Assert.Equal(1, await records.EmergencyNumbers.CountAsync(row => row.SiteId == cast.Site, Cancellation));
    }

    [Fact]
    public async Task An_address_of_a_plan_is_found_by_its_secret_alone_and_its_first_end_stays()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var secret = AddressSecret.New();
        var address = new BitePlanAddress
        {
            Id = Guid.CreateVersion7(), SecretHash = AddressSecret.HashOf(secret), SiteId = cast.Site, MadeFor = "The gate", LeadId = cast.Lead, MadeAt = Cast.Now,
        };

        Assert.True(await records.TryKeepAsync(address, Cancellation));
        Assert.False(await records.TryKeepAsync(address, Cancellation));
        Assert.Null(await records.FindBitePlanAddressAsync(AddressSecret.New(), Cancellation));
        Assert.Null((await records.FindBitePlanAddressAsync(secret, Cancellation))!.EndedAt); // not null: kept above
        foreach (var minutes in new[] { 1, 2 })
            await records.EndAsync(new BitePlanAddressEnd { AddressId = address.Id, EndedAt = Cast.Now.AddMinutes(minutes), EndedById = cast.Lead }, Cancellation);

        Assert.Equal(Cast.Now.AddMinutes(1), (await records.FindBitePlanAddressAsync(secret, Cancellation))!.EndedAt); // not null: kept above
        Assert.Equal("The gate", Assert.Single(await records.BitePlanAddressesAsync(cast.Site, Cancellation)).Address.MadeFor);
        Assert.DoesNotContain(secret, address.SecretHash, StringComparison.Ordinal);
    }
}

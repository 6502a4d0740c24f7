namespace Training.Records.Tests;

/// <summary>The table of docs/rules.md, "Status lists", through the code that leads use.</summary>
public abstract partial class RecordsTests
{
    // Noon in Phoenix, which is seven hours behind UTC all year.
    private static DateTimeOffset NoonOf(DateOnly day) => new(day, new TimeOnly(19, 0), TimeSpan.Zero);

    [Fact]
    public async Task A_suspension_sets_a_place_on_the_days_that_it_touches()
    {
        var cast = await Cast.CreateAsync(Database);
        var place = await PlaceAsync(await cast.KeepGrantedAsync(Database), cast);
        await using var records = Database.Open();
        var (from, on) = (Cast.Today.AddDays(10), Cast.Today.AddDays(20));

        Assert.IsType<Kept.Stored>(await records.SuspendAsync(
            Guid.CreateVersion7(), cast.Worker, cast.CourseId, new(from, cast.Lead, "Seen alone.", from.AddDays(14), null), Cast.Now, Cancellation));
        Assert.False(await IsSuspendedAsync(records, NoonOf(from.AddDays(-1)), place));
        Assert.True(await IsSuspendedAsync(records, NoonOf(from), place));
        Assert.True(await IsSuspendedAsync(records, NoonOf(on.AddDays(400)), place));

        Assert.IsType<Kept.Stored>(await records.ReinstateAsync(cast.Worker, cast.CourseId, new(on, cast.Lead, "Trained again."), Cast.Now, Cancellation));
        Assert.True(await IsSuspendedAsync(records, NoonOf(on), place));
        Assert.False(await IsSuspendedAsync(records, NoonOf(on.AddDays(1)), place));
        Assert.DoesNotContain(place, await records.RevokedPlacesAsync(NoonOf(on), Cancellation));
    }

    [Fact]
    public async Task The_day_is_that_of_the_zone_of_the_decision()
    {
        var cast = await Cast.CreateAsync(Database);
        var place = await PlaceAsync(await cast.KeepGrantedAsync(Database), cast);
        await using var records = Database.Open();
        var from = Cast.Today.AddDays(10);
        await records.SuspendAsync(
            Guid.CreateVersion7(), cast.Worker, cast.CourseId, new(from, cast.Lead, "Seen alone.", from.AddDays(14), null), Cast.Now, Cancellation);

        var midnight = new DateTimeOffset(from, new TimeOnly(7, 0), TimeSpan.Zero);
        Assert.False(await IsSuspendedAsync(records, midnight.AddMilliseconds(-1), place));
        Assert.True(await IsSuspendedAsync(records, midnight, place));
    }

    [Fact]
    public async Task A_withdrawal_revokes_the_papers_of_its_day_for_good_and_none_that_is_granted_later()
    {
        var cast = await Cast.CreateAsync(Database);
        var (first, renewed) = (await cast.KeepGrantedAsync(Database), await cast.KeepGrantedAsync(Database, number: 2));
        int[] before = [await PlaceAsync(first, cast), await PlaceAsync(renewed, cast)];
        await using var records = Database.Open();
        var on = Cast.Today.AddDays(3);

        Assert.IsType<Kept.Stored>(await records.WithdrawAsync(
            Guid.CreateVersion7(), cast.Worker, cast.CourseId, new(on, cast.Lead, cast.OtherLead, "False sheet."), Cast.Now, Cancellation));
        Assert.Empty((await records.RevokedPlacesAsync(NoonOf(on.AddDays(-1)), Cancellation)).Intersect(before));
        Assert.Equal(before.Order(), (await records.RevokedPlacesAsync(NoonOf(on), Cancellation)).Intersect(before).Order());

        var made = cast.Granted(3, [await cast.KeepPassedSittingAsync(Database)], on.AddDays(1));
        Assert.IsType<Kept.Stored>(await records.KeepAsync(made, Cast.Now, Cancellation));
        var after = await PlaceAsync(made, cast);
        var revoked = await records.RevokedPlacesAsync(NoonOf(on.AddDays(1)), Cancellation);
        Assert.Equal(before.Order(), revoked.Intersect([.. before, after]).Order());
    }

    [Fact]
    public async Task A_revision_revokes_the_paper_whose_place_it_takes_and_a_renewal_does_not()
    {
        var cast = await Cast.CreateAsync(Database);
        var made = await cast.KeepGrantedAsync(Database);
        var (first, second) = (Paper(made, cast, NewSerial()), Paper(made, cast, NewSerial()) with { Revision = 2 });
        await using var records = Database.Open();
        await records.IssueAsync(first, Cast.Now, Cancellation);
        Assert.DoesNotContain(first.StatusIndex, await records.RevokedPlacesAsync(Cast.Now, Cancellation));

        await records.IssueAsync(second, Cast.Now, Cancellation);
        await PlaceAsync(await cast.KeepGrantedAsync(Database, number: 2), cast);

        var revoked = await records.RevokedPlacesAsync(Cast.Now, Cancellation);
        Assert.Contains(first.StatusIndex, revoked);
        Assert.DoesNotContain(second.StatusIndex, revoked);
    }

    [Fact]
    public async Task Every_paper_ever_issued_counts_for_the_size_of_the_lists()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var before = await records.PlacesGivenAsync(Cancellation);

        var place = await PlaceAsync(await cast.KeepGrantedAsync(Database), cast);

        // Other tests of this class own rows too.
        Assert.True(await records.PlacesGivenAsync(Cancellation) > before);
        Assert.True(await records.IsPlaceGivenAsync(place, Cancellation));
        Assert.False(await records.IsPlaceGivenAsync(-1, Cancellation));
    }

    [Fact]
    public async Task The_life_of_two_papers_is_that_of_the_table()
    {
        var cast = await Cast.CreateAsync(Database);
        var first = await PlaceAsync(await cast.KeepGrantedAsync(Database), cast);
        await using var records = Database.Open();
        await records.SuspendAsync(
            Guid.CreateVersion7(), cast.Worker, cast.CourseId, new(new(2026, 5, 14), cast.Lead, "Seen alone.", new(2026, 5, 28), null), Cast.Now, Cancellation);
        await records.ReinstateAsync(cast.Worker, cast.CourseId, new(new(2026, 5, 24), cast.Lead, "Trained again."), Cast.Now, Cancellation);
        await records.WithdrawAsync(
            Guid.CreateVersion7(), cast.Worker, cast.CourseId, new(new(2026, 6, 1), cast.Lead, cast.OtherLead, "False sheet."), Cast.Now, Cancellation);
        var again = cast.Granted(2, [await cast.KeepPassedSittingAsync(Database)], new(2026, 6, 2));
        await records.KeepAsync(again, Cast.Now, Cancellation);
        var second = await PlaceAsync(again, cast);

        foreach (var (day, place, revoked, suspended) in new (DateOnly, int, bool, bool)[]
        {
            (new(2026, 5, 13), first, false, false),
            (new(2026, 5, 14), first, false, true),
            (new(2026, 5, 24), first, false, true),
            (new(2026, 5, 25), first, false, false),
            (new(2026, 6, 1), first, true, false),
            (new(2026, 6, 2), first, true, false),
            (new(2027, 6, 2), first, true, false),
            (new(2026, 6, 2), second, false, false),
        })
        {
            var isRevoked = (await records.RevokedPlacesAsync(NoonOf(day), Cancellation)).Contains(place);
            Assert.Equal((day, revoked, suspended), (day, isRevoked, await IsSuspendedAsync(records, NoonOf(day), place)));
        }
    }

    private static async Task<bool> IsSuspendedAsync(RecordsContext records, DateTimeOffset now, int place) =>
        (await records.SuspendedPlacesAsync(now, Cancellation)).Contains(place);

    private async Task<int> PlaceAsync(MadeDecision made, Cast cast)
    {
        var paper = Paper(made, cast, NewSerial());
        await using var records = Database.Open();
        Assert.IsType<Issue.Issued>(await records.IssueAsync(paper, Cast.Now, Cancellation));
        return paper.StatusIndex;
    }
}

using System.Diagnostics;
using Microsoft.EntityFrameworkCore;

namespace Training.Records.Tests;

/// <summary>Times are taken while no other test of this project runs.</summary>
[CollectionDefinition(DisableParallelization = true)]
public sealed class Timed;

/// <summary>A large employer's roster on the embedded engine.</summary>
[Collection(typeof(Timed))]
public sealed class RosterSpeedTests(SqliteDatabase database) : IClassFixture<SqliteDatabase>
{
    private const int Rows = 50_000;

    [Fact]
    public async Task Fifty_thousand_rows_are_applied_in_under_a_minute()
    {
        var cast = await Cast.CreateAsync(database);
        var roster = new Roster(
            [
                .. Enumerable.Range(0, Rows).Select(number => new RosterRow(
                    number + 2, $"A-{number}", $"Solveig Amaro {number}", cast.Site, "Block 7", $"Crew {number % 200}", null, $"a{number}@example.org", Cast.Today)),
            ],
            SaysCrew: true, SaysMailAddress: true);

        await AssertQuickAsync(cast, roster, RosterScope.Part);
        await AssertQuickAsync(cast, roster with { Rows = [.. roster.Rows.Select(row => row with { Name = $"{row.Name} Quist", Crew = "One" })] }, RosterScope.Part);
        await AssertQuickAsync(cast, roster with { Rows = [] }, RosterScope.Whole);

        await using var records = database.Open();
        Assert.Equal(Rows, await records.Badges.CountAsync(badge => badge.EmployerId == cast.Employer, TestContext.Current.CancellationToken));
    }

    private async Task AssertQuickAsync(Cast cast, Roster roster, RosterScope scope)
    {
        var cancellation = TestContext.Current.CancellationToken;
        await using var records = database.Open();
        var upload = new RosterUpload
        {
            Id = Guid.CreateVersion7(), FormId = Guid.CreateVersion7(), EmployerId = cast.Employer, SentById = cast.Lead, SentAt = Cast.Now,
            FileName = "roster.csv", Content = [1], Sha256 = new('a', 64),
        };
        await records.KeepAsync(upload, cancellation);
        var fingerprint = RosterDifference.Between(await records.RosterPeopleAsync(cast.Employer, Cast.Today, cancellation), roster).Fingerprint();
        var watch = Stopwatch.StartNew();

        Assert.IsType<Kept.Stored>(await records.ApplyAsync(
            new(upload.Id, cast.Employer, roster, Cast.Today, fingerprint, scope, cast.Lead, Cast.Now), cancellation));

        TestContext.Current.SendDiagnosticMessage($"{roster.Rows.Count} rows, {scope}: {watch.Elapsed.TotalSeconds:0.0} s");
        Assert.InRange(watch.Elapsed.TotalSeconds, 0, 60);
    }
}

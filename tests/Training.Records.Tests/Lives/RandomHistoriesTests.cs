using System.Globalization;
using System.Security.Cryptography;
using Training.Certification;
using Training.Courses;

namespace Training.Records.Tests;

/// <summary>Standing on past days, in a database of its own: so many people would crowd the lists that other tests read.</summary>
public abstract class RandomHistoriesTests(TestDatabase database) : IAsyncLifetime
{
    private const int Chunk = 5_000;

    // SQLite answers for all engines: the rules run in memory, and the other engines show that they give the same rows.
    private int RandomHistories => database.Options!.Engine == DatabaseEngine.Sqlite ? 100_000 : 2_000;

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    public ValueTask InitializeAsync()
    {
        if (database.Options is null) Assert.Skip("SQL Server: not run");
        return ValueTask.CompletedTask;
    }

    public ValueTask DisposeAsync()
    {
        GC.SuppressFinalize(this);
        return ValueTask.CompletedTask;
    }

    /// <summary>Outside check: <see cref="SlowHistory"/> lives through every day of the same history. <c>TEST_SEED</c> repeats a run.</summary>
    [Fact]
    public async Task Current_on_that_day_agrees_with_a_slow_reference_on_100000_random_histories()
    {
        var seed = ulong.TryParse(Environment.GetEnvironmentVariable("TEST_SEED"), CultureInfo.InvariantCulture, out var given)
            ? given
            : BitConverter.ToUInt64(RandomNumberGenerator.GetBytes(8));
        var numbers = new RandomNumbers(seed);
        var cast = await Cast.CreateAsync(database);
        var seen = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var done = 0; done < RandomHistories; done += Chunk)
        {
            RandomHistory[] histories =
                [.. Enumerable.Range(0, Math.Min(Chunk, RandomHistories - done)).Select(_ => RandomHistory.Make(numbers, cast.CourseHash, cast.Lead, cast.OtherLead))];
            await InsertAsync(histories);
            foreach (var batch in histories.Chunk(PersonFileQueries.MostFiles))
            {
                await using var records = database.Open();
                var kept = (await records.KeptCertificationsAsync([.. batch.Select(history => history.PersonId)], Cancellation)).ToDictionary(one => one.PersonId);
                foreach (var history in batch)
                {
                    foreach (var day in history.DaysToAsk()) Compare(history, kept[history.PersonId], day, seed, seen);
                }
            }
        }

        // Agreement on something that no history reached would be worth nothing.
        string[] kinds =
        [
            "Current", "RenewalDue", "Lapsed", "Suspended", "Withdrawn", "before the first", "seen otherwise", "known of nothing", "two suspensions",
            "period 2 or later", "period after a withdrawal", "last day 28 or 29 February",
        ];
        Assert.All(kinds, kind => Assert.True(seen.GetValueOrDefault(kind) >= RandomHistories / 200, $"seed {seed}, {kind}: {seen.GetValueOrDefault(kind)}"));
    }

    private static void Compare(RandomHistory history, KeptCertification kept, DateOnly day, ulong seed, Dictionary<string, int> seen)
    {
        var now = SlowHistory.Live(history.Acts, day.DayNumber, int.MaxValue);
        var then = SlowHistory.Live(history.Acts, day.DayNumber, day.DayNumber);
        var answer = StandingOnDay.Of(kept, day);

        var told = new SlowState(
            answer.Standing, answer.Period?.Period.Number ?? 0,
            answer.Suspension is { } suspension ? history.Suspensions.Single(row => row.Id == suspension.Id).Number : 0,
            answer.Withdrawal?.Withdrawal.On.DayNumber ?? 0);
        var isSame = told == now && answer.KnownThen == then.Standing
            && answer.Later.Count == history.Acts.Count(act => act.Day <= day.DayNumber && act.KnownDay > day.DayNumber);
        if (!isSame) Assert.Fail($"TEST_SEED={seed}\n{history}\non {day:O}: {told}, known as {answer.KnownThen}, later {answer.Later.Count}; by the slow reference {now}, known as {then.Standing}");
        Assert.Equal(now.Standing is Standing.Current or Standing.RenewalDue, answer.IsCurrent);

        void See(string kind, bool isSeen = true) => seen[kind] = seen.GetValueOrDefault(kind) + (isSeen ? 1 : 0);
        See(answer.Standing?.ToString() ?? "before the first");
        See("seen otherwise", answer.WasSeenOtherwise);
        See("known of nothing", answer.Standing is not null && answer.KnownThen is null);
        See("two suspensions", answer.Suspension is not null && history.Suspensions.Count > 1);
        See("period 2 or later", now.Period > 1);
        See("period after a withdrawal", now.Period > 1 && history.Withdrawals.Exists(row => row.WithdrawnOn < answer.Period!.Period.StartsOn)); // not null: it has a number
        See("last day 28 or 29 February", answer.Period?.Period.ExpiresOn is { Month: 2, Day: >= 28 });
    }

    private async Task InsertAsync(RandomHistory[] histories)
    {
        await using var records = database.Open();
        await using var whole = await records.Database.BeginTransactionAsync(Cancellation);
        await records.InsertAsync(histories.Select(history => new Person { Id = history.PersonId, Language = Language.English }), Cancellation);
        await records.InsertAsync(histories.SelectMany(history => history.Decisions), Cancellation);
        await records.InsertAsync(histories.SelectMany(history => history.Periods), Cancellation);
        await records.InsertAsync(histories.SelectMany(history => history.Suspensions), Cancellation);
        await records.InsertAsync(histories.SelectMany(history => history.Reinstatements), Cancellation);
        await records.InsertAsync(histories.SelectMany(history => history.Withdrawals), Cancellation);
        await whole.CommitAsync(Cancellation);
    }
}

public sealed class SqliteHistoriesTests(SqliteDatabase database) : RandomHistoriesTests(database), IClassFixture<SqliteDatabase>;

public sealed class PostgresHistoriesTests(PostgresDatabase database) : RandomHistoriesTests(database), IClassFixture<PostgresDatabase>;

public sealed class SqlServerHistoriesTests(SqlServerDatabase database) : RandomHistoriesTests(database), IClassFixture<SqlServerDatabase>;

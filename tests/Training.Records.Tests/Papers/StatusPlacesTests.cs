using System.Diagnostics;
using Training.Certification;
using Training.Courses;

namespace Training.Records.Tests;

/// <summary>The status lists of a hundred thousand papers of random histories, on the embedded engine.</summary>
[Collection(typeof(Timed))]
public sealed class StatusPlacesTests(SqliteDatabase database) : IClassFixture<SqliteDatabase>
{
    private const int Papers = 100_000;

    // Half past eleven at night in Phoenix, half past two the day after in New York.
    private static readonly DateTimeOffset Now = new(2024, 9, 15, 6, 30, 0, TimeSpan.Zero);

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    /// <summary>Outside check: <see cref="SlowHistory"/> lives through every day of each certification. The seed is that of the run.</summary>
    [Fact]
    public async Task They_agree_with_a_slow_reference_and_are_read_in_seconds()
    {
        var numbers = new RandomNumbers(20_240_915);
        var cast = await Cast.CreateAsync(database);
        var histories = new List<RandomHistory>();
        for (var papers = 0; papers < Papers; papers += histories[^1].Periods.Count)
            histories.Add(RandomHistory.Make(numbers, cast.CourseHash, cast.Lead, cast.OtherLead));
        var issued = histories.SelectMany(history => history.Decisions.Select(decision => (History: history, Decision: decision))).Index()
            .Select(one => new IssuedPaper(one.Item.History, one.Item.Decision, one.Index)).ToList();
        await InsertAsync(histories, issued);
        await using var records = database.Open();
        var watch = Stopwatch.StartNew();

        var revoked = await records.RevokedPlacesAsync(Now, Cancellation);
        var suspended = await records.SuspendedPlacesAsync(Now, Cancellation);
        var given = await records.PlacesGivenAsync(Cancellation);

        TestContext.Current.SendDiagnosticMessage($"{given} papers, {revoked.Count} revoked, {suspended.Count} suspended: {watch.Elapsed.TotalSeconds:0.0} s");
        Assert.InRange(watch.Elapsed.TotalSeconds, 0, 20);
        Assert.Equal(issued.Count, given);
        Assert.Equal(issued.Where(paper => paper.Standing == Standing.Suspended).Select(paper => paper.Place).Order(), suspended.Order());
        Assert.Equal(issued.Where(paper => paper.IsRevoked).Select(paper => paper.Place).Order(), revoked.Order());
        // What the slow reference calls withdrawn is revoked, and the newest paper of what it does not is not.
        Assert.All(issued.Where(paper => paper.IsNewest), paper => Assert.Equal(paper.Standing == Standing.Withdrawn, revoked.Contains(paper.Place)));
        Assert.True(suspended.Count > 1000 && revoked.Count > 1000, $"{suspended.Count}, {revoked.Count}");
    }

    private async Task InsertAsync(List<RandomHistory> histories, List<IssuedPaper> issued)
    {
        await using var records = database.Open();
        await using var whole = await records.Database.BeginTransactionAsync(Cancellation);
        await records.InsertAsync(histories.Select(history => new Person { Id = history.PersonId, Language = Language.English }), Cancellation);
        await records.InsertAsync(
            histories.Select(history => new PersonName { Id = history.PersonId, PersonId = history.PersonId, Text = "Ileana Prado", StartsOn = new(2020, 1, 1) }), Cancellation);
        await records.InsertAsync(histories.SelectMany(history => history.Decisions), Cancellation);
        await records.InsertAsync(histories.SelectMany(history => history.Periods), Cancellation);
        await records.InsertAsync(histories.SelectMany(history => history.Suspensions), Cancellation);
        await records.InsertAsync(histories.SelectMany(history => history.Reinstatements), Cancellation);
        await records.InsertAsync(histories.SelectMany(history => history.Withdrawals), Cancellation);
        await records.InsertAsync(issued.Select(paper => paper.Row), Cancellation);
        await records.InsertAsync(
            issued.Select(paper => new PaperCredential { PaperId = paper.Row.Id, StatusIndex = paper.Place, SubjectId = Guid.NewGuid() }), Cancellation);
        await whole.CommitAsync(Cancellation);
    }

    /// <summary>A paper as the slow reference sees it.</summary>
    private sealed class IssuedPaper
    {
        private readonly int day;
        private readonly RandomHistory history;
        private readonly int started;

        public IssuedPaper(RandomHistory history, DecisionRecord decision, int place)
        {
            (this.history, Place, started) = (history, place, decision.DecidedOn.DayNumber);
            day = DateOnly.FromDateTime(TimeZoneInfo.ConvertTimeBySystemTimeZoneId(Now, decision.Zone).DateTime).DayNumber;
            Standing = SlowHistory.Live(history.Acts, day, int.MaxValue).Standing;
            IsNewest = started <= day && ReferenceEquals(history.Decisions.Last(other => other.DecidedOn.DayNumber <= day), decision);
            Row = new()
            {
                Id = Guid.CreateVersion7(), DecisionId = decision.Id, Revision = 1, Serial = $"S{place}", PersonNameId = history.PersonId, IssuedAt = decision.KeptAt,
            };
        }

        public PaperRecord Row { get; }

        public int Place { get; }

        public Standing? Standing { get; }

        /// <summary>Of the periods that have begun, its is the last.</summary>
        public bool IsNewest { get; }

        /// <summary>On a day up to today the certification was withdrawn, and its period had begun.</summary>
        public bool IsRevoked => history.Acts.Exists(act => act.Deed == Deed.Withdrawal && act.Day <= day && started <= act.Day);
    }
}

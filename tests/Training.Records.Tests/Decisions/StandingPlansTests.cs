using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;
using Training.Certification;

namespace Training.Records.Tests;

/// <summary>How SQLite finds what an employer's pages and the sweep of reminders ask for: by an index, never by walking through a table.</summary>
public sealed class StandingPlansTests(SqliteDatabase database) : IClassFixture<SqliteDatabase>
{
    private static readonly DateOnly Day = Cast.Today;

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    public static TheoryData<string> Reads => [.. All.Keys];

    private static readonly Dictionary<string, Func<RecordsContext, Task>> All = new(StringComparer.Ordinal)
    {
        ["lapsing"] = records => records.LapsingAsync(Guid.NewGuid(), null, Day, Day.AddDays(90), 5, Cancellation),
        ["in grace, one site"] = records => records.InGraceAsync(Guid.NewGuid(), Guid.NewGuid(), Day, 5, Cancellation),
        ["counts"] = records => records.StandingCountsAsync(Guid.NewGuid(), null, Day, Cancellation),
        ["schemes held"] = records => records.SchemesHeldAsync(Guid.NewGuid(), Day, Cancellation),
        ["matrix by name"] = records => records.PeopleAsync(Choice, 0, 50, Cancellation),
        ["matrix by last day"] = records => records.PeopleAsync(Choice with { Order = PeopleOrder.LastDay }, 0, 50, Cancellation),
        ["matrix by standing"] = records => records.PeopleAsync(Choice with { Order = PeopleOrder.Standing }, 0, 50, Cancellation),
        ["matrix of those to renew"] = records => records.CountAsync(Choice with { Standing = StandingChoice.RenewalDue, Text = "a" }, Cancellation),
        ["matrix of those without"] = records => records.CountAsync(Choice with { Standing = StandingChoice.NotHeld }, Cancellation),
        ["held by fifty"] = records => records.HeldCertificationsAsync([.. Enumerable.Range(0, 50).Select(_ => Guid.NewGuid())], Cancellation),
        ["to be reminded"] = async records =>
        {
            var span = new MilestoneSpan(Milestone.DayAfter, Day.AddDays(-30), Day);
            await foreach (var batch in records.HeldEndingAsync("handler", span, MadeReminders.LeftOut, Day, Cancellation)) Assert.NotEmpty(batch);
        },
    };

    private static PeopleChoice Choice => new() { EmployerId = Guid.NewGuid(), Day = Day, SchemeIds = ["handler", "awareness"] };

    [Theory, MemberData(nameof(Reads))]
    public async Task No_table_is_walked_through(string read)
    {
        var plans = new Plans();
        await using var records = database.Open(plans);

        await All[read](records);

        Assert.NotEmpty(plans.Steps);
        // A list of ids that came with the query is no table, nor is what an inner query has found.
        var found = plans.Steps.Where(step => step.StartsWith("CO-ROUTINE ", StringComparison.Ordinal)).Select(step => step["CO-ROUTINE ".Length..]).ToHashSet();
        Assert.DoesNotContain(plans.Steps, step => step.StartsWith("SCAN ", StringComparison.Ordinal)
            && !step.Contains("VIRTUAL TABLE", StringComparison.Ordinal) && !found.Contains(step["SCAN ".Length..]));
    }

    [Fact]
    public async Task Reminders_are_looked_for_in_the_index_of_scheme_and_last_day()
    {
        var plans = new Plans();
        await using var records = database.Open(plans);

        await All["to be reminded"](records);

        Assert.Contains(plans.Steps, step => step.Contains("INDEX IX_Periods_SchemeId_ExpiresOn_PersonId_Number (SchemeId=? AND ExpiresOn>? AND ExpiresOn<?)", StringComparison.Ordinal));
        Assert.DoesNotContain(plans.Steps, step => step.Contains("TEMP B-TREE", StringComparison.Ordinal));
    }

    /// <summary>Asks SQLite how it will run each query, before it runs.</summary>
    private sealed class Plans : DbCommandInterceptor
    {
        public List<string> Steps { get; } = [];

        public override async ValueTask<InterceptionResult<DbDataReader>> ReaderExecutingAsync(
            DbCommand command, CommandEventData eventData, InterceptionResult<DbDataReader> result, CancellationToken cancellationToken = default)
        {
            await using var explain = command.Connection!.CreateCommand(); // not null: it is about to run
            explain.CommandText = $"EXPLAIN QUERY PLAN {command.CommandText}";
            foreach (DbParameter parameter in command.Parameters)
            {
                var copy = explain.CreateParameter();
                (copy.ParameterName, copy.Value) = (parameter.ParameterName, parameter.Value);
                explain.Parameters.Add(copy);
            }

            await using var reader = await explain.ExecuteReaderAsync(cancellationToken);
            while (await reader.ReadAsync(cancellationToken)) Steps.Add(reader.GetString(3));
            return result;
        }
    }
}

using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Scoring;

namespace Training.Benchmarks;

/// <summary>
/// An embedded database of invented employers of 1,000 people with ten certifications each. The people of an employer lie scattered over the
/// tables: whoever reads by employer gets no help from the order of the rows.
/// </summary>
internal static class ManyCertifications
{
    internal const int PeopleOfAnEmployer = 1_000;
    internal const int SchemesOfAPerson = 10;

    internal static readonly DateOnly Today = new(2026, 11, 25);
    internal static readonly Terms Annual = new(new(12, DurationUnit.Months), new(60, DurationUnit.Days), new(30, DurationUnit.Days));
    internal static readonly Duration[] Remind = [new(60, DurationUnit.Days), new(30, DurationUnit.Days), new(7, DurationUnit.Days)];

    private static readonly DateTimeOffset Now = new(2026, 11, 24, 18, 0, 0, TimeSpan.Zero);
    private static readonly string Hash = new('0', 64);

    /// <summary>The key of a row, the same in C# and in the database.</summary>
    internal static Guid Key(int kind, long number) => Guid.Parse($"{kind:X8}-0000-7000-8000-{number:X12}");

    internal static string SchemeId(int number) => $"scheme-{number}";

    /// <summary>Fills an empty database. Of each table one row is written by the program's own model; the others are copies of it with days and keys of their own.</summary>
    internal static async Task FillAsync(RecordsContext records, int certifications)
    {
        var people = certifications / SchemesOfAPerson;
        var employers = Math.Max(1, people / PeopleOfAnEmployer);
        await records.Database.MigrateAsync();
        await KeepOneOfEachAsync(records);
        await records.Database.OpenConnectionAsync();
        var connection = (SqliteConnection)records.Database.GetDbConnection();
        await RunAsync(connection, "PRAGMA foreign_keys = OFF");
        await RunAsync(connection, "PRAGMA synchronous = OFF");
        await RunAsync(connection, $"CREATE TEMP TABLE person AS WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < {people}) SELECT i, i % {employers} + 1 AS e FROM n");
        await RunAsync(connection, $"CREATE TEMP TABLE scheme AS WITH RECURSIVE n(s) AS (SELECT 1 UNION ALL SELECT s + 1 FROM n WHERE s < {SchemesOfAPerson}) SELECT s FROM n");
        await RunAsync(connection, $"CREATE TEMP TABLE employer AS WITH RECURSIVE n(e) AS (SELECT 1 UNION ALL SELECT e + 1 FROM n WHERE e < {employers}) SELECT e FROM n");
        // Last days over 430 days, from 65 days ago on; every third certification was renewed once.
        await RunAsync(connection, $"""
            CREATE TEMP TABLE held AS
            SELECT i, e, s, i * 16 + s AS c, 1 AS number, (i * 7919 + s * 104729) % 430 - 65 - CASE WHEN (i + s) % 3 = 0 THEN 365 ELSE 0 END AS days FROM person, scheme
            UNION ALL SELECT i, e, s, i * 16 + s, 2, (i * 7919 + s * 104729) % 430 - 65 FROM person, scheme WHERE (i + s) % 3 = 0
            """);
        foreach (var (table, source, values) in Copies) await CopyAsync(connection, table, source, values);
        await records.Database.CloseConnectionAsync();
    }

    private static readonly (string Table, string Source, Dictionary<string, string> Values)[] Copies =
    [
        ("Employers", "employer", new() { ["Id"] = K(1, "e"), ["Name"] = "'Employer ' || e", ["NameKey"] = "'EMPLOYER ' || e" }),
        ("Sites", "employer, (SELECT s FROM scheme WHERE s <= 5)", new() { ["Id"] = K(2, "e * 16 + s"), ["EmployerId"] = K(1, "e"), ["Name"] = "'Site ' || s", ["NameKey"] = "'SITE ' || s" }),
        ("Crews", "employer, scheme", new() { ["Id"] = K(3, "e * 16 + s"), ["SiteId"] = K(2, "e * 16 + s % 5 + 1"), ["Name"] = "'Crew ' || s", ["NameKey"] = "'CREW ' || s" }),
        ("Persons", "person", new() { ["Id"] = K(4, "i") }),
        ("PersonNames", "person", new() { ["Id"] = K(5, "i"), ["PersonId"] = K(4, "i"), ["Text"] = Name, ["TextOrder"] = $"upper({Name})" }),
        ("Employments", "person", new() { ["Id"] = K(6, "i"), ["PersonId"] = K(4, "i"), ["EmployerId"] = K(1, "e") }),
        ("Badges", "person", new() { ["Id"] = K(7, "i"), ["PersonId"] = K(4, "i"), ["EmployerId"] = K(1, "e"), ["Number"] = "'B-' || i", ["NumberKey"] = "'B-' || i" }),
        ("SiteAssignments", "person", new() { ["Id"] = K(8, "i"), ["PersonId"] = K(4, "i"), ["SiteId"] = K(2, "e * 16 + i / 100 % 5 + 1") }),
        ("CrewAssignments", "person", new() { ["Id"] = K(9, "i"), ["PersonId"] = K(4, "i"), ["CrewId"] = K(3, "e * 16 + i / 100 % 10 + 1") }),
        ("Decisions", "held", new() { ["Id"] = K(10, "c * 4 + number"), ["PersonId"] = K(4, "i"), ["SchemeId"] = Scheme, ["DecidedOn"] = Day("days - 365") }),
        ("Periods", "held", new()
        {
            ["DecisionId"] = K(10, "c * 4 + number"), ["PersonId"] = K(4, "i"), ["SchemeId"] = Scheme, ["Number"] = "number", ["DecidedOn"] = Day("days - 365"),
            ["StartsOn"] = Day("days - 365"), ["ExpiresOn"] = Day("days"), ["WindowOpensOn"] = Day("days - 60"), ["GraceEndsOn"] = Day("days + 30"),
        }),
        ("Suspensions", "held WHERE c % 211 = 0 AND number = 1", new() { ["Id"] = K(11, "c"), ["PersonId"] = K(4, "i"), ["SchemeId"] = Scheme, ["StartsOn"] = Day("-20"), ["DeadlineOn"] = Day("10") }),
        ("Withdrawals", "held WHERE c % 503 = 0 AND number = 1", new() { ["Id"] = K(12, "c"), ["PersonId"] = K(4, "i"), ["SchemeId"] = Scheme, ["WithdrawnOn"] = Day("-20") }),
        ("Sittings", "held", new() { ["Id"] = K(13, "c * 4 + number"), ["FormId"] = K(13, "c * 4 + number"), ["PersonId"] = K(4, "i"), ["QuizId"] = Scheme, ["TakenOn"] = Day("days - 370") }),
        ("SittingResults", "held", new() { ["Id"] = K(14, "c * 4 + number"), ["SittingId"] = K(13, "c * 4 + number") }),
        // Everything that fell due up to yesterday has been sent; what falls due today is what the sweep finds.
        ("Reminders", "held, (SELECT 60 AS before, 'P60D' AS milestone UNION SELECT 30, 'P30D' UNION SELECT 7, 'P7D' UNION SELECT -1, 'after') WHERE days >= -65 AND days - before < 0", new()
        {
            ["Id"] = K(15, "(c * 4 + number) * 64 + before + 1"), ["PersonId"] = K(4, "i"), ["SchemeId"] = Scheme, ["PeriodNumber"] = "number", ["Milestone"] = "milestone",
            ["DueOn"] = Day("days - before"), ["ExpiresOn"] = Day("days"), ["MadeAt"] = "strftime('%Y-%m-%d 12:00:00', '2026-11-25', (days - before) || ' days')",
        }),
    ];

    private const string Name = "printf('Worker %04d of %d', i * 7 % 9973, e)";

    private const string Scheme = "'scheme-' || s";

    private static string K(int kind, string number) => $"printf('{kind:X8}-0000-7000-8000-%012X', {number})";

    private static string Day(string days) => $"date('2026-11-25', ({days}) || ' days')";

    private static async Task KeepOneOfEachAsync(RecordsContext records)
    {
        var (id, lead, other) = (Key(0, 1), Key(0, 2), Key(0, 3));
        DateOnly since = new(2020, 1, 1);
        records.AddRange(new[] { id, lead, other }.Select(person => new Person { Id = person, Language = Language.English }));
        records.AddRange(
            new Employer { Id = id, Name = "Template" }, new Records.Site { Id = id, EmployerId = id, Name = "Template", Zone = "America/Denver", Region = "US" },
            new Crew { Id = id, SiteId = id, Name = "Template" }, new PersonName { Id = id, PersonId = id, Text = "Template", StartsOn = since },
            new Employment { Id = id, PersonId = id, EmployerId = id, StartsOn = since, EndsOn = null }, new Badge { Id = id, PersonId = id, EmployerId = id, Number = "T", StartsOn = since },
            new SiteAssignment { Id = id, PersonId = id, SiteId = id, StartsOn = since }, new CrewAssignment { Id = id, PersonId = id, CrewId = id, StartsOn = since });
        await records.SaveChangesAsync();
        await records.KeepSnapshotAsync("template", Hash, "a course text that nobody reads here", Now, CancellationToken.None);
        records.AddRange(
            new DecisionRecord
            {
                Id = id, PersonId = id, SchemeId = "template", CourseHash = Hash, Route = Route.Grant, Outcome = DecisionOutcome.Granted, DecidedOn = Today,
                Zone = "America/Denver", LeadId = null, Reasons = "[]", KeptAt = Now,
            },
            new PeriodRecord
            {
                DecisionId = id, PersonId = id, SchemeId = "template", Number = 1, DecidedOn = Today, StartsOn = Today, ExpiresOn = Today.AddYears(20),
                Validity = Annual.Validity, Window = Annual.Window, Grace = Annual.Grace,
            },
            new SuspensionRecord
            {
                Id = id, PersonId = id, SchemeId = "template", PeriodNumber = 1, Number = 1, StartsOn = Today, LeadId = lead, Reason = "Reported.",
                DeadlineOn = Today, KeptAt = Now,
            },
            new WithdrawalRecord
            {
                Id = id, PersonId = id, SchemeId = "template", PeriodNumber = 1, WithdrawnOn = Today, LeadId = lead, ConfirmedById = other, Reason = "Reported.", KeptAt = Now,
            },
            new ReminderRecord
            {
                Id = id, PersonId = id, SchemeId = "template", PeriodNumber = 1, Milestone = "after", DueOn = Today, ExpiresOn = Today, MadeAt = Now, MailId = null, SiteId = null,
            });
        await records.SaveChangesAsync();
        records.ChangeTracker.Clear();
        var draw = new Draw(Hash, "template", 1, [new DrawnQuestion("q", "v", ["a", "b"])]);
        await records.KeepAsync(
            new Sitting(id, id, draw, Now.AddHours(-1), Now, [new("q", ["a"], null, Language.English, Now.AddMinutes(-5))]),
            new SittingResult(Hash, true, 1, 1, [new("topic", 1, 1)], [new("q", "v", Mark.Right)], []), Today, "America/Denver", Now, CancellationToken.None);
    }

    private static async Task CopyAsync(SqliteConnection connection, string table, string source, Dictionary<string, string> values)
    {
        var columns = new List<string>();
        await using (var command = connection.CreateCommand())
        {
            command.CommandText = $"SELECT name FROM pragma_table_info('{table}')";
            await using var reader = await command.ExecuteReaderAsync();
            while (await reader.ReadAsync()) columns.Add(reader.GetString(0));
        }

        await RunAsync(connection, $"""
            INSERT INTO "{table}" ({string.Join(", ", columns.Select(column => $"\"{column}\""))})
            SELECT {string.Join(", ", columns.Select(column => values.GetValueOrDefault(column) ?? $"(SELECT \"{column}\" FROM \"{table}\" LIMIT 1)"))} FROM {source}
            """);
    }

    private static async Task RunAsync(SqliteConnection connection, string sql)
    {
        await using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.CommandTimeout = 0;
        await command.ExecuteNonQueryAsync();
    }
}

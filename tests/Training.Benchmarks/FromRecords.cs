using System.Diagnostics;
using System.Globalization;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Training.Courses;
using Training.Records;
using Training.Scoring;

namespace Training.Benchmarks;

/// <summary>Sittings of fifty answers each in an embedded database, read and analysed as the page of a quiz's statistics does it.</summary>
internal static class FromRecords
{
    private const int Questions = 50;
    private const string QuizId = "benchmark-quiz";
    private const string Hash = "0000000000000000000000000000000000000000000000000000000000000000";

    /// <summary>Fills a database of its own, analyses it, and prints what it took; the more sittings, the more time and no more memory.</summary>
    public static async Task<int> RunAsync(IReadOnlyList<int> steps)
    {
        Console.WriteLine("sittings    answers   fill s   analyse s   held MiB");
        foreach (var sittings in steps)
        {
            var file = Path.Combine(Path.GetTempPath(), $"training-benchmark-{Guid.NewGuid():N}.db");
            try
            {
                await MeasureAsync(file, sittings);
            }
            finally
            {
                SqliteConnection.ClearAllPools();
                foreach (var left in new[] { file, file + "-wal", file + "-shm" }) File.Delete(left);
            }
        }

        return 0;
    }

    private static async Task MeasureAsync(string file, int sittings)
    {
        var options = new DbContextOptionsBuilder<RecordsContext>();
        options.UseRecords(new() { Connection = $"Data Source={file}" });
        await using var records = new RecordsContext(options.Options);
        var watch = Stopwatch.StartNew();
        await records.Database.MigrateAsync();
        await KeepOneAsync(records);
        await MultiplyAsync(records, sittings);
        var filled = watch.Elapsed;

        watch.Restart();
        var quiz = new Quiz(QuizId, 80, null, [new("topic", Questions, 0, 0)]);
        var tally = new QuizTally(quiz, [.. Enumerable.Range(1, Questions).Select(QuestionOf)]);
        var held = 0L;
        await foreach (var sitting in records.AnsweredSittingsAsync(QuizId, [Hash], CancellationToken.None))
        {
            tally.Add(sitting);
            held = Math.Max(held, GC.GetTotalMemory(forceFullCollection: false));
        }

        var analysis = tally.Analyse();
        if (analysis.Sittings != sittings) throw new InvalidOperationException($"{analysis.Sittings} of {sittings} sittings came back.");
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{sittings,8} {sittings * Questions,10} {filled.TotalSeconds,8:0.0} {watch.Elapsed.TotalSeconds,11:0.0} {held / 1048576.0,10:0}"));
    }

    // The first one goes through the code that keeps real sittings, so that the rows are what it writes.
    private static async Task KeepOneAsync(RecordsContext records)
    {
        var (person, now) = (Guid.CreateVersion7(), new DateTimeOffset(2026, 3, 2, 15, 0, 0, TimeSpan.Zero));
        records.Add(new Person { Id = person, Language = Language.English });
        await records.SaveChangesAsync();
        await records.KeepSnapshotAsync("benchmark", Hash, "a course text that nobody reads here", now, CancellationToken.None);
        var questions = Enumerable.Range(1, Questions).Select(QuestionOf).ToList();
        var draw = new Draw(Hash, QuizId, 1, [.. questions.Select(question => new DrawnQuestion(question.Id, question.Version, question.OptionIds))]);
        var answers = questions.Select((question, place) => new Answer(question.Id, ["a"], null, Language.English, now.AddSeconds(20 * (place + 1)))).ToList();
        var marks = questions.Select(question => new QuestionResult(question.Id, question.Version, Mark.Right)).ToList();
        await records.KeepAsync(
            new Sitting(Guid.CreateVersion7(), person, draw, now, now.AddHours(1), answers),
            new SittingResult(Hash, true, Questions, Questions, [new("topic", Questions, Questions)], marks, []),
            new(2026, 3, 2), "America/Phoenix", now, CancellationToken.None);
    }

    // The others are copies with keys of their own and marks by chance: one statement a table, since a million answers are not to be measured here.
    private static async Task MultiplyAsync(RecordsContext records, int sittings)
    {
        await records.Database.OpenConnectionAsync();
        var connection = (SqliteConnection)records.Database.GetDbConnection();
        await RunAsync(connection, "PRAGMA foreign_keys = OFF");
        await RunAsync(connection, $"""
            CREATE TEMP TABLE copies AS WITH RECURSIVE n(i) AS (SELECT 2 UNION ALL SELECT i + 1 FROM n WHERE i < {sittings})
            SELECT printf('00000000-0000-7000-8000-%012X', i) AS key, i FROM n
            """);
        foreach (var (table, keys) in Tables)
        {
            var columns = await ColumnsAsync(connection, table);
            var values = columns.Select(column => keys.Contains(column) ? "copies.key" : column == "Mark" ? Marks : $"one.\"{column}\"");
            await RunAsync(connection, $"""
                INSERT INTO "{table}" ({string.Join(", ", columns.Select(column => $"\"{column}\""))})
                SELECT {string.Join(", ", values)} FROM "{table}" AS one, copies
                """);
        }
    }

    private static readonly (string Table, string[] Keys)[] Tables =
    [
        ("Persons", ["Id"]), ("Sittings", ["Id", "FormId", "PersonId"]), ("DrawnQuestions", ["SittingId"]), ("Answers", ["SittingId"]),
        ("SittingResults", ["Id", "SittingId"]), ("QuestionResults", ["ResultId"]),
    ];

    // People differ, and so do questions: else there would be nothing to correlate.
    private const string Marks = "CASE WHEN abs(random()) % 100 < 45 + copies.i % 40 + one.\"Position\" % 15 THEN 'Right' ELSE 'Wrong' END";

    private static Question QuestionOf(int number) => new(
        $"q{number}", "topic", "objective", Difficulty.Medium, false, new("module", "section"), "F-TEST-01", [], ["a", "b", "c", "d"],
        new QuestionKey.One("a"), new Dictionary<Language, QuestionWords>(), $"version-{number}");

    private static async Task<List<string>> ColumnsAsync(SqliteConnection connection, string table)
    {
        await using var command = connection.CreateCommand();
        command.CommandText = $"SELECT name FROM pragma_table_info('{table}')";
        await using var reader = await command.ExecuteReaderAsync();
        var columns = new List<string>();
        while (await reader.ReadAsync()) columns.Add(reader.GetString(0));
        return columns;
    }

    private static async Task RunAsync(SqliteConnection connection, string sql)
    {
        await using var command = connection.CreateCommand();
        command.CommandText = sql;
        await command.ExecuteNonQueryAsync();
    }
}

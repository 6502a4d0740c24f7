using System.Diagnostics;
using System.Globalization;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.Extensions.Logging.Abstractions;
using Training.Courses;
using Training.Records;
using Training.Web.Features.Reminders;
using Training.Web.Features.Workforce;
using Training.Web.Provider;
using Training.Web.Settings;
using Training.Web.Shelf;

namespace Training.Benchmarks;

/// <summary>What an employer's pages and the daily rounds cost while everybody else's records grow: the same employer, read by the code of the pages.</summary>
internal static class StandingAtSize
{
    private const int Runs = 5;

    /// <summary>Fills a database a step, times the best of five readings, and prints what each step cost against the one before.</summary>
    public static async Task<int> RunAsync(IReadOnlyList<int> steps)
    {
        var course = CourseReader.Read(CourseFiles.FromFolder(Repository.Courses)).Courses.First(one => one.Id == "handler");
        var shelf = new CourseShelf();
        shelf.Put(Enumerable.Range(1, ManyCertifications.SchemesOfAPerson).Select(number => course with
        {
            Id = ManyCertifications.SchemeId(number),
            Scheme = course.Scheme with { Id = ManyCertifications.SchemeId(number), Terms = ManyCertifications.Annual, Remind = ManyCertifications.Remind },
        }));
        Dictionary<string, double>? before = null;
        foreach (var certifications in steps)
        {
            var file = Path.Combine(Path.GetTempPath(), $"training-benchmark-{Guid.NewGuid():N}.db");
            try
            {
                before = await MeasureAsync(file, certifications, shelf, before);
            }
            finally
            {
                SqliteConnection.ClearAllPools();
                foreach (var left in new[] { file, file + "-wal", file + "-shm" }) File.Delete(left);
            }
        }

        return 0;
    }

    private static async Task<Dictionary<string, double>> MeasureAsync(string file, int certifications, CourseShelf shelf, Dictionary<string, double>? before)
    {
        var options = new DbContextOptionsBuilder<RecordsContext>();
        options.UseRecords(new() { Connection = $"Data Source={file}" });
        var factory = new PooledDbContextFactory<RecordsContext>(options.Options);
        var watch = Stopwatch.StartNew();
        await using (var filling = await factory.CreateDbContextAsync()) await ManyCertifications.FillAsync(filling, certifications);
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"\n{certifications:N0} certifications, {new FileInfo(file).Length / 1048576.0:0} MiB, filled in {watch.Elapsed.TotalSeconds:0} s\n{"",-44}        ms   × before   allocated KiB   process peak MiB"));

        var cancel = CancellationToken.None;
        await using var records = await factory.CreateDbContextAsync();
        var employer = new SeenEmployer(ManyCertifications.Key(1, 1), "Employer 1", ManyCertifications.Today, await records.SitesOfAsync(ManyCertifications.Key(1, 1), cancel));
        var took = new Dictionary<string, double>(StringComparer.Ordinal);
        async Task TimeAsync(string what, int runs, Func<Task> read)
        {
            var (best, allocated) = (double.MaxValue, 0L);
            for (var run = 0; run < runs; run++)
            {
                var (started, bytes) = (Stopwatch.GetTimestamp(), GC.GetTotalAllocatedBytes(precise: true));
                await read();
                (best, allocated) = (Math.Min(best, Stopwatch.GetElapsedTime(started).TotalMilliseconds), GC.GetTotalAllocatedBytes(precise: true) - bytes);
            }

            took[what] = best;
            using var process = Process.GetCurrentProcess();
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{what,-44} {best,9:0.0} {(before is null ? "" : (best / before[what]).ToString("0.00", CultureInfo.InvariantCulture)),10} {allocated / 1024.0,15:0} {process.PeakWorkingSet64 / 1048576.0,18:0}"));
        }

        async Task MatrixAsync(MatrixFilter filter, int page = 1)
        {
            var matrix = await Matrix.FindAsync(records, employer, filter, shelf, Language.English, cancel)
                ?? throw new InvalidOperationException("The filter names a scheme that there is not.");
            if ((await matrix.RowsOfAsync(records, page, cancel)).Count == 0) throw new InvalidOperationException("The page is empty.");
        }

        var all = new MatrixFilter(null, null, null);
        await TimeAsync("first page, 90 days ahead", Runs, () => TodayPage.ReadAsync(records, employer, TodayFilter.Read(null, null, employer.Today), shelf, Language.English, cancel));
        await TimeAsync("matrix", Runs, () => MatrixAsync(all));
        await TimeAsync("matrix, page 10", Runs, () => MatrixAsync(all, page: 10));
        await TimeAsync("matrix, one site, to be renewed", Runs, () => MatrixAsync(all with { SiteId = employer.Sites[0].Id, Standing = StandingChoice.RenewalDue }));
        await TimeAsync("matrix, who lapses next", Runs, () => MatrixAsync(all with { Order = PeopleOrder.LastDay }));
        await TimeAsync("matrix, worst standing in one scheme", Runs, () => MatrixAsync(all with { SchemeId = "scheme-3", Order = PeopleOrder.Standing }));
        await TimeAsync("one person", Runs, async () =>
        {
            var person = (await records.EmployedAsync([ManyCertifications.Key(4, Employers(certifications))], employer.Id, employer.Today, cancel)).Single();
            var evidence = await records.EvidenceOfAsync(person, employer.Today, cancel);
            var classes = await ClassDays.ReadAsync(records, employer.Id, [person.PersonId], employer.Today, cancel);
            if (WorkerPage.Of(employer.Id, evidence, shelf, classes, employer.Today, Language.English).Results.Count == 0) throw new InvalidOperationException("No results.");
        });

        var settings = new TrainingOptions { PublicAddress = new("https://training.example.org") };
        var (provider, clock) = (new OurProvider(settings), new Noon());
        var sweep = new ReminderSweep(factory, shelf, settings, provider, clock, NullLogger<ReminderSweep>.Instance);
        var made = await records.Reminders.CountAsync(cancel);
        await TimeAsync("reminders, first round of the day", 1, () => sweep.RunAsync(cancel));
        made = await records.Reminders.CountAsync(cancel) - made;
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"    {made:N0} reminders made, {took["reminders, first round of the day"] / Math.Max(1, made):0.00} ms each"));
        await TimeAsync("reminders, a later round of the day", 3, () => sweep.RunAsync(cancel));

        records.Add(new Representative { Id = Guid.CreateVersion7(), PersonId = ManyCertifications.Key(0, 1), EmployerId = employer.Id, StartsOn = new(2020, 1, 1) });
        await records.SaveChangesAsync(cancel);
        await TimeAsync("weekly summary of one employer", 1, () => new DigestSweep(factory, shelf, settings, provider, clock).RunAsync(cancel));
        if (await records.Digests.CountAsync(cancel) != 1) throw new InvalidOperationException("No summary was made.");
        return took;
    }

    private static int Employers(int certifications) => Math.Max(1, certifications / ManyCertifications.SchemesOfAPerson / ManyCertifications.PeopleOfAnEmployer);

    // Noon in Denver, where nothing is quiet.
    private sealed class Noon : TimeProvider
    {
        public override DateTimeOffset GetUtcNow() => new(2026, 11, 25, 19, 0, 0, TimeSpan.Zero);
    }
}

using System.Diagnostics;
using System.Globalization;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Training.Certification;
using Training.Courses;
using Training.Documents.Volumes;
using Training.Records;
using Training.Web.Features.IssueLog;
using Training.Web.Features.PaperRuns;
using Training.Web.Keys;
using Training.Web.Shelf;

namespace Training.Benchmarks;

/// <summary>A run of many papers as the server makes them: signed, in both languages, with their place in the log; and its volumes for the printer.</summary>
internal static class ManyPapers
{
    private const int Steps = 10;

    private static readonly DateOnly Start = new(2026, 11, 2);

    /// <summary>Makes the papers and prints after each tenth how fast the last ones were and how much memory the process has.</summary>
    public static async Task<int> RunAsync(int papers)
    {
        var folder = Directory.CreateTempSubdirectory("training-benchmark-");
        try
        {
            await using var app = Training.Web.Site.Build(
            [
                $"--Training:DataFolder={folder.FullName}", $"--Training:CoursesFolder={Repository.Courses}", "--Training:PublicAddress=https://training.example.org",
                "--Training:Provider:Name=Quillback Field Safety", "--Training:Provider:Address=14 Ledger Road, Dry Fork", "--Logging:LogLevel:Default=None",
            ]);
            var records = app.Services.GetRequiredService<IDbContextFactory<RecordsContext>>();
            await using (var empty = await records.CreateDbContextAsync()) await empty.BringUpToDateAsync(TimeProvider.System.GetUtcNow(), CancellationToken.None);
            app.LookAtKeys(TimeProvider.System.GetUtcNow(), []);
            await app.Services.GetRequiredService<CourseShelfWatch>().LookAsync(CancellationToken.None);
            var course = app.Services.GetRequiredService<CourseShelf>().Find("awareness") ?? throw new InvalidOperationException("The shipped courses have findings.");
            await FillAsync(records, course, papers);
            await MakeAsync(app.Services.GetRequiredService<PaperRunJob>(), records, papers);
            await CheckAsync(records, papers);
            await PrintAsync(records, papers);
            return 0;
        }
        finally
        {
            SqliteConnection.ClearAllPools();
            folder.Delete(recursive: true);
        }
    }

    private static async Task MakeAsync(PaperRunJob job, IDbContextFactory<RecordsContext> factory, int papers)
    {
        Console.WriteLine($"{papers:N0} papers, signed, each as a file in English and one in Spanish\n{"made",10}{"papers/s",12}{"memory MiB",14}");
        using var process = Process.GetCurrentProcess();
        var (watch, clock, before, step) = (Stopwatch.StartNew(), Stopwatch.StartNew(), 0, papers / Steps);
        // An embedded database answers at once, so the job would give nobody else a turn.
        var making = Task.Run(() => job.RunAsync(CancellationToken.None));
        await using var records = await factory.CreateDbContextAsync();
        while (!making.IsCompleted)
        {
            await Task.WhenAny(making, Task.Delay(200));
            var made = await records.Papers.CountAsync();
            if (made < before + step && made < papers) continue;
            process.Refresh();
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture, $"{made,10:N0}{(made - before) / clock.Elapsed.TotalSeconds,12:0.0}{process.WorkingSet64 / 1048576.0,14:0}"));
            (before, clock) = (made, Stopwatch.StartNew());
            if (made == papers) break;
        }

        await making;
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"all in {watch.Elapsed.TotalSeconds:0.0} s, {papers / watch.Elapsed.TotalSeconds:0.0} papers/s"));
    }

    private static async Task CheckAsync(IDbContextFactory<RecordsContext> factory, int papers)
    {
        await using var records = await factory.CreateDbContextAsync();
        var decisions = await records.Papers.Select(paper => paper.DecisionId).Distinct().CountAsync();
        var files = await records.Renderings.CountAsync();
        // Nobody signed a head meanwhile, so no key is needed.
        var findings = (await new LogVerification(records, []).RunAsync(null, CancellationToken.None)).Problems;
        Console.WriteLine($"{decisions:N0} decisions have a paper, {files:N0} files, {findings.Count} findings in the log");
        if (decisions != papers || files != 2 * papers || findings.Count > 0) throw new InvalidOperationException("Not each paper was made once.");
    }

    private static async Task PrintAsync(IDbContextFactory<RecordsContext> factory, int papers)
    {
        await using var records = await factory.CreateDbContextAsync();
        var runId = await records.PaperRuns.Select(run => run.Id).SingleAsync();
        var watch = Stopwatch.StartNew();
        var bytes = 0L;
        using var process = Process.GetCurrentProcess();
        for (var first = 1; first <= papers; first += PaperVolume.MostPapers)
        {
            var files = await records.FilesOf(runId, first, first + PaperVolume.MostPapers - 1, Language.English).ToListAsync();
            bytes += PaperVolume.Write(files, "Volume").LongLength;
        }

        process.Refresh();
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{papers / PaperVolume.MostPapers:N0} volumes of {PaperVolume.MostPapers} for the printer in {watch.Elapsed.TotalSeconds:0.0} s, {bytes / 1048576.0:0} MiB; the process peaked at {process.PeakWorkingSet64 / 1048576.0:0} MiB"));
    }

    private static async Task FillAsync(IDbContextFactory<RecordsContext> factory, Course course, int papers)
    {
        await using var records = await factory.CreateDbContextAsync();
        var lead = Guid.CreateVersion7();
        records.Add(new Person { Id = lead, Language = Language.English });
        await records.SaveChangesAsync();
        foreach (var numbers in Enumerable.Range(1, papers).Chunk(1_000))
        {
            foreach (var number in numbers) Add(records, course, number);
            await records.SaveChangesAsync();
            records.ChangeTracker.Clear();
        }

        var run = new PaperRun
        {
            Id = Guid.CreateVersion7(), Kind = PaperRunKind.Missing, EmployerId = null, SchemeId = course.Scheme.Id, Reason = "The first papers.", LeadId = lead,
            StartedAt = TimeProvider.System.GetUtcNow(),
        };
        if (await records.StartAsync(run, Start, CancellationToken.None) is not Kept.Stored) throw new InvalidOperationException("The run did not start.");
    }

    private static void Add(RecordsContext records, Course course, int number)
    {
        var (personId, decisionId, terms) = (Guid.CreateVersion7(), Guid.CreateVersion7(), course.Scheme.Terms);
        records.AddRange(
            new Person { Id = personId, Language = Language.English },
            new PersonName { Id = Guid.CreateVersion7(), PersonId = personId, Text = $"Ileana Prado-Whitt {number}", StartsOn = Start },
            new DecisionRecord
            {
                Id = decisionId, PersonId = personId, SchemeId = course.Scheme.Id, CourseHash = course.Hash, Route = Route.Grant, Outcome = DecisionOutcome.Granted,
                DecidedOn = Start, Zone = "America/Denver", LeadId = null, Reasons = "{\"version\":1,\"items\":[]}", KeptAt = new(Start, new TimeOnly(18, 0), TimeSpan.Zero),
            },
            new PeriodRecord
            {
                DecisionId = decisionId, PersonId = personId, SchemeId = course.Scheme.Id, Number = 1, DecidedOn = Start, StartsOn = Start,
                ExpiresOn = terms.Validity.After(Start), Validity = terms.Validity, Window = terms.Window, Grace = terms.Grace,
            });
    }
}

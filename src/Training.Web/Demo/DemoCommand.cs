using System.Diagnostics;
using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Features.Certificates;
using Training.Web.Features.IssueLog;
using Training.Web.Features.Reminders;
using Training.Web.Keys;
using Training.Web.Problems;
using Training.Web.Settings;
using Training.Web.Shelf;

namespace Training.Web.Demo;

/// <summary>Makes the demo of today where there is none yet, prints what it did, and serves it on this machine only.</summary>
internal static class DemoCommand
{
    private const string Address = "http://localhost:5080";
    private const string DataFolder = "demo-data";

    /// <summary>Exit code 0 after an orderly stop, 1 where the demo cannot be made.</summary>
    public static async Task<int> RunAsync(string[] settings)
    {
        var problems = new List<Problem>();
        var options = SettingsReader.Read(Site.Settings(settings), problems);
        if (options is not null && !Directory.Exists(DataFolder))
        {
            problems.Add(new(DemoProblems.FolderMissing, Place.Of("demo data"), Path.GetFullPath(DataFolder)));
        }

        if (options is not null) PaperFaces.Read(options.Papers, problems);
        var place = new DemoPlace(options?.DataFolder ?? "var");
        place.LookForStrangers(problems);
        if (problems.Count == 0 && options is not null) await RunAsync(settings, options.Demo, place, problems);
        foreach (var problem in problems) await Console.Error.WriteLineAsync(ProblemText.Line(problem, CultureInfo.CurrentUICulture));
        return problems.Count == 0 ? 0 : 1;
    }

    private static async Task RunAsync(string[] settings, DemoOptions demo, DemoPlace place, List<Problem> problems)
    {
        var data = DemoData.Read(DataFolder);
        await using var app = Site.Build(
            [.. settings, .. Settings(data.Provider, place)],
            services => services.AddSingleton(new DemoMark(IsOn: true))
                .AddSingleton<TimeProvider>(new DemoClock(TimeProvider.System, demo.DaysAhead)).AddReminderClock().AddTreeHeadClock());
        var reading = CourseReader.Read(CourseFiles.FromFolder(app.Services.GetRequiredService<TrainingOptions>().CoursesFolder), CourseAddresses.OfModule);
        if (reading.Problems.Count > 0)
        {
            problems.Add(new(DemoProblems.CoursesBroken, Place.Of("courses"), reading.Problems.Count.ToString(CultureInfo.InvariantCulture)));
            return;
        }

        var zone = TimeZoneInfo.FindSystemTimeZoneById(data.Provider.Zone);
        // The machine's day: the demo of today is kept while its own clock is moved.
        var madeFor = DecisionDay.On(TimeProvider.System.GetUtcNow(), zone);
        var courses = reading.Courses.ToDictionary(course => course.Id, StringComparer.Ordinal);
        if (!place.IsOf(madeFor, await SchemaAsync(app))) await MakeAsync(app, data, reading, courses, place, madeFor, problems);
        else app.LookAtKeys(app.Services.GetRequiredService<TimeProvider>().GetUtcNow(), problems);
        if (problems.Count > 0) return;

        await using (var records = await OpenAsync(app))
        {
            var today = DecisionDay.On(app.Services.GetRequiredService<TimeProvider>().GetUtcNow(), zone);
            await new DemoSummary(records, courses, today, Console.Out).PrintAsync(place, new Uri(Address), data.Provider.Password, CancellationToken.None);
        }

        Site.Use(app);
        await app.RunAsync();
    }

    /// <summary>Makes the demo of a day: an empty database, new keys, the whole replay, the papers as files.</summary>
    internal static async Task MakeAsync(
        WebApplication app, DemoData data, CourseReading reading, IReadOnlyDictionary<string, Course> courses, DemoPlace place, DateOnly today,
        ICollection<Problem> problems)
    {
        var watch = Stopwatch.StartNew();
        var schema = await SchemaAsync(app);
        place.Clear(today, schema);
        var firstDay = new DateTimeOffset(today.AddYears(-4), TimeOnly.MinValue, TimeSpan.Zero);
        // Papers of the replay are signed as of days that are over.
        app.LookAtKeys(firstDay, problems);
        if (problems.Count > 0) return;
        await using (var records = await OpenAsync(app))
        {
            await records.BringUpToDateAsync(app.Services.GetRequiredService<TimeProvider>().GetUtcNow(), CancellationToken.None);
            foreach (var snapshot in reading.Snapshots)
            {
                await records.KeepSnapshotAsync(snapshot.CourseId, snapshot.Hash, snapshot.Content, firstDay, CancellationToken.None);
            }

            var papers = ActivatorUtilities.CreateInstance<CertificateIssue>(app.Services);
            await new DemoReplay(data, courses, reading.Library ?? SpeciesLibrary.Empty, papers, app.Services.GetRequiredService<TrainingOptions>(), today).RunAsync(records, CancellationToken.None);
            await WritePapersAsync(records, place);
        }

        place.Finish(today, schema);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Made in {watch.Elapsed.TotalSeconds:0} seconds."));
    }

    /// <summary>Writes every stored file out, so that it can be opened without the server: <c>serial-language.pdf</c>.</summary>
    private static async Task WritePapersAsync(RecordsContext records, DemoPlace place)
    {
        var files = from rendering in records.Renderings.AsNoTracking()
                    join paper in records.Papers.AsNoTracking() on rendering.PaperId equals paper.Id
                    select new { paper.Serial, rendering.Language, rendering.Bytes };
        await foreach (var file in files.AsAsyncEnumerable())
        {
            var serial = Serial.TryParse(file.Serial, out var read) ? read.ToString() : throw new UnreachableException();
            await File.WriteAllBytesAsync(Path.Combine(place.Papers, $"{serial}-{file.Language.Tag()}.pdf"), file.Bytes);
        }
    }

    /// <summary>The newest migration: a demo that another version of the program made is made again.</summary>
    internal static async Task<string> SchemaAsync(WebApplication app)
    {
        await using var records = await OpenAsync(app);
        return records.Database.GetMigrations().Last();
    }

    private static Task<RecordsContext> OpenAsync(WebApplication app) =>
        app.Services.GetRequiredService<IDbContextFactory<RecordsContext>>().CreateDbContextAsync();

    // On the command line, where nothing overrides them: the demo's own database, this machine only, and mails to invented people as files.
    private static string[] Settings(DemoProvider provider, DemoPlace place) =>
    [
        $"--Urls={Address}",
        $"--Training:PublicAddress={Address}",
        $"--Training:DataFolder={place.Folder}",
        "--Training:Database:Engine=Sqlite",
        $"--Training:Database:Connection=Data Source={place.Database}",
        "--Training:Mail:Host=",
        // An invented paper must not bear the operator's own signature, nor anybody's word for its time.
        "--Training:Keys:Certificate=",
        "--Training:Keys:TimestampAddress=",
        $"--Training:Provider:Name={provider.Name}",
        $"--Training:Provider:Address={provider.Address}",
        $"--Training:Provider:TimeZone={provider.Zone}",
        $"--Training:Provider:Region={provider.Region}",
    ];
}

using System.Globalization;
using Training.Courses;
using Training.Web.Problems;
using Training.Web.Settings;

namespace Training.Web.Shelf;

/// <summary>Fills the shelf at start, first from the records, then from the courses folder, and looks at the folder again every two seconds.</summary>
/// <remarks>
/// Looking beats being told: file events are lost on network drives and in containers, and come in the middle of a save. A look lists
/// names, lengths and times; files are read only when one of those changed.
/// </remarks>
public sealed class CourseShelfWatch(
    CourseShelf shelf,
    LastGoodCourses lastGood,
    SchemeChanges changes,
    TrainingOptions options,
    TimeProvider clock,
    ILogger<CourseShelfWatch> log) : BackgroundService
{
    private static readonly TimeSpan Pause = TimeSpan.FromSeconds(2);
    private readonly string folder = Path.GetFullPath(options.CoursesFolder);
    private string? seen;
    private bool isRestored;
    private IReadOnlyList<(Course Course, CourseSnapshot Snapshot)> waiting = [];

    /// <summary>Serving begins with a full shelf.</summary>
    public override async Task StartAsync(CancellationToken cancellationToken)
    {
        await LookAsync(cancellationToken);
        await base.StartAsync(cancellationToken);
    }

    /// <inheritdoc/>
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        using var timer = new PeriodicTimer(Pause, clock);
        while (await timer.WaitForNextTickAsync(stoppingToken))
        {
            try
            {
                await LookAsync(stoppingToken);
            }
            catch (Exception e) when (e is not OperationCanceledException)
            {
                // The edge of a job: whatever failed, the next look may work, and serving goes on.
                Log.LookFailed(log, e);
            }
        }
    }

    /// <summary>Reads the folder where it changed since the last look, and puts in force what waited for its day.</summary>
    public async Task LookAsync(CancellationToken cancellation)
    {
        await RestoreAsync(cancellation);
        var stamp = FolderStamp.Find(folder);
        if (stamp != seen)
        {
            seen = stamp;
            if (stamp is null) Log.CoursesFolderUnreadable(log, folder);
            else Read();
        }

        await PutAsync(cancellation);
        await lastGood.KeepAsync(cancellation);
    }

    // Until the records told what served last, the folder serves, and nothing of it is kept as being in force: nobody compared the rules yet.
    private async Task RestoreAsync(CancellationToken cancellation)
    {
        if (isRestored || await lastGood.FindAsync(cancellation) is not { } restored) return;
        shelf.Put(restored);
        (isRestored, seen) = (true, null);
    }

    private void Read()
    {
        var reading = CourseReader.Read(CourseFiles.FromFolder(folder), CourseAddresses.OfModule);
        foreach (var problem in reading.Problems) Tell(problem);
        shelf.Report(reading);
        shelf.KeepOnly(FolderStamp.CourseIds(folder));
        Log.CoursesRead(log, reading.Courses.Count, reading.Problems.Count);
        var snapshots = reading.Snapshots.ToDictionary(snapshot => snapshot.CourseId, StringComparer.Ordinal);
        waiting = [.. reading.Courses.Select(course => (course, snapshots[course.Id]))];
        shelf.HoldBack([]);
    }

    private async Task PutAsync(CancellationToken cancellation)
    {
        if (waiting.Count == 0) return;
        var (known, back) = (shelf.Findings, new List<HeldBack>());
        foreach (var (course, snapshot) in waiting)
        {
            if (await changes.FindReasonAsync(course, cancellation) is { } reason)
            {
                back.Add(reason);
                if (reason.Problem is { } problem && !known.Any(one => one.Code == problem.Code && one.Place == problem.Place)) Tell(problem);
                continue;
            }

            shelf.Put([course]);
            if (isRestored) lastGood.Remember([snapshot]);
        }

        shelf.HoldBack(back);
        waiting = [.. waiting.Where(one => back.Exists(held => held.Course.Id == one.Course.Id))];
    }

    private void Tell(Problem problem) => Log.CourseProblem(log, ProblemText.Line(problem, CultureInfo.CurrentUICulture));
}

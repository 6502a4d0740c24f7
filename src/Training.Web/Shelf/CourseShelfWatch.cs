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
    TrainingOptions options,
    TimeProvider clock,
    ILogger<CourseShelfWatch> log) : BackgroundService
{
    private static readonly TimeSpan Pause = TimeSpan.FromSeconds(2);
    private readonly string folder = Path.GetFullPath(options.CoursesFolder);
    private string? seen;

    /// <summary>Serving begins with a full shelf.</summary>
    public override async Task StartAsync(CancellationToken cancellationToken)
    {
        shelf.Put(await lastGood.RestoreAsync(cancellationToken));
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

    /// <summary>Reads the folder where it changed since the last look.</summary>
    public async Task LookAsync(CancellationToken cancellation)
    {
        var stamp = FolderStamp.Find(folder);
        if (stamp != seen)
        {
            seen = stamp;
            if (stamp is null) Log.CoursesFolderUnreadable(log, folder);
            else Read();
        }

        await lastGood.KeepAsync(cancellation);
    }

    private void Read()
    {
        var reading = CourseReader.Read(CourseFiles.FromFolder(folder), CourseAddresses.OfModule);
        foreach (var problem in reading.Problems) Log.CourseProblem(log, ProblemText.Line(problem, CultureInfo.CurrentUICulture));
        shelf.Report(reading);
        shelf.Put(reading.Courses);
        shelf.KeepOnly(FolderStamp.CourseIds(folder));
        Log.CoursesRead(log, reading.Courses.Count, reading.Problems.Count);
        lastGood.Remember(reading.Snapshots);
    }

}

using Microsoft.AspNetCore.Builder;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Training.Courses;
using Training.Records;
using Training.Web.Demo;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Demo;

/// <summary>The whole demo, made once in a folder of its own, on a leap day.</summary>
public sealed class MadeDemo : IAsyncLifetime
{
    internal static readonly DateOnly Today = new(2028, 2, 29);

    private readonly string folder = Directory.CreateTempSubdirectory("training-demo-").FullName;
    private WebApplication? app;

    public MadeDemo() => Place = new(folder);

    internal DemoPlace Place { get; }

    internal IReadOnlyDictionary<string, Course> Courses { get; private set; } = new Dictionary<string, Course>(StringComparer.Ordinal);

    public async ValueTask InitializeAsync()
    {
        app = Site.Build(
            [
                "--Training:PublicAddress=http://localhost:5080", "--Training:Provider:Name=Quillback Field Safety",
                "--Training:Provider:Address=14 Ledger Road", $"--Training:DataFolder={Place.Folder}", $"--Training:Database:Connection=Data Source={Place.Database}",
            ],
            services => services.AddSingleton(new DemoMark(IsOn: true)));
        var reading = CourseReader.Read(CourseFiles.FromFolder(Repository.Path("courses")));
        Courses = reading.Courses.ToDictionary(course => course.Id, StringComparer.Ordinal);
        await DemoCommand.MakeAsync(app, DemoData.Read(Repository.Path("demo-data")), reading, Courses, Place, Today, []);
    }

    internal RecordsContext Open() => app!.Services.GetRequiredService<IDbContextFactory<RecordsContext>>().CreateDbContext(); // not null: made above

    public async ValueTask DisposeAsync()
    {
        if (app is not null) await app.DisposeAsync();
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }
}

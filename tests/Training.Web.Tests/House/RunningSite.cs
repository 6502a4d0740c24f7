using Hangfire;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using Training.Courses;
using Training.Records;
using Training.Web.Demo;
using Training.Web.Features.IssueLog;
using Training.Web.Features.Reminders;
using Training.Web.Shelf;

namespace Training.Web.Tests.House;

/// <summary>The whole site on a real Kestrel and a real database, in folders of its own, on a stopped clock.</summary>
internal sealed class RunningSite : IDisposable
{
    public static readonly DateTimeOffset Now = new(2026, 11, 25, 17, 44, 0, TimeSpan.Zero);

    private readonly string folder;
    private readonly WebApplicationFactory<Program> factory;

    private RunningSite(string folder, bool isDemo, params IReadOnlyList<KeyValuePair<string, string>> settings)
    {
        this.folder = folder;
        factory = new WebApplicationFactory<Program>().WithWebHostBuilder(builder =>
        {
            builder.UseSetting("Training:PublicAddress", "https://training.example.org");
            builder.UseSetting("Urls", "http://127.0.0.1:0");
            builder.UseSetting("Training:Provider:Name", "Quillback Field Safety");
            builder.UseSetting("Training:Provider:Address", "14 Arroyo Road, Lordsburg, NM");
            builder.UseSetting("Training:DataFolder", Path.Combine(folder, "var"));
            builder.UseSetting("Training:CoursesFolder", CoursesFolder);
            foreach (var (key, value) in settings) builder.UseSetting(key, value);
            builder.ConfigureServices(services =>
            {
                services.AddSingleton<TimeProvider>(Clock);
                services.AddSingleton<ILoggerProvider>(Log);
                // The clock of the jobs would start a round in the middle of a test; tests start their own.
                foreach (var clock in services.Where(IsClockOfJobs).ToList()) services.Remove(clock);
                if (isDemo) services.AddSingleton(new DemoMark(IsOn: true));
            });
        });
        factory.UseKestrel(0);
        factory.StartServer();
        Client = new HttpClient(new SocketsHttpHandler { AllowAutoRedirect = false }) { BaseAddress = factory.ClientOptions.BaseAddress };
    }

    public StoppedClock Clock { get; } = new(Now);

    public HttpClient Client { get; }

    /// <summary>What it logged, as far as its settings let it.</summary>
    public CapturedLog Log { get; } = new();

    /// <summary>Everything that the site writes.</summary>
    public string DataFolder => Path.Combine(folder, "var");

    /// <summary>Where mails are written without a mail server.</summary>
    public string MailFolder => Path.Combine(DataFolder, "mail");

    public string CoursesFolder => Path.Combine(folder, "courses");

    /// <summary>A site over a copy of the courses that this project ships, whose questions somebody accepted.</summary>
    public static RunningSite Start(bool isDemo = false, params IReadOnlyList<KeyValuePair<string, string>> settings)
    {
        var site = StartEmpty(isDemo, settings);
        site.AcceptQuestions();
        // Somebody can sign in here: the site is nobody's first day.
        Accounts.EnsureAsync(site.Services, site.PersonAsync("Odalys Ferrante").GetAwaiter().GetResult()).GetAwaiter().GetResult();
        return site;
    }

    /// <summary>The same as a new provider finds it: nobody is there, and nobody read a question.</summary>
    public static RunningSite StartEmpty(bool isDemo = false, params IReadOnlyList<KeyValuePair<string, string>> settings)
    {
        var own = Directory.CreateTempSubdirectory("training-web-").FullName;
        Copy(Repository.Path("courses"), Path.Combine(own, "courses"));
        // Tests change English words without a translator at hand; what that is to the marks is held by the tests of the course engine.
        foreach (var marks in Directory.EnumerateFiles(Path.Combine(own, "courses"), Translation.FileName, SearchOption.AllDirectories)) File.Delete(marks);
        // Every migration for every site would take most of the time of the tests; that they run one by one is tested with the records.
        Directory.CreateDirectory(Path.Combine(own, "var"));
        File.Copy(EmptyDatabase.Value, Path.Combine(own, "var", "training.db"));
        return new(own, isDemo, settings);
    }

    // A database as a new server has it before its first start has done anything but migrate; one a process.
    private static readonly Lazy<string> EmptyDatabase = new(() =>
    {
        var made = Directory.CreateTempSubdirectory("training-web-empty-");
        AppDomain.CurrentDomain.ProcessExit += (_, _) => made.Delete(recursive: true);
        var file = Path.Combine(made.FullName, "training.db");
        var options = new DbContextOptionsBuilder<RecordsContext>();
        options.UseRecords(new DatabaseOptions { Connection = $"Data Source={file};Pooling=False" });
        using (var records = new RecordsContext(options.Options)) records.Database.Migrate();
        return file;
    });

    /// <summary>Stops it and starts another over the same folders.</summary>
    public RunningSite Restart()
    {
        Stop();
        return new(folder, isDemo: false);
    }

    /// <summary>Looks at the courses folder; what changed there is accepted too.</summary>
    public async Task LookAsync()
    {
        await factory.Services.GetRequiredService<CourseShelfWatch>().LookAsync(CancellationToken.None);
        AcceptQuestions();
    }

    public IServiceProvider Services => factory.Services;

    public CourseShelf Shelf => factory.Services.GetRequiredService<CourseShelf>();

    public async Task RecordAsync(Func<RecordsContext, Task> write)
    {
        await using var records = await factory.Services.GetRequiredService<IDbContextFactory<RecordsContext>>().CreateDbContextAsync();
        await write(records);
    }

    public async Task<(int Status, string Html)> GetAsync(string path, string language = "")
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, path);
        if (language.Length > 0) request.Headers.Add("Accept-Language", language);
        using var answer = await Client.SendAsync(request);
        return ((int)answer.StatusCode, System.Net.WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync()));
    }

    /// <summary>A browser of its own, signed in to nothing.</summary>
    public PlainBrowser OpenBrowser() => new(factory.ClientOptions.BaseAddress);

    /// <summary>A browser signed in as this person; the account is made where there is none.</summary>
    public async Task<PlainBrowser> SignInAsync(Guid personId)
    {
        var name = await Accounts.EnsureAsync(factory.Services, personId);
        var browser = OpenBrowser();
        var answer = await browser.PostAsync("/en/sign-in", new() { ["Name"] = name, ["Password"] = Accounts.Password }, page: "/en/sign-in");
        Xunit.Assert.Equal(303, answer.Status);
        return browser;
    }

    public void Dispose()
    {
        Stop();
        // One that was restarted shares its folder with its successor.
        if (Directory.Exists(folder)) Directory.Delete(folder, recursive: true);
    }

    private void AcceptQuestions()
    {
        using var records = factory.Services.GetRequiredService<IDbContextFactory<RecordsContext>>().CreateDbContext();
        var reviewer = new Person { Id = Guid.CreateVersion7(), Language = Language.English };
        records.Add(reviewer);
        foreach (var course in Shelf.Courses)
        {
            var formId = Guid.CreateVersion7();
            records.AddRange(course.Questions.Select(question => new QuestionReview
            {
                FormId = formId, CourseId = course.Id, QuestionId = question.Id, QuestionVersion = question.Version, Outcome = ReviewOutcome.Accepted,
                ReviewerId = reviewer.Id, ReviewedAt = Clock.GetUtcNow(),
            }));
        }

        records.SaveChanges();
    }

    private static bool IsClockOfJobs(ServiceDescriptor service) =>
        service.ServiceType == typeof(IHostedService)
        && (service.ImplementationType == typeof(ReminderClock)
            || service.ImplementationType == typeof(TreeHeadClock)
            || service.ImplementationFactory?.Method.Module.Assembly == typeof(BackgroundJobServerHostedService).Assembly);

    private void Stop()
    {
        Client.Dispose();
        factory.Dispose();
        // The pool would keep the file open.
        SqliteConnection.ClearAllPools();
    }

    private static void Copy(string from, string to)
    {
        foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            var target = Path.Combine(to, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target);
        }
    }
}

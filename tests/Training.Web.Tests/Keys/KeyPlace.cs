using Microsoft.Extensions.Logging;
using Training.Courses;
using Training.Web.Keys;
using Training.Web.Provider;
using Training.Web.Settings;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Keys;

/// <summary>A data folder of its own, with the keys that a server would have in it.</summary>
internal sealed class KeyPlace : IDisposable
{
    public const string Provider = "Quillback Field Safety";

    public static readonly DateTimeOffset First = new(2026, 11, 25, 17, 44, 0, TimeSpan.Zero);

    private readonly DirectoryInfo data = Directory.CreateTempSubdirectory("training-keys-");
    private readonly LoggerFactory logs = new LoggerFactory();

    public KeyPlace() => logs.AddProvider(Log);

    public StoppedClock Clock { get; } = new(First);

    public CapturedLog Log { get; } = new();

    /// <summary>Path of something in the data folder.</summary>
    public string In(string name) => Path.Combine(data.FullName, name);

    /// <summary>The folder of keys.</summary>
    public string Keys => In("keys");

    /// <summary>The paths of all private parts, by name.</summary>
    public IReadOnlyList<string> PrivateFiles => [.. Directory.EnumerateFiles(Keys, "*.pem").Order(StringComparer.Ordinal)];

    public TrainingOptions Options(KeysOptions? keys = null, string provider = Provider) => new()
    {
        PublicAddress = new("https://training.example.org"), DataFolder = data.FullName, Provider = new() { Name = provider }, Keys = keys ?? new(),
    };

    public KeyStore Store(KeysOptions? keys = null) => new(Options(keys));

    /// <summary>The keys as a server opens them that starts now.</summary>
    public OpenedKeys Open(KeysOptions? keys = null, DateTimeOffset? now = null)
    {
        var problems = new List<Problem>();
        var opened = Store(keys).Open(Provider, now ?? First, problems);
        Assert.Empty(problems);
        return opened!; // not null: without problems
    }

    /// <summary>The one problem for which a server does not start now.</summary>
    public Problem Refuse(KeysOptions? keys = null, DateTimeOffset? now = null)
    {
        var problems = new List<Problem>();
        Assert.Null(Store(keys).Open(Provider, now ?? First, problems));
        return Assert.Single(problems);
    }

    /// <summary>Keys as the services of a running server hold them.</summary>
    public IssuerKeys Serve(KeysOptions? keys = null, OurProvider? provider = null)
    {
        var options = Options(keys);
        return new(options, provider ?? new OurProvider(options), Timestamps(options), Clock, logs.CreateLogger<IssuerKeys>());
    }

    public TimestampAsking Timestamps(TrainingOptions options) => new(options, Clock, logs.CreateLogger<TimestampAsking>());

    public void Dispose()
    {
        logs.Dispose();
        data.Delete(recursive: true);
    }
}

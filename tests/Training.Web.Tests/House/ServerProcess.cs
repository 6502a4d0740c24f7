using System.Collections.Concurrent;
using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Training.Records;

namespace Training.Web.Tests.House;

/// <summary>The program itself in a process of its own, so that it can be killed.</summary>
/// <param name="folder">Its data folder.</param>
/// <param name="settings">Of the command line; later ones count.</param>
internal sealed class ServerProcess(string folder, params IReadOnlyList<string> settings) : IDisposable
{
    private readonly ConcurrentQueue<string> lines = new();
    private readonly Uri address = new($"http://127.0.0.1:{FreePort()}");
    private Process? process;

    /// <summary>What it printed so far.</summary>
    public IReadOnlyCollection<string> Lines => lines;

    public string Database => Path.Combine(folder, "training.db");

    /// <summary>Environment variables that it starts with, beside those of the test.</summary>
    public Dictionary<string, string> Environment { get; } = new(StringComparer.Ordinal);

    /// <summary>Starts it and does not wait.</summary>
    public void Begin()
    {
        var start = new ProcessStartInfo("dotnet",
        [
            Path.Combine(AppContext.BaseDirectory, "Training.Web.dll"), "serve", $"--Urls={address}", $"--Training:PublicAddress={address}",
            $"--Training:DataFolder={folder}", $"--Training:CoursesFolder={Repository.Path("courses")}", "--Logging:LogLevel:Default=None", .. settings,
        ])
        { UseShellExecute = false, RedirectStandardOutput = true };
        foreach (var (name, value) in Environment) start.Environment[name] = value;
        process = Process.Start(start) ?? throw new InvalidOperationException("The program did not start.");
        process.OutputDataReceived += (_, line) => lines.Enqueue(line.Data ?? "");
        process.BeginOutputReadLine();
    }

    /// <summary>Starts it and waits until it serves.</summary>
    public async Task StartAsync()
    {
        Begin();
        using var client = new HttpClient { BaseAddress = address, Timeout = TimeSpan.FromSeconds(5) };
        for (var tries = 0; ; tries++)
        {
            try
            {
                if ((await client.GetAsync("/healthz")).IsSuccessStatusCode) return;
            }
            catch (HttpRequestException) when (tries < 600)
            {
            }

            await Task.Delay(100);
        }
    }

    /// <summary>SIGKILL: no handler runs, nothing is flushed.</summary>
    public void Kill()
    {
        process?.Kill();
        process?.WaitForExit();
        process?.Dispose();
        process = null;
    }

    public PlainBrowser OpenBrowser() => new(address);

    public Uri Address => address;

    /// <summary>The most memory that it ever held, as Linux counts it (proc(5), <c>VmHWM</c>).</summary>
    public long PeakMegabytes()
    {
        var line = File.ReadLines($"/proc/{process!.Id}/status").Single(line => line.StartsWith("VmHWM:", StringComparison.Ordinal)); // not null: it was started
        return long.Parse(line.Split((char[])[' ', '\t'], StringSplitOptions.RemoveEmptyEntries)[1], System.Globalization.CultureInfo.InvariantCulture) / 1024;
    }

    /// <summary>Looks into the database, as another process would.</summary>
    public async Task RecordAsync(Func<RecordsContext, Task> look)
    {
        var options = new DbContextOptionsBuilder<RecordsContext>();
        options.UseRecords(new DatabaseOptions { Connection = $"Data Source={Database}" });
        await using (var records = new RecordsContext(options.Options)) await look(records);
        SqliteConnection.ClearAllPools();
    }

    public void Dispose() => Kill();

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}

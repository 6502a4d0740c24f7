using System.Diagnostics;

namespace Training.Web.Tests.House;

/// <summary>Runs a program of Debian's that judges what we serve.</summary>
internal static class Script
{
    /// <summary>Exit code, and everything that it said.</summary>
    public static async Task<(int Code, string Said)> RunAsync(string program, params IReadOnlyList<string> arguments)
    {
        var start = new ProcessStartInfo(program, arguments) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true };
        using var process = Process.Start(start) ?? throw new InvalidOperationException($"{program} did not start; tests/run installs it.");
        var (output, errors) = (process.StandardOutput.ReadToEndAsync(), process.StandardError.ReadToEndAsync());
        await process.WaitForExitAsync();
        return (process.ExitCode, await output + await errors);
    }
}

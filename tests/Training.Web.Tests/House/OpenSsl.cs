using System.Diagnostics;

namespace Training.Web.Tests.House;

/// <summary>OpenSSL of this machine, which shares no code with the framework's way of reading what it writes.</summary>
internal static class OpenSsl
{
    public static void Run(params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo("openssl", arguments) { UseShellExecute = false, RedirectStandardError = true, RedirectStandardOutput = true })
            ?? throw new InvalidOperationException("openssl did not start; tests/run installs it.");
        var (said, complained) = (process.StandardOutput.ReadToEndAsync(), process.StandardError.ReadToEndAsync());
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, $"openssl {string.Join(' ', arguments)}: {complained.Result} {said.Result}");
    }
}

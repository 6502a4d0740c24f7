using System.ComponentModel;
using System.Diagnostics;

namespace Training.Documents.Tests;

/// <summary>Judges from outside: programs of Debian's that read what we wrote. A missing one fails the test and says what to install.</summary>
internal static class DebianTool
{
    public static string Qpdf(byte[] pdf, params string[] arguments) => RunOn(pdf, "qpdf", "qpdf", [.. arguments, "{file}"]);

    /// <summary>The file with its streams laid open.</summary>
    public static string Streams(byte[] pdf) => RunOn(pdf, "qpdf", "qpdf", "--qdf", "--warning-exit-0", "{file}", "-");

    public static string Fonts(byte[] pdf) => RunOn(pdf, "pdffonts", "poppler-utils", "{file}");

    public static string Info(byte[] pdf, params string[] arguments) => RunOn(pdf, "pdfinfo", "poppler-utils", [.. arguments, "{file}"]);

    /// <summary>What poppler says of the signatures, times in UTC.</summary>
    public static string Signature(byte[] pdf) => RunOn(pdf, "env", "poppler-utils", "TZ=UTC", "pdfsig", "{file}");

    /// <summary>The text in the order in which it was drawn, white space collapsed.</summary>
    public static string Text(byte[] pdf) =>
        string.Join(' ', RunOn(pdf, "pdftotext", "poppler-utils", "-raw", "{file}", "-").Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    public static string WordBoxes(byte[] pdf) => RunOn(pdf, "pdftotext", "poppler-utils", "-bbox", "{file}", "-");

    /// <summary>What a scanner reads from the printed page, after each of the given arguments of pdftoppm.</summary>
    public static string ScanCode(byte[] pdf, int dotsPerInch, params string[] rendering)
    {
        var folder = Directory.CreateTempSubdirectory("certificate-");
        try
        {
            var (file, image) = (Path.Combine(folder.FullName, "page.pdf"), Path.Combine(folder.FullName, "page"));
            File.WriteAllBytes(file, pdf);
            Run("pdftoppm", "poppler-utils", ["-r", $"{dotsPerInch}", "-png", "-singlefile", .. rendering, file, image]);
            return Run("zbarimg", "zbar-tools", ["-q", "--raw", image + ".png"]).TrimEnd('\n');
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    public static string Run(string program, string package, IReadOnlyList<string> arguments)
    {
        try
        {
            using var process = Process.Start(new ProcessStartInfo(program, arguments) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true })!;
            var errors = process.StandardError.ReadToEndAsync();
            var output = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            Assert.True(process.ExitCode == 0, $"{program} {string.Join(' ', arguments)} ended with {process.ExitCode}: {errors.Result}{output}");
            return output;
        }
        catch (Win32Exception notFound)
        {
            throw new InvalidOperationException($"{program} is not installed; these tests need it: apt-get install {package}", notFound);
        }
    }

    private static string RunOn(byte[] pdf, string program, string package, params IReadOnlyList<string> arguments)
    {
        var file = Path.GetTempFileName();
        try
        {
            File.WriteAllBytes(file, pdf);
            return Run(program, package, [.. arguments.Select(argument => argument == "{file}" ? file : argument)]);
        }
        finally
        {
            File.Delete(file);
        }
    }
}

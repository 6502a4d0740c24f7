using System.Diagnostics;

namespace Training.Web.Tests.House;

/// <summary>Poppler as a reader of papers that shares no code with their writers.</summary>
internal static class Pdf
{
    /// <summary>The text in the order in which it was drawn, white space collapsed.</summary>
    public static string Text(byte[] pdf) => string.Join(' ', Run(pdf, "pdftotext", "-raw", "{file}", "-").Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    /// <summary>How many pages it has.</summary>
    public static int Pages(byte[] pdf)
    {
        var line = Run(pdf, "pdfinfo", "{file}").Split('\n').Single(line => line.StartsWith("Pages:", StringComparison.Ordinal));
        return int.Parse(line["Pages:".Length..], System.Globalization.CultureInfo.InvariantCulture);
    }

    /// <summary>What an answer has to be where it is a paper to save under that name; its text.</summary>
    public static string Read(Reply answer, string name)
    {
        Assert.Equal((200, "application/pdf"), (answer.Status, answer.Headers["Content-Type"]));
        Assert.Contains($"attachment; filename={name}", answer.Headers["Content-Disposition"], StringComparison.Ordinal);
        Assert.Equal("no-store", answer.Headers["Cache-Control"]);
        return Text(answer.Bytes);
    }

    private static string Run(byte[] pdf, string program, params IReadOnlyList<string> arguments)
    {
        var file = Path.GetTempFileName();
        File.WriteAllBytes(file, pdf);
        using var process = Process.Start(new ProcessStartInfo(program, arguments.Select(argument => argument == "{file}" ? file : argument))
        {
            UseShellExecute = false, RedirectStandardOutput = true,
        })!; // not null: it was started
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        File.Delete(file);
        return output;
    }
}

using System.Diagnostics;
using System.Globalization;
using CsvHelper;

namespace Training.Web.Tests.House;

/// <summary>LibreOffice without a window, as a reader of workbooks that shares no code with their writer.</summary>
internal static class Office
{
    /// <summary>The cells of the first sheet as LibreOffice writes them to CSV (UTF-8, dates as ISO 8601).</summary>
    public static async Task<List<string[]>> ReadAsync(string path)
    {
        var folder = Path.GetDirectoryName(path)!; // not null: a file lies in a folder
        // A profile of its own: two at once would wait for each other. 44,34,76: comma, quotes, UTF-8; en-US writes the short date as below.
        using var office = Process.Start(new ProcessStartInfo("soffice",
        [
            $"-env:UserInstallation=file://{folder}/profile", "--headless", "--convert-to", "csv:Text - txt - csv (StarCalc):44,34,76,1,,1033,false,true", "--outdir", folder, path,
        ])
        { RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false })!; // not null: it was started
        await Task.WhenAll(office.StandardOutput.ReadToEndAsync(), office.StandardError.ReadToEndAsync());
        await office.WaitForExitAsync();
        using var csv = new CsvReader(new StreamReader(Path.ChangeExtension(path, ".csv")), CultureInfo.InvariantCulture);
        var rows = new List<string[]>();
        while (await csv.ReadAsync()) rows.Add([.. csv.Parser.Record!.Select(Iso)]); // not null: it was read
        return rows;
    }

    // Its short date of en-US: 12/07/2026.
    private static string Iso(string cell) =>
        DateOnly.TryParseExact(cell, ["MM/dd/yyyy", "M/d/yyyy"], CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) : cell;
}

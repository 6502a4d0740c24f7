using System.Globalization;
using System.Text;
using CsvHelper;
using CsvHelper.Configuration;
using Microsoft.Extensions.Localization;
using Training.Web.Features.Shared;

namespace Training.Web.Features.Workforce;

/// <summary>Writes the training matrix as CSV for people and their spreadsheets: all rows that the filter admits.</summary>
public sealed class MatrixFile(IStringLocalizer<WorkforceText> text, StandingWords standings)
{
    /// <summary>UTF-8 with its mark, so that a spreadsheet reads the accents; dates as ISO 8601.</summary>
    public byte[] Write(Matrix matrix)
    {
        // A cell that begins like a formula gets an apostrophe: a spreadsheet shows it and computes nothing.
        var form = new CsvConfiguration(CultureInfo.InvariantCulture) { InjectionOptions = InjectionOptions.Escape, NewLine = "\r\n" };
        using var bytes = new MemoryStream();
        using (var writer = new StreamWriter(bytes, new UTF8Encoding(encoderShouldEmitUTF8Identifier: true)))
        using (var csv = new CsvWriter(writer, form))
        {
            WriteHeader(csv, matrix);
            foreach (var row in matrix.Rows) WriteRow(csv, row);
        }

        return bytes.ToArray();
    }

    private void WriteHeader(CsvWriter csv, Matrix matrix)
    {
        foreach (var heading in new[] { text["Name"], text["Badge"], text["Site"], text["Crew"] }) csv.WriteField(heading.Value);
        foreach (var scheme in matrix.Schemes)
        {
            csv.WriteField(text["StandingUnder", scheme.Title].Value);
            csv.WriteField(text["LastDayUnder", scheme.Title].Value);
        }

        csv.NextRecord();
    }

    private void WriteRow(CsvWriter csv, MatrixRow row)
    {
        csv.WriteField(row.Person.Name ?? text["NameErased"].Value);
        csv.WriteField(row.Person.Badge ?? "");
        csv.WriteField(row.Person.SiteName ?? "");
        csv.WriteField(row.Person.CrewName ?? "");
        foreach (var cell in row.Cells)
        {
            csv.WriteField(cell.Standing is { } standing ? standings[standing] : text["NotHeld"].Value);
            csv.WriteField(cell.ExpiresOn?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "");
        }

        csv.NextRecord();
    }
}

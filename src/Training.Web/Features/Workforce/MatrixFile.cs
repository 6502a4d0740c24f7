using Microsoft.Extensions.Localization;
using Training.Web.Features.Shared;

namespace Training.Web.Features.Workforce;

/// <summary>Writes the training matrix as CSV for people and their spreadsheets: all rows that the filter admits.</summary>
public sealed class MatrixFile(IStringLocalizer<WorkforceText> text, StandingWords standings)
{
    /// <summary>Standing and last day of everybody under every scheme; dates as ISO 8601.</summary>
    public byte[] Write(Matrix matrix) => SpreadsheetFile.Write(
    [
        [
            text["Name"], text["Badge"], text["Site"], text["Crew"],
            .. matrix.Schemes.SelectMany(scheme => (string[])[text["StandingUnder", scheme.Title], text["LastDayUnder", scheme.Title]]),
        ],
        .. matrix.Rows.Select(row => (string?[])
        [
            row.Person.Name ?? text["NameErased"], row.Person.Badge, row.Person.SiteName, row.Person.CrewName,
            .. row.Cells.SelectMany(cell => (string?[])
            [
                cell.Standing is { } standing ? standings[standing] : text["NotHeld"],
                cell.ExpiresOn?.Iso(),
            ]),
        ]),
    ]);
}

using Microsoft.Extensions.Localization;
using Training.Records;
using Training.Web.Features.Shared;

namespace Training.Web.Features.Workforce;

/// <summary>The training matrix as a table for people and their spreadsheets: all rows that the filter admits.</summary>
public sealed class MatrixFile(IStringLocalizer<WorkforceText> text, StandingWords standings)
{
    /// <summary>Standing and last day of everybody under every scheme.</summary>
    public SheetTable Of(Matrix matrix, RecordsContext records, CancellationToken cancellation) => new(
        text["SheetMatrix"],
        [
            text["Name"], text["Badge"], text["Site"], text["Crew"],
            .. matrix.Schemes.SelectMany(scheme => (string[])[text["StandingUnder", scheme.Title], text["LastDayUnder", scheme.Title]]),
        ],
        matrix.AllRowsAsync(records, cancellation).Select(row => (IReadOnlyList<object?>)
        [
            row.Person.Name ?? text["NameErased"].Value, row.Person.Badge, row.Person.SiteName, row.Person.CrewName,
            .. row.Cells.SelectMany(cell => (object?[])[cell.Standing is { } standing ? standings[standing] : text["NotHeld"].Value, cell.ExpiresOn]),
        ]));
}

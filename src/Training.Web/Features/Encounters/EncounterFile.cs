using System.Globalization;
using Training.Records;
using Training.Web.Features.Shared;

namespace Training.Web.Features.Encounters;

/// <summary>Writes encounters as a file for spreadsheets. Nobody is named in it: neither who reported nor who handled.</summary>
public static class EncounterFile
{
    /// <summary>One row an encounter, its heading first.</summary>
    public static byte[] Write(IEnumerable<EncounterLine> lines, EncounterWords words) => SpreadsheetFile.Write(
    [
        [
            words.Text["ColumnDay"], words.Text["ColumnTime"], words.Text["ColumnEmployer"], words.Text["ColumnSite"], words.Text["ColumnKind"],
            words.Text["ColumnPlace"], words.Text["ColumnCoordinates"], words.Text["ColumnSpecies"], words.Text["ColumnHandled"],
            words.Text["ColumnDone"], words.Text["ColumnFollowUp"],
        ],
        .. lines.Select(line => new string?[]
        {
            line.Encounter.MetOn.Iso(), line.Encounter.MetAt?.ToString("HH:mm", CultureInfo.InvariantCulture), line.EmployerName, line.SiteName,
            words.Of(line.Encounter.Kind), line.Encounter.Place, EncounterWords.Coordinates(line.Encounter), words.Species(line.Encounter.SpeciesId),
            words.Of(line.Encounter.Handling), line.Encounter.Done, line.Encounter.FollowUp,
        }),
    ]);
}

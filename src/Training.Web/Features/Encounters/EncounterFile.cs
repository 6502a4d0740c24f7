using System.Globalization;
using Microsoft.Extensions.Localization;
using Training.Records;
using Training.Web.Features.Shared;

namespace Training.Web.Features.Encounters;

/// <summary>Writes encounters as a file for spreadsheets. Nobody is named in it: neither who reported nor who handled.</summary>
public static class EncounterFile
{
    /// <summary>One row an encounter, its heading first.</summary>
    public static byte[] Write(IEnumerable<EncounterLine> lines, EncounterWords words)
    {
        IStringLocalizer<EncounterText> text = words.Text;
        return SpreadsheetFile.Write(
        [
            [
                text["ColumnDay"], text["ColumnTime"], text["ColumnEmployer"], text["ColumnSite"], text["ColumnKind"], text["ColumnPlace"],
                text["ColumnCoordinates"], text["ColumnSpecies"], text["ColumnHandled"], text["ColumnDone"], text["ColumnFollowUp"],
            ],
            .. lines.Select(line => new string?[]
            {
                line.Encounter.MetOn.Iso(), line.Encounter.MetAt?.ToString("HH:mm", CultureInfo.InvariantCulture), line.EmployerName, line.SiteName,
                words.Of(line.Encounter.Kind), line.Encounter.Place, EncounterWords.Coordinates(line.Encounter), words.Species(line.Encounter.SpeciesId),
                words.Of(line.Encounter.Handling), line.Encounter.Done, line.Encounter.FollowUp,
            }),
        ]);
    }
}

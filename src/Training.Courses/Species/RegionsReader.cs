namespace Training.Courses;

/// <summary>Reads <c>regions.yaml</c>: which states and which species a regional set holds.</summary>
internal static class RegionsReader
{
    public static List<ReadRegion> Read(CourseFolder folder)
    {
        var regions = new List<ReadRegion>();
        foreach (var fields in Fields.ListOf(SourceNode.Read(folder.Files, SpeciesFiles.Regions, folder.Problems), SpeciesFiles.Regions, null, folder.Problems))
        {
            var id = fields.Id("id");
            fields.Part = $"region {id}";
            var states = Listed.States(fields, "states", fields.Required("states"));
            var species = Listed.Ids(fields, "species", fields.Required("species"));
            var fact = SpeciesReader.FactOf(folder, fields);
            fields.Finish();
            if (regions.Exists(known => known.Region.Id == id)) fields.Report(CourseProblems.IdTwice, fields.LineOf("id"), id);
            else if (id.Length > 0)
            {
                regions.Add(new(
                    new(id, [.. states.Select(state => state.Text)], [.. species.Select(sheet => sheet.Text)], fact, new Dictionary<Language, string>()),
                    fields,
                    species));
            }
        }

        return regions;
    }

    /// <summary>A set without names, and where its parts stand.</summary>
    public sealed record ReadRegion(RegionalSet Region, Fields Fields, IReadOnlyList<(string Id, int Line)> Species);
}

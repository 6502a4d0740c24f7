namespace Training.Courses;

/// <summary>What one sheet or one set alone cannot know: whether what they name exists, and whether every venomous species is met where its source places it.</summary>
internal static class SpeciesChecks
{
    public static void Run(List<SpeciesReader.ReadSheet> sheets, List<RegionsReader.ReadRegion> regions)
    {
        foreach (var sheet in sheets)
        {
            CheckConfusions(sheet, sheets);
            if (sheet.Sheet.IsVenomous) CheckSets(sheet, regions);
        }

        foreach (var region in regions) CheckSpecies(region, sheets);
    }

    private static void CheckConfusions(SpeciesReader.ReadSheet sheet, List<SpeciesReader.ReadSheet> sheets)
    {
        foreach (var (id, line) in sheet.Confusions)
        {
            if (id == sheet.Sheet.Id) sheet.Fields.Report(SpeciesProblems.ConfusionItself, line, id);
            else if (!sheets.Exists(other => other.Sheet.Id == id)) sheet.Fields.Report(SpeciesProblems.ConfusionUnknown, line, id);
        }
    }

    private static void CheckSets(SpeciesReader.ReadSheet sheet, List<RegionsReader.ReadRegion> regions)
    {
        var own = regions.Where(region => region.Region.SpeciesIds.Contains(sheet.Sheet.Id, StringComparer.Ordinal)).ToList();
        if (own.Count == 0)
        {
            sheet.Fields.Report(SpeciesProblems.InNoSet, sheet.Fields.LineOf("id"), sheet.Sheet.Id);
            return;
        }

        foreach (var (state, line) in sheet.States.Where(place => !own.Exists(region => region.Region.States.Contains(place.State, StringComparer.Ordinal))))
        {
            sheet.Fields.Report(SpeciesProblems.StateWithoutSet, line, state, sheet.Sheet.Id);
        }
    }

    private static void CheckSpecies(RegionsReader.ReadRegion region, List<SpeciesReader.ReadSheet> sheets)
    {
        foreach (var (id, line) in region.Species)
        {
            var sheet = sheets.Find(known => known.Sheet.Id == id)?.Sheet;
            if (sheet is null) region.Fields.Report(SpeciesProblems.RegionSpeciesUnknown, line, id);
            else if (!sheet.IsVenomous) region.Fields.Report(SpeciesProblems.RegionLookAlike, line, id);
            else if (sheet.Where is not { } where || (!where.IsWider && !where.States.Intersect(region.Region.States, StringComparer.Ordinal).Any()))
            {
                region.Fields.Report(SpeciesProblems.RegionSpeciesElsewhere, line, id);
            }
        }
    }
}

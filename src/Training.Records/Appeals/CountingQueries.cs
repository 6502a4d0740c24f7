namespace Training.Records;

/// <summary>What counts: the first content under each form, and not set aside. Decisions, tries and standing on class days start from here.</summary>
public static class CountingQueries
{
    /// <summary>Scoresheets that count.</summary>
    public static IQueryable<ScoresheetRecord> CountingScoresheets(this RecordsContext records) =>
        records.Scoresheets.Where(sheet => sheet.Copy == 1 && !records.ScoresheetSetAsides.Any(aside => aside.ScoresheetId == sheet.Id));

    /// <summary>Sittings that count.</summary>
    public static IQueryable<SittingRecord> CountingSittings(this RecordsContext records) =>
        records.Sittings.Where(sitting => sitting.Copy == 1 && !records.SittingSetAsides.Any(aside => aside.SittingId == sitting.Id));
}

using Training.Courses;

namespace Training.Scoring;

/// <summary>Refuses a sheet on a live snake unless everything stands that must stand before a snake is used.</summary>
/// <remarks>Rule: docs/rules.md, "Practicals". The ages are this programme's own rule; no published one was found.</remarks>
internal static class LiveCheck
{
    private const int BitePlanGreatestAgeDays = 90;
    private const int CommunicationsGreatestAgeHours = 12;

    public static void Find(Scoresheet sheet, ModelPass? modelPass, ICollection<Problem> problems)
    {
        if (sheet.Subject == Subject.Model)
        {
            if (sheet.Live is not null) problems.Add(new(ScoresheetProblems.LiveConditionsOnModel, Place.Of("live conditions")));
            return;
        }

        if (sheet.Live is null)
        {
            problems.Add(new(ScoresheetProblems.LiveConditionsMissing, Place.Of("live conditions")));
            return;
        }

        FindInConditions(sheet, sheet.Live, problems);
        if (!IsEarlierPass(sheet, sheet.Live, modelPass)) problems.Add(new(ScoresheetProblems.ModelPassMissing, Place.Of("pass on the model")));
    }

    private static void FindInConditions(Scoresheet sheet, LiveConditions live, ICollection<Problem> problems)
    {
        if (string.IsNullOrWhiteSpace(live.PermitNumber)) problems.Add(new(ScoresheetProblems.PermitMissing, Place.Of("permit")));

        // The sheet's UTC day may be a day ahead of the site's; a plan checked "tomorrow" is refused either way.
        var day = DateOnly.FromDateTime(sheet.SignedAt.UtcDateTime);
        if (live.BitePlanCheckedOn > day || live.BitePlanCheckedOn < day.AddDays(-BitePlanGreatestAgeDays))
        {
            problems.Add(new(ScoresheetProblems.BitePlanNotCurrent, Place.Of("bite plan"), $"{BitePlanGreatestAgeDays}"));
        }

        if (live.CommunicationsTestedAt > sheet.SignedAt || live.CommunicationsTestedAt < sheet.SignedAt.AddHours(-CommunicationsGreatestAgeHours))
        {
            problems.Add(new(ScoresheetProblems.CommunicationsNotTested, Place.Of("communications"), $"{CommunicationsGreatestAgeHours}"));
        }

        if (live.WatcherId == sheet.CandidateId || live.WatcherId == sheet.InstructorId)
        {
            problems.Add(new(ScoresheetProblems.WatcherNotApart, Place.Of("watcher")));
        }
    }

    private static bool IsEarlierPass(Scoresheet sheet, LiveConditions live, ModelPass? pass) =>
        pass is not null
        && pass.ScoresheetId == live.ModelPassId
        && pass.CandidateId == sheet.CandidateId
        && pass.ChecklistId == sheet.ChecklistId
        && pass.SignedAt < sheet.SignedAt;
}

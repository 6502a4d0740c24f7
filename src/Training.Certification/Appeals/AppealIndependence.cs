namespace Training.Certification;

/// <summary>What somebody had to do with an appeal before it came. All of it is given, never only the first.</summary>
/// <param name="AppellantId">Who appeals.</param>
/// <param name="TaughtBy">Who taught the appellant, however long ago.</param>
/// <param name="ScoredBy">Who scored a sheet of the appellant, and when; sheets that were set aside included.</param>
/// <param name="DecidedById">The lead who made the contested decision; null where the rule did, or none is contested.</param>
public sealed record AppealFile(
    Guid AppellantId, IReadOnlyList<Teaching> TaughtBy, IReadOnlyList<(Guid ScorerId, DateOnly On)> ScoredBy, Guid? DecidedById);

/// <summary>Why a lead may not decide an appeal. A closed family.</summary>
public abstract record AppealBond
{
    private AppealBond()
    {
    }

    /// <summary>It is their own appeal.</summary>
    public sealed record Appellant : AppealBond;

    /// <summary>They taught the appellant, last on that day.</summary>
    public sealed record Taught(DateOnly On) : AppealBond;

    /// <summary>They scored the appellant, last on that day.</summary>
    public sealed record Scored(DateOnly On) : AppealBond;

    /// <summary>They made the contested decision.</summary>
    public sealed record Decided : AppealBond;
}

/// <summary>Who may decide an appeal.</summary>
/// <remarks>Rule: docs/rules.md, "Appeals". Stricter than for a decision: there is no exception and no two years.</remarks>
public static class AppealIndependence
{
    /// <summary>Everything for which the lead may not decide, on that day; empty where they may.</summary>
    /// <param name="file">Who had to do with it.</param>
    /// <param name="leadId">Who would decide.</param>
    /// <param name="on">The day; what happens later does not bind.</param>
    public static IReadOnlyList<AppealBond> BondsOf(AppealFile file, Guid leadId, DateOnly on)
    {
        var bonds = new List<AppealBond>();
        if (leadId == file.AppellantId) bonds.Add(new AppealBond.Appellant());
        var taught = file.TaughtBy.Where(teaching => teaching.InstructorId == leadId && teaching.On <= on).Max(teaching => (DateOnly?)teaching.On);
        if (taught is { } taughtOn) bonds.Add(new AppealBond.Taught(taughtOn));
        var scored = file.ScoredBy.Where(sheet => sheet.ScorerId == leadId && sheet.On <= on).Max(sheet => (DateOnly?)sheet.On);
        if (scored is { } scoredOn) bonds.Add(new AppealBond.Scored(scoredOn));
        if (leadId == file.DecidedById) bonds.Add(new AppealBond.Decided());
        return bonds;
    }
}

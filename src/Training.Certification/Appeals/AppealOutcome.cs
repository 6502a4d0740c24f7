namespace Training.Certification;

/// <summary>What somebody may contest.</summary>
public enum AppealMatter
{
    /// <summary>The result of a sitting.</summary>
    Sitting,

    /// <summary>The result of a scoresheet.</summary>
    Scoresheet,

    /// <summary>A decision that was not a grant.</summary>
    Decision,

    /// <summary>Anything else of the programme: a complaint, without a contested result.</summary>
    Complaint,
}

/// <summary>What an appeal came to.</summary>
public enum AppealOutcome
{
    /// <summary>The appellant was right.</summary>
    Upheld,

    /// <summary>The appellant was right in part.</summary>
    UpheldInPart,

    /// <summary>What was contested stands.</summary>
    NotUpheld,
}

/// <summary>What follows where an appeal is upheld. Nothing of it turns a fail into a pass.</summary>
public enum AppealRemedy
{
    /// <summary>The result no longer counts: not as evidence, and not as a try. The try may be repeated with another scorer.</summary>
    SetAside,

    /// <summary>The decision is made anew, by another lead; the contested one stays on record.</summary>
    DecideAnew,

    /// <summary>The appellant is told what was found, and nothing else changes.</summary>
    ToldOnly,
}

/// <summary>Which remedies fit.</summary>
/// <remarks>Rule: docs/rules.md, "Appeals".</remarks>
public static class AppealRemedies
{
    /// <summary>What may follow where an appeal about this is upheld, the strongest first.</summary>
    public static IReadOnlyList<AppealRemedy> For(AppealMatter matter) => matter switch
    {
        AppealMatter.Sitting or AppealMatter.Scoresheet => [AppealRemedy.SetAside, AppealRemedy.ToldOnly],
        AppealMatter.Decision => [AppealRemedy.DecideAnew, AppealRemedy.ToldOnly],
        AppealMatter.Complaint => [AppealRemedy.ToldOnly],
    };

    /// <summary>Whether outcome and remedy go together: one that fits where it is upheld, none where it is not.</summary>
    public static bool Fit(AppealMatter matter, AppealOutcome outcome, AppealRemedy? remedy) =>
        outcome == AppealOutcome.NotUpheld ? remedy is null : remedy is { } chosen && For(matter).Contains(chosen);
}

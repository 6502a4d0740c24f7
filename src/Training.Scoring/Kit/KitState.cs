using System.Globalization;
using Training.Courses;

namespace Training.Scoring;

/// <summary>Whether a piece of kit may be used on a day. A closed family.</summary>
/// <remarks>Rule: docs/rules.md, "Kit".</remarks>
public abstract record KitState
{
    private KitState()
    {
    }

    /// <summary>Its last inspection found it fit and holds on the day.</summary>
    /// <param name="InspectionId">That inspection.</param>
    /// <param name="DueOn">The last day through which it holds.</param>
    public sealed record Usable(Guid InspectionId, DateOnly DueOn) : KitState;

    /// <summary>Nobody inspected it yet.</summary>
    public sealed record NeverInspected : KitState;

    /// <summary>Its last inspection found it not fit.</summary>
    public sealed record NotFit(DateOnly FoundOn, string Reason) : KitState;

    /// <summary>Its last inspection held through a day that is gone.</summary>
    public sealed record Overdue(DateOnly DueOn) : KitState;

    /// <summary>It was taken out of use.</summary>
    public sealed record OutOfUse(DateOnly SinceOn, string Reason) : KitState;

    /// <summary>The state on a day. What is dated after the day does not exist yet.</summary>
    /// <param name="inspections">In the order in which they were kept: of two on one day the later counts.</param>
    /// <param name="retirement">Or null while it is in use.</param>
    /// <param name="day">On the calendar of the site where it would be used.</param>
    public static KitState On(IReadOnlyList<KitInspection> inspections, KitRetirement? retirement, DateOnly day)
    {
        if (retirement is { } gone && gone.On <= day) return new OutOfUse(gone.On, gone.Reason);
        return inspections.Where(inspection => inspection.On <= day).OrderBy(inspection => inspection.On).LastOrDefault() switch
        {
            null => new NeverInspected(),
            { IsFit: true, NextDueOn: { } due } held => due < day ? new Overdue(due) : new Usable(held.Id, due),
            var last => new NotFit(last.On, last.Reason ?? ""),
        };
    }
}

/// <summary>A piece of kit as it stands on a day.</summary>
/// <param name="Id">Which.</param>
/// <param name="Label">As it is marked.</param>
/// <param name="Kind">What it is.</param>
/// <param name="State">Whether it may be used.</param>
public sealed record KitOnDay(Guid Id, string Label, KitKind Kind, KitState State)
{
    /// <summary>Why it may not be used, with its mend; null where it may.</summary>
    public Problem? FindObstacle() => State switch
    {
        KitState.Usable => null,
        KitState.NeverInspected => At(KitProblems.NeverInspected, Label),
        KitState.NotFit(var on, var reason) => At(KitProblems.NotFit, Label, Text(on), reason),
        KitState.Overdue(var due) => At(KitProblems.Overdue, Label, Text(due)),
        KitState.OutOfUse(var on, var reason) => At(KitProblems.OutOfUse, Label, Text(on), reason),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    /// <summary>Reads what was chosen: each piece with the inspection that holds, in the order of the register; every refusal of a piece is told.</summary>
    public static IReadOnlyList<UsedKit> Choose(IReadOnlyList<KitOnDay> register, IReadOnlyCollection<Guid> chosen, ICollection<Problem> problems)
    {
        foreach (var id in chosen.Except(register.Select(piece => piece.Id)))
            problems.Add(At(KitProblems.Unknown, id.ToString("D", CultureInfo.InvariantCulture)));
        var used = new List<UsedKit>();
        foreach (var piece in register.Where(piece => chosen.Contains(piece.Id)))
        {
            if (piece.FindObstacle() is { } obstacle) problems.Add(obstacle);
            else if (piece.State is KitState.Usable(var inspectionId, _)) used.Add(new(piece.Id, inspectionId));
        }

        return used;
    }

    private static string Text(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static Problem At(string code, params IReadOnlyList<string> arguments) => new(code, Place.Of("Kit"), arguments);
}

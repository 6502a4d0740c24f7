using Training.Records;
using Training.Scoring;

namespace Training.Web.Features.Kit;

/// <summary>What the page of the register is given.</summary>
/// <param name="Today">The visitor's day.</param>
/// <param name="InUse">What cannot be used first, then by the day through which the inspection holds.</param>
/// <param name="Gone">Out of use, by label.</param>
/// <param name="Form">What was typed, or the empty form.</param>
public sealed record KitPage(DateOnly Today, IReadOnlyList<KitOnDay> InUse, IReadOnlyList<KitOnDay> Gone, KitForm Form)
{
    /// <summary>How many in use cannot be used today.</summary>
    public int Blocked => InUse.Count(piece => piece.State is not KitState.Usable);

    /// <param name="register">By label.</param>
    /// <param name="today">The visitor's day.</param>
    /// <param name="form">What was typed.</param>
    public static KitPage Of(IReadOnlyList<KitOnDay> register, DateOnly today, KitForm form) => new(
        today,
        [.. register.Where(piece => piece.State is not KitState.OutOfUse).OrderBy(piece => piece.State is KitState.Usable(_, var due) ? due : DateOnly.MinValue)],
        [.. register.Where(piece => piece.State is KitState.OutOfUse)],
        form);
}

/// <summary>What the page of one piece is given.</summary>
/// <param name="Kit">As it stands today.</param>
/// <param name="Today">The visitor's day.</param>
/// <param name="Inspections">Newest first, each with who inspected, by name.</param>
/// <param name="Inspection">What was typed, or the empty form.</param>
/// <param name="Retirement">What was typed, or the empty form.</param>
public sealed record PiecePage(
    KitOnDay Kit, DateOnly Today, IReadOnlyList<(KitInspectionRecord Found, string By)> Inspections, InspectionForm Inspection, RetirementForm Retirement);

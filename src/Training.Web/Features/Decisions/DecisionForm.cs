namespace Training.Web.Features.Decisions;

/// <summary>What a lead decides.</summary>
public enum DecisionVerdict
{
    /// <summary>Grant.</summary>
    Grant,

    /// <summary>Refuse, with a reason.</summary>
    Refuse,
}

/// <summary>The form of a reason for which a scorer who taught may count.</summary>
public sealed class SeparationReasonForm
{
    /// <summary>Id of the sheet, as its own form made it.</summary>
    public Guid SheetId { get; set; }

    /// <summary>Why; 1 to 2,000 characters.</summary>
    public string? Reason { get; set; }
}

/// <summary>The form of a decision.</summary>
public sealed class DecisionForm
{
    /// <summary>Of the decision, made when the form was: the same twice is one decision.</summary>
    public Guid Id { get; set; }

    /// <summary>Grant or refuse.</summary>
    public DecisionVerdict? Verdict { get; set; }

    /// <summary>Why not; needed to refuse, at most 2,000 characters.</summary>
    public string? Reason { get; set; }
}

namespace Training.Scoring;

/// <summary>Why a piece of kit cannot be used in a practical.</summary>
public static class KitProblems
{
    /// <summary>The register has no such piece. Argument: its id.</summary>
    public const string Unknown = "kit.unknown";

    /// <summary>Nobody inspected it yet. Argument: its label.</summary>
    public const string NeverInspected = "kit.never-inspected";

    /// <summary>Its last inspection found it not fit. Arguments: its label, the day, yyyy-MM-dd, the reason.</summary>
    public const string NotFit = "kit.not-fit";

    /// <summary>Its inspection is overdue. Arguments: its label, the day through which it held, yyyy-MM-dd.</summary>
    public const string Overdue = "kit.overdue";

    /// <summary>It was taken out of use. Arguments: its label, the day, yyyy-MM-dd, the reason.</summary>
    public const string OutOfUse = "kit.out-of-use";
}

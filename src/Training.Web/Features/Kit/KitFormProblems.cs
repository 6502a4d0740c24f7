namespace Training.Web.Features.Kit;

/// <summary>Codes of what the forms of the register cannot take.</summary>
public static class KitFormProblems
{
    /// <summary>The piece has no label.</summary>
    public const string LabelMissing = "kit-form.label-missing";

    /// <summary>The label is too long. Arguments: its length, the greatest length.</summary>
    public const string LabelTooLong = "kit-form.label-too-long";

    /// <summary>Nobody said what the piece is.</summary>
    public const string KindMissing = "kit-form.kind-missing";

    /// <summary>The day of the inspection is missing or no date.</summary>
    public const string InspectedOnUnreadable = "kit-form.inspected-on-unreadable";

    /// <summary>The day of the inspection is still to come. Arguments: that day, today, yyyy-MM-dd.</summary>
    public const string InspectedInFuture = "kit-form.inspected-in-future";

    /// <summary>Neither fit nor not fit is chosen.</summary>
    public const string FindingMissing = "kit-form.finding-missing";

    /// <summary>The day of the next inspection is missing or no date.</summary>
    public const string NextDueUnreadable = "kit-form.next-due-unreadable";

    /// <summary>The next inspection is not after this one. Arguments: both days, yyyy-MM-dd.</summary>
    public const string NextDueNotLater = "kit-form.next-due-not-later";

    /// <summary>No reason is written.</summary>
    public const string ReasonMissing = "kit-form.reason-missing";

    /// <summary>The reason is too long. Arguments: its length, the greatest length.</summary>
    public const string ReasonTooLong = "kit-form.reason-too-long";

    /// <summary>The piece is out of use for good. Arguments: its label, the day, yyyy-MM-dd.</summary>
    public const string AlreadyOutOfUse = "kit-form.already-out-of-use";
}

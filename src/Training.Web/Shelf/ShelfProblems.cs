namespace Training.Web.Shelf;

/// <summary>Why a text without findings is not put in force.</summary>
public static class ShelfProblems
{
    /// <summary>Rules changed under which somebody is certified, and no transition takes over from them. Arguments: mark of the rules in force.</summary>
    public const string TransitionMissing = "shelf.transition-missing";

    /// <summary>Changed rules begin no later than those in force. Arguments: first day of the rules in force.</summary>
    public const string NotLater = "shelf.not-later";
}

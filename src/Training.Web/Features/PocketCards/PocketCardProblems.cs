namespace Training.Web.Features.PocketCards;

/// <summary>Codes of what keeps a sheet of cards from being printed, beside what the paper itself asks.</summary>
public static class PocketCardProblems
{
    /// <summary>None of the papers is current. No arguments.</summary>
    public const string NoneCurrent = "pocket-cards.none-current";
}

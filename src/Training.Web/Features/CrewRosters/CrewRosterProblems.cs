namespace Training.Web.Features.CrewRosters;

/// <summary>Codes of what keeps a roster of a site from being printed, beside what the paper itself asks.</summary>
public static class CrewRosterProblems
{
    /// <summary>More people than a roster takes. Argument 0: how many; 1: the greatest number.</summary>
    public const string TooManyPeople = "crew-roster.too-many-people";
}

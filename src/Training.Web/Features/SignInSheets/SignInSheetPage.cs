using Training.Courses;
using Training.Web.Features.Seats;

namespace Training.Web.Features.SignInSheets;

/// <summary>What goes onto the paper of a class: the sheet that people sign, and the roster.</summary>
/// <param name="Day">Which class.</param>
/// <param name="Title">Of its course.</param>
/// <param name="EmployerName">Whose site.</param>
/// <param name="Teachers">By name.</param>
/// <param name="Scorers">By name.</param>
/// <param name="Seated">Who has a seat, by name.</param>
/// <param name="Waiting">Who waits, the first in line first.</param>
/// <param name="Address">Where it is entered afterwards.</param>
public sealed record SignInSheetPage(
    SeatDay Day, string Title, string EmployerName, IReadOnlyList<string> Teachers, IReadOnlyList<string> Scorers, IReadOnlyList<RosterLine> Seated,
    IReadOnlyList<RosterLine> Waiting, Uri Address)
{
    /// <summary>Rows without a name, for whoever comes without a seat.</summary>
    public const int BlankRows = 4;
}

/// <summary>Somebody on the paper.</summary>
/// <param name="Name">By name; null where it was erased.</param>
/// <param name="Badge">Badge number on the day; null where there is none.</param>
/// <param name="Employer">Who employs them on the day; null where nobody does.</param>
/// <param name="Language">The language that they are instructed in.</param>
public sealed record RosterLine(string? Name, string? Badge, string? Employer, Language Language);

using Training.Courses;
using Training.Documents.SignInSheets;
using Training.Web.Features.Seats;
using Training.Web.Features.Shared;

namespace Training.Web.Features.SignInSheets;

/// <summary>What goes onto the paper of a class, as a page and as a file: the sheet that people sign, and the roster.</summary>
/// <param name="Day">Which class.</param>
/// <param name="Title">Of its course.</param>
/// <param name="EmployerName">Whose site.</param>
/// <param name="Teachers">By name.</param>
/// <param name="Scorers">By name.</param>
/// <param name="Seated">Who has a seat, by name.</param>
/// <param name="Waiting">Who waits, the first in line first.</param>
/// <param name="Address">Where it is entered afterwards.</param>
public sealed record ClassSheet(
    SeatDay Day, string Title, string EmployerName, IReadOnlyList<string> Teachers, IReadOnlyList<string> Scorers, IReadOnlyList<SignInLine> Seated,
    IReadOnlyList<SignInLine> Waiting, Uri Address)
{
    /// <summary>Rows without a name, for whoever comes without a seat.</summary>
    public const int BlankRows = 4;

    /// <summary>The same as a paper.</summary>
    public SignInSheetPage ToPaper(Language language, PrintedPapers papers) => new()
    {
        Language = language,
        Paper = papers.Size,
        ProviderName = papers.ProviderName,
        ClassTitle = Title,
        ClassId = Day.Id,
        HeldOn = Day.Time.HeldOn,
        StartsAt = Day.Time.StartsAt,
        EndsAt = Day.EndsAt,
        SiteName = Day.Site,
        EmployerName = EmployerName,
        MeetingPlace = Day.Time.MeetingPlace,
        // Written line by line; the paper runs lines together.
        Kit = string.Join("; ", Day.Kit.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)),
        Weather = Day.Weather,
        Teachers = Teachers,
        Scorers = Scorers,
        Seated = Seated,
        Waiting = Waiting,
        Seats = Day.Seats,
        BlankRows = BlankRows,
        EnterAddress = Address.ToString(),
        IsDemonstration = papers.IsDemonstration,
    };
}

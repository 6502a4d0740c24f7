using Training.Courses;
using Training.Documents.Volumes;
using Training.Records;

namespace Training.Web.Features.PaperRuns;

/// <summary>Runs of papers, and the form of the next.</summary>
/// <param name="Runs">The last ones, newest first.</param>
/// <param name="Names">Of who started them.</param>
/// <param name="Employers">To choose from, by name.</param>
/// <param name="Schemes">To choose from, with their titles.</param>
/// <param name="Zone">Whose days the instants are told in.</param>
/// <param name="Form">As typed.</param>
public sealed record PaperRunsPage(
    IReadOnlyList<PaperRunProgress> Runs,
    IReadOnlyDictionary<Guid, string> Names,
    IReadOnlyList<(Guid Id, string Name)> Employers,
    IReadOnlyList<(string Id, string Title)> Schemes,
    TimeZoneInfo Zone,
    PaperRunForm Form);

/// <summary>One run.</summary>
/// <param name="Progress">How far it has come.</param>
/// <param name="Employer">Whose people's; null for all.</param>
/// <param name="Scheme">Title of the scheme; null for all.</param>
/// <param name="StartedBy">The lead's name, or null where it was erased.</param>
/// <param name="Failed">What could not be made: the newest known name, the scheme's title, the problem in words.</param>
/// <param name="Zone">Whose days the instants are told in.</param>
public sealed record PaperRunPage(
    PaperRunProgress Progress,
    string? Employer,
    string? Scheme,
    string? StartedBy,
    IReadOnlyList<(string? Name, string Scheme, string Problem)> Failed,
    TimeZoneInfo Zone)
{
    /// <summary>Positions of the papers of each volume for the printer.</summary>
    public IEnumerable<(int Number, int From, int Through)> Volumes =>
        Enumerable.Range(0, (Progress.All + PaperVolume.MostPapers - 1) / PaperVolume.MostPapers)
            .Select(volume => (volume + 1, (volume * PaperVolume.MostPapers) + 1, Math.Min(Progress.All, (volume + 1) * PaperVolume.MostPapers)));

    /// <summary>Languages that papers are printed in.</summary>
    public static IReadOnlyList<Language> Languages => LanguageTags.All;
}

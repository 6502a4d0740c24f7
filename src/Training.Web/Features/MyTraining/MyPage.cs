using Training.Certification;
using Training.Records;
using Training.Web.Features.Appeals;
using Training.Web.Features.TrainingChanges;

namespace Training.Web.Features.MyTraining;

/// <summary>What the visitor's own page is given.</summary>
/// <param name="Schemes">What must not wait comes first; at least none where no course is served.</param>
/// <param name="Papers">The visitor's certificates, the newest first.</param>
/// <param name="Changes">What the visitor learnt and is no longer so.</param>
/// <param name="Appeals">The visitor's, the newest first.</param>
/// <param name="Words">Says what is contested.</param>
/// <param name="Today">In the provider's zone, by which appeals are counted.</param>
/// <param name="Site">Where the visitor works today, with whom to call from there; null where no numbers are known.</param>
public sealed record MyPage(
    IReadOnlyList<SchemeLine> Schemes, IReadOnlyList<PaperLine> Papers, IReadOnlyList<TrainingChange> Changes,
    IReadOnlyList<AppealCase> Appeals, AppealWords Words, DateOnly Today, (string Name, EmergencyNumbers Numbers)? Site)
{
    /// <summary>How many days a conclusion is shown to whom it is about.</summary>
    public const int DaysConcluded = 30;

    /// <summary>Holds that touch today.</summary>
    public IReadOnlyList<Hold> Holds { get; init; } = [];

    /// <summary>Holds that a review ended lately, with what was concluded; newest first.</summary>
    public IReadOnlyList<Hold> Reviewed { get; init; } = [];

    /// <summary>What the first line is about, or null where no course is served.</summary>
    public SchemeLine? First => Schemes.Count > 0 ? Schemes[0] : null;

    /// <summary>In the order that the page says things in.</summary>
    public static MyPage Of(
        IEnumerable<SchemeLine> schemes, IReadOnlyList<PaperLine> papers, IReadOnlyList<TrainingChange> changes,
        IReadOnlyList<AppealCase> appeals, AppealWords words, DateOnly today, (string Name, EmergencyNumbers Numbers)? site) => new(
        [.. schemes.OrderBy(line => line.Urgency).ThenBy(line => line.By ?? DateOnly.MaxValue).ThenBy(line => line.Kind)], papers, changes,
        appeals, words, today, site);
}

/// <summary>One certificate of the visitor.</summary>
/// <param name="Title">What the paper calls the scheme.</param>
/// <param name="Serial">As printed.</param>
/// <param name="StartsOn">First day of its period.</param>
/// <param name="ExpiresOn">Last day of its period.</param>
/// <param name="IsLatest">False where a later paper of the same scheme took its place.</param>
/// <param name="IsForMachines">Whether it can be fetched as files for programs.</param>
/// <param name="IsCurrent">Whether a gate would let it pass today; only then there is a pocket card.</param>
public sealed record PaperLine(string Title, Serial Serial, DateOnly StartsOn, DateOnly ExpiresOn, bool IsLatest, bool IsForMachines, bool IsCurrent);

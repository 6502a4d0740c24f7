using Training.Courses;
using Training.Documents.Typesetting;

namespace Training.Documents.Certificates;

/// <summary>Everything that one certificate says. All of it comes from one decision and the rules it was made under.</summary>
/// <remarks>
/// Fields: R-17024-9.4.8 and R-Z490.1-7.4 of the project's requirements. Lengths count characters after composing (NFC).
/// </remarks>
public sealed record CertificatePage
{
    /// <summary>Greatest length of <see cref="WorkerName"/> and <see cref="DecidedBy"/>.</summary>
    public const int LongestName = 120;

    /// <summary>Greatest length of <see cref="ProviderName"/>, <see cref="SchemeTitle"/> and <see cref="Place"/>.</summary>
    public const int LongestTitle = 100;

    /// <summary>Greatest length of <see cref="ProviderAddress"/>.</summary>
    public const int LongestAddress = 160;

    /// <summary>Greatest length of <see cref="ShownText"/>; the course reader holds authors to it.</summary>
    public const int LongestShown = 300;

    /// <summary>Greatest length of <see cref="TraineeNumber"/>, <see cref="Serial"/>, <see cref="SchemeRevision"/> and <see cref="Revision"/>.</summary>
    public const int LongestNumber = 24;

    /// <summary>Greatest length of <see cref="CheckAddress"/>.</summary>
    public const int LongestCheckAddress = 200;

    /// <summary>Greatest length of <see cref="CodeAddress"/>: a module of its QR code then is 0.4 mm at least.</summary>
    public const int LongestCodeAddress = 624;

    /// <summary>The language of every word on the page that is not a name.</summary>
    public required Language Language { get; init; }

    /// <summary>The paper; always landscape.</summary>
    public required PaperSize Paper { get; init; }

    /// <summary>Which of the two kinds of paper this is; its words follow (docs/rules.md, "Two kinds").</summary>
    public required SchemeKind Kind { get; init; }

    /// <summary>Who certifies.</summary>
    public required string ProviderName { get; init; }

    /// <summary>The provider's address, one line.</summary>
    public required string ProviderAddress { get; init; }

    /// <summary>The worker's name as it is to be printed.</summary>
    public required string WorkerName { get; init; }

    /// <summary>The number that tells this trainee from every other.</summary>
    public required string TraineeNumber { get; init; }

    /// <summary>Title of the scheme in <see cref="Language"/>.</summary>
    public required string SchemeTitle { get; init; }

    /// <summary>First day on which the text of the rules that decided was in force.</summary>
    public required DateOnly SchemeEffectiveFrom { get; init; }

    /// <summary>Names the text of the rules: the first characters of its hash.</summary>
    public required string SchemeRevision { get; init; }

    /// <summary>What was shown, plain text in <see cref="Language"/>.</summary>
    public required string ShownText { get; init; }

    /// <summary>Where it was taught and assessed; null prints "not stated".</summary>
    public required string? Place { get; init; }

    /// <summary>How many hours it took; null prints "not stated".</summary>
    public required decimal? Hours { get; init; }

    /// <summary>Credits of a body that gives them; null prints "none".</summary>
    public string? Credits { get; init; }

    /// <summary>The named lead who decided; null where the published rule itself did (certificates of training only).</summary>
    public required string? DecidedBy { get; init; }

    /// <summary>Day of the decision.</summary>
    public required DateOnly DecidedOn { get; init; }

    /// <summary>First day that it holds.</summary>
    public required DateOnly EffectiveOn { get; init; }

    /// <summary>The day that the validity was counted from: the first day, or the last expiry where a renewal kept the anniversary.</summary>
    public required DateOnly CountedFrom { get; init; }

    /// <summary>How long it holds, counted from <see cref="CountedFrom"/>.</summary>
    public required Duration Validity { get; init; }

    /// <summary>Last day that it holds: <see cref="Validity"/> after <see cref="CountedFrom"/>.</summary>
    public required DateOnly ExpiresOn { get; init; }

    /// <summary>The serial without spaces; printed in groups of four.</summary>
    public required string Serial { get; init; }

    /// <summary>Which revision of the paper this is.</summary>
    public required string Revision { get; init; }

    /// <summary>Address of the public check page for this serial, for whoever types it.</summary>
    public required string CheckAddress { get; init; }

    /// <summary>Exactly what the QR code holds: that address, with what a phone can check without a network behind it. ASCII.</summary>
    public required string CodeAddress { get; init; }

    /// <summary>Made by the demonstration: the paper is stamped so that it cannot be used.</summary>
    public required bool IsDemonstration { get; init; }
}

using Training.Courses;

namespace Training.Documents.PocketCards;

/// <summary>Everything that one pocket card says: what its certificate says, shorter. Lengths count characters after composing (NFC).</summary>
public sealed record PocketCardPage
{
    /// <summary>Greatest length of <see cref="WorkerName"/>.</summary>
    public const int LongestName = 120;

    /// <summary>Greatest length of <see cref="ProviderName"/> and <see cref="SchemeTitle"/>.</summary>
    public const int LongestTitle = 100;

    /// <summary>Greatest length of <see cref="Serial"/> and <see cref="Revision"/>.</summary>
    public const int LongestNumber = 24;

    /// <summary>Greatest length of <see cref="CheckAddress"/>: a module of its QR code then is 0.4 mm at least.</summary>
    public const int LongestCheckAddress = 200;

    /// <summary>The language of every word on the card that is not a name.</summary>
    public required Language Language { get; init; }

    /// <summary>Which of the two kinds of paper it stands for; its words follow (docs/rules.md, "Two kinds").</summary>
    public required SchemeKind Kind { get; init; }

    /// <summary>Who certifies.</summary>
    public required string ProviderName { get; init; }

    /// <summary>The holder's name as on the certificate.</summary>
    public required string WorkerName { get; init; }

    /// <summary>Title of the scheme in <see cref="Language"/>.</summary>
    public required string SchemeTitle { get; init; }

    /// <summary>Last day that it holds.</summary>
    public required DateOnly ExpiresOn { get; init; }

    /// <summary>The serial without spaces; printed in groups of four.</summary>
    public required string Serial { get; init; }

    /// <summary>Which revision of the certificate it repeats.</summary>
    public required string Revision { get; init; }

    /// <summary>Address of the public check page for this serial: exactly what the QR code holds.</summary>
    public required string CheckAddress { get; init; }

    /// <summary>Day of the print: a card grows older than the record that it repeats.</summary>
    public required DateOnly PrintedOn { get; init; }

    /// <summary>Made by the demonstration: the card is stamped so that it cannot be used.</summary>
    public required bool IsDemonstration { get; init; }
}

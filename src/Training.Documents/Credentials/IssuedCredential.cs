using Training.Certification;
using Training.Courses;

namespace Training.Documents.Credentials;

/// <summary>One issued paper, as every machine-readable form of it says it. All forms are written from this one value.</summary>
/// <remarks>A corrected paper has a serial of its own, so the serial names the revision too.</remarks>
public sealed record IssuedCredential
{
    /// <summary>Greatest length of <see cref="HolderName"/>, as on paper.</summary>
    public const int LongestName = Certificates.CertificatePage.LongestName;

    /// <summary>Hexadecimal characters of <see cref="SchemeVersion"/>: a SHA-256.</summary>
    public const int VersionLength = 64;

    private readonly string _holderName = "";
    private readonly string _schemeVersion = "";
    private readonly int _statusIndex;

    /// <summary>The number of the paper.</summary>
    public required Serial Serial { get; init; }

    /// <summary>The name as printed; composed (Unicode NFC) when it is set.</summary>
    /// <exception cref="ArgumentException">It is empty, longer than <see cref="LongestName"/> or no valid text.</exception>
    public required string HolderName
    {
        get => _holderName;
        init
        {
            _holderName = value.Normalize();
            if (_holderName.Length is 0 or > LongestName) throw new ArgumentException("The name is empty or too long.", nameof(value));
        }
    }

    /// <summary>Names the scheme for ever.</summary>
    public required string SchemeId { get; init; }

    /// <summary>Title of the scheme in every language.</summary>
    public required IReadOnlyDictionary<Language, string> SchemeTitles { get; init; }

    /// <summary>What was shown, plain text in every language.</summary>
    public required IReadOnlyDictionary<Language, string> ShownTexts { get; init; }

    /// <summary>Names the text of the rules: its SHA-256 in lower-case hexadecimal.</summary>
    /// <exception cref="ArgumentException">It is no such hash.</exception>
    public required string SchemeVersion
    {
        get => _schemeVersion;
        init => _schemeVersion = value.Length == VersionLength && value.All(char.IsAsciiHexDigitLower) ? value : throw new ArgumentException($"{value} is no SHA-256.", nameof(value));
    }

    /// <summary>Which of the two kinds of paper it is (docs/rules.md, "Two kinds").</summary>
    public required SchemeKind Kind { get; init; }

    /// <summary>First day that it holds.</summary>
    public required DateOnly EffectiveOn { get; init; }

    /// <summary>Last day that it holds, inclusive.</summary>
    public required DateOnly ExpiresOn { get; init; }

    /// <summary>The zone whose days these are; fixed at the decision.</summary>
    public required TimeZoneInfo Zone { get; init; }

    /// <summary>UTC.</summary>
    public required DateTimeOffset IssuedAt { get; init; }

    /// <summary>Who issues.</summary>
    public required IssuerAddress Issuer { get; init; }

    /// <summary>The provider's name.</summary>
    public required string ProviderName { get; init; }

    /// <summary>Its place in the status lists, the same in each; drawn below <see cref="StatusList.SizeFor"/> and never given twice.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No list has such a place.</exception>
    public required int StatusIndex
    {
        get => _statusIndex;
        init
        {
            ArgumentOutOfRangeException.ThrowIfNegative(value);
            ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(value, StatusList.MostEntries);
            _statusIndex = value;
        }
    }

    /// <summary>Names the holder in this credential only, drawn for it: two certificates of one person cannot be joined by it.</summary>
    public required Guid SubjectId { get; init; }

    /// <summary>The public check page of the serial.</summary>
    public required Uri CheckPage { get; init; }

    /// <summary>The public page of that version of the scheme; it stays for ever.</summary>
    public required Uri SchemePage { get; init; }

    /// <summary>Made by the demonstration: every form says so.</summary>
    public required bool IsDemonstration { get; init; }

    /// <summary>The instant from which it holds.</summary>
    public DateTimeOffset ValidFrom => DayBounds.FirstSecond(EffectiveOn, Zone);

    /// <summary>The last second at which it holds.</summary>
    public DateTimeOffset ValidUntil => DayBounds.LastSecond(ExpiresOn, Zone);
}

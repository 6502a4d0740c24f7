namespace Training.Documents.Credentials;

/// <summary>What a set bit of a status list says.</summary>
public enum StatusPurpose
{
    /// <summary>Withdrawn for good; <c>revocation</c> in the standard.</summary>
    Revocation,

    /// <summary>Suspended for now; <c>suspension</c> in the standard.</summary>
    Suspension,
}

/// <summary>Names purposes as Bitstring Status List 1.0, 2.1 does.</summary>
public static class StatusPurposes
{
    /// <summary>Every purpose that we keep a list of.</summary>
    public static IReadOnlyList<StatusPurpose> All { get; } = [StatusPurpose.Revocation, StatusPurpose.Suspension];

    /// <summary>The standard's word.</summary>
    public static string Name(this StatusPurpose purpose) => purpose switch
    {
        StatusPurpose.Revocation => "revocation",
        StatusPurpose.Suspension => "suspension",
    };

    /// <summary>The purpose of a word of the standard; null where we keep no such list.</summary>
    public static StatusPurpose? Find(string? name) => name switch
    {
        "revocation" => StatusPurpose.Revocation,
        "suspension" => StatusPurpose.Suspension,
        _ => null,
    };
}

namespace Training.Web.Keys;

/// <summary>What a key of ours is for. No key serves two of them.</summary>
public enum KeyUse
{
    /// <summary>Tokens in QR codes, Verifiable Credentials, status lists and heads of the log: P-256.</summary>
    Credentials,

    /// <summary>Open Badges: RSA.</summary>
    Badges,

    /// <summary>The certificates as PDF: a key with a certificate of its own.</summary>
    Papers,
}

/// <summary>Names uses as the register and the command line do.</summary>
public static class KeyUses
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<KeyUse> All { get; } = Enum.GetValues<KeyUse>();

    /// <summary>The word.</summary>
    public static string Name(this KeyUse use) => use switch
    {
        KeyUse.Credentials => "credentials",
        KeyUse.Badges => "badges",
        KeyUse.Papers => "papers",
    };

    /// <summary>The use of a word, or null.</summary>
    public static KeyUse? Find(string? name) => All.Where(use => use.Name() == name).Select(use => (KeyUse?)use).FirstOrDefault();
}

namespace Training.Web.Settings;

/// <summary>Section <c>Training:Keys</c>.</summary>
public sealed class KeysOptions
{
    /// <summary>PKCS#12 file with the certificate and private key that papers are signed with. Empty, the default: one that the program makes for itself.</summary>
    public string Certificate { get; init; } = "";

    /// <summary>Password of that file. Default: none.</summary>
    public string CertificatePassword { get; init; } = "";

    /// <summary>Address of an authority that vouches for the time of each signature on a paper (RFC 3161). Default: none.</summary>
    public Uri? TimestampAddress { get; init; }
}

namespace Training.Web.Keys;

/// <summary>Codes of what can be wrong with our keys.</summary>
public static class KeysProblems
{
    /// <summary>Others on this machine can get at private keys: {0} the path, {1} its mode.</summary>
    public const string OpenToOthers = "keys.open-to-others";

    /// <summary>The folder cannot be used: {0} the path, {1} what the machine said.</summary>
    public const string FolderUnusable = "keys.folder-unusable";

    /// <summary>The register is not one that this version of the program reads: {0} the path.</summary>
    public const string RegisterUnreadable = "keys.register-unreadable";

    /// <summary>The private part of a key that signs is not there, or is another: {0} the path, {1} the word of its use.</summary>
    public const string PrivatePartMissing = "keys.private-part-missing";

    /// <summary>The certificate's file is no PKCS#12: {0} the path.</summary>
    public const string CertificateUnreadable = "keys.certificate-unreadable";

    /// <summary>The certificate's file has another password: {0} the path.</summary>
    public const string CertificateLocked = "keys.certificate-locked";

    /// <summary>The certificate's file has no private key: {0} the path.</summary>
    public const string CertificateWithoutKey = "keys.certificate-without-key";

    /// <summary>The certificate's key is neither of P-256 nor RSA of 2048 bits: {0} the path.</summary>
    public const string CertificateUnsuitable = "keys.certificate-unsuitable";

    /// <summary>The certificate does not hold today: {0} the path, {1} first and {2} last day.</summary>
    public const string CertificateOutOfTime = "keys.certificate-out-of-time";

    /// <summary>The certificate is one that is not believed: {0} the path.</summary>
    public const string CertificateNotBelieved = "keys.certificate-not-believed";

    /// <summary>The key for papers is in the operator's hands: {0} the path.</summary>
    public const string CertificateOfSettings = "keys.certificate-of-settings";

    /// <summary>No key has that name: {0} as typed.</summary>
    public const string KeyUnknown = "keys.key-unknown";

    /// <summary>Not an instant, or one that has not come: {0} as typed.</summary>
    public const string InstantUnusable = "keys.instant-unusable";
}

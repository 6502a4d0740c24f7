using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using Training.Courses;
using Training.Documents.Credentials;

namespace Training.Web.Keys;

/// <summary>Reads the private parts of the keys that sign, and holds each against the register.</summary>
internal sealed class KeyLoading(KeyFolder folder, IssuerAddress issuer)
{
    /// <summary>The keys of a register in which every use has one that signs; null where a private part is not there.</summary>
    /// <param name="register">As the folder has it.</param>
    /// <param name="certificate">That the operator brought, with its private key; null where ours signs papers.</param>
    /// <param name="problems">Receives the first that is missing.</param>
    public OpenedKeys? Load(KeyRegister register, X509Certificate2? certificate, ICollection<Problem> problems)
    {
        var (credentials, head, badges, papers) = (ECDsa.Create(), ECDsa.Create(), RSA.Create(), ECDsa.Create());
        var isWhole = HasPrivate(credentials, KeyUse.Credentials) && HasPrivate(head, KeyUse.Credentials) && HasPrivate(badges, KeyUse.Badges)
            && (certificate is not null || HasPrivate(papers, KeyUse.Papers));
        if (!isWhole) return null;

        var signers = register.Keys.Where(key => key.Use == KeyUse.Papers).ToDictionary(key => key.Kid, key => key.ReadCertificate(), StringComparer.Ordinal);
        return new()
        {
            Register = register,
            Stamp = folder.Stamp(),
            Credentials = new(credentials),
            Head = head,
            Badges = new(badges),
            Papers = certificate ?? signers[Active(KeyUse.Papers).Kid].CopyWithPrivateKey(papers),
            All = [.. register.Keys.Where(key => key.Use != KeyUse.Papers).Select(Of)],
            Signers = [.. signers.Values],
        };

        RegisteredKey Active(KeyUse use) => register.FindActive(use) ?? throw new InvalidOperationException($"The register was completed and has no key for {use.Name()}.");
        bool HasPrivate(AsymmetricAlgorithm key, KeyUse use) => LoadPrivate(key, Active(use), problems);
    }

    private bool LoadPrivate(AsymmetricAlgorithm key, RegisteredKey registered, ICollection<Problem> problems)
    {
        try
        {
            if (folder.FindPrivate(registered) is { } pem)
            {
                key.ImportFromPem(pem);
                if (key.ExportSubjectPublicKeyInfo().AsSpan().SequenceEqual(registered.ReadPublicKey())) return true;
            }
        }
        catch (Exception refused) when (refused is ArgumentException or CryptographicException)
        {
            // No PEM, or not of a key of this kind: answered below.
        }

        problems.Add(new(KeysProblems.PrivatePartMissing, Place.Of("keys"), folder.PrivateFile(registered), registered.Use.Name()));
        return false;
    }

    private IssuerKey Of(RegisteredKey key) =>
        new() { Issuer = issuer, Jwk = key.ReadJwk(), From = key.From, RetiredAt = key.RetiredAt, NotBelievedSince = key.NotBelievedSince };
}

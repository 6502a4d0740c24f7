using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using Training.Courses;
using Training.Documents.Credentials;
using Training.Documents.Signatures;
using Training.Web.Provider;
using Training.Web.Settings;

namespace Training.Web.Keys;

/// <summary>The keys that this server signs with, and those that it ever signed with. What <c>-- keys</c> changes counts from the next use on.</summary>
public sealed class IssuerKeys(TrainingOptions options, OurProvider provider, TimestampAsking timestamps, TimeProvider clock, ILogger<IssuerKeys> log)
{
    private readonly KeyStore store = new(options);
    private readonly Lock opening = new();
    private volatile OpenedKeys? opened;

    /// <summary>Who issues.</summary>
    public IssuerAddress Issuer => new(options.PublicPage(""));

    /// <summary>Signs tokens, Verifiable Credentials and status lists: ES256.</summary>
    public SigningKey Credentials => Current.Credentials;

    /// <summary>Signs Open Badges: RS256.</summary>
    public SigningKey Badges => Current.Badges;

    /// <summary>Signs heads of the log, one at a time; it is the key of <see cref="Credentials"/>, whose name is in its public part.</summary>
    public ECDsa HeadKey => Current.Head;

    /// <summary>Every key for credentials and badges there ever was, retired ones and those not believed among them. Keys for papers are no part of it: they assert nothing.</summary>
    public IReadOnlyList<IssuerKey> All => Current.All;

    /// <summary>Every certificate that papers were ever signed with.</summary>
    public IReadOnlyList<X509Certificate2> Signers => Current.Signers;

    /// <summary>Since when others may have the key of a certificate that signed papers; null where nobody has.</summary>
    public DateTimeOffset? NotBelievedSince(X509Certificate2 signer) => Current.Register.Find(RegisteredKey.KidOf(signer))?.NotBelievedSince;

    /// <summary>Who signs one paper; for each a new one. A certificate of our own that names the provider as it was called before, or has ended, is exchanged first.</summary>
    /// <param name="now">What the paper claims, UTC.</param>
    public PdfSigner PaperSigner(DateTimeOffset now)
    {
        var today = clock.GetUtcNow();
        if (!Fits(Current, today)) Exchange(today);
        var certificate = Current.Papers;
        if (certificate.NotAfter.ToUniversalTime() < today.UtcDateTime) Log.CertificateEnded(log, RegisteredKey.KidOf(certificate));
        return new(certificate, now, timestamps.Find());
    }

    private OpenedKeys Current
    {
        get
        {
            // A look at one file's time: what another process changed counts at once, a stolen key above all.
            var stamp = store.Stamp();
            return opened is { } known && known.Stamp == stamp ? known : Open();
        }
    }

    private OpenedKeys Open()
    {
        lock (opening)
        {
            var stamp = store.Stamp();
            if (opened is { } known && known.Stamp == stamp) return known;
            var problems = new List<Problem>();
            if (store.Open(provider.Name, clock.GetUtcNow(), problems) is { } now) return opened = now;
            if (opened is not { } before) throw new InvalidOperationException($"The keys were not looked at before serving: {problems[0].Code}.");
            Log.KeysUnreadable(log, problems[0].Code);
            return opened = before with { Stamp = stamp };
        }
    }

    private bool Fits(OpenedKeys keys, DateTimeOffset today) =>
        options.Keys.Certificate.Length > 0
        || (keys.Papers.NotAfter.ToUniversalTime() >= today.UtcDateTime
            && keys.Papers.GetNameInfo(X509NameType.SimpleName, forIssuer: false) == provider.Name.Normalize());

    private void Exchange(DateTimeOffset today)
    {
        lock (opening)
        {
            if (Fits(Current, today)) return;
            var problems = new List<Problem>();
            if (store.Rotate(KeyUse.Papers, provider.Name, today, problems) is null) Log.KeysUnreadable(log, problems[0].Code);
        }
    }
}

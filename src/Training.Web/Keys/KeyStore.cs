using System.Security.Cryptography.X509Certificates;
using Training.Courses;
using Training.Web.Settings;

namespace Training.Web.Keys;

/// <summary>Opens our keys and exchanges them. Each change is made under the folder's lock, so that several processes may try at once.</summary>
/// <remarks>A private part is written before the register names its key, and deleted after the register has retired it: a kill between leaves a file too many.</remarks>
internal sealed class KeyStore(TrainingOptions options)
{
    private static readonly Place Keys = Place.Of("keys");

    private readonly KeyFolder folder = new(options.DataFolder);

    /// <summary>Tells one state of the register from the next.</summary>
    public (DateTime WrittenAt, long Length) Stamp() => folder.Stamp();

    /// <summary>The register without its private parts; empty before the first start, null where it cannot be read.</summary>
    public KeyRegister? Read(ICollection<Problem> problems) => Guarded(problems, () => folder.ReadRegister(problems));

    /// <summary>Opens the keys, and makes those that are missing; null where something is wrong.</summary>
    /// <param name="provider">Name of the provider, for a certificate that is made.</param>
    /// <param name="now">UTC; since when keys that are made sign.</param>
    /// <param name="problems">Receives what is wrong, the first thing alone.</param>
    public OpenedKeys? Open(string provider, DateTimeOffset now, ICollection<Problem> problems) => Guarded(problems, () =>
    {
        using var held = folder.Hold();
        if (ReadSafe(problems) is not { } register) return null;
        var certificate = options.Keys.Certificate.Length == 0 ? null : SettingsCertificate.Read(options.Keys, now, problems);
        if (options.Keys.Certificate.Length > 0 && certificate is null) return null;
        if (certificate is not null && register.Find(RegisteredKey.KidOf(certificate))?.NotBelievedSince is not null)
        {
            problems.Add(new(KeysProblems.CertificateNotBelieved, Place.Of("Training:Keys:Certificate"), Path.GetFullPath(options.Keys.Certificate)));
            return null;
        }

        return new KeyLoading(folder, new(options.PublicPage(""))).Load(Complete(register, certificate, provider, now), certificate, problems);
    });

    /// <summary>Puts a new key in place of the one of a use; null where something is wrong.</summary>
    public RegisteredKey? Rotate(KeyUse use, string provider, DateTimeOffset now, ICollection<Problem> problems) => Guarded(problems, () =>
    {
        using var held = folder.Hold();
        if (ReadSafe(problems) is not { } register) return null;
        return use != KeyUse.Papers || IsOurs(problems) ? Replace(register, use, provider, now).FindActive(use) : null;
    });

    /// <summary>Notes since when others may have a key, and puts a new one in its place where it signs; null where something is wrong.</summary>
    public RegisteredKey? Distrust(string kid, DateTimeOffset since, string provider, DateTimeOffset now, ICollection<Problem> problems) => Guarded(problems, () =>
    {
        using var held = folder.Hold();
        if (ReadSafe(problems) is not { } register) return null;
        if (register.Find(kid) is not { } key)
        {
            problems.Add(new(KeysProblems.KeyUnknown, Keys, kid));
            return null;
        }

        if (key is { IsBrought: true, RetiredAt: null } && !IsOurs(problems)) return null;
        register = register.Distrust(kid, since);
        if (key.RetiredAt is null) register = Replace(register, key.Use, provider, now);
        else folder.Write(register);
        return register.Find(kid);
    });

    private KeyRegister? ReadSafe(ICollection<Problem> problems)
    {
        var before = problems.Count;
        folder.LookForOthers(problems);
        return problems.Count > before ? null : folder.ReadRegister(problems);
    }

    private bool IsOurs(ICollection<Problem> problems)
    {
        if (options.Keys.Certificate.Length == 0) return true;
        problems.Add(new(KeysProblems.CertificateOfSettings, Place.Of("Training:Keys:Certificate"), Path.GetFullPath(options.Keys.Certificate)));
        return false;
    }

    private KeyRegister Complete(KeyRegister register, X509Certificate2? certificate, string provider, DateTimeOffset now)
    {
        foreach (var use in KeyUses.All)
        {
            var active = register.FindActive(use);
            if (use != KeyUse.Papers || certificate is null)
            {
                if (active is null or { IsBrought: true }) register = Replace(register, use, provider, now);
            }
            else if (active?.Kid != RegisteredKey.KidOf(certificate))
            {
                register = Activate(register, NewKey.Of(certificate, now) with { IsBrought = true });
            }
        }

        return register;
    }

    private KeyRegister Replace(KeyRegister register, KeyUse use, string provider, DateTimeOffset now)
    {
        var made = NewKey.Make(use, provider, now);
        folder.WritePrivate(made.Key, made.Pem);
        return Activate(register, made.Key);
    }

    private KeyRegister Activate(KeyRegister register, RegisteredKey key)
    {
        var next = register.Activate(key);
        folder.Write(next);
        foreach (var retired in next.Keys.Where(other => other.RetiredAt is not null)) folder.DeletePrivate(retired);
        return next;
    }

    private T? Guarded<T>(ICollection<Problem> problems, Func<T?> use)
        where T : class
    {
        try
        {
            return use();
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException)
        {
            problems.Add(new(KeysProblems.FolderUnusable, Keys, folder.Folder, refused.Message.ReplaceLineEndings(" ").TrimEnd('.')));
            return null;
        }
    }
}

using System.Globalization;
using System.Resources;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using Training.Courses;
using Training.Web.Keys;
using Training.Web.Problems;
using Training.Web.Settings;

namespace Training.Web.Commands;

/// <summary>Lists the keys, puts a new one in place of one, or says since when one is not believed. For operators: docs/keys.md.</summary>
public static class KeysCommand
{
    private static readonly ResourceManager Texts = new(typeof(KeysText));

    private static readonly string[] InstantFormats = ["yyyy-MM-dd'T'HH:mm:sszzz", "yyyy-MM-dd'T'HH:mm:ss'Z'", "yyyy-MM-dd'T'HH:mmzzz", "yyyy-MM-dd'T'HH:mm'Z'"];

    /// <summary>Exit code 0 where it was done, 1 where something is wrong, that of <see cref="UnknownVerb"/> where the words are not understood.</summary>
    /// <param name="words">Nothing, <c>rotate</c> and a use, or <c>distrust</c>, a name and an instant; then settings.</param>
    /// <param name="clock">The machine's.</param>
    /// <param name="output">Where what happened is told.</param>
    public static int Run(string[] words, TimeProvider clock, TextWriter output) => words switch
    {
        ["rotate", var word, .. var settings] when KeyUses.Find(word) is { } use =>
            Run(settings, output, (options, problems) => Rotate(options, use, clock.GetUtcNow(), problems)),
        ["distrust", var kid, var instant, .. var settings] when !instant.StartsWith('-') =>
            Run(settings, output, (options, problems) => Distrust(options, kid, instant, clock.GetUtcNow(), problems)),
        [] or [['-', ..], ..] => Run(words, output, List),
        _ => Explain(output),
    };

    private static int Run(string[] settings, TextWriter output, Func<TrainingOptions, ICollection<Problem>, IEnumerable<string>> act)
    {
        var problems = new List<Problem>();
        var options = SettingsReader.Read(Site.Settings(settings), problems);
        var lines = options is null ? [] : act(options, problems);
        foreach (var line in problems.Count > 0 ? problems.Select(problem => ProblemText.Line(problem, CultureInfo.CurrentUICulture)) : lines) output.WriteLine(line);
        return problems.Count == 0 ? 0 : 1;
    }

    private static int Explain(TextWriter output)
    {
        output.WriteLine(Word("Usage"));
        return UnknownVerb.ExitCode;
    }

    private static IEnumerable<string> List(TrainingOptions options, ICollection<Problem> problems)
    {
        if (new KeyStore(options).Read(problems) is not { } register) return [];
        return register.Keys.Count == 0 ? [Word("None")] : [.. register.Keys.OrderBy(key => key.Use).ThenBy(key => key.From).SelectMany(Lines)];
    }

    private static IEnumerable<string> Rotate(TrainingOptions options, KeyUse use, DateTimeOffset now, ICollection<Problem> problems) =>
        new KeyStore(options).Rotate(use, ProviderOf(options, problems), now, problems) is { } made ? [Word("Rotated", use.Name(), made.Kid)] : [];

    private static IEnumerable<string> Distrust(TrainingOptions options, string kid, string instant, DateTimeOffset now, ICollection<Problem> problems)
    {
        if (!DateTimeOffset.TryParseExact(instant, InstantFormats, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var since) || since > now)
        {
            problems.Add(new(KeysProblems.InstantUnusable, Place.Of("keys"), instant));
            return [];
        }

        return new KeyStore(options).Distrust(kid, since.ToUniversalTime(), ProviderOf(options, problems), now, problems) is { NotBelievedSince: { } counted }
            ? [Word("Distrusted", kid, Stamp(counted))]
            : [];
    }

    // The name that a lead chose lies in the records; the certificate that signs bears it, and the next one shall too.
    private static string ProviderOf(TrainingOptions options, ICollection<Problem> problems)
    {
        if (new KeyStore(options).Read(problems)?.FindActive(KeyUse.Papers) is not { IsBrought: false } papers) return options.Provider.Name;
        using var certificate = papers.ReadCertificate();
        return certificate.GetNameInfo(X509NameType.SimpleName, forIssuer: false);
    }

    private static IEnumerable<string> Lines(RegisteredKey key)
    {
        yield return key.RetiredAt is { } retired
            ? Word("Retired", key.Use.Name(), key.Kid, Stamp(key.From), Stamp(retired))
            : Word("Signs", key.Use.Name(), key.Kid, Stamp(key.From));
        if (key.NotBelievedSince is { } since) yield return Word("NotBelieved", Stamp(since));
        if (key.Use != KeyUse.Papers) yield break;
        using var certificate = key.ReadCertificate();
        var (until, hash) = (Stamp(new DateTimeOffset(certificate.NotAfter)), certificate.GetCertHashString(HashAlgorithmName.SHA256));
        yield return key.IsBrought ? Word("Brought", certificate.Subject, until, hash) : Word("Made", certificate.Subject, until, hash);
    }

    private static string Stamp(DateTimeOffset instant) => instant.UtcDateTime.ToString("yyyy-MM-dd HH:mm:ss'Z'", CultureInfo.InvariantCulture);

    private static string Word(string key, params IReadOnlyList<object> holes) => string.Format(
        CultureInfo.CurrentCulture, Texts.GetString(key, CultureInfo.CurrentUICulture) ?? throw new InvalidOperationException($"KeysText has no {key}."), [.. holes]);
}

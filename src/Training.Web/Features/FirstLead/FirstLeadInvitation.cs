using System.Globalization;
using System.Resources;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Languages;
using Training.Web.Settings;

namespace Training.Web.Features.FirstLead;

/// <summary>Where nobody can sign in yet, the console says how somebody can: only who sees it runs this server.</summary>
public static class FirstLeadInvitation
{
    private static readonly ResourceManager Words = new(typeof(FirstLeadText));

    /// <summary>Prints a new one-time code in every language; prints nothing where there is an account. Codes of earlier starts stop working.</summary>
    public static async Task PrintAsync(
        RecordsContext records, TrainingOptions options, TimeProvider clock, TextWriter console, CancellationToken cancellation)
    {
        if (!await records.IsWithoutAccountsAsync(cancellation)) return;
        var (code, now) = (OneTimeCode.Draw(), clock.GetUtcNow());
        await records.KeepAsync(
            new FirstLeadCode { Id = Guid.CreateVersion7(), CodeHash = OneTimeCode.HashOf(code), MadeAt = now, EndsAt = now + OneTimeCode.Lasts }, cancellation);
        foreach (var language in LanguageTags.All)
        {
            var culture = language.Culture();
            await console.WriteLineAsync(string.Format(culture, Word("OnConsole", culture), options.PublicPage($"{language.Tag()}/first-lead"), code));
        }

        await console.FlushAsync(cancellation);
    }

    private static string Word(string key, CultureInfo culture) =>
        Words.GetString(key, culture) ?? throw new InvalidOperationException($"FirstLeadText has no {key}.");
}

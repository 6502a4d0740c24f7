using Training.Courses;
using Training.Web.Provider;
using Training.Web.Settings;

namespace Training.Web.Keys;

/// <summary>What signing is made of.</summary>
public static class KeysSetup
{
    /// <summary>Adds the keys; nothing is read or made until they are used.</summary>
    public static IServiceCollection AddIssuerKeys(this IServiceCollection services) => services
        .AddSingleton<TimestampAsking>()
        .AddSingleton<IssuerKeys>();

    /// <summary>Makes the keys that are missing and finds what is wrong with the others, before anything is served or issued.</summary>
    /// <param name="app">The site.</param>
    /// <param name="from">UTC; since when keys that are made sign.</param>
    /// <param name="problems">Receives what is wrong.</param>
    public static void LookAtKeys(this WebApplication app, DateTimeOffset from, ICollection<Problem> problems) =>
        new KeyStore(app.Services.GetRequiredService<TrainingOptions>()).Open(app.Services.GetRequiredService<OurProvider>().Name, from, problems);
}

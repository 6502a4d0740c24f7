namespace Training.Web.Provider;

/// <summary>What the site knows of its provider.</summary>
public static class ProviderSetup
{
    /// <summary>Adds the provider and what keeps it up to date.</summary>
    public static IServiceCollection AddProvider(this IServiceCollection services) => services
        .AddSingleton<OurProvider>()
        .AddSingleton<ProviderWatch>()
        .AddHostedService(provider => provider.GetRequiredService<ProviderWatch>());
}

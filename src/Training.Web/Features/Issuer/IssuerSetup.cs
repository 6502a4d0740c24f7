namespace Training.Web.Features.Issuer;

/// <summary>What the pages for machines are made of.</summary>
public static class IssuerSetup
{
    /// <summary>Adds the status lists.</summary>
    public static IServiceCollection AddIssuer(this IServiceCollection services) => services.AddSingleton<StatusListPages>();
}

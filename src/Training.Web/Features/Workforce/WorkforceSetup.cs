using Training.Web.Features.Shared;

namespace Training.Web.Features.Workforce;

/// <summary>What the pages of employers are made of.</summary>
public static class WorkforceSetup
{
    /// <summary>Adds the words of standings and the writer of the matrix.</summary>
    public static IServiceCollection AddWorkforce(this IServiceCollection services) =>
        services.AddSingleton<StandingWords>().AddSingleton<MatrixFile>();
}

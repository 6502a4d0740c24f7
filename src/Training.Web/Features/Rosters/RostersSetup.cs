namespace Training.Web.Features.Rosters;

/// <summary>What rosters are made of.</summary>
public static class RostersSetup
{
    /// <summary>Adds the writer of their files.</summary>
    public static IServiceCollection AddRosters(this IServiceCollection services) => services.AddSingleton<RosterFile>();
}

namespace Training.Web.Features.Files;

/// <summary>What tables and audit folders are made of.</summary>
public static class FilesSetup
{
    /// <summary>Adds the writers of tables.</summary>
    public static IServiceCollection AddFiles(this IServiceCollection services) => services.AddSingleton<EmployerTables>();
}

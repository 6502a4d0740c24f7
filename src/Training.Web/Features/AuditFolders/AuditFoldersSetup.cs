namespace Training.Web.Features.AuditFolders;

/// <summary>What audit folders are made of.</summary>
public static class AuditFoldersSetup
{
    /// <summary>Adds the writer and its words.</summary>
    public static IServiceCollection AddAuditFolders(this IServiceCollection services) => services
        .AddSingleton<PageWords>()
        .AddSingleton<StandingFiles>().AddSingleton<DecisionFiles>().AddSingleton<SittingFiles>().AddSingleton<ScoresheetFiles>()
        .AddSingleton<PersonFiles>().AddSingleton<ClassFiles>().AddSingleton<RuleFiles>().AddSingleton<FolderIndex>()
        .AddSingleton<AuditFolderWriter>();
}

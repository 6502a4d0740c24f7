namespace Training.Web.Features.Cover;

/// <summary>What the pages of cover are made of.</summary>
public static class CoverSetup
{
    /// <summary>Adds the words of cover.</summary>
    public static IServiceCollection AddCover(this IServiceCollection services) => services.AddSingleton<CoverWords>();
}

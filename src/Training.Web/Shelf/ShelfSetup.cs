namespace Training.Web.Shelf;

/// <summary>What the shelf of courses is made of.</summary>
public static class ShelfSetup
{
    /// <summary>Adds the shelf and what keeps it filled.</summary>
    public static IServiceCollection AddShelf(this IServiceCollection services) => services
        .AddSingleton<CourseShelf>()
        .AddSingleton<CoursesByHash>()
        .AddSingleton<LastGoodCourses>()
        .AddSingleton<SchemeChanges>()
        .AddSingleton<CourseShelfWatch>()
        .AddHostedService(provider => provider.GetRequiredService<CourseShelfWatch>());
}

namespace Training.Web.Features.ClassPlans;

/// <summary>What the pages of class plans are made of.</summary>
public static class ClassPlanSetup
{
    /// <summary>Adds the reading and the words of plans.</summary>
    public static IServiceCollection AddClassPlans(this IServiceCollection services) =>
        services.AddScoped<ClassPlanReading>().AddSingleton<PlanWords>();
}

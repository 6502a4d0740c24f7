namespace Training.Web.Features.FirstDay;

/// <summary>Puts a provider's first day into the site.</summary>
public static class FirstDaySetup
{
    /// <summary>What the first day is read with.</summary>
    public static IServiceCollection AddFirstDay(this IServiceCollection services) =>
        services.AddScoped<FirstDayReading>().AddSingleton<FirstDayEnd>();
}

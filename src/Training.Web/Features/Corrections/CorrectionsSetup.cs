namespace Training.Web.Features.Corrections;

/// <summary>What corrections are made of.</summary>
public static class CorrectionsSetup
{
    /// <summary>Adds the reading of corrections and the grading that follows them.</summary>
    public static IServiceCollection AddCorrections(this IServiceCollection services) =>
        services.AddSingleton<CorrectionReading>().AddSingleton<Regrading>();
}

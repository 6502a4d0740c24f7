using Training.Certification;
using Training.Records;
using Training.Web.Settings;

namespace Training.Web.Provider;

/// <summary>Who trains and certifies here: what a lead kept last, and what the settings say until somebody does.</summary>
public sealed class OurProvider(TrainingOptions options)
{
    private volatile ProviderDetails? kept;

    /// <summary>As pages and papers print it.</summary>
    public string Name => kept?.Name ?? options.Provider.Name;

    /// <summary>Postal address on one line; empty where none is known.</summary>
    public string Address => kept?.Address ?? options.Provider.Address;

    /// <summary>IANA zone whose calendar counts where no site is involved.</summary>
    public string Zone => kept?.Zone ?? options.Provider.TimeZone;

    /// <summary>Region whose guidance public pages show.</summary>
    public string Region => kept?.Region ?? options.Provider.Region;

    /// <summary>The date of an instant on its calendar.</summary>
    public DateOnly DayOf(DateTimeOffset instant) => DecisionDay.On(instant, TimeZoneInfo.FindSystemTimeZoneById(Zone));

    /// <summary>Takes what the records say; null: nobody kept anything.</summary>
    public void Take(ProviderDetails? details) => kept = details;
}

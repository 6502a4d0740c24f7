using System.Resources;
using Training.Courses;
using Training.Documents.Typesetting;

namespace Training.Documents.BitePlans;

/// <summary>Puts the first aid of a bite plan into words, from guidance in force where the site is and from facts of the courses that differ nowhere.</summary>
/// <remarks>
/// Sources of the lines that are always there: F-AID-01, 04, 05, 08 to 11, 22 and 23, F-NOT-01 to 08 and 10 to 12 of the courses' facts. Lines that follow a value of
/// guidance: position of the limb, washing, pressure bandage, medicines, and the snake; after a coral snake, the bandage and the way to the vehicle.
/// </remarks>
public static class FirstAidWords
{
    private const string PitViper = "pit-viper";
    private const string Coral = "coral";

    private static readonly ResourceManager Texts = Wording.TextsBeside(typeof(FirstAidWords), "FirstAidText");

    /// <summary>The lines of one region and day; null where guidance does not give every value that they need, or gives one that they have no words for.</summary>
    /// <param name="guidance">The entries.</param>
    /// <param name="region">Of the site, such as <c>US-AZ</c>.</param>
    /// <param name="hasCoral">Coral snakes live at the site, or nobody said which snakes do.</param>
    /// <param name="day">The day.</param>
    /// <param name="language">Of the lines.</param>
    public static FirstAidGuidance? InForce(GuidanceSet guidance, string region, bool hasCoral, DateOnly day, Language language)
    {
        var used = new List<GuidanceEntry>();
        bool Says(string subject, string snakes, string code) => Find(subject, snakes)?.Value is GuidanceValue.Code value && value.Name == code;
        GuidanceEntry? Find(string subject, string snakes)
        {
            if (guidance.InForce(subject, region, snakes, day) is not { } entry) return null;
            used.Add(entry);
            return entry;
        }

        var limb = Find("limb-position", GuidanceSet.Unidentified);
        var medicines = Find("medicines", GuidanceSet.Unidentified);
        var interval = Find("swelling-mark-interval", GuidanceSet.Unidentified);
        var isKnown = limb is not null && medicines is not null && interval is not null
            && Says("snake-after-bite", GuidanceSet.Unidentified, "leave")
            && Says("wash-bite", GuidanceSet.Unidentified, "yes")
            && Says("pressure-bandage", PitViper, "not-recommended")
            && Says("pressure-bandage", GuidanceSet.Unidentified, "not-recommended");
        var isCoralKnown = !hasCoral || (Says("pressure-bandage", Coral, "consider") && Says("walking", Coral, "carry"));
        if (!isKnown || !isCoralKnown) return null;

        var words = new Wording(Texts, language);
        string Value(GuidanceEntry? entry) => guidance.Text(entry!.Value, language) ?? throw new MissingManifestResourceException(entry.Id); // not null: all were found
        var youngest = used.MaxBy(entry => entry.EffectiveFrom)!; // not null: all were found
        return new(
            [
                words.Text("AidAway"), words.Text("AidRings"), words.Text("AidStill", Value(limb)), words.Text("AidWash"), words.Text("AidMark", Value(interval)),
                words.Text("AidBreathing"), words.Text("AidNote"), .. hasCoral ? [words.Text("AidCoralCarry")] : Array.Empty<string>(),
            ],
            [
                words.Text("NoWaiting"), words.Text("NoTourniquet"), .. hasCoral ? [words.Text("NoCoralBandage")] : Array.Empty<string>(), words.Text("NoCutting"),
                words.Text("NoMedicines", Value(medicines)), words.Text("NoCatching"),
            ],
            youngest.Source.Split(';')[0],
            youngest.EffectiveFrom);
    }
}

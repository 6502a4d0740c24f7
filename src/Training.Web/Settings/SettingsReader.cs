using System.ComponentModel.DataAnnotations;
using System.Globalization;
using System.Net;
using System.Reflection;
using Training.Courses;
using Training.Records;
using Training.Web.Mail;

namespace Training.Web.Settings;

/// <summary>Reads section <c>Training</c>; a key or value that it does not know is a problem, never ignored.</summary>
public static class SettingsReader
{
    /// <summary>The options, or null where <paramref name="problems"/> grew.</summary>
    /// <remarks>The framework's binder skips unknown keys and throws on the first bad value; so everything is looked at before it binds.</remarks>
    public static TrainingOptions? Read(IConfiguration configuration, ICollection<Problem> problems)
    {
        var before = problems.Count;
        var section = configuration.GetSection(TrainingOptions.Section);
        Look(section, typeof(TrainingOptions), problems);
        if (problems.Count > before) return null;

        var options = section.Get<TrainingOptions>() ?? new();
        LookTogether(options, problems);
        return problems.Count > before ? null : options;
    }

    /// <summary>What <c>serve</c> needs besides: an address for QR codes, which has no honest default, and the machine's own clock.</summary>
    public static void LookForServing(TrainingOptions options, ICollection<Problem> problems)
    {
        if (options.PublicAddress is null)
        {
            problems.Add(new(SettingsProblems.Missing, Place.Of("Training:PublicAddress"), "Training__PublicAddress"));
        }

        // A certificate decided on a day that has not come would be false.
        if (options.Demo.DaysAhead != 0) problems.Add(new(SettingsProblems.DemoOnly, Place.Of("Training:Demo:DaysAhead"), "Training__Demo__DaysAhead"));
    }

    /// <summary>Every setting: its key below <c>Training</c> with colons, and the property that holds it.</summary>
    public static IEnumerable<(string Key, PropertyInfo Property)> All(Type section, string prefix = "") =>
        section.GetProperties().SelectMany(property => IsSection(property)
            ? All(property.PropertyType, $"{prefix}{property.Name}:")
            : [($"{prefix}{property.Name}", property)]);

    /// <summary>The addresses in <see cref="TrainingOptions.TrustedProxies"/>; checked when the settings were read.</summary>
    public static IEnumerable<IPAddress> Proxies(TrainingOptions options) => ProxyTexts(options).Select(IPAddress.Parse);

    private static string[] ProxyTexts(TrainingOptions options) =>
        options.TrustedProxies.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    private static bool IsSection(PropertyInfo property) =>
        property.PropertyType.IsClass && property.PropertyType.Assembly == typeof(TrainingOptions).Assembly;

    private static void Look(IConfigurationSection section, Type type, ICollection<Problem> problems)
    {
        var properties = type.GetProperties();
        foreach (var child in section.GetChildren())
        {
            if (properties.Any(p => string.Equals(p.Name, child.Key, StringComparison.OrdinalIgnoreCase))) continue;
            problems.Add(new(SettingsProblems.KeyUnknown, Place.Of(child.Path), child.Key, string.Join(", ", properties.Select(p => p.Name))));
        }

        foreach (var property in properties)
        {
            var child = section.GetSection(property.Name);
            if (IsSection(property)) Look(child, property.PropertyType, problems);
            else LookAtValue(child, property, problems);
        }
    }

    private static void LookAtValue(IConfigurationSection setting, PropertyInfo property, ICollection<Problem> problems)
    {
        // A key that is absent keeps its default; one that is there and empty says "nothing", which a required setting cannot be.
        if (!setting.Exists()) return;
        var value = setting.Value?.Trim() ?? "";
        var isRequired = property.GetCustomAttribute<RequiredAttribute>() is not null;
        var place = Place.Of(setting.Path);
        if (value.Length == 0)
        {
            if (isRequired || property.PropertyType == typeof(int))
            {
                problems.Add(new(SettingsProblems.Missing, place, setting.Path.Replace(":", "__", StringComparison.Ordinal)));
            }

            return;
        }

        if (property.PropertyType.IsEnum) LookAtChoice(value, property.PropertyType, place, problems);
        else if (property.PropertyType == typeof(int)) LookAtNumber(value, property, place, problems);
        else if (property.PropertyType == typeof(Uri)) LookAtAddress(value, place, problems);
        else if (property.GetCustomAttribute<StringLengthAttribute>() is { } most && value.Length > most.MaximumLength)
        {
            problems.Add(new(SettingsProblems.TooLong, place, most.MaximumLength.ToString(CultureInfo.InvariantCulture)));
        }
    }

    private static void LookAtChoice(string value, Type choices, Place place, ICollection<Problem> problems)
    {
        // Enum.TryParse would take "7" and "Sqlite, Postgres" as well.
        if (Enum.GetNames(choices).Contains(value, StringComparer.OrdinalIgnoreCase)) return;
        problems.Add(new(SettingsProblems.ValueUnknown, place, value, string.Join(", ", Enum.GetNames(choices))));
    }

    private static void LookAtNumber(string value, PropertyInfo property, Place place, ICollection<Problem> problems)
    {
        var range = property.GetCustomAttribute<RangeAttribute>()
            ?? throw new InvalidOperationException($"{property.Name} is a number without [Range].");
        var isNumber = int.TryParse(value, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number);
        if (isNumber && range.IsValid(number)) return;
        problems.Add(new(SettingsProblems.OutOfRange, place, value, $"{range.Minimum}", $"{range.Maximum}"));
    }

    private static void LookAtAddress(string value, Place place, ICollection<Problem> problems)
    {
        if (Uri.TryCreate(value, UriKind.Absolute, out var address) && address is { Scheme: "http" or "https", Query: "", Fragment: "", UserInfo: "" }) return;
        problems.Add(new(SettingsProblems.AddressInvalid, place, value));
    }

    private static void LookTogether(TrainingOptions options, ICollection<Problem> problems)
    {
        if (!TimeZoneInfo.TryFindSystemTimeZoneById(options.Provider.TimeZone, out _))
        {
            problems.Add(new(SettingsProblems.TimeZoneUnknown, Place.Of("Training:Provider:TimeZone"), options.Provider.TimeZone));
        }

        foreach (var proxy in ProxyTexts(options).Where(text => !IPAddress.TryParse(text, out _)))
        {
            problems.Add(new(SettingsProblems.ProxyInvalid, Place.Of("Training:TrustedProxies"), proxy));
        }

        if (options.Mail.Host.Length > 0 && !MailAddressSyntax.IsOne(options.Mail.From))
        {
            problems.Add(new(SettingsProblems.MailFromInvalid, Place.Of("Training:Mail:From"), options.Mail.From));
        }

        if (options.Database.Engine != DatabaseEngine.Sqlite && options.Database.Connection.Length == 0)
        {
            problems.Add(new(SettingsProblems.ConnectionMissing, Place.Of("Training:Database:Connection"), options.Database.Engine.ToString()));
        }
    }
}

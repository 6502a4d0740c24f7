using System.Globalization;
using Microsoft.AspNetCore.Mvc.ModelBinding;
using Microsoft.Extensions.Localization;
using Training.Documents.BitePlans;
using Training.Records;
using Training.Scoring;
using Training.Web.Languages;

namespace Training.Web.Features.BitePlans;

/// <summary>Reads the posted form of a bite plan; what is wrong stands beside its field, all of it at once.</summary>
/// <param name="fields">Receives what is wrong.</param>
/// <param name="text">BitePlanText.</param>
public sealed class BitePlanFormReading(ModelStateDictionary fields, IStringLocalizer<BitePlanText> text)
{
    /// <summary>The plan; of use only where nothing was found wrong.</summary>
    /// <param name="form">As typed.</param>
    /// <param name="numbers">Whom to call, as read from the same form.</param>
    public BitePlan Read(BitePlanForm form, EmergencyNumbers numbers)
    {
        var point = ReadPoint(form.Coordinates);
        return new()
        {
            Id = form.Id, SiteId = numbers.SiteId, LeadId = numbers.LeadId, KeptAt = numbers.KeptAt, CheckedOn = numbers.CheckedOn,
            Latitude = point.Latitude, Longitude = point.Longitude,
            AccessWords = fields.ReadLine(nameof(form.AccessWords), form.AccessWords, Bounds.Conditions, text["Missing"]),
            Hospitals = [.. form.Hospitals.Take(BitePlanPage.MostHospitals).Index().Where(row => !row.Item.IsEmpty).Select(row => ReadHospital(row.Index, row.Item, numbers.CheckedOn))],
            ReviewOn = ReadReview(form.ReviewOn, numbers.CheckedOn),
        };
    }

    private (decimal Latitude, decimal Longitude) ReadPoint(string? typed)
    {
        var point = MapPoints.Read(typed);
        if (point is null) fields.AddModelError(nameof(BitePlanForm.Coordinates), text["CoordinatesUnread"]);
        return point ?? default;
    }

    private DateOnly ReadReview(string? typed, DateOnly today)
    {
        // As long as a live assessment may rely on the check.
        var last = LastReview(today);
        if (FormValues.ReadDay(typed) is { } day && day > today && day <= last) return day;
        fields.AddModelError(nameof(BitePlanForm.ReviewOn), text["ReviewUnread", Written.Date(today.AddDays(1)), Written.Date(last)]);
        return default;
    }

    /// <summary>The latest day of review of a plan that is checked on this day.</summary>
    public static DateOnly LastReview(DateOnly day) => ScoresheetGrader.BitePlanGreatestAge.After(day);

    private PlannedHospital ReadHospital(int index, HospitalForm row, DateOnly today) => new(
        ReadLine(index, nameof(row.Name), row.Name),
        ReadLine(index, nameof(row.Contact), row.Contact),
        ReadMinutes(index, row.DriveMinutes),
        row.IsSilentOfAntivenom ? null : new(ReadLine(index, nameof(row.Said), row.Said), ReadLine(index, nameof(row.ToldBy), row.ToldBy), ReadToldOn(index, row.ToldOn, today)));

    private int ReadMinutes(int index, string? typed)
    {
        if (int.TryParse(typed?.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var minutes) && minutes is >= 1 and <= BitePlanPage.MostDriveMinutes) return minutes;
        fields.AddModelError(Field(index, nameof(HospitalForm.DriveMinutes)), text["MinutesUnread", BitePlanPage.MostDriveMinutes]);
        return 0;
    }

    private DateOnly ReadToldOn(int index, string? typed, DateOnly today)
    {
        if (FormValues.ReadDay(typed) is { } day && day <= today) return day;
        fields.AddModelError(Field(index, nameof(HospitalForm.ToldOn)), text["ToldOnUnread", Written.Date(today)]);
        return default;
    }

    private string ReadLine(int index, string name, string? typed) => fields.ReadLine(Field(index, name), typed, BitePlanPage.LongestLine, text["Missing"]);

    /// <summary>The name of a field of a row, as the form sends it.</summary>
    public static string Field(int index, string name) => string.Create(CultureInfo.InvariantCulture, $"Hospitals[{index}].{name}");
}

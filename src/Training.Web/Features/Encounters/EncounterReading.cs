using System.Globalization;
using Microsoft.AspNetCore.Mvc.ModelBinding;
using Microsoft.Extensions.Localization;
using Training.Certification;
using Training.Records;
using Training.Web.Languages;

namespace Training.Web.Features.Encounters;

/// <summary>Reads the posted form of an encounter; what is wrong stands beside its field, all of it at once.</summary>
/// <param name="fields">Receives what is wrong.</param>
/// <param name="text">EncounterText.</param>
/// <param name="place">Site, people and courses that may be chosen.</param>
public sealed class EncounterReading(ModelStateDictionary fields, IStringLocalizer<EncounterText> text, EncounterPlace place)
{
    /// <summary>How long ago an encounter may lie that is reported now: what is older is history, not news.</summary>
    public const int MostDays = 366;

    /// <summary>The report, or null where something is to be mended.</summary>
    /// <param name="form">As typed, with its kind.</param>
    /// <param name="reporterId">Who reports.</param>
    /// <param name="now">UTC.</param>
    public (EncounterRecord Encounter, RelocationRecord? Relocation)? Read(EncounterForm form, Guid reporterId, DateTimeOffset now)
    {
        var kind = form.Kind ?? throw new ArgumentException("The kind is chosen before the form is filled in.", nameof(form));
        var (metOn, metAt) = (ReadDay(form.MetOn), ReadTime(form.MetAt));
        var where = fields.ReadLine(nameof(form.Place), form.Place, Bounds.Conditions, text["PlaceMissing"]);
        var coordinates = ReadCoordinates(form.Coordinates);
        var (handling, handlerId) = ReadHandler(form.Handler, kind);
        var (done, followUp) = (ReadText(nameof(form.Done), form.Done, Bounds.Reason), ReadText(nameof(form.FollowUp), form.FollowUp, Bounds.Reason));
        var relocation = kind == EncounterKind.Moved ? ReadRelocation(form) : null;
        if (!fields.IsValid) return null;
        var encounter = new EncounterRecord
        {
            Id = form.Id, SiteId = place.SiteId, ReporterId = reporterId, Kind = kind, MetOn = metOn!.Value, // not null: read without a problem
            MetAt = metAt, Place = where, Latitude = coordinates?.Latitude, Longitude = coordinates?.Longitude,
            SpeciesId = place.Species.FirstOrDefault(one => one.Id == form.SpeciesId).Id, Done = done, Handling = handling, HandlerId = handlerId,
            FollowUp = followUp, CourseId = place.Courses.FirstOrDefault(one => one.Id == form.CourseId).Id, ReportedOn = place.Today, KeptAt = now,
        };
        return (encounter, relocation);
    }

    private DateOnly? ReadDay(string? typed)
    {
        var day = FormValues.ReadDay(typed);
        if (day is null) fields.AddModelError(nameof(EncounterForm.MetOn), text["DayMissing"]);
        else if (day > place.Today) fields.AddModelError(nameof(EncounterForm.MetOn), text["DayAhead", Written.Date(place.Today)]);
        else if (day < place.Today.AddDays(-MostDays)) fields.AddModelError(nameof(EncounterForm.MetOn), text["DayLongAgo", MostDays]);
        return day;
    }

    private TimeOnly? ReadTime(string? typed)
    {
        if (string.IsNullOrWhiteSpace(typed)) return null;
        if (TimeOnly.TryParseExact(typed.Trim(), ["HH:mm", "HH:mm:ss", "H:mm"], CultureInfo.InvariantCulture, DateTimeStyles.None, out var time)) return time;
        fields.AddModelError(nameof(EncounterForm.MetAt), text["TimeUnread"]);
        return null;
    }

    private (decimal Latitude, decimal Longitude)? ReadCoordinates(string? typed)
    {
        if (string.IsNullOrWhiteSpace(typed)) return null;
        var point = MapPoints.Read(typed);
        if (point is null) fields.AddModelError(nameof(EncounterForm.Coordinates), text["CoordinatesUnread"]);
        return point;
    }

    private (EncounterHandling Handling, Guid? PersonId) ReadHandler(string? typed, EncounterKind kind)
    {
        if (kind == EncounterKind.Sighting) return (EncounterHandling.Nobody, null);
        if (typed == EncounterForm.SomebodyElse) return (EncounterHandling.Other, null);
        if (Guid.TryParse(typed, out var id) && place.People.Any(person => person.PersonId == id)) return (EncounterHandling.Named, id);
        if (kind == EncounterKind.Moved || !string.IsNullOrEmpty(typed)) fields.AddModelError(nameof(EncounterForm.Handler), text["HandlerMissing"]);
        return (EncounterHandling.Nobody, null);
    }

    private RelocationRecord? ReadRelocation(EncounterForm form)
    {
        var relocation = new RelocationRecord
        {
            EncounterId = form.Id,
            DistanceMetres = ReadNumber(nameof(form.DistanceMetres), form.DistanceMetres, 0, 100_000),
            Tools = ReadText(nameof(form.Tools), form.Tools, Bounds.Conditions),
            Container = ReadText(nameof(form.Container), form.Container, Bounds.Number),
            MinutesHeld = ReadNumber(nameof(form.MinutesHeld), form.MinutesHeld, 0, 1440),
            AirTemperature = ReadNumber(nameof(form.AirTemperature), form.AirTemperature, -40, 60),
            ReleaseCover = ReadText(nameof(form.ReleaseCover), form.ReleaseCover, Bounds.Conditions),
            PermitNumber = ReadText(nameof(form.PermitNumber), form.PermitNumber, Bounds.Number),
        };
        var isEmpty = relocation is { DistanceMetres: null, MinutesHeld: null, AirTemperature: null, Tools: "", Container: "", ReleaseCover: "", PermitNumber: "" };
        return isEmpty ? null : relocation;
    }

    private int? ReadNumber(string field, string? typed, int least, int most)
    {
        if (string.IsNullOrWhiteSpace(typed)) return null;
        if (int.TryParse(typed.Trim(), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number) && number >= least && number <= most) return number;
        fields.AddModelError(field, text["NumberUnread", least, most]);
        return null;
    }

    private string ReadText(string field, string? typed, int most)
    {
        var words = (typed ?? "").Trim();
        if (words.Length > most) fields.AddModelError(field, Written.TooLong(most, words.Length));
        return words;
    }
}

/// <summary>Where an encounter is reported from, and what may be chosen there.</summary>
/// <param name="SiteId">Which site.</param>
/// <param name="SiteName">Its name.</param>
/// <param name="Today">The date there.</param>
/// <param name="Numbers">Whom to call; null where nobody wrote it.</param>
/// <param name="People">Who works there, by name.</param>
/// <param name="Species">Sheets, those of the site's list first.</param>
/// <param name="Courses">Courses that are used.</param>
public sealed record EncounterPlace(
    Guid SiteId,
    string SiteName,
    DateOnly Today,
    EmergencyNumbers? Numbers,
    IReadOnlyList<(Guid PersonId, string Name)> People,
    IReadOnlyList<(string Id, string Name)> Species,
    IReadOnlyList<(string Id, string Title)> Courses);

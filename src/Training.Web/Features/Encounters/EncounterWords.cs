using System.Globalization;
using Microsoft.Extensions.Localization;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Features.Programme;
using Training.Web.Languages;
using Training.Web.Shelf;

namespace Training.Web.Features.Encounters;

/// <summary>Puts encounters in words, in the language of the request.</summary>
/// <param name="Text">EncounterText.</param>
/// <param name="Shelf">Names species and courses.</param>
/// <param name="Language">Of the page.</param>
public sealed record EncounterWords(IStringLocalizer<EncounterText> Text, CourseShelf Shelf, Language Language)
{
    /// <summary>What it came to.</summary>
    public string Of(EncounterKind kind) => kind switch
    {
        EncounterKind.Sighting => Text["Sighting"],
        EncounterKind.Moved => Text["Moved"],
        EncounterKind.NearMiss => Text["NearMiss"],
        EncounterKind.Bite => Text["Bite"],
    };

    /// <summary>Who handled it, without a name.</summary>
    public string Of(EncounterHandling handling) => handling switch
    {
        EncounterHandling.Nobody => Text["HandledByNobody"],
        EncounterHandling.Named => Text["HandledByNamed"],
        EncounterHandling.Other => Text["HandledByOther"],
    };

    /// <summary>The species, or that it is not known; the id where its sheet is gone.</summary>
    public string Species(string? id) => id is null ? Text["SpeciesUnknown"] : Shelf.Species.Find(id)?.Words[Language].Name ?? id;

    /// <summary>What the course's paper is called, or its id.</summary>
    public string Course(string id) => Shelf.Courses.Titles(Language).Of(id);

    /// <summary>Day and, where it is known, time.</summary>
    public static string When(EncounterRecord encounter) =>
        Written.Date(encounter.MetOn) + (encounter.MetAt is { } at ? at.ToString(", HH:mm", CultureInfo.InvariantCulture) : "");

    /// <summary>Degrees north and east, or null.</summary>
    public static string? Coordinates(EncounterRecord encounter) => encounter is { Latitude: { } north, Longitude: { } east }
        ? MapPoints.Written(north, east)
        : null;
}

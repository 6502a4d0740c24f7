using System.Globalization;
using System.Security.Cryptography;
using System.Text.Json;
using Training.Courses;

namespace Training.Records;

/// <summary>What a roster would change.</summary>
/// <param name="New">People whose badge number nobody had.</param>
/// <param name="Returning">People who left and are in the file again.</param>
/// <param name="Changed">People about whom the file says something else.</param>
/// <param name="UnchangedCount">How many people stand as the file says.</param>
/// <param name="Missing">People of the employer who are not in the file.</param>
/// <param name="Problems">Rows that name one person by two badge numbers.</param>
public sealed record RosterDifference(
    IReadOnlyList<RosterRow> New,
    IReadOnlyList<RosterChange> Returning,
    IReadOnlyList<RosterChange> Changed,
    int UnchangedCount,
    IReadOnlyList<RosterPerson> Missing,
    IReadOnlyList<Problem> Problems)
{
    /// <summary>Whether nobody is new, returns, changes or is missing.</summary>
    public bool IsNothing => New.Count == 0 && Returning.Count == 0 && Changed.Count == 0 && Missing.Count == 0;

    /// <summary>Compares a roster with the people of one employer, by badge number and nothing else.</summary>
    /// <param name="known">Everybody who works for that employer or once did.</param>
    /// <param name="roster">The file.</param>
    public static RosterDifference Between(IReadOnlyList<RosterPerson> known, Roster roster)
    {
        var byBadge = known.SelectMany(person => person.BadgeKeys.Select(key => (key, person))).ToDictionary(StringComparer.Ordinal);
        var lines = new Dictionary<Guid, int>();
        var (added, returning, changed, problems) = (new List<RosterRow>(), new List<RosterChange>(), new List<RosterChange>(), new List<Problem>());
        foreach (var row in roster.Rows)
        {
            if (!byBadge.TryGetValue(row.BadgeKey, out var person))
            {
                added.Add(row);
            }
            else if (!lines.TryAdd(person.PersonId, row.Line))
            {
                problems.Add(new(
                    RecordsProblems.RosterNamesTwice, new(Line: row.Line), row.Badge,
                    lines[person.PersonId].ToString(CultureInfo.InvariantCulture)));
            }
            else
            {
                var fields = Fields(person, row, roster);
                if (!person.IsEmployed) returning.Add(new(person, row, ReturnsOn(person, row), fields));
                else if (fields.Count > 0) changed.Add(new(person, row, null, fields));
            }
        }

        var missing = known.Where(person => person.IsEmployed && !lines.ContainsKey(person.PersonId)).ToList();
        return new(added, returning, changed, lines.Count - returning.Count - changed.Count, missing, problems);
    }

    /// <summary>Tells this difference from every other: SHA-256, lower-case hex. It is compared within minutes and kept nowhere.</summary>
    public string Fingerprint()
    {
        string?[][] lines =
        [
            .. New.Select(row => (string?[])["new", row.BadgeKey, row.Name, row.SiteId.ToString(), row.Crew, row.Language?.Tag(), row.MailAddress, Iso(row.StartsOn)]),
            .. Returning.Concat(Changed).SelectMany(change => (string?[][])
            [
                [change.Person.PersonId.ToString(), Iso(change.ReturnsOn)],
                .. change.Fields.Select(field => (string?[])[field.Field.ToString(), field.Before, field.After]),
            ]),
            .. Missing.Select(person => (string?[])["missing", person.PersonId.ToString()]),
        ];
        return Convert.ToHexStringLower(SHA256.HashData(JsonSerializer.SerializeToUtf8Bytes(lines)));
    }

    // Somebody cannot come back before they left; the page shows the day that counts.
    private static DateOnly ReturnsOn(RosterPerson person, RosterRow row) =>
        person.LeftOn >= row.StartsOn ? person.LeftOn.Value.AddDays(1) : row.StartsOn;

    private static List<RosterFieldChange> Fields(RosterPerson person, RosterRow row, Roster roster)
    {
        var fields = new List<RosterFieldChange>();
        if (person.Name != row.Name) fields.Add(new(RosterField.Name, person.Name, row.Name));
        if (!person.IsPlacedElsewhere)
        {
            var isMoved = person.SiteId != row.SiteId;
            if (isMoved) fields.Add(new(RosterField.Site, person.SiteName, row.SiteName));
            // A crew belongs to a site: who moves leaves theirs, also where the new site has one of that name.
            var crew = roster.SaysCrew ? row.Crew : isMoved ? null : person.Crew;
            if (KeyOf(crew) != KeyOf(person.Crew)) fields.Add(new(RosterField.Crew, person.Crew, crew));
        }

        if (row.Language is { } language && language != person.Language) fields.Add(new(RosterField.Language, person.Language.Tag(), language.Tag()));
        if (roster.SaysMailAddress && row.MailAddress != person.MailAddress)
            fields.Add(new(RosterField.MailAddress, person.MailAddress, row.MailAddress));
        return fields;
    }

    private static string? KeyOf(string? name) => name is null ? null : KeyText.Of(name);

    private static string? Iso(DateOnly? day) => day?.ToString("O", CultureInfo.InvariantCulture);
}

/// <summary>Somebody known about whom the file says something else, or who comes back.</summary>
/// <param name="Person">As they are.</param>
/// <param name="Row">As the file has them.</param>
/// <param name="ReturnsOn">First day of the new employment; null for who never left.</param>
/// <param name="Fields">What changes; may be empty for who comes back.</param>
public sealed record RosterChange(RosterPerson Person, RosterRow Row, DateOnly? ReturnsOn, IReadOnlyList<RosterFieldChange> Fields)
{
    /// <summary>Whether this is among what changes.</summary>
    public bool Has(RosterField field) => Fields.Any(change => change.Field == field);
}

/// <summary>One thing that changes about somebody.</summary>
/// <param name="Field">What.</param>
/// <param name="Before">As it is: a name, an address or a language's tag; null for none.</param>
/// <param name="After">As the file has it.</param>
public sealed record RosterFieldChange(RosterField Field, string? Before, string? After);

/// <summary>What a roster says about people who are known.</summary>
public enum RosterField
{
    /// <summary>Their name.</summary>
    Name,

    /// <summary>Where they work.</summary>
    Site,

    /// <summary>Their crew there.</summary>
    Crew,

    /// <summary>The language to write to them in.</summary>
    Language,

    /// <summary>Where mail reaches them.</summary>
    MailAddress,
}

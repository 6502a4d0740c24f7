using System.Globalization;
using System.Text;

namespace Training.Web.Features.Rosters;

/// <summary>What a column of a roster is for.</summary>
public enum RosterColumn
{
    /// <summary>Badge number; every roster has it.</summary>
    Badge,

    /// <summary>Name; every roster has it.</summary>
    Name,

    /// <summary>Site; every roster has it.</summary>
    Site,

    /// <summary>Crew on that site.</summary>
    Crew,

    /// <summary>The language to write to them in.</summary>
    Language,

    /// <summary>Where mail reaches them.</summary>
    MailAddress,

    /// <summary>First day of who is new or comes back.</summary>
    StartsOn,
}

/// <summary>Knows columns by their names in English and Spanish.</summary>
public static class RosterColumns
{
    private static readonly Dictionary<string, RosterColumn> ByName = new(StringComparer.Ordinal)
    {
        ["badge"] = RosterColumn.Badge, ["badgenumber"] = RosterColumn.Badge, ["gafete"] = RosterColumn.Badge, ["numerodegafete"] = RosterColumn.Badge,
        ["name"] = RosterColumn.Name, ["fullname"] = RosterColumn.Name, ["nombre"] = RosterColumn.Name, ["nombrecompleto"] = RosterColumn.Name,
        ["site"] = RosterColumn.Site, ["sitename"] = RosterColumn.Site, ["sitio"] = RosterColumn.Site,
        ["crew"] = RosterColumn.Crew, ["cuadrilla"] = RosterColumn.Crew,
        ["language"] = RosterColumn.Language, ["idioma"] = RosterColumn.Language,
        ["mailaddress"] = RosterColumn.MailAddress, ["mail"] = RosterColumn.MailAddress, ["email"] = RosterColumn.MailAddress,
        ["emailaddress"] = RosterColumn.MailAddress, ["correo"] = RosterColumn.MailAddress, ["correoelectronico"] = RosterColumn.MailAddress,
        ["startdate"] = RosterColumn.StartsOn, ["firstday"] = RosterColumn.StartsOn, ["fechadeinicio"] = RosterColumn.StartsOn,
        ["primerdia"] = RosterColumn.StartsOn,
    };

    /// <summary>The column that the name means, or null. Case, accents, spaces and signs do not matter.</summary>
    public static RosterColumn? Find(string name)
    {
        var letters = name.Normalize(NormalizationForm.FormD).Where(char.IsLetterOrDigit).ToArray();
        return ByName.TryGetValue(new string(letters).ToLower(CultureInfo.InvariantCulture), out var column) ? column : null;
    }
}

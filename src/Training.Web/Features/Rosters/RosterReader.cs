using System.Globalization;
using Training.Courses;
using Training.Records;
using Training.Web.Features.Shared;
using Training.Web.Mail;

namespace Training.Web.Features.Rosters;

/// <summary>What came of reading a roster file.</summary>
/// <param name="Roster">Null where anything is wrong: then nothing of it may be applied.</param>
/// <param name="Problems">All of them, by line.</param>
/// <param name="IgnoredColumns">Names of columns that mean nothing to us.</param>
public sealed record RosterRead(Roster? Roster, IReadOnlyList<Problem> Problems, IReadOnlyList<string> IgnoredColumns);

/// <summary>Reads a roster file: bytes in, people or problems out.</summary>
public sealed class RosterReader
{
    /// <summary>Largest file, in bytes.</summary>
    public const int MostBytes = MostMegabytes * 1024 * 1024;

    /// <summary>Largest file, in megabytes.</summary>
    public const int MostMegabytes = 8;

    private const int MostNamed = 20;

    private static readonly DateOnly EarliestStart = new(1950, 1, 1);
    private static readonly DateOnly LatestStart = new(2100, 12, 31);

    private readonly IReadOnlyDictionary<string, Records.Site> sites;
    private readonly Func<Records.Site, DateOnly> today;
    private readonly Dictionary<string, int> badges = new(StringComparer.Ordinal);
    private readonly Dictionary<RosterColumn, int> places = [];
    private readonly List<Problem> problems;
    private IReadOnlyList<string> names = [];

    private RosterReader(IReadOnlyList<Records.Site> sites, Func<Records.Site, DateOnly> today, IEnumerable<Problem> problems)
    {
        this.sites = sites.ToDictionary(site => site.NameKey, StringComparer.Ordinal);
        this.today = today;
        this.problems = [.. problems];
    }

    /// <summary>Reads a file.</summary>
    /// <param name="content">Byte for byte; at most <see cref="MostBytes"/>.</param>
    /// <param name="sites">The employer's.</param>
    /// <param name="today">The day on a site: who has no start date begins on it.</param>
    public static RosterRead Read(byte[] content, IReadOnlyList<Records.Site> sites, Func<Records.Site, DateOnly> today)
    {
        var file = CsvFile.Read(content);
        return new RosterReader(sites, today, file.Problems).Read(file);
    }

    private RosterRead Read(CsvFile file)
    {
        // What is no text at all has nothing else wrong with it.
        if (file.Lines.Count == 0) return new(null, problems.Count > 0 ? problems : [new(RosterProblems.NoRows, new())], []);
        var ignored = ReadColumns(file.Lines[0]);
        if (problems.Exists(problem => problem.Code is RosterProblems.ColumnsMissing or RosterProblems.ColumnTwice))
            return new(null, problems, ignored);
        if (file.Lines.Count == 1) problems.Add(new(RosterProblems.NoRows, new()));
        var rows = file.Lines.Skip(1).Select(ReadRow).OfType<RosterRow>().ToList();
        var roster = new Roster(rows, places.ContainsKey(RosterColumn.Crew), places.ContainsKey(RosterColumn.MailAddress));
        return new(problems.Count == 0 ? roster : null, [.. problems.OrderBy(problem => problem.Place.Line)], ignored);
    }

    private List<string> ReadColumns(CsvLine header)
    {
        names = [.. header.Cells.Select(cell => Shortened(FormValues.ReadLine(SpreadsheetCell.Read(cell))))];
        var ignored = new List<string>();
        foreach (var (place, name) in names.Index())
        {
            if (RosterColumns.Find(name) is not { } column)
            {
                if (name.Length > 0) ignored.Add(name);
            }
            else if (!places.TryAdd(column, place))
            {
                problems.Add(new(RosterProblems.ColumnTwice, new(Line: header.Line), name));
            }
        }

        if (!places.ContainsKey(RosterColumn.Badge) || !places.ContainsKey(RosterColumn.Name) || !places.ContainsKey(RosterColumn.Site))
            problems.Add(new(RosterProblems.ColumnsMissing, new(Line: header.Line), string.Join(", ", names.Take(MostNamed))));
        return ignored;
    }

    private RosterRow? ReadRow(CsvLine line)
    {
        var before = problems.Count;
        if (line.Cells.Count > names.Count && line.Cells.Skip(names.Count).Any(cell => cell.Length > 0))
            problems.Add(new(RosterProblems.TooManyCells, new(Line: line.Line), Figure(line.Cells.Count), Figure(names.Count)));
        var badge = Required(line, RosterColumn.Badge, Bounds.Number);
        var name = Required(line, RosterColumn.Name, Bounds.Name);
        var site = ReadSite(line);
        var crew = Cell(line, RosterColumn.Crew, Bounds.Name);
        var language = ReadLanguage(line);
        var address = ReadMailAddress(line);
        var startsOn = ReadStart(line);
        if (badge is not null && !badges.TryAdd(KeyText.Of(badge), line.Line))
            Add(line, RosterColumn.Badge, RosterProblems.BadgeTwice, badge, Figure(badges[KeyText.Of(badge)]));
        return problems.Count == before && badge is not null && name is not null && site is not null
            ? new(line.Line, badge, name, site.Id, site.Name, crew, language, address, startsOn ?? today(site))
            : null;
    }

    private Records.Site? ReadSite(CsvLine line)
    {
        if (Required(line, RosterColumn.Site, Bounds.Name) is not { } typed) return null;
        if (sites.TryGetValue(KeyText.Of(typed), out var site)) return site;
        Add(line, RosterColumn.Site, RosterProblems.SiteUnknown, typed, string.Join(", ", sites.Values.Take(MostNamed).Select(known => known.Name)));
        return null;
    }

    private Language? ReadLanguage(CsvLine line)
    {
        if (Cell(line, RosterColumn.Language, Bounds.Name) is not { } typed) return null;
        switch (KeyText.Of(typed))
        {
            case "EN" or "ENGLISH" or "INGLÉS" or "INGLES":
                return Language.English;
            case "ES" or "SPANISH" or "ESPAÑOL" or "ESPANOL":
                return Language.Spanish;
            default:
                Add(line, RosterColumn.Language, RosterProblems.LanguageUnknown, typed);
                return null;
        }
    }

    private string? ReadMailAddress(CsvLine line)
    {
        if (Cell(line, RosterColumn.MailAddress, Bounds.MailAddress) is not { } typed) return null;
        if (MailAddressSyntax.IsOne(typed)) return typed;
        Add(line, RosterColumn.MailAddress, RosterProblems.MailAddressUnclear, typed);
        return null;
    }

    private DateOnly? ReadStart(CsvLine line)
    {
        if (Cell(line, RosterColumn.StartsOn, Bounds.Name) is not { } typed) return null;
        if (FormValues.ReadDay(typed) is { } day && day >= EarliestStart && day <= LatestStart) return day;
        Add(line, RosterColumn.StartsOn, RosterProblems.DateUnclear, typed);
        return null;
    }

    private string? Required(CsvLine line, RosterColumn column, int most)
    {
        var before = problems.Count;
        var cell = Cell(line, column, most);
        if (cell is null && problems.Count == before) Add(line, column, RosterProblems.CellEmpty, names[places[column]]);
        return cell;
    }

    /// <summary>Null where there is no such column, the cell is empty, or it is too long, which is a problem.</summary>
    private string? Cell(CsvLine line, RosterColumn column, int most)
    {
        if (!places.TryGetValue(column, out var place) || place >= line.Cells.Count) return null;
        var cell = FormValues.ReadLine(SpreadsheetCell.Read(line.Cells[place]));
        if (cell.Length <= most) return cell.Length == 0 ? null : cell;
        Add(line, column, RosterProblems.CellTooLong, names[place], Figure(most));
        return null;
    }

    private void Add(CsvLine line, RosterColumn column, string code, params IReadOnlyList<string> arguments) =>
        problems.Add(new(code, new(Line: line.Line, Part: names[places[column]]), arguments));

    private static string Shortened(string name) => name.Length <= Bounds.Name ? name : name[..Bounds.Name];

    private static string Figure(int number) => number.ToString(CultureInfo.InvariantCulture);
}

using System.Globalization;
using Training.Courses;
using Training.Records;
using Training.Web.Features.Rosters;
using Training.Web.Features.Shared;

namespace Training.Web.Features.Panels;

/// <summary>One row of a file of ratings.</summary>
/// <param name="JudgeId">Who judged.</param>
/// <param name="ItemId">Which question or step.</param>
/// <param name="Percent">0–100.</param>
public sealed record RatingRow(Guid JudgeId, string ItemId, int Percent);

/// <summary>Reads and writes ratings as CSV: judge (their number), question (or step), round, percent.</summary>
public static class RatingsFile
{
    /// <summary>Largest file in bytes: 200 judges of 1,000 questions each.</summary>
    public const int MostBytes = 8 * 1024 * 1024;

    private static readonly string[] Columns = ["judge", "question", "round", "percent"];

    /// <summary>The rows, or all that is wrong with any of them; then nothing of the file may be kept.</summary>
    /// <param name="content">Byte for byte.</param>
    /// <param name="panel">Whose ratings.</param>
    /// <param name="round">The open round.</param>
    /// <param name="problems">Receives what is wrong, by row and column.</param>
    public static IReadOnlyList<RatingRow> Read(byte[] content, PanelFile panel, int round, ICollection<Problem> problems)
    {
        var file = CsvFile.Read(content);
        foreach (var problem in file.Problems) problems.Add(problem);
        if (problems.Count > 0) return [];
        if (file.Lines.Count < 2) problems.Add(new(RosterProblems.NoRows, new()));
        var names = file.Lines.Count == 0 ? [] : file.Lines[0].Cells.Select(cell => FormValues.ReadLine(cell).ToLowerInvariant()).ToList();
        foreach (var missing in Columns.Where(column => !names.Contains(column)))
        {
            problems.Add(new(PanelFileProblems.ColumnMissing, new(Line: 1), missing));
        }

        if (problems.Count > 0) return [];
        var seen = new Dictionary<(Guid, string), int>();
        var rows = new List<RatingRow>();
        foreach (var line in file.Lines.Skip(1))
        {
            if (ReadRow(line, names, panel, round, problems) is not { } row) continue;
            if (seen.TryAdd((row.JudgeId, row.ItemId), line.Line)) rows.Add(row);
            else problems.Add(new(PanelFileProblems.RowTwice, new(Line: line.Line), Plain(seen[(row.JudgeId, row.ItemId)])));
        }

        return problems.Count > 0 ? [] : rows;
    }

    /// <summary>A percent as people type it: digits alone, 0 to 100; null for anything else, NaN and decimals included.</summary>
    public static int? ReadPercent(string? typed) =>
        int.TryParse(typed?.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var percent) && percent <= 100 ? percent : null;

    /// <summary>Everything that judges said, round by round, as the file that can be sent back names it.</summary>
    public static byte[] Write(PanelFile panel) => SpreadsheetFile.Write(
    [
        [.. Columns],
        .. from judge in panel.Judges
           from round in Enumerable.Range(1, PanelFile.Rounds)
           from item in panel.Panel.ItemIds
           where panel.Said(judge.Id, round).ContainsKey(item)
           select new string?[] { Plain(judge.Number), item, Plain(round), Plain(panel.Said(judge.Id, round)[item]) },
    ]);

    private static RatingRow? ReadRow(CsvLine line, List<string> names, PanelFile panel, int round, ICollection<Problem> problems)
    {
        var before = problems.Count;
        string Cell(string column) => names.IndexOf(column) is var place && place < line.Cells.Count
            ? FormValues.ReadLine(SpreadsheetCell.Read(line.Cells[place])) : "";
        void Report(string column, string code, params IReadOnlyList<string> arguments) =>
            problems.Add(new(code, new(Line: line.Line, Part: column), arguments));

        var (number, item, percent) = (Cell("judge"), Cell("question"), Cell("percent"));
        var judge = panel.Judges.FirstOrDefault(judge => Plain(judge.Number) == number);
        if (judge is null) Report("judge", PanelFileProblems.JudgeUnknown, number);
        if (!panel.Panel.ItemIds.Contains(item, StringComparer.Ordinal)) Report("question", PanelFileProblems.ItemUnknown, item);
        if (Cell("round") != Plain(round)) Report("round", PanelFileProblems.RoundNotOpen, Cell("round"), Plain(round));
        if (ReadPercent(percent) is not { } value)
        {
            Report("percent", PanelFileProblems.PercentForm, percent);
            return null;
        }

        return problems.Count == before && judge is not null ? new(judge.Id, item, value) : null;
    }

    private static string Plain(int number) => number.ToString(CultureInfo.InvariantCulture);
}

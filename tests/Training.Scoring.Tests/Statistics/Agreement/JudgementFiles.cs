namespace Training.Scoring.Tests;

/// <summary>A value that the library must give; what the columns mean: Data/agreement-cut.README.md.</summary>
internal sealed record ExpectedFigure(string Name, string Value, double Tolerance, string Source)
{
    public void Assert(double computed)
    {
        if (Tolerance == 0) Xunit.Assert.Equal(Value, computed.ToString());
        else Xunit.Assert.InRange(computed, double.Parse(Value) - Tolerance, double.Parse(Value) + Tolerance);
    }
}

/// <summary>Reads the data that agreement and cut scores are tested on.</summary>
internal static class JudgementFiles
{
    public static IReadOnlyList<ExpectedFigure> Expected(string file) =>
    [
        .. Lines(file).Skip(1)
            .Select(line => line.Split(',', 4))
            .Select(cells => new ExpectedFigure(cells[0], cells[1], double.Parse(cells[2]), cells[3])),
    ];

    /// <summary>Everything below the heading, by rows and columns; an empty cell is an empty text.</summary>
    public static string[][] Rows(string file) => [.. Lines(file).Skip(1).Select(line => line.Split(','))];

    public static double[][] Numbers(string file) => [.. Rows(file).Select(row => row.Select(double.Parse).ToArray())];

    public static int[][] Counts(string file) => [.. Rows(file).Select(row => row.Select(int.Parse).ToArray())];

    /// <summary>The columns of a file of raters by subjects: a row a subject, null where a cell is empty. Letters count from a = 1.</summary>
    public static double?[][] Subjects(string file)
    {
        var raters = Rows(file);
        return [.. Enumerable.Range(0, raters[0].Length).Select(subject => raters.Select(rater => Rating(rater[subject])).ToArray())];
    }

    private static double? Rating(string cell)
    {
        if (cell.Length == 0) return null;
        return char.IsLetter(cell[0]) ? cell[0] - 'a' + 1 : double.Parse(cell);
    }

    private static IEnumerable<string> Lines(string file) => File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Data", file));
}

using System.Globalization;

namespace Training.Scoring.Tests;

/// <summary>The files of Data/Quizzes.</summary>
internal static class QuizData
{
    /// <summary>Rows of a file by the names in its first line.</summary>
    public static IReadOnlyList<IReadOnlyDictionary<string, string>> Rows(string file)
    {
        var lines = File.ReadAllLines(Path.Combine(Folder(), file));
        var names = lines[0].Split(',');
        return [.. lines.Skip(1).Select(Row)];

        Dictionary<string, string> Row(string line) =>
            names.Zip(line.Split(',')).ToDictionary(both => both.First, both => both.Second, StringComparer.Ordinal);
    }

    /// <summary>The expected values, in file order; the source may hold commas and is left out.</summary>
    public static IReadOnlyList<(string Name, string Value, double Tolerance)> Expected() =>
    [
        .. File.ReadLines(Path.Combine(Folder(), "expected.csv")).Skip(1)
            .Select(line => line.Split(',', 4))
            .Select(cells => (cells[0], cells[1], Number(cells[2]))),
    ];

    /// <summary>Score tables by the name that the expected values give them.</summary>
    public static IReadOnlyList<double[]> Table(string name) => name switch
    {
        "lsat6" => Lsat("section6"),
        "lsat7" => Lsat("section7"),
        "attitude" => [.. Rows("attitude-30x7.csv").Select(row => row.Values.Select(Number).ToArray())],
        _ => throw new ArgumentOutOfRangeException(nameof(name), name, "No such table."),
    };

    public static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    public static int Whole(string text) => int.Parse(text, CultureInfo.InvariantCulture);

    private static double[][] Lsat(string section) =>
    [
        .. from row in Rows("lsat.csv")
           let answers = new[] { "q1", "q2", "q3", "q4", "q5" }.Select(question => Number(row[question])).ToArray()
           from _ in Enumerable.Range(0, Whole(row[section]))
           select answers,
    ];

    private static string Folder()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            var data = Path.Combine(folder.FullName, "Data", "Quizzes");
            if (Directory.Exists(data)) return data;
        }

        throw new DirectoryNotFoundException("Data/Quizzes");
    }
}

using System.Diagnostics;
using System.Globalization;
using Training.Scoring;

namespace Training.Benchmarks;

/// <summary>One table of answers through our tallies and through R: reading and computing timed apart, every number compared.</summary>
internal static class AgainstR
{
    private const int Repeats = 5;

    // All numbers lie between −1 and 1: ten digits, far more than R's other order of summing takes.
    private const double Tolerance = 1e-10;

    public static int Run(int people)
    {
        if (!HasR()) return Fail("R with the package psych is needed: apt-get install r-base-core r-cran-psych");
        var folder = Directory.CreateTempSubdirectory("training-benchmark");
        try
        {
            var file = Path.Combine(folder.FullName, "answers.csv");
            Write(file, people);
            return Compare(file, people);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static int Compare(string file, int people)
    {
        var (reading, rows) = Timed(() => Read(file));
        var (computing, ours) = Timed(() => Compute(rows));
        var script = Path.Combine(AppContext.BaseDirectory, "statistics.R");
        if (Rscript(script, file, Repeats) is not { } lines) return Fail("R stopped; see above.");
        var theirs = lines.Select(line => line.Split(' ')).ToDictionary(line => line[0], line => Number(line[1]));

        Print($"{people:N0} people, {ModelAnswers.Questions} questions; seconds, median of {Repeats}");
        Print("reading the file       ", reading, theirs["time.read"]);
        Print("computing, psych::alpha", computing, theirs["time.psych"]);
        Print("computing, base R      ", computing, theirs["time.base"]);
        Print($"Here: difficulty, both correlations, D, alpha, KR-20, alpha without each question.");
        Print($"psych::alpha: these without D, and more of its own. base R: difficulty, corrected correlation, D, alpha.");

        var worst = ours.Max(pair => Math.Abs(pair.Value - theirs[pair.Key]));
        var isSame = worst <= Tolerance;
        var verdict = isSame ? "the same" : "NOT THE SAME";
        Print($"{ours.Count} numbers compared, greatest difference {worst:E1}, allowed {Tolerance:E0}: {verdict}");
        return isSame ? 0 : 1;
    }

    private static Dictionary<string, double> Compute(IReadOnlyList<double[]> rows)
    {
        var scores = new ScoreTally(ModelAnswers.Questions);
        var groups = new UpperLowerTally(ModelAnswers.Questions);
        foreach (var row in rows)
        {
            scores.Add(row);
            groups.Add(row);
        }

        var numbers = new Dictionary<string, double>(StringComparer.Ordinal)
        {
            ["alpha.psych"] = scores.Alpha.Value(),
            ["alpha.base"] = scores.Kr20.Value(),
        };
        for (var question = 0; question < ModelAnswers.Questions; question++)
        {
            var item = scores.Item(question);
            numbers[$"p.{question}"] = item.Difficulty.Value();
            numbers[$"r.rest.{question}"] = item.RestCorrelation.Value();
            numbers[$"r.total.{question}"] = item.TotalCorrelation.Value();
            numbers[$"alpha.drop.{question}"] = item.AlphaIfDropped.Value();
            numbers[$"d.{question}"] = groups.Index(question).Value();
        }

        return numbers;
    }

    private static void Write(string file, int people)
    {
        using var writer = new StreamWriter(file);
        writer.WriteLine(string.Join(',', Enumerable.Range(0, ModelAnswers.Questions).Select(question => $"q{question}")));
        ModelAnswers.ForEach(people, row => writer.WriteLine(string.Join(',', row)));
    }

    private static List<double[]> Read(string file) =>
        [.. File.ReadLines(file).Skip(1).Select(line => Array.ConvertAll(line.Split(','), Number))];

    private static (double Seconds, T Result) Timed<T>(Func<T> work)
    {
        var result = work();
        var seconds = new double[Repeats];
        for (var turn = 0; turn < Repeats; turn++)
        {
            var clock = Stopwatch.StartNew();
            result = work();
            seconds[turn] = clock.Elapsed.TotalSeconds;
        }

        Array.Sort(seconds);
        return (seconds[Repeats / 2], result);
    }

    private static bool HasR()
    {
        try
        {
            return Rscript("-e", "invisible(loadNamespace('psych'))") is not null;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return false;
        }
    }

    /// <summary>The lines that R printed, or null where it failed.</summary>
    private static string[]? Rscript(params object[] arguments)
    {
        var start = new ProcessStartInfo("Rscript", arguments.Select(argument => $"{argument}"))
        {
            RedirectStandardOutput = true,
            UseShellExecute = false,
        };
        using var r = Process.Start(start) ?? throw new InvalidOperationException("Rscript did not start.");
        var lines = r.StandardOutput.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries);
        r.WaitForExit();
        return r.ExitCode == 0 ? lines : null;
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static void Print(string what, double here, double r) =>
        Print($"{what} here {here:F4}   R {r:F4}   R takes {r / here:F1} times as long");

    private static void Print(FormattableString line) => Console.WriteLine(line.ToString(CultureInfo.InvariantCulture));

    private static int Fail(string line)
    {
        Console.Error.WriteLine(line);
        return 2;
    }
}

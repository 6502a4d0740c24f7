using System.Diagnostics;
using System.Globalization;
using Training.Scoring;

namespace Training.Benchmarks;

/// <summary>Sends answers through every tally of questions, and prints how long it took and how much memory the process ever held.</summary>
internal static class AnswerStream
{
    public static int Run(IReadOnlyList<long> steps)
    {
        Console.WriteLine("     answers   seconds   million/s   peak working set");
        foreach (var answers in steps.Order())
        {
            var people = answers / ModelAnswers.Questions;
            var clock = Stopwatch.StartNew();
            var alpha = Tally(people);
            var seconds = clock.Elapsed.TotalSeconds;
            using var process = Process.GetCurrentProcess();
            var (speed, peak) = (answers / seconds / 1e6, process.PeakWorkingSet64 / 1048576.0);
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture, $"{answers,12:N0} {seconds,9:F2} {speed,11:F1} {peak,14:F1} MiB   (alpha {alpha:F6})"));
        }

        return 0;
    }

    private static double Tally(long people)
    {
        var scores = new ScoreTally(ModelAnswers.Questions);
        var groups = new UpperLowerTally(ModelAnswers.Questions);
        var drawn = new DrawnTally();
        var ids = Enumerable.Range(0, ModelAnswers.Questions).Select(question => $"question-{question:D2}").ToArray();
        var asked = new DrawnScore[ModelAnswers.Questions];
        ModelAnswers.ForEach(people, row =>
        {
            scores.Add(row);
            groups.Add(row);
            for (var question = 0; question < row.Length; question++) asked[question] = new(ids[question], row[question] > 0);
            drawn.Add(asked);
        });

        var (right, total) = (drawn.Results().Sum(result => result.Right), Math.Round(scores.TotalMean.Value() * scores.People));
        return right == total ? scores.Alpha.Value() : throw new InvalidOperationException("The tallies counted different answers.");
    }
}

using Training.Scoring;

namespace Training.Benchmarks;

/// <summary>Answers of people to 50 questions from a known model, person by person; nothing is kept.</summary>
/// <remarks>
/// As in tests/Training.Scoring.Tests/Data/Quizzes/README.md, with 50 questions: SplitMix64 with seed 42, b = −2.375 + 4.75·j/49,
/// a = 0.6, 1.0, 1.6 in turn, θ = ln((i+½)/(n−i−½))/1.7; right if u &lt; 1/(1+exp(−a(θ−b))).
/// </remarks>
internal static class ModelAnswers
{
    public const int Questions = 50;

    private static readonly double[] Slopes = [0.6, 1.0, 1.6];

    /// <summary>Calls <paramref name="keep"/> once for each person, with 1 for right and 0 for wrong; the row is used again for the next.</summary>
    public static void ForEach(long people, Action<double[]> keep)
    {
        var random = new SplitMix64(42);
        var row = new double[Questions];
        for (var person = 0L; person < people; person++)
        {
            var ability = Math.Log((person + 0.5) / (people - person - 0.5)) / 1.7;
            for (var question = 0; question < Questions; question++)
            {
                var logit = Slopes[question % Slopes.Length] * (ability + 2.375 - (4.75 * question / (Questions - 1)));
                var drawn = (random.NextUInt64() >> 11) * Math.Pow(2, -53);
                row[question] = drawn < 1 / (1 + Math.Exp(-logit)) ? 1 : 0;
            }

            keep(row);
        }
    }
}

namespace Training.Scoring.Tests;

/// <summary>What the library computes for the rows <c>chance.*</c> of the expected values.</summary>
internal static class ChanceValues
{
    public static IEnumerable<(string Name, object Value)> All() =>
    [
        .. QuizData.Rows("guessing.csv").Select(row => ($"chance.guess.{row["id"]}", (object)Guess(row))),
        .. QuizData.Rows("coverage.csv").Select(row => ($"chance.coverage.{row["id"]}", (object)Coverage(row))),
        .. QuizData.Rows("overlap.csv").Select(row => ($"chance.overlap.{row["id"]}", (object)Overlap(row))),
        .. QuizData.Rows("overlap.csv").Select(row => ($"chance.overlap.{row["id"]}.expected_common_items", (object)DrawChances
            .ExpectedOverlap(QuizData.Whole(row["bank"]), QuizData.Whole(row["form_a"]), QuizData.Whole(row["form_b"])).Known())),
        .. QuizData.Rows("birthday.csv").Select(row => ($"chance.birthday.{row["id"]}", (object)Birthday(row))),
    ];

    public static double Guess(IReadOnlyDictionary<string, string> row)
    {
        // "2x10;4x5" is ten questions with two options and five with four.
        var guessed = row["options"].Split(';')
            .Select(group => group.Split('x'))
            .Select(both => new GuessedItems(QuizData.Whole(both[0]), QuizData.Whole(both[1])));
        var chance = Guessing.ChanceToPass([.. guessed], QuizData.Whole(row["known"]), QuizData.Whole(row["pass_mark"]));
        return Guessing.InTries(chance, QuizData.Whole(row["attempts"]));
    }

    public static double Coverage(IReadOnlyDictionary<string, string> row) =>
        DrawChances.EveryTopic([.. row["topic_sizes"].Split(';').Select(QuizData.Whole)], QuizData.Whole(row["draw"])).Known();

    public static double Overlap(IReadOnlyDictionary<string, string> row) => DrawChances
        .Overlap(QuizData.Whole(row["bank"]), QuizData.Whole(row["form_a"]), QuizData.Whole(row["form_b"]), QuizData.Whole(row["at_least"])).Known();

    public static double Birthday(IReadOnlyDictionary<string, string> row) =>
        DrawChances.SameVersion(QuizData.Whole(row["versions"]), QuizData.Whole(row["people"]));
}

using CsCheck;
using Training.Courses;

namespace Training.Scoring.Tests;

/// <summary>What stored sittings say about a quiz. The figures themselves are checked where they are computed; here, that the right ones are taken.</summary>
public sealed class QuizTallyTests
{
    private static readonly DateTimeOffset Start = new(2026, 3, 2, 15, 0, 0, TimeSpan.Zero);
    private static readonly string[] Items = ["q1", "q2", "q3", "q4", "q5"];

    private static readonly IReadOnlyList<Question> Pool = [.. Items.Select(id => TestCourse.Question(id, new QuestionKey.One("a"), ["a", "b", "c"]))];

    private static readonly Quiz Quiz = new("quiz", 60, null, [new("meeting", 5, 0, 0)]);

    [Fact]
    public void Where_all_saw_the_same_questions_the_published_table_comes_out()
    {
        // LSAT, section 6: Bock and Lieberman 1970, 1,000 people and five questions. KR-20 and item-rest correlations: R, psych 2.2.9, as in
        // Data/Quizzes/expected.csv.
        var tally = new QuizTally(Quiz, Pool);
        foreach (var row in QuizData.Table("lsat6")) tally.Add(Sitting([.. row.Select(score => score == 1)]));

        var analysis = tally.Analyse();

        Assert.Equal((1000L, FormDesign.Same), (analysis.Sittings, analysis.Precision.Design));
        Assert.Equal(0.2949971922, analysis.Precision.Reliability.Known(), 1e-9);
        var first = analysis.Questions.Single(question => question.QuestionId == "q1");
        Assert.Equal(0.924, first.Difficulty.Known(), 1e-12);
        Assert.Equal(0.112832688922, first.Discrimination.Known(), 1e-9);
    }

    [Fact]
    public void Where_everybody_saw_a_draw_of_their_own_the_nested_design_is_taken()
    {
        var tally = new QuizTally(Quiz with { Blueprint = [new("meeting", 3, 0, 0)] }, Pool);
        var nested = new NestedTally();
        foreach (var (row, first) in QuizData.Table("lsat6").Select((row, place) => (row.Select(score => score == 1).ToList(), place % 3)))
        {
            var sitting = Sitting(row);
            tally.Add(sitting with { Questions = [.. sitting.Questions.Skip(first).Take(3)] });
            nested.Add(3, row.Skip(first).Take(3).Count(isRight => isRight));
        }

        var precision = tally.Analyse().Precision;

        Assert.Equal(FormDesign.Drawn, precision.Design);
        precision.Reliability.IsSameAs(nested.Components.Known().Generalisability(3));
        precision.AtTheCut.IsSameAs(nested.Components.Known().PhiAt(3, 0.6));
        Assert.Equal(3 * nested.Components.Known().StandardError(3), precision.StandardError.Known(), 1e-12);
    }

    [Fact]
    public void Order_of_sittings_and_of_questions_within_them_changes_nothing() => Gen.Select(Gen.Bool.Array[5].Array[3, 30], Gen.ULong).Sample((rows, seed) =>
    {
        var random = new SplitMix64(seed);
        var sittings = rows.Select(row => Sitting(row)).ToArray();
        var (before, after) = (new QuizTally(Quiz, Pool), new QuizTally(Quiz, Pool));
        foreach (var sitting in sittings) before.Add(sitting);
        random.Shuffle<AnsweredSitting>(sittings);
        foreach (var sitting in sittings)
        {
            var questions = sitting.Questions.ToArray();
            random.Shuffle<AnsweredQuestion>(questions);
            after.Add(sitting with { Questions = questions });
        }

        var (one, other) = (before.Analyse(), after.Analyse());
        Assert.Equal((one.Sittings, one.Passed, one.ReachedCut), (other.Sittings, other.Passed, other.ReachedCut));
        one.Precision.Reliability.IsSameAs(other.Precision.Reliability);
        one.Precision.AtTheCut.IsSameAs(other.Precision.AtTheCut);
        foreach (var (question, same) in one.Questions.Zip(other.Questions))
        {
            Assert.Equal((question.QuestionId, question.Asked, question.Right), (same.QuestionId, same.Asked, same.Right));
            question.Discrimination.IsSameAs(same.Discrimination);
            question.UpperLower.IsSameAs(same.UpperLower);
            Assert.Equal(question.Choices.Select(choice => choice.Chosen), same.Choices.Select(choice => choice.Chosen));
        }
    });

    [Fact]
    public void A_wrong_key_shows_as_an_answer_that_most_strong_candidates_choose()
    {
        var tally = new QuizTally(Quiz, Pool);
        // Who has the other four right chooses b where the key says a; who has them wrong ticks the key.
        for (var person = 0; person < 60; person++)
        {
            var isStrong = person % 2 == 0;
            var sitting = Sitting([.. Items.Select(id => id == "q3" ? !isStrong : isStrong)]);
            tally.Add(sitting);
        }

        var analysed = tally.Analyse().Questions.Single(question => question.QuestionId == "q3");

        Assert.Contains(new QuestionFlag.OfFigures(ItemFlag.Negative), analysed.Flags);
        Assert.Contains(new QuestionFlag.StrongChoose("b", 1), analysed.Flags);
    }

    [Fact]
    public void Few_answers_are_called_few_and_nothing_else()
    {
        var tally = new QuizTally(Quiz, Pool);
        for (var person = 0; person < 29; person++) tally.Add(Sitting([person % 2 == 0, true, false, person % 3 == 0, true]));

        Assert.All(tally.Analyse().Questions, question => Assert.Equal([new QuestionFlag.OfFigures(ItemFlag.TooFew)], question.Flags));
    }

    [Fact]
    public void Two_texts_of_a_question_are_counted_apart()
    {
        var tally = new QuizTally(Quiz, Pool);
        tally.Add(Sitting([true, true, true, true, true]));
        var later = Sitting([false, true, true, true, true]);
        tally.Add(later with { Questions = [later.Questions[0] with { Version = "later" }, .. later.Questions.Skip(1)] });

        var both = tally.Analyse().Questions.Where(question => question.QuestionId == "q1");

        Assert.Equal([("later", 0L), ("version-of-q1", 1L)], both.Select(question => (question.Version, question.Right)));
    }

    [Fact]
    public void Time_runs_from_the_answer_kept_before_whatever_the_order_of_the_questions()
    {
        AnsweredQuestion Kept(string id, int? second) =>
            new(id, $"version-of-{id}", second is null ? Mark.Blank : Mark.Right, ["a"], Language.English, second is { } at ? Start.AddSeconds(at) : null);
        var sitting = new AnsweredSitting(Start, false, [Kept("q1", 50), Kept("q2", 20), Kept("q3", null)]);

        Assert.Equal([TimeSpan.FromSeconds(30), TimeSpan.FromSeconds(20), null], sitting.Times());
    }

    [Fact]
    public void Languages_are_counted_apart_by_the_one_most_of_a_sitting_was_answered_in()
    {
        var tally = new QuizTally(Quiz, Pool);
        tally.Add(Sitting([true, true, true, true, true], Language.Spanish));
        var mixed = Sitting([false, false, false, true, true]);
        tally.Add(mixed with { Questions = [mixed.Questions[0] with { Language = Language.Spanish }, .. mixed.Questions.Skip(1)] });

        Assert.Equal([new LanguageShare(Language.English, 1, 0), new LanguageShare(Language.Spanish, 1, 1)], tally.Analyse().Languages);
    }

    [Fact]
    public void Nobody_and_one_person_give_reasons_and_no_numbers()
    {
        var tally = new QuizTally(Quiz, Pool);
        tally.Analyse().Precision.Reliability.IsUnknown(Obstacle.NoAnswers);
        Assert.Empty(tally.Analyse().Questions);

        tally.Add(Sitting([true, false, true, false, true]));

        var analysis = tally.Analyse();
        analysis.Precision.Reliability.IsUnknown(Obstacle.TooFewPeople);
        analysis.NearTheCut.IsUnknown(Obstacle.TooFewPeople);
        Assert.All(analysis.Questions, question => question.Discrimination.IsUnknown(Obstacle.TooFewPeople));
    }

    [Fact]
    public void Points_alone_and_a_pass_are_counted_apart()
    {
        var tally = new QuizTally(Quiz, Pool);
        tally.Add(Sitting([true, true, true, true, true]) with { IsPassed = false });

        var analysis = tally.Analyse();

        Assert.Equal((1L, 0L, 1L, 3), (analysis.Sittings, analysis.Passed, analysis.ReachedCut, analysis.PassMark));
    }

    private static AnsweredSitting Sitting(IReadOnlyList<bool> right, Language language = Language.English) => new(
        Start,
        right.Count(isRight => isRight) >= 3,
        [.. right.Select((isRight, place) => new AnsweredQuestion(
            Items[place], $"version-of-{Items[place]}", isRight ? Mark.Right : Mark.Wrong, [isRight ? "a" : "b"], language, Start.AddSeconds(30 * (place + 1))))]);
}

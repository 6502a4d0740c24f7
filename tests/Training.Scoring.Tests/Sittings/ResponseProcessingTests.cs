using CsCheck;
using Training.Courses;

namespace Training.Scoring.Tests.Sittings;

/// <summary>
/// Our marking against a second implementation, written from QTI 3.0's response processing: the <c>match_correct</c> template compares the
/// response with the correct response by base type and cardinality (single and ordered: same values in the same places; multiple: same values
/// whatever the order, each as often); <c>equal</c> with toleranceMode absolute holds where correct − t0 ≤ response ≤ correct + t1.
/// Source: 1EdTech, Question and Test Interoperability 3.0, Assessment, Section and Item information model (match, equal).
/// </summary>
public sealed class ResponseProcessingTests
{
    private static readonly Gen<string> Option = Gen.Int[0, 3].Select(place => "abcd"[place].ToString());

    private static readonly Gen<string[]> Options = Gen.Shuffle((string[])["a", "b", "c", "d"], 1, 4);

    // Tenths from -50 to 50, so that answers land on both edges of a tolerance often.
    private static readonly Gen<decimal> Tenths = Gen.Int[-500, 500].Select(tenths => tenths / 10m);

    [Fact]
    public void One_answer_is_match_correct_of_single_cardinality() => Gen.Select(Option, Option).Sample(
        (key, answer) => SittingGrader.IsRight(new QuestionKey.One(key), Given([answer])) == MatchOrdered([key], [answer]),
        iter: 5_000);

    [Fact]
    public void Several_answers_are_match_correct_of_multiple_cardinality() => Gen.Select(Options, Options).Sample(
        (key, answer) => SittingGrader.IsRight(new QuestionKey.Several(key), Given(answer)) == MatchMultiple(key, answer),
        iter: 10_000);

    [Fact]
    public void Ordered_steps_are_match_correct_of_ordered_cardinality() => Gen.Select(Options, Options).Sample(
        (key, answer) => SittingGrader.IsRight(new QuestionKey.Order(key), Given(answer)) == MatchOrdered(key, answer),
        iter: 10_000);

    [Fact]
    public void A_number_is_equal_with_absolute_tolerance() => Gen.Select(Tenths, Gen.Int[0, 30], Tenths).Sample(
        (key, tolerance, answer) => SittingGrader.IsRight(new QuestionKey.Number(key, tolerance / 10m, "cm"), Given([], answer))
            == EqualAbsolute(key, tolerance / 10m, tolerance / 10m, answer),
        iter: 20_000);

    private static bool MatchOrdered(string[] correct, string[] response)
    {
        if (correct.Length != response.Length) return false;
        for (var place = 0; place < correct.Length; place++)
        {
            if (!string.Equals(correct[place], response[place], StringComparison.Ordinal)) return false;
        }

        return true;
    }

    private static bool MatchMultiple(string[] correct, string[] response)
    {
        var left = new List<string>(correct);
        return response.All(left.Remove) && left.Count == 0;
    }

    private static bool EqualAbsolute(decimal correct, decimal t0, decimal t1, decimal response) =>
        !(response < correct - t0) && !(response > correct + t1);

    private static Answer Given(string[] options, decimal? number = null) =>
        new("question", options, number, Language.Spanish, TestCourse.Start);
}

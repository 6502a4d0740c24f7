using Training.Courses;

namespace Training.Scoring;

/// <summary>The whole pool of a course once through, in an order that a seed stands for. Nothing of it is kept, so it is no draw.</summary>
public static class PracticeRound
{
    /// <summary>Every question once, each with its options in the order to show; steps to order never show their key.</summary>
    /// <param name="course">A checked course.</param>
    /// <param name="seed">Whatever; the same one goes on with the same round.</param>
    public static IReadOnlyList<DrawnQuestion> From(Course course, ulong seed)
    {
        var random = new SplitMix64(seed);
        var order = course.Questions.ToArray();
        random.Shuffle<Question>(order);
        return [.. order.Select(question => new DrawnQuestion(question.Id, question.Version, QuizDraw.ShuffleOptions(question, random)))];
    }
}

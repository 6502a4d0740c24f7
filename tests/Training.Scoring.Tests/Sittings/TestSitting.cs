using System.Diagnostics;
using Training.Courses;

namespace Training.Scoring.Tests;

/// <summary>How somebody answers a question in a test.</summary>
public enum Behaviour
{
    Right,
    Wrong,
    Blank,
    Late,
}

/// <summary>Invented sittings of invented courses.</summary>
internal static class TestSitting
{
    public static readonly DateTimeOffset Start = new(2026, 3, 2, 15, 0, 0, TimeSpan.Zero);

    /// <summary>Every drawn question answered right, a minute after the start.</summary>
    public static Sitting AllRight(Course course, ulong seed = 1) => Of(course, seed, _ => Behaviour.Right);

    /// <summary>Late answers come 31 minutes after the start, all others after one; submitted after an hour.</summary>
    public static Sitting Of(Course course, ulong seed, Func<Question, Behaviour> behaviour)
    {
        var draw = QuizDraw.From(course, seed);
        var answers = draw.Questions
            .Select(drawn => course.Questions.Single(question => question.Id == drawn.QuestionId))
            .Where(question => behaviour(question) is not Behaviour.Blank)
            .Select(question => behaviour(question) switch
            {
                Behaviour.Wrong => Wrong(question),
                Behaviour.Late => Right(question) with { SavedAt = Start.AddMinutes(31) },
                _ => Right(question),
            });
        return new(Guid.NewGuid(), Guid.NewGuid(), draw, Start, Start.AddMinutes(60), answers.ToList());
    }

    public static Answer Right(Question question) => question.Key switch
    {
        QuestionKey.One one => Options(question, one.OptionId),
        QuestionKey.Several several => Options(question, [.. several.OptionIds.Reverse()]),
        QuestionKey.Order order => Options(question, [.. order.OptionIds]),
        QuestionKey.Number number => Number(question, number.Value),
        QuestionKey.Match match => Options(question, [.. match.Pairs.Reverse().Select(pair => pair.ToString())]),
        QuestionKey.Spot spot => Options(question, spot.RegionId),
        _ => throw new UnreachableException(),
    };

    public static Answer Wrong(Question question) => question.Key switch
    {
        QuestionKey.One one => Options(question, question.OptionIds.First(option => option != one.OptionId)),
        QuestionKey.Several several => Options(question, several.OptionIds[0]),
        QuestionKey.Order order => Options(question, [.. order.OptionIds.Reverse()]),
        QuestionKey.Number number => Number(question, number.Value + number.Tolerance + 0.01m),
        QuestionKey.Match match => Options(question, [.. question.OptionIds.Zip(match.MatchIds, (option, one) => new MatchPair(option, one).ToString())]),
        QuestionKey.Spot spot => Options(question, question.OptionIds.First(option => option != spot.RegionId)),
        _ => throw new UnreachableException(),
    };

    public static Answer Options(Question question, params string[] options) =>
        new(question.Id, options, null, Language.English, Start.AddMinutes(1));

    public static Answer Number(Question question, decimal number) => new(question.Id, [], number, Language.English, Start.AddMinutes(1));

    /// <summary>Grades what must be possible.</summary>
    public static SittingResult Grade(Course course, Sitting sitting)
    {
        var problems = new List<Problem>();
        var result = SittingGrader.Grade(course, sitting, problems);
        Assert.Empty(problems);
        Assert.NotNull(result);
        return result;
    }

    /// <summary>The codes and places, as <c>code @ part</c>, of what must be impossible.</summary>
    public static IReadOnlyList<string> Refusals(Course course, Sitting sitting)
    {
        var problems = new List<Problem>();
        Assert.Null(SittingGrader.Grade(course, sitting, problems));
        return [.. problems.Select(problem => $"{problem.Code} @ {problem.Place.Part}")];
    }
}

using Training.Courses;

namespace Training.Scoring;

/// <summary>What is kept about one text of a question while sittings go by; its size does not grow with them.</summary>
internal sealed class QuestionTally(string id, string version, Question? question)
{
    private const int RightSum = 0;
    private readonly ScoreBands _bands = new(counted: 1);
    private readonly OptionTally _choices = new(question is null ? [] : ChoiceFlags.Countable(question));
    private readonly TimeTally _times = new();
    private readonly SortedDictionary<Language, (long All, long Right)> _languages = [];
    private long _unanswered;

    /// <summary>Under which <see cref="DrawnTally"/> counts it.</summary>
    public string Key { get; } = $"{id} {version}";

    public void Add(in AnsweredQuestion answer, double shareRightOfOthers, TimeSpan? took)
    {
        var isRight = answer.Mark is Mark.Right;
        _bands.Add(shareRightOfOthers)[RightSum] += isRight ? 1 : 0;
        _choices.Add(shareRightOfOthers, answer.OptionIds);
        if (answer.Mark is Mark.Blank or Mark.Late) _unanswered++;
        if (took is { } time) _times.Add(time);
        if (answer.Language is not { } language) return;
        var (all, right) = _languages.GetValueOrDefault(language);
        _languages[language] = (all + 1, right + (isRight ? 1 : 0));
    }

    public QuestionAnalysis Analyse(DrawnResult drawn, IReadOnlyList<Stratum> strata)
    {
        var choices = _choices.Choices();
        var odds = CommonOdds.Of(strata);
        IReadOnlyList<LanguageShare> languages = [.. _languages.Select(one => new LanguageShare(one.Key, one.Value.All, one.Value.Right))];
        return new(
            id,
            version,
            drawn.Asked,
            drawn.Right,
            _unanswered,
            drawn.Difficulty,
            ShareInterval.Wilson(drawn.Right, drawn.Asked, 0.95),
            drawn.Discrimination,
            UpperLower(),
            drawn.Exposure,
            _times.Median,
            choices,
            languages,
            odds,
            [
                .. ItemFlags.Of(drawn.Asked, drawn.Right, drawn.Discrimination).Select(flag => new QuestionFlag.OfFigures(flag)),
                .. LanguageFlags.Of(languages, odds),
                .. question is null ? [] : ChoiceFlags.Of(question, drawn.Asked, choices),
            ]);
    }

    // As UpperLowerTally does for a complete table, by the other questions instead of the total.
    private Estimate<double> UpperLower()
    {
        var group = UpperLowerTally.SizeOf(_bands.People);
        if (_bands.People == 0) return Obstacle.NoAnswers;
        if (group == 0) return Obstacle.TooFewPeople;
        if (!_bands.Varies) return Obstacle.NoTotalVariance;
        return (_bands.UpperSums(group)[RightSum] - _bands.LowerSums(group)[RightSum]) / group;
    }
}

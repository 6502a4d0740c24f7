using System.Diagnostics;
using System.Globalization;
using Training.Courses;
using Training.Scoring;

namespace Training.Web.Features.Sittings;

/// <summary>Why what was posted cannot be kept as an answer.</summary>
public enum AnswerFault
{
    /// <summary>Some steps have a number, some have none.</summary>
    StepsWithoutNumber,

    /// <summary>Two steps have the same number.</summary>
    StepsWithOneNumber,

    /// <summary>Some options have a match, some have none.</summary>
    OptionsWithoutMatch,

    /// <summary>Two options have the same match.</summary>
    OptionsWithOneMatch,

    /// <summary>No number can be read.</summary>
    NoNumber,

    /// <summary>A comma before three digits: thousands for some, decimals for others.</summary>
    NumberOfTwoMeanings,

    /// <summary>Something that the question does not offer.</summary>
    NotOffered,
}

/// <summary>An answer as a page posts it, whatever the type of the question.</summary>
public sealed class AnswerForm
{
    // Longer than any number that means something, and short enough to show again.
    private const int MostCharacters = 30;

    /// <summary>Chosen options: at most one for one answer and for a spot, any for several. A list that the binder can fill: it passes by an empty array.</summary>
    public List<string> Chosen { get; init; } = [];

    /// <summary>For steps: the number of each by its option id; empty where none was given.</summary>
    public Dictionary<string, string?> Place { get; init; } = [];

    /// <summary>For pairs: the match of each option by its id; empty where none was chosen.</summary>
    public Dictionary<string, string?> Match { get; init; } = [];

    /// <summary>A number as typed.</summary>
    public string? Typed { get; init; }

    /// <summary>When the answer that the page showed had been saved, Unix milliseconds; null where it showed none.</summary>
    public long? Seen { get; init; }

    /// <summary>Where to go on: another question of the sitting by number, or the review.</summary>
    public string? Go { get; init; }

    /// <summary>The form as it would have posted a kept answer; an empty one for null.</summary>
    public static AnswerForm Of(Question question, Answer? kept) => kept is null ? new() : new()
    {
        Chosen = question.Key is QuestionKey.Order or QuestionKey.Match ? [] : [.. kept.OptionIds],
        Place = question.Key is QuestionKey.Order
            ? kept.OptionIds.Index().ToDictionary(step => step.Item, string? (step) => (step.Index + 1).ToString(CultureInfo.InvariantCulture), StringComparer.Ordinal)
            : [],
        Match = question.Key is QuestionKey.Match
            ? kept.OptionIds.Select(MatchPair.Find).OfType<MatchPair>().ToDictionary(pair => pair.OptionId, string? (pair) => pair.MatchId, StringComparer.Ordinal)
            : [],
        Typed = kept.Number?.ToString(CultureInfo.InvariantCulture),
        Seen = kept.SavedAt.ToUnixTimeMilliseconds(),
    };

    /// <summary>Reads the answer; <see cref="AnswerCheck"/> says whether the question can have it.</summary>
    /// <param name="question">The question that was shown.</param>
    /// <param name="language">The language of the page.</param>
    /// <param name="now">UTC.</param>
    public AnswerReading Read(Question question, Language language, DateTimeOffset now)
    {
        return question.Key switch
        {
            QuestionKey.One or QuestionKey.Several or QuestionKey.Spot => Chosen.Count == 0 ? AnswerReading.Empty : Given(Chosen, null),
            QuestionKey.Order => ReadOrder(Given),
            QuestionKey.Number number => ReadNumber(number.Unit, Given),
            QuestionKey.Match match => ReadPairs(match, Given),
            _ => throw new UnreachableException(),
        };

        AnswerReading Given(IReadOnlyList<string> optionIds, decimal? typed) => new(new(question.Id, optionIds, typed, language, now), null);
    }

    private AnswerReading ReadOrder(Func<IReadOnlyList<string>, decimal?, AnswerReading> given)
    {
        var placed = Place.Where(step => !string.IsNullOrWhiteSpace(step.Value)).ToList();
        if (placed.Count == 0) return AnswerReading.Empty;
        if (placed.Count < Place.Count) return AnswerReading.Refused(AnswerFault.StepsWithoutNumber);
        if (placed.DistinctBy(step => step.Value, StringComparer.Ordinal).Count() < placed.Count) return AnswerReading.Refused(AnswerFault.StepsWithOneNumber);
        var isNumbered = placed.All(step => int.TryParse(step.Value, CultureInfo.InvariantCulture, out var place) && place >= 1 && place <= placed.Count);
        return isNumbered
            ? given([.. placed.OrderBy(step => int.Parse(step.Value!, CultureInfo.InvariantCulture)).Select(step => step.Key)], null) // not null: placed
            : AnswerReading.Refused(AnswerFault.NotOffered);
    }

    private AnswerReading ReadPairs(QuestionKey.Match match, Func<IReadOnlyList<string>, decimal?, AnswerReading> given)
    {
        var matched = Match.Where(option => !string.IsNullOrWhiteSpace(option.Value)).ToDictionary(StringComparer.Ordinal);
        if (matched.Count == 0) return AnswerReading.Empty;
        // Options that the question does not have come last; they are told as what they are.
        var options = match.Pairs.Select(pair => pair.OptionId).Union(matched.Keys, StringComparer.Ordinal).ToList();
        if (options.Exists(option => !matched.ContainsKey(option))) return AnswerReading.Refused(AnswerFault.OptionsWithoutMatch);
        if (matched.Values.Distinct(StringComparer.Ordinal).Count() < matched.Count) return AnswerReading.Refused(AnswerFault.OptionsWithOneMatch);
        return given([.. options.Select(option => new MatchPair(option, matched[option]!).ToString())], null);
    }

    private AnswerReading ReadNumber(string unit, Func<IReadOnlyList<string>, decimal?, AnswerReading> given)
    {
        var typed = Typed?.Trim() ?? "";
        if (typed.Length == 0) return AnswerReading.Empty;
        if (typed.EndsWith(unit, StringComparison.OrdinalIgnoreCase)) typed = typed[..^unit.Length].TrimEnd();
        if (typed.Length > MostCharacters) return AnswerReading.Refused(AnswerFault.NoNumber);
        if (TypedNumber.HasTwoMeanings(typed)) return AnswerReading.Refused(AnswerFault.NumberOfTwoMeanings);
        return TypedNumber.Find(typed) is { } number ? given([], number) : AnswerReading.Refused(AnswerFault.NoNumber);
    }
}

/// <summary>What an <see cref="AnswerForm"/> says.</summary>
/// <param name="Answer">The answer, or null where nothing was given or it cannot be read.</param>
/// <param name="Fault">Why it cannot be read; null where it can, or nothing was given.</param>
public sealed record AnswerReading(Answer? Answer, AnswerFault? Fault)
{
    /// <summary>Nothing was given: a question may stay empty.</summary>
    public static AnswerReading Empty { get; } = new(null, null);

    /// <summary>It cannot be read.</summary>
    public static AnswerReading Refused(AnswerFault fault) => new(null, fault);
}

namespace Training.Courses;

/// <summary>How hard the author means a question to be; statistics later say how hard it is.</summary>
public enum Difficulty
{
    /// <summary>Nearly everybody who read the module answers it.</summary>
    Easy,

    /// <summary>Most who read with care answer it.</summary>
    Medium,

    /// <summary>It tells strong candidates apart.</summary>
    Hard,
}

/// <summary>One question of a course's pool: structure and key once, words per language.</summary>
/// <param name="Id">Unique within the course; lower-case letters, digits and hyphens.</param>
/// <param name="Topic">Id of a topic of the course.</param>
/// <param name="Objective">Id of an objective of the course.</param>
/// <param name="Difficulty">As intended by the author.</param>
/// <param name="IsCritical">True: missing it fails the quiz whatever the score.</param>
/// <param name="Passage">What to reread after a wrong answer.</param>
/// <param name="FactId">The fact it rests on, such as <c>F-AID-02</c>.</param>
/// <param name="GuidanceIds">Guidance entries that its key or words rest on; may be empty.</param>
/// <param name="OptionIds">Ids of the options in the author's order: what is matched, for pairs; the regions, for a spot; empty for a number.</param>
/// <param name="Key">What is right.</param>
/// <param name="Words">Stem, options and explanation; one entry for each language.</param>
/// <param name="Version">SHA-256 (lower-case hex) over structure, key, words and resolved guidance: the key version that a result names.</param>
public sealed record Question(
    string Id,
    string Topic,
    string Objective,
    Difficulty Difficulty,
    bool IsCritical,
    Passage Passage,
    string FactId,
    IReadOnlyList<string> GuidanceIds,
    IReadOnlyList<string> OptionIds,
    QuestionKey Key,
    IReadOnlyDictionary<Language, QuestionWords> Words,
    string Version)
{
    /// <summary>Snake groups and ids of species sheets that it is about; asked only where one of them lives. Empty: asked everywhere.</summary>
    public IReadOnlyList<string> Snakes { get; init; } = [];

    /// <summary>Languages whose words were drafted or translated by a machine, as the author marked them; whoever reviews the question sees it.</summary>
    public IReadOnlyList<Language> MachineMade { get; init; } = [];
}

/// <summary>What is right. A closed family: one case for each question type.</summary>
public abstract record QuestionKey
{
    private QuestionKey()
    {
    }

    /// <summary>One answer: exactly this option.</summary>
    public sealed record One(string OptionId) : QuestionKey;

    /// <summary>Several answers: exactly this set, all or nothing. At least one; order means nothing.</summary>
    public sealed record Several(IReadOnlyList<string> OptionIds) : QuestionKey;

    /// <summary>Order the steps: all options in exactly this order, all or nothing.</summary>
    public sealed record Order(IReadOnlyList<string> OptionIds) : QuestionKey;

    /// <summary>A number: right when |answer − value| ≤ tolerance (absolute, both ends included).</summary>
    /// <param name="Value">The value asked for.</param>
    /// <param name="Tolerance">Absolute, at least 0, in <paramref name="Unit"/>.</param>
    /// <param name="Unit">The unit shown beside the field, such as <c>cm</c>; not part of the answer.</param>
    public sealed record Number(decimal Value, decimal Tolerance, string Unit) : QuestionKey;

    /// <summary>Match pairs: every option with its match, all or nothing. No match is right for two options.</summary>
    /// <param name="MatchIds">What can be chosen, in the author's order; at least as many as options, and none has the id of an option.</param>
    /// <param name="Pairs">One for each option, in the author's order.</param>
    public sealed record Match(IReadOnlyList<string> MatchIds, IReadOnlyList<MatchPair> Pairs) : QuestionKey;

    /// <summary>Mark a spot: exactly this region of the figure.</summary>
    /// <param name="RegionId">The region asked for.</param>
    /// <param name="Figure">Path of the drawing within the course, such as <c>figures/tongs.svg</c>.</param>
    /// <param name="Regions">Where each option lies on it, in the author's order.</param>
    public sealed record Spot(string RegionId, string Figure, IReadOnlyList<SpotRegion> Regions) : QuestionKey;
}

/// <summary>One option and what it is matched to. Written <c>option=match</c>, which is how an answer names it.</summary>
/// <param name="OptionId">The option.</param>
/// <param name="MatchId">Its match.</param>
public sealed record MatchPair(string OptionId, string MatchId)
{
    /// <summary>The form it is kept in; no id holds an equals sign.</summary>
    public override string ToString() => $"{OptionId}={MatchId}";

    /// <summary>Reads <c>option=match</c>; null where it has another form. Whether a question has these ids is not asked here.</summary>
    public static MatchPair? Find(string text) => text.Split('=') is [{ Length: > 0 } option, { Length: > 0 } match] ? new(option, match) : null;
}

/// <summary>The words of one question in one language, as safe HTML and as plain text.</summary>
/// <param name="StemHtml">What is asked; without the figure that a spot is marked on.</param>
/// <param name="OptionHtml">Text of each option by its id; empty for a number.</param>
/// <param name="ExplanationHtml">Why; shown in practice, never after a certification quiz.</param>
public sealed record QuestionWords(string StemHtml, IReadOnlyDictionary<string, string> OptionHtml, string ExplanationHtml)
{
    /// <summary>What can be matched by its id, as plain text since a list to choose from shows no markup; empty for other types.</summary>
    public IReadOnlyDictionary<string, string> MatchText { get; init; } = new Dictionary<string, string>(StringComparer.Ordinal);

    /// <summary>The figure that a spot is marked on, named and described in this language; null for other types.</summary>
    public NumberedFigure? Figure { get; init; }
}

/// <summary>A section of a module: <c>module#section</c> in the files.</summary>
/// <param name="ModuleId">Id of the module.</param>
/// <param name="Section">Id of the heading.</param>
public sealed record Passage(string ModuleId, string Section)
{
    /// <summary>The form it is written in.</summary>
    public override string ToString() => $"{ModuleId}#{Section}";
}

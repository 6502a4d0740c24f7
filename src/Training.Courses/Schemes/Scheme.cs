namespace Training.Courses;

/// <summary>What a scheme leads to. The two are different things and papers say which (docs/rules.md, "Two kinds").</summary>
public enum SchemeKind
{
    /// <summary>Shows that a course was completed and its content tested; may be granted by rule.</summary>
    CertificateOfTraining,

    /// <summary>Shows competence assessed against a scheme; only a named programme lead decides.</summary>
    Certification,
}

/// <summary>Which hats must be worn by different people.</summary>
public enum Separation
{
    /// <summary>The scheme asks for none beyond "never about oneself". Certificates of training only.</summary>
    None,

    /// <summary>The decider neither taught nor scored; the scorer did not teach that person within two years. Every certification.</summary>
    TeachScoreDecide,
}

/// <summary>The rules of one certification (ISO/IEC 17024's word), as its course folder publishes them.</summary>
/// <param name="Id">Unique across all courses; the course has the same id.</param>
/// <param name="Kind">Certificate of training, or certification.</param>
/// <param name="EffectiveFrom">First day on which this text of the rules decides.</param>
/// <param name="ReviewBy">Day by which the scheme is to be reviewed again.</param>
/// <param name="Separation">Which hats must be different people.</param>
/// <param name="Terms">How long it holds and when it can be renewed.</param>
/// <param name="Remind">How long before the last day its holders are reminded, in the order of the folder; at least one.</param>
/// <param name="Grant">What the first certification asks; all of it.</param>
/// <param name="Renewal">What a renewal asks; all of it.</param>
/// <param name="Words">Title, scope, tasks and the rest; one entry for each language.</param>
public sealed record Scheme(
    string Id,
    SchemeKind Kind,
    DateOnly EffectiveFrom,
    DateOnly ReviewBy,
    Separation Separation,
    Terms Terms,
    IReadOnlyList<Duration> Remind,
    IReadOnlyList<Requirement> Grant,
    IReadOnlyList<Requirement> Renewal,
    IReadOnlyDictionary<Language, SchemeWords> Words)
{
    /// <summary>What those do who were certified by the rules before; null where these rules took over from none.</summary>
    public Transition? Transition { get; init; }
}

/// <summary>The calendar of a scheme; kept with each period, so that a later text of the rules changes no past one.</summary>
/// <param name="Validity">From the first day to the expiry date, which is the same calendar day so many months on; current through it.</param>
/// <param name="Window">How long before expiry a renewal may be decided.</param>
/// <param name="Grace">How long after expiry the renewal route stays open; grace is not current.</param>
public sealed record Terms(Duration Validity, Duration Window, Duration Grace);

/// <summary>One thing a decision needs. A closed family; a list of them is conjunctive, nothing trades against another.</summary>
public abstract record Requirement
{
    private Requirement()
    {
    }

    /// <summary>A passed sitting of a quiz.</summary>
    /// <param name="QuizId">Which quiz.</param>
    /// <param name="GreatestAge">The sitting lies on or after the day this long before the decision.</param>
    public sealed record PassedQuiz(string QuizId, Duration GreatestAge) : Requirement;

    /// <summary>A passed scoresheet.</summary>
    /// <param name="ChecklistId">Which checklist.</param>
    /// <param name="Subject">On what.</param>
    /// <param name="GreatestAge">The sheet lies on or after the day this long before the decision.</param>
    public sealed record PassedPractical(string ChecklistId, Subject Subject, Duration GreatestAge) : Requirement;

    /// <summary>
    /// Recency of practice: so many passed tries of a checklist on the model within a span, for a renewal. It has no subject to choose: practice is
    /// never counted with a live snake, and handling in the field never counts.
    /// </summary>
    /// <param name="ChecklistId">Which checklist.</param>
    /// <param name="Times">How many tries; at least 1, at most <see cref="MostPractice"/>.</param>
    /// <param name="Within">Each lies on or after the day this long before the decision; the renewal window does not bind them.</param>
    public sealed record Practised(string ChecklistId, int Times, Duration Within) : Requirement;

    /// <summary>Most tries that practice can be asked for.</summary>
    public const int MostPractice = 12;

    /// <summary>Another scheme is held and current (or renewal due) on the day of the decision.</summary>
    public sealed record Holds(string SchemeId) : Requirement;
}

/// <summary>The words of a scheme in one language: safe HTML but for the title.</summary>
/// <param name="Title">Plain text: what the paper calls it.</param>
/// <param name="ScopeHtml">What it covers and what not.</param>
/// <param name="TasksHtml">Job and task description.</param>
/// <param name="CompetenceHtml">Competence required.</param>
/// <param name="PrerequisitesHtml">Prerequisites in words.</param>
/// <param name="ConductHtml">Code of conduct.</param>
/// <param name="SuspensionHtml">Criteria for suspending and withdrawing.</param>
/// <param name="ValidityHtml">Written reason for the validity period.</param>
/// <param name="CompletionHtml">Completion criteria, stated before the course starts.</param>
/// <param name="ShownText">Plain text, at most 300 characters: what was shown, as the paper prints it.</param>
public sealed record SchemeWords(
    string Title,
    string ScopeHtml,
    string TasksHtml,
    string CompetenceHtml,
    string PrerequisitesHtml,
    string ConductHtml,
    string SuspensionHtml,
    string ValidityHtml,
    string CompletionHtml,
    string ShownText)
{
    /// <summary>What those do who were certified by the rules before; empty without a transition.</summary>
    public string TransitionHtml { get; init; } = "";

    /// <summary>Why each pass mark that a panel set is what it is, by the id of its quiz or checklist.</summary>
    public IReadOnlyDictionary<string, string> CutHtml { get; init; } = new Dictionary<string, string>(StringComparer.Ordinal);
}

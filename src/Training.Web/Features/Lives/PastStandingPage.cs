using Training.Certification;
using Training.Records;

namespace Training.Web.Features.Lives;

/// <summary>What is asked for.</summary>
public sealed class PastStandingForm
{
    /// <summary>The day, as typed; nothing was asked yet where it is missing.</summary>
    public string? Day { get; set; }

    /// <summary>Under which scheme; empty for everything that was held.</summary>
    public string? Scheme { get; set; }
}

/// <summary>"Was this person current on that day?" and the answer.</summary>
/// <param name="Name">The person's; null where it was erased.</param>
/// <param name="Address">Of this page.</param>
/// <param name="Back">Of the person's page; null where it is no longer the reader's to see.</param>
/// <param name="Reader">Who asks.</param>
/// <param name="Today">The last day that may be asked about.</param>
/// <param name="Form">As asked.</param>
/// <param name="Schemes">To choose from.</param>
/// <param name="Titles">Of schemes, quizzes and checklists, by id.</param>
/// <param name="Names">Of leads, by person.</param>
/// <param name="Day">The day that is answered for; null where none was asked, or it is not answered.</param>
/// <param name="Hold">What held the person's hands back on that day, whatever they held; null where nothing did.</param>
/// <param name="Answers">One a scheme, by scheme id.</param>
public sealed record PastStandingPage(
    string? Name,
    string Address,
    string? Back,
    LifeReader Reader,
    DateOnly Today,
    PastStandingForm Form,
    IReadOnlyList<string> Schemes,
    IReadOnlyDictionary<string, string> Titles,
    IReadOnlyDictionary<Guid, string> Names,
    DateOnly? Day,
    Hold? Hold,
    IReadOnlyList<PastAnswer> Answers);

/// <summary>The answer under one scheme.</summary>
/// <param name="SchemeId">Which.</param>
/// <param name="On">The answer.</param>
/// <param name="RestsOn">The results that the decision of its period rests on.</param>
public sealed record PastAnswer(string SchemeId, StandingOnDay On, IReadOnlyList<RestedOn> RestsOn);

using System.Diagnostics;
using Microsoft.Extensions.Localization;
using Training.Certification;
using Training.Courses;
using Training.Web.Features.Programme;
using Training.Web.Languages;

namespace Training.Web.Features.Decisions;

/// <summary>Says requirements and reasons in words of the page's language.</summary>
/// <param name="Text">The words.</param>
/// <param name="Titles">Of schemes, quizzes and checklists, by id.</param>
/// <param name="Names">Of people, by id; erased ones are not there.</param>
public sealed record DecisionWords(
    IStringLocalizer<DecisionText> Text, IReadOnlyDictionary<string, string> Titles, IReadOnlyDictionary<Guid, string> Names)
{
    /// <summary>The name of a person, or that it was erased.</summary>
    public string Name(Guid id) => Names.GetValueOrDefault(id) ?? Text["NameErased"].Value;

    /// <summary>Several names, one after the other.</summary>
    public string Join(IEnumerable<Guid> people) => string.Join(", ", people.Select(Name).Order(StringComparer.CurrentCulture));

    /// <summary>What a requirement asks, as a short name.</summary>
    public string Of(Requirement requirement) => requirement switch
    {
        Requirement.PassedQuiz quiz => Text["Quiz", Titles.Of(quiz.QuizId)].Value,
        Requirement.PassedPractical { Subject: Subject.Model } practical => Text["OnModel", Titles.Of(practical.ChecklistId)].Value,
        Requirement.PassedPractical practical => Text["OnLive", Titles.Of(practical.ChecklistId)].Value,
        Requirement.Holds holds => Text["Holds", Titles.Of(holds.SchemeId)].Value,
        _ => throw new UnreachableException(),
    };

    /// <summary>How long what it asks counts; null where it asks that something is held.</summary>
    public string? Age(Requirement requirement) => requirement switch
    {
        Requirement.PassedQuiz quiz => Text["CountsFor", Written.For(quiz.GreatestAge)].Value,
        Requirement.PassedPractical practical => Text["CountsFor", Written.For(practical.GreatestAge)].Value,
        Requirement.Holds => null,
        _ => throw new UnreachableException(),
    };

    /// <summary>A reason as a sentence that needs nothing beside it.</summary>
    public string Of(DecisionReason reason) => reason switch
    {
        DecisionReason.Missing(var asked) => Text["Missing", Of(asked)].Value,
        DecisionReason.NotPassed(var asked, _) => Text["NotPassed", Of(asked)].Value,
        DecisionReason.TooOld(var asked, _, var through) => Text["TooOld", Of(asked), Written.Date(through)].Value,
        DecisionReason.BeforeWindow(var asked, _, var opensOn) => Text["BeforeWindow", Of(asked), Written.Date(opensOn)].Value,
        DecisionReason.NotHeld(var schemeId, null) => Text["NeverHeld", Titles.Of(schemeId)].Value,
        DecisionReason.NotHeld(var schemeId, { } standing) => Text["NotCurrent", Titles.Of(schemeId), Of(standing)].Value,
        DecisionReason.ScorerTaught(var asked, _, var scorer, var taughtOn) =>
            Text["ScorerTaught", Of(asked), Name(scorer), Written.Date(taughtOn)].Value,
        DecisionReason.ScoredThemselves(var asked, _) => Text["ScoredThemselves", Of(asked)].Value,
        DecisionReason.DeciderNotIndependent(_, Hat.Candidate) => Text["YouAreThePerson"].Value,
        DecisionReason.DeciderNotIndependent(_, Hat.Taught) => Text["YouTaught"].Value,
        DecisionReason.DeciderNotIndependent => Text["YouScored"].Value,
        DecisionReason.LeadRequired => Text["LeadRequired"].Value,
        DecisionReason.TooEarly(var opensOn) => Text["TooEarly", Written.Date(opensOn)].Value,
        DecisionReason.WhileSuspended(var from) => Text["WhileSuspended", Written.Date(from)].Value,
        DecisionReason.OnDayOfWithdrawal => Text["OnDayOfWithdrawal"].Value,
        DecisionReason.RulesNotInForce(var from) => Text["RulesNotInForce", Written.Date(from)].Value,
        DecisionReason.RefusedByLead(var written) => Text["RefusedByLead", written].Value,
        _ => throw new UnreachableException(),
    };

    private string Of(Standing standing) => standing switch
    {
        Standing.Current => Text["Current"].Value,
        Standing.RenewalDue => Text["RenewalDue"].Value,
        Standing.Lapsed => Text["Lapsed"].Value,
        Standing.Suspended => Text["Suspended"].Value,
        Standing.Withdrawn => Text["Withdrawn"].Value,
    };
}

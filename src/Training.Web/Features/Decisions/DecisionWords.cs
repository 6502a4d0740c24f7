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
        Requirement.Practised practised => Text["Practice", Titles.Of(practised.ChecklistId), practised.Times].Value,
        Requirement.Holds holds => Text["Holds", Titles.Of(holds.SchemeId)].Value,
        _ => throw new UnreachableException(),
    };

    /// <summary>How long what it asks counts; null where it asks that something is held.</summary>
    public string? Age(Requirement requirement) => requirement switch
    {
        Requirement.PassedQuiz quiz => Text["CountsFor", Written.For(quiz.GreatestAge)].Value,
        Requirement.PassedPractical practical => Text["CountsFor", Written.For(practical.GreatestAge)].Value,
        Requirement.Practised practised => Text["PracticeWithin", Written.For(practised.Within)].Value,
        Requirement.Holds => null,
        _ => throw new UnreachableException(),
    };

    /// <summary>A reason as a sentence that needs nothing beside it.</summary>
    public string Of(DecisionReason reason) => AskedBy(reason) is { } asked ? $"{Of(asked)}: {Briefly(reason)}" : Briefly(reason);

    /// <summary>The requirement that a reason is about, or null.</summary>
    public static Requirement? AskedBy(DecisionReason reason) => reason switch
    {
        DecisionReason.Missing(var asked) => asked,
        DecisionReason.NotPassed(var asked, _) => asked,
        DecisionReason.TooOld(var asked, _, _) => asked,
        DecisionReason.BeforeWindow(var asked, _, _) => asked,
        DecisionReason.ScorersDisagree(var asked, _, _) => asked,
        DecisionReason.ScorerTaught(var asked, _, _, _) => asked,
        DecisionReason.ScoredThemselves(var asked, _) => asked,
        DecisionReason.PractisedTooLittle(var asked, _) => asked,
        DecisionReason.NotHeld(var schemeId, _) => new Requirement.Holds(schemeId),
        _ => null,
    };

    /// <summary>A reason beside the requirement that it is about.</summary>
    public string Briefly(DecisionReason reason) => reason switch
    {
        DecisionReason.Missing => Text["Missing"].Value,
        DecisionReason.NotPassed => Text["NotPassed"].Value,
        DecisionReason.TooOld(_, _, var through) => Text["TooOld", Written.Date(through)].Value,
        DecisionReason.BeforeWindow(_, _, var opensOn) => Text["BeforeWindow", Written.Date(opensOn)].Value,
        DecisionReason.NotHeld(_, null) => Text["NeverHeld"].Value,
        DecisionReason.NotHeld(_, { } standing) => Text["NotCurrent", Of(standing)].Value,
        DecisionReason.ScorersDisagree => Text["ScorersDisagree"].Value,
        DecisionReason.ScorerTaught(_, _, var scorer, var taughtOn) => Text["ScorerTaught", Name(scorer), Written.Date(taughtOn)].Value,
        DecisionReason.PractisedTooLittle(_, var counted) => Text["PractisedTooLittle", counted].Value,
        DecisionReason.ScoredThemselves => Text["ScoredThemselves"].Value,
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

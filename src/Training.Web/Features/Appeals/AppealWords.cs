using Microsoft.Extensions.Localization;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Features.Programme;
using Training.Web.Languages;

namespace Training.Web.Features.Appeals;

/// <summary>Puts appeals in words, in the language of the request.</summary>
/// <param name="Text">AppealText.</param>
/// <param name="Titles">By scheme, quiz or checklist id.</param>
/// <param name="Names">By person; erased ones are not there.</param>
public sealed record AppealWords(IStringLocalizer<AppealText> Text, IReadOnlyDictionary<string, string> Titles, IReadOnlyDictionary<Guid, string> Names)
{
    /// <summary>What is contested: the quiz, the sheet, the decision; or that it is a complaint.</summary>
    public string Of(AppealMatter matter, ContestedThing? thing) => (matter, thing) switch
    {
        (AppealMatter.Sitting, { } quiz) => Text["OfSitting", Titles.Of(quiz.Of), Written.Date(quiz.On)],
        (AppealMatter.Scoresheet, { Subject: Subject.Live } live) => Text["OfLive", Titles.Of(live.Of), Written.Date(live.On)],
        (AppealMatter.Scoresheet, { } model) => Text["OfModel", Titles.Of(model.Of), Written.Date(model.On)],
        (AppealMatter.Decision, { } decision) => Text["OfDecision", Titles.Of(decision.Of), Written.Date(decision.On)],
        _ => Text["OfComplaint"],
    };

    /// <summary>What it came to.</summary>
    public string Of(AppealOutcome outcome) => outcome switch
    {
        AppealOutcome.Upheld => Text["Upheld"],
        AppealOutcome.UpheldInPart => Text["UpheldInPart"],
        AppealOutcome.NotUpheld => Text["NotUpheld"],
    };

    /// <summary>What follows.</summary>
    public string Of(AppealRemedy? remedy) => remedy switch
    {
        AppealRemedy.SetAside => Text["SetAside"],
        AppealRemedy.DecideAnew => Text["DecideAnew"],
        AppealRemedy.ToldOnly => Text["ToldOnly"],
        null => Text["NothingFollows"],
    };

    /// <summary>Somebody's name.</summary>
    public string Name(Guid id) => Names.GetValueOrDefault(id) ?? Text["NameErased"].Value;

    /// <summary>Names with commas between.</summary>
    public string Join(IEnumerable<Guid> people) => string.Join(", ", people.Select(Name));
}

using Microsoft.AspNetCore.Html;
using Microsoft.Extensions.Localization;
using Training.Certification;
using Training.Records;
using Training.Web.Languages;

namespace Training.Web.Features.Cover;

/// <summary>Says cover in words of the page's language.</summary>
public sealed class CoverWords(IStringLocalizer<CoverText> localizer)
{
    // More names than this make no sentence.
    private const int MostNames = 3;

    private readonly IStringLocalizer<CoverText> Text = localizer;

    /// <summary>The site, and the crew or shift where the need is one's.</summary>
    public IHtmlContent PlaceOf(CoverPlace place) => place.CrewName is { } crew
        ? Text["CrewAt"].With(MarkedUp.Own(place.SiteName), MarkedUp.Own(crew))
        : MarkedUp.Own(place.SiteName);

    /// <summary>How things stand at a place, in one sentence.</summary>
    public IHtmlContent Sentence(PlaceCover cover, EmployerCover of)
    {
        var place = PlaceOf(cover.Place);
        if (cover.Told is not { } below)
        {
            return cover.AsHeld.Runs.All(run => run.Needed == 0)
                ? Text["SaysNoNeed"].With(place)
                : Text["SaysCovered"].With(place, Written.Date(cover.AsHeld.Runs[^1].Through));
        }

        var needs = Handlers(below.Needed);
        if (below.From == of.Today) return Text["SaysBelowToday"].With(place, needs, below.Handlers);
        var why = Why(below, of);
        return cover.IsPreventedBySeats
            ? Text["SaysPrevented"].With(place, needs, Written.Date(below.From), why)
            : Text["SaysDrops"].With(place, needs, Written.Date(below.From), why);
    }

    /// <summary>Why the count falls, or the need rises, on the first day of a run.</summary>
    public IHtmlContent Why(CoverRun run, EmployerCover of) => run.Leaving.Count switch
    {
        0 => Text["WhenNeedRises"].With(run.Needed),
        1 => Whose(run.Leaving[0], of),
        <= MostNames => MarkedUp.Joined(Text["AndThen"], run.Leaving.Select(span => Whose(span, of))),
        var more => Text["WhenMany"].With(more),
    };

    /// <summary>Who stops counting, and why.</summary>
    public IHtmlContent Whose(HandlerSpan span, EmployerCover of)
    {
        var name = of.Names.TryGetValue(span.PersonId, out var known) ? MarkedUp.Own(known) : new HtmlString(Text["NameErased"].Value);
        return span.End switch
        {
            CoverEnd.Withdrawn => Text["WhenWithdrawn"].With(name),
            CoverEnd.Suspended => Text["WhenSuspended"].With(name),
            CoverEnd.LeavesPlace => Text["WhenLeaves"].With(name),
            CoverEnd.HeldOff => Text["WhenHeldOff"].With(name),
            CoverEnd.Lapses or null => Text["WhenLapses"].With(name),
        };
    }

    private string Handlers(int count) => count == 1 ? Text["OneHandler"] : Text["Handlers", count];
}

using System.Diagnostics;
using System.Globalization;
using Microsoft.AspNetCore.Html;
using Microsoft.Extensions.Localization;
using Training.Certification;
using Training.Web.Features.Cover;
using Training.Web.Languages;

namespace Training.Web.Features.ClassPlans;

/// <summary>Says what a plan says, in words of the page's language.</summary>
public sealed class PlanWords(IStringLocalizer<ClassPlanText> localizer, CoverWords cover)
{
    private readonly IStringLocalizer<ClassPlanText> Text = localizer;

    /// <summary>How the plan stands, in one sentence.</summary>
    public string Sentence(ClassPlanPage page)
    {
        var (classes, seated, people) = (page.Kept.Newest.Classes.Count, page.Seated, page.Seated + page.Review.Unmet.Count);
        if (page.Kept.Acceptance is not null) return classes == 1 ? Text["SaysAcceptedOne", Seats(seated)] : Text["SaysAccepted", classes, Seats(seated)];
        if (people == 0) return Text["SaysNothing"];
        if (classes == 0) return people == 1 ? Text["SaysNoneOne"] : Text["SaysNone", people];
        if (seated < people) return classes == 1 ? Text["SaysSomeOne", seated, people] : Text["SaysSome", classes, seated, people];
        if (!page.IsAsProposed) return classes == 1 ? Text["SaysChangedOne", All(seated)] : Text["SaysChanged", classes, All(seated)];
        var least = page.Kept.Plan.LeastClasses;
        if (classes == 1) return Text["SaysAllOne", All(seated)];
        return classes == least ? Text["SaysAllFewest", classes, All(seated)] : Text["SaysAll", classes, All(seated), least];
    }

    /// <summary>Why a class is not later.</summary>
    public IHtmlContent Of(DayReason reason, ClassPlanPage page) => reason switch
    {
        DayReason.LastDayOf(var worker, var closes) => Text["LastDayOf"].With(Name(worker, page), Written.Date(closes)),
        DayReason.NoInstructors(var from, var through, 1) when from == through => Text["NoInstructorsOn"].With(Written.Date(from)),
        DayReason.NoInstructors(var from, var through, var days) => Text["NoInstructorsOnAny"].With(days, Written.Date(from), Written.Date(through)),
        DayReason.CoverForbids(var day, var place) => Text["CoverForbidsDay"].With(Written.Date(day), Place(place, page)),
        DayReason.DayIsFull(var day) => Text["DayIsFull"].With(Written.Date(day)),
        DayReason.CouldBeLater(var day) => Text["CouldBeLater"].With(Written.Date(day)),
        _ => throw new UnreachableException(),
    };

    /// <summary>Why somebody has no seat.</summary>
    public IHtmlContent Of(Unmet unmet, ClassPlanPage page) => unmet switch
    {
        Unmet.NoDay(_, var opens, var closes) => Text["UnmetNoDay"].With(Written.Date(opens), Written.Date(closes)),
        Unmet.NoInstructors(_, var opens, var closes) => Text["UnmetNoInstructors"].With(Written.Date(opens), Written.Date(closes)),
        Unmet.NoSiteInReach => Text["UnmetNoSite"].With(),
        Unmet.CoverForbids(_, var place) => Text["UnmetCover"].With(Place(place, page)),
        Unmet.Crowded(_, var from, var through, var people, var seats) => Text["UnmetCrowded"].With(people, Written.Date(from), Written.Date(through), seats),
        Unmet.Outbid(_, var opens, var closes) => Text["UnmetOutbid"].With(Written.Date(opens), Written.Date(closes)),
        _ => throw new UnreachableException(),
    };

    /// <summary>What is wrong with a class.</summary>
    public IHtmlContent Of(PlanFault fault, ClassPlanPage page) => fault switch
    {
        PlanFault.DayNotAllowed => Text["FaultDay"].With(Written.Date(fault.Day)),
        PlanFault.TooManyClasses(_, var most) => Text["FaultClasses"].With(Written.Date(fault.Day), most),
        PlanFault.NoHost => Text["FaultHost"].With(Written.Date(fault.Day)),
        PlanFault.TooManyPeople(_, var seats) => Text["FaultPeople"].With(Written.Date(fault.Day), seats),
        PlanFault.Empty => Text["FaultEmpty"].With(Written.Date(fault.Day)),
        PlanFault.InstructorUnavailable(_, var who, Duty.Teach) => Text["FaultTeacher"].With(Written.Date(fault.Day), Name(who, page)),
        PlanFault.InstructorUnavailable(_, var who, Duty.Score) => Text["FaultScorer"].With(Written.Date(fault.Day), Name(who, page)),
        PlanFault.InstructorTwice(_, var who) => Text["FaultTwice"].With(Written.Date(fault.Day), Name(who, page)),
        PlanFault.InstructorTooOften(_, var who, var most) => Text["FaultOften"].With(Name(who, page), most),
        PlanFault.ScorerBarred(_, var who, var worker) => Text["FaultBarred"].With(Written.Date(fault.Day), Name(who, page), Name(worker, page)),
        PlanFault.OutsideWindow(_, var worker, var opens, var closes) => opens == DateOnly.MinValue
            ? Text["FaultNotDue"].With(Written.Date(fault.Day), Name(worker, page))
            : Text["FaultWindow"].With(Written.Date(fault.Day), Name(worker, page), Written.Date(opens), Written.Date(closes)),
        PlanFault.TooFar(_, var worker, _) => Text["FaultFar"].With(Written.Date(fault.Day), Name(worker, page)),
        PlanFault.SeatedTwice(_, var worker) => Text["FaultSeatedTwice"].With(Name(worker, page)),
        PlanFault.BelowCover(_, var place, var handlers, var needed) => Text["FaultCover"].With(Written.Date(fault.Day), Place(place, page), handlers, needed),
        _ => throw new UnreachableException(),
    };

    /// <summary>Somebody's name.</summary>
    public IHtmlContent Name(Guid id, ClassPlanPage page) =>
        page.Names.TryGetValue(id, out var name) ? MarkedUp.Own(name) : new HtmlString(Text["NameErased"].Value);

    /// <summary>The weekdays of a row, in the order of the week.</summary>
    public static string Weekdays(int mask) => string.Join(
        ", ", Enumerable.Range(0, 7).Where(day => (mask & (1 << day)) != 0).Select(day => CultureInfo.CurrentCulture.DateTimeFormat.GetDayName((DayOfWeek)day)));

    private string All(int people) => people == 1 ? Text["AllOne"] : Text["All", people];

    private string Seats(int people) => people == 1 ? Text["SeatOne"] : Text["SeatsTaken", people];

    private IHtmlContent Place(Guid id, ClassPlanPage page) =>
        page.Basis.Places.TryGetValue(id, out var place) ? cover.PlaceOf(place) : new HtmlString(Text["PlaceGone"].Value);
}

using System.Globalization;
using Microsoft.Extensions.Localization;
using Training.Certification;
using Training.Courses;
using Training.Documents;
using Training.Records;
using Training.Web.Features.Programme;
using Training.Web.Features.Reminders;
using Training.Web.Languages;
using Training.Web.Provider;
using Training.Web.Settings;
using Training.Web.Shelf;

namespace Training.Web.Features.Invitations;

/// <summary>The mails about a class: that somebody is expected, that it moved, that they are not expected any more, that it is near.</summary>
public sealed class InvitationLetters(CourseShelf shelf, OurProvider provider, TrainingOptions options, IStringLocalizer<InvitationText> text)
{
    /// <summary>What is owed, with a calendar file that puts the class into a calendar, moves it there or takes it out.</summary>
    public async Task<Letter> OfAsync(
        RecordsContext records, ClassToTell day, PersonToTell person, Invitation owed, Recipient to, DateTimeOffset now, CancellationToken cancellation)
    {
        var name = await NameAsync(records, to, now, cancellation);
        return to.Language.Speak(() =>
        {
            var title = TitleOf(day, to);
            var last = person.Last?.ToInvitation();
            var on = Written.Date(owed.Time.HeldOn);
            var subject = (owed.IsCancellation, day.Cancellation, last) switch
            {
                (true, null, _) => text["SubjectGivenBack", on],
                (true, _, _) => text["SubjectCancelled", on],
                (false, _, { IsCancellation: false }) => text["SubjectMoved", on],
                _ => text["SubjectExpected", on],
            };
            string?[] says = owed.IsCancellation
                ?
                [
                    day.Cancellation is null
                        ? text["GivenBack", title, Written.Date(owed.Time.HeldOn), day.Site.Name].Value
                        : text["Cancelled", title, Written.Date(owed.Time.HeldOn), day.Site.Name].Value,
                    day.Cancellation is { } end ? text["Why", end.Reason].Value : null,
                    text["FileTakesOut"].Value,
                ]
                :
                [
                    last is { IsCancellation: false } ? text["Moved", title, When(last.Time, day)].Value : Expected(person, title),
                    last is { IsCancellation: false } && day.LastChange is { } change && last.Time with { MeetingPlace = "" } != owed.Time with { MeetingPlace = "" }
                        ? text["Why", change.Reason].Value
                        : null,
                    text["When", When(owed.Time, day)].Value,
                    .. Particulars(day, owed.Time),
                    CannotCome(person, to),
                    text["FilePutsIn"].Value,
                ];
            return Whole(name, subject, says) with { Calendar = FileOf(day, person, owed, title, to, now) };
        });
    }

    /// <summary>That the class is near.</summary>
    public async Task<Letter> ReminderAsync(
        RecordsContext records, ClassToTell day, PersonToTell person, Recipient to, DateTimeOffset now, CancellationToken cancellation)
    {
        var name = await NameAsync(records, to, now, cancellation);
        return to.Language.Speak(() =>
        {
            var time = new ClassTime(day.Class.HeldOn, day.Class.StartsAt, day.Class.LengthMinutes, day.Briefing?.MeetingPlace ?? "");
            return Whole(
                name, text["SubjectReminder", Written.Date(time.HeldOn)],
                [Expected(person, TitleOf(day, to)), text["When", When(time, day)].Value, .. Particulars(day, time), CannotCome(person, to)]);
        });
    }

    private async Task<string?> NameAsync(RecordsContext records, Recipient to, DateTimeOffset now, CancellationToken cancellation) =>
        (await records.NamesOfAsync([to.PersonId], provider.DayOf(now), cancellation)).GetValueOrDefault(to.PersonId);

    private Letter Whole(string? name, string subject, IReadOnlyList<string?> says) =>
        new(subject, Letter.Paragraphs([name is null ? null : text["Greeting", name].Value, .. says, text["SentBy", provider.Name].Value]));

    private string TitleOf(ClassToTell day, Recipient to) => shelf.Courses.Titles(to.Language).Of(day.Class.CourseId);

    private string Expected(PersonToTell person, string title) => person.Part switch
    {
        ClassPart.Teaches => text["YouTeach", title],
        ClassPart.Scores => text["YouScore", title],
        _ => text["YouHaveASeat", title],
    };

    private string When(ClassTime time, ClassToTell day)
    {
        var zone = TimeZoneInfo.FindSystemTimeZoneById(day.Site.Zone);
        var end = TimeZoneInfo.ConvertTime(time.End(zone), zone);
        return text["DayAndHours", Written.Date(time.HeldOn), Written.Time(time.StartsAt), Written.Time(end), day.Site.Name];
    }

    private IEnumerable<string?> Particulars(ClassToTell day, ClassTime time) =>
    [
        time.MeetingPlace.Length > 0 ? text["MeetAt", time.MeetingPlace].Value : null,
        day.Briefing is { Kit.Length: > 0 } withKit ? text["Bring", withKit.Kit].Value : null,
        day.Briefing is { Weather.Length: > 0 } withWeather ? text["Weather", withWeather.Weather].Value : null,
    ];

    // Instructors ask a lead: a class without them is another class.
    private string CannotCome(PersonToTell person, Recipient to) => person.Part == ClassPart.Seat
        ? text["CannotCome", options.PublicPage($"{to.Language.Tag()}/my/classes")]
        : text["InstructorCannotCome", options.PublicPage($"{to.Language.Tag()}/class-days")];

    private string FileOf(ClassToTell day, PersonToTell person, Invitation owed, string title, Recipient to, DateTimeOffset now) =>
        CalendarWriter.Write(
            new("", provider.Name, options.MailFrom(), Refresh: null),
            [
                new CalendarEntry(
                    string.Create(CultureInfo.InvariantCulture, $"class-{day.Class.Id}-{person.PersonId}"), owed.Sequence, text["EventTitle", title],
                    options.PublicPage($"{to.Language.Tag()}/{(person.Part is ClassPart.Teaches or ClassPart.Scores ? "class-days" : "my/classes")}").ToString(),
                    now,
                    new CalendarTime.Hours(
                        owed.Time, TimeZoneInfo.FindSystemTimeZoneById(day.Site.Zone),
                        owed.Time.MeetingPlace.Length > 0 ? $"{day.Site.Name}, {owed.Time.MeetingPlace}" : day.Site.Name, owed.IsCancellation)),
            ]);
}

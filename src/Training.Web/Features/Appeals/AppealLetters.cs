using Microsoft.Extensions.Localization;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Features.Programme;
using Training.Web.Features.Reminders;
using Training.Web.Languages;
using Training.Web.Provider;
using Training.Web.Settings;
using Training.Web.Shelf;

namespace Training.Web.Features.Appeals;

/// <summary>The letters of an appeal: that it came, that it was taken up, what it came to. Each is kept with its step, so that it goes out once.</summary>
public sealed class AppealLetters(RecordsContext records, CourseShelf shelf, OurProvider provider, TrainingOptions options, IStringLocalizer<AppealText> text)
{
    /// <summary>The receipt; null where no mail reaches the appellant.</summary>
    public Task<OutgoingMail?> ReceiptAsync(NewAppeal appeal, ContestedThing? thing, DateTimeOffset now, CancellationToken cancellation) =>
        WriteAsync(appeal.Id, appeal.PersonId, null, now, words => (
            text["ReceiptSubject", Written.Date(appeal.ReceivedOn)],
            [
                text["ReceiptSays", words.Of(appeal.Matter, thing), Written.Date(appeal.ReceivedOn)],
                text["ReceiptThen", Written.Date(new AppealCourse(appeal.ReceivedOn, null, null).TakeUpBy), Written.Date(new AppealCourse(appeal.ReceivedOn, null, null).DecideBy)],
                text["WhoDecides"],
            ]), cancellation);

    /// <summary>That a lead took it up.</summary>
    public Task<OutgoingMail?> TakenUpAsync(AppealCase found, Guid leadId, DateOnly on, DateTimeOffset now, CancellationToken cancellation) =>
        WriteAsync(found.Appeal.Id, found.Appeal.PersonId, leadId, now, words => (
            text["TakenUpSubject", Written.Date(found.Appeal.ReceivedOn)],
            [
                text["TakenUpSays", words.Name(leadId), Written.Date(on), words.Of(found.Appeal.Matter, found.Contested)],
                text["DecidedByThen", Written.Date(found.Course.DecideBy)],
            ]), cancellation);

    /// <summary>The closing letter.</summary>
    public Task<OutgoingMail?> ClosingAsync(AppealCase found, AppealDecisionRecord decision, DateTimeOffset now, CancellationToken cancellation) =>
        WriteAsync(found.Appeal.Id, found.Appeal.PersonId, decision.LeadId, now, words => (
            text["ClosingSubject", Written.Date(found.Appeal.ReceivedOn)],
            [
                text["ClosingSays", words.Name(decision.LeadId), Written.Date(decision.DecidedOn), words.Of(found.Appeal.Matter, found.Contested)],
                words.Of(decision.Outcome),
                text["ClosingReason", decision.Reason],
                words.Of(decision.Remedy),
                text["Closed"],
            ]), cancellation);

    private async Task<OutgoingMail?> WriteAsync(
        Guid appealId, Guid personId, Guid? leadId, DateTimeOffset now, Func<AppealWords, (LocalizedString Subject, string[] Paragraphs)> write,
        CancellationToken cancellation)
    {
        var to = await records.GetRecipientAsync(personId, cancellation);
        if (to.Address is null) return null;
        var names = await records.NamesOfAsync(leadId is { } lead ? [personId, lead] : [personId], provider.DayOf(now), cancellation);
        return to.Language.Speak(() =>
        {
            var words = new AppealWords(text, shelf.Courses.Titles(to.Language), names);
            var (subject, paragraphs) = write(words);
            return new Letter(subject, Letter.Paragraphs(
            [
                names.TryGetValue(personId, out var name) ? text["Greeting", name].Value : null,
                .. paragraphs,
                text["YourPage", options.PublicPage($"{to.Language.Tag()}/my/appeals/{appealId}")],
                text["SentBy", provider.Name],
            ]));
        }).To(to, now);
    }
}

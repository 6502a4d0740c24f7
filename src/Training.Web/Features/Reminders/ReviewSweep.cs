using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Provider;
using Training.Web.Settings;
using Training.Web.Shelf;
using Training.Web.Features.TrainingChanges;

namespace Training.Web.Features.Reminders;

/// <summary>
/// Tells people of holds that were set and ended, leads of reviews that are open and overdue, and those whose training rests on guidance that
/// changed. Safe to run twice, on several servers at once, and to be killed: what was kept is not told again.
/// </summary>
/// <remarks>Rule: docs/rules.md, "Told once".</remarks>
public sealed class ReviewSweep(
    IDbContextFactory<RecordsContext> factory, CourseShelf shelf, CoursesByHash courses, TrainingOptions options, OurProvider provider, TimeProvider clock)
{
    /// <summary>One look.</summary>
    public async Task RunAsync(CancellationToken cancellation)
    {
        var now = clock.GetUtcNow();
        await using var records = await factory.CreateDbContextAsync(cancellation);
        await TellHoldsAsync(records, now, cancellation);
        await TellLeadsAsync(records, now, cancellation);
        await TellGuidanceAsync(records, now, cancellation);
    }

    private async Task TellHoldsAsync(RecordsContext records, DateTimeOffset now, CancellationToken cancellation)
    {
        foreach (var news in await records.UntoldHoldsAsync(provider.DayOf(now).AddDays(-Certification.Reminders.DaysLate), cancellation))
        {
            if (await FindHourAsync(records, news.PersonId, now, cancellation) is null) continue;
            var to = await records.GetRecipientAsync(news.PersonId, cancellation);
            var mail = to.Address is null ? null : Letter.OfHold(news.Words, Page(to.Language, "my"), provider.Name, to.Language).To(to, now);
            await records.TryKeepAsync([Notice(news, mail, now)], mail, cancellation);
        }
    }

    // One mail to a lead, however many reviews there are to tell of.
    private async Task TellLeadsAsync(RecordsContext records, DateTimeOffset now, CancellationToken cancellation)
    {
        var today = provider.DayOf(now);
        var leads = await records.Appointments
            .Where(row => row.Role == AppointedRole.ProgrammeLead && row.StartsOn <= today && (row.EndsOn == null || row.EndsOn >= today))
            .Select(row => row.PersonId).Distinct().OrderBy(id => id).Take(InstructorQueries.Most).ToListAsync(cancellation);
        foreach (var leadId in leads)
        {
            var untold = await records.UntoldReviewsAsync(leadId, today.AddDays(-Certification.Reviews.Days), cancellation);
            if (untold.Count == 0 || await FindHourAsync(records, leadId, now, cancellation) is null) continue;
            var to = await records.GetRecipientAsync(leadId, cancellation);
            var mail = to.Address is null ? null : Letter.OfReviews(
                untold.Count(one => one.News == ReviewNews.Opened), untold.Count(one => one.News == ReviewNews.Overdue), untold.Count(one => one.HasHold),
                Page(to.Language, "programme/reviews"), provider.Name, to.Language).To(to, now);
            await records.TryKeepAsync(untold.Select(one => Notice(one, mail, now)), mail, cancellation);
        }
    }

    // Nothing is read of anybody while nothing changed lately.
    private async Task TellGuidanceAsync(RecordsContext records, DateTimeOffset now, CancellationToken cancellation)
    {
        var today = provider.DayOf(now);
        var from = today.AddDays(-Certification.Reminders.DaysLate);
        if (!shelf.Guidance.Entries.Any(entry => entry.EffectiveFrom > from && entry.EffectiveFrom <= today)) return;
        var texts = await records.CourseSnapshots.Select(text => new { text.CourseId, text.Hash }).ToListAsync(cancellation);
        foreach (var text in texts)
        {
            if (await courses.FindAsync(records, text.CourseId, text.Hash, cancellation) is not { } course) continue;
            foreach (var day in GuidanceChange.Since(course.Guidance, shelf.Guidance, today).Select(change => change.ChangedOn).Where(day => day > from).Distinct())
            {
                foreach (var personId in await records.UntoldOfGuidanceAsync(course.Scheme.Id, course.Quiz.Id, text.Hash, today, day, cancellation))
                    await TellGuidanceAsync(records, personId, day, now, cancellation);
            }
        }
    }

    private async Task TellGuidanceAsync(RecordsContext records, Guid personId, DateOnly changedOn, DateTimeOffset now, CancellationToken cancellation)
    {
        if (await FindHourAsync(records, personId, now, cancellation) is not { } today) return;
        var to = await records.GetRecipientAsync(personId, cancellation);
        var changes = await new TrainingChangeReading(records, shelf, courses).OfAsync(personId, today, to.Language, cancellation);
        var mail = to.Address is null ? null : Letter.OfGuidance(
            [.. changes.Where(change => change.ChangedOn == changedOn)], Page(to.Language, "my"), provider.Name, to.Language).To(to, now);
        var notice = new GuidanceNotice { Id = Guid.CreateVersion7(), PersonId = personId, ChangedOn = changedOn, MadeAt = now, MailId = mail?.Id };
        await records.TryKeepAsync(notice, mail, cancellation);
    }

    // The date at their site; null while it is quiet there.
    private async Task<DateOnly?> FindHourAsync(RecordsContext records, Guid personId, DateTimeOffset now, CancellationToken cancellation)
    {
        var site = await records.FindSiteAsync(personId, DateOnly.FromDateTime(now.UtcDateTime), cancellation);
        var zone = TimeZoneInfo.FindSystemTimeZoneById(site?.Zone ?? provider.Zone);
        return options.Reminders.IsQuiet(now, zone) ? null : DecisionDay.On(now, zone);
    }

    private Uri Page(Language language, string path) => options.PublicPage($"{language.Tag()}/{path}");

    private static ReviewNotice Notice(UntoldReview news, OutgoingMail? mail, DateTimeOffset now) => new()
    {
        Id = Guid.CreateVersion7(), ReviewId = news.Review.Id, PersonId = news.PersonId, News = news.News, MadeAt = now, MailId = mail?.Id,
    };
}

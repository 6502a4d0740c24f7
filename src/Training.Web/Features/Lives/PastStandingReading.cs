using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Features.Programme;
using Training.Web.Shelf;

namespace Training.Web.Features.Lives;

/// <summary>Answers "was this person current on that day?" from the records.</summary>
public sealed class PastStandingReading(RecordsContext records, CourseShelf shelf)
{
    /// <summary>The page of one person.</summary>
    /// <param name="personId">About whom; the caller knows that the reader may ask.</param>
    /// <param name="empty">The page without its answer: who asks, from where, and what.</param>
    /// <param name="day">The day to answer for, or null.</param>
    /// <param name="language">Of the titles.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public async Task<PastStandingPage> ReadAsync(
        Guid personId, PastStandingPage empty, DateOnly? day, Language language, CancellationToken cancellation)
    {
        var kept = await records.KeptCertificationsAsync(personId, cancellation);
        var names = await records.NamesOfAsync([personId, .. LifeView.LeadsIn(kept)], empty.Today, cancellation);
        var page = empty with
        {
            Name = names.GetValueOrDefault(personId),
            Names = names,
            Titles = shelf.Courses.Titles(language),
            Schemes = [.. kept.Select(one => one.SchemeId).Union(shelf.Used.Select(course => course.Id), StringComparer.Ordinal)],
        };
        if (day is not { } asked) return page;

        var answers = (string.IsNullOrEmpty(page.Form.Scheme) ? kept.Select(one => one.SchemeId) : [page.Form.Scheme])
            .Select(schemeId => (SchemeId: schemeId, On: kept.FirstOrDefault(one => one.SchemeId == schemeId) is { } one
                ? StandingOnDay.Of(one, asked)
                : new StandingOnDay(asked, null, null, null, null, null, []))).ToList();
        var results = await records.RestedOnAsync([.. answers.SelectMany(answer => answer.On.Period?.RestsOn ?? [])], cancellation);
        return page with
        {
            Day = asked,
            Hold = Holds.On(await records.HoldsOfAsync(personId, cancellation), asked).FirstOrDefault(),
            Answers =
            [
                .. answers.Select(answer => new PastAnswer(
                    answer.SchemeId, answer.On, [.. (answer.On.Period?.RestsOn ?? []).Select(id => results.GetValueOrDefault(id)).OfType<RestedOn>()])),
            ],
        };
    }
}

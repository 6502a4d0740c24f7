using Training.Certification;
using Training.Courses;
using Training.Records;

namespace Training.Web.Features.Cover;

/// <summary>The cover of one place ahead.</summary>
/// <param name="Place">Which.</param>
/// <param name="SchemeTitle">Of its scheme, in the page's language.</param>
/// <param name="AsHeld">Where nobody renews.</param>
/// <param name="WithSeats">Where everybody with a seat that can renew does so in that class.</param>
/// <param name="SeatIds">Who has such a seat.</param>
public sealed record PlaceCover(
    CoverPlace Place, string SchemeTitle, CoverForecast AsHeld, CoverForecast WithSeats, IReadOnlyList<Guid> SeatIds)
{
    /// <summary>The first day below that no seat prevents, else the first one that only seats prevent; null where no day is below.</summary>
    public DateOnly? BelowOn => (WithSeats.FirstBelow ?? AsHeld.FirstBelow)?.From;

    /// <summary>Whether the seats that people have prevent every day below.</summary>
    public bool IsPreventedBySeats => AsHeld.FirstBelow is not null && WithSeats.FirstBelow is null;

    /// <summary>The run that the sentence about this place is about; null where nothing is below.</summary>
    public CoverRun? Told => WithSeats.FirstBelow ?? AsHeld.FirstBelow;

    /// <summary>The first one is to be dealt with first: below in spite of seats, soonest first; then what seats prevent; then the rest in their order.</summary>
    public static IReadOnlyList<PlaceCover> MostUrgentFirst(IEnumerable<PlaceCover> places) =>
    [
        .. places.OrderBy(place => place.IsPreventedBySeats).ThenBy(place => place.BelowOn is null).ThenBy(place => place.BelowOn),
    ];

    /// <summary>The forecast of a place.</summary>
    /// <param name="place">Which.</param>
    /// <param name="facts">What is known about the employer.</param>
    /// <param name="courses">All courses.</param>
    /// <param name="today">First day.</param>
    /// <param name="through">Last day.</param>
    /// <param name="language">Of the title.</param>
    public static PlaceCover Of(
        CoverPlace place, CoverFacts facts, IReadOnlyList<Course> courses, DateOnly today, DateOnly through, Language language)
    {
        var scheme = courses.FirstOrDefault(course => course.Scheme.Id == place.SchemeId)?.Scheme;
        var people = facts.People.Where(person => person.Held.SchemeId == place.SchemeId).ToList();
        var seated = people.ConvertAll(person => (Person: person, Held: IfSeatsRenew(person.Held, facts, courses)));
        List<HandlerNeed> needs = [.. place.Needs.Select(need => new HandlerNeed(need.StartsOn, need.Handlers))];

        CoverForecast Forecast(IEnumerable<(CoverPerson Person, HeldCertification Held)> those) => CoverForecast.Of(
            [.. those.SelectMany(one => HandlerDays.Of(one.Held, one.Person.At(place), one.Person.HeldOff, today, through))], needs, today, through);

        return new(
            place, scheme?.Words[language].Title ?? place.SchemeId,
            Forecast(people.Select(person => (person, person.Held))), Forecast(seated),
            [.. seated.Where(one => one.Held != one.Person.Held && one.Person.At(place).Any(span => span.Overlap(new(today, through)) is not null))
                .Select(one => one.Held.PersonId)]);
    }

    /// <summary>The certification as it would stand if its holder renewed in the first class, of those where they have a seat, that can renew it.</summary>
    public static HeldCertification IfSeatsRenew(HeldCertification held, CoverFacts facts, IReadOnlyList<Course> courses)
    {
        if (courses.FirstOrDefault(course => course.Scheme.Id == held.SchemeId)?.Scheme is not { } scheme) return held;
        var renewing = RenewalClasses.CoursesFor(scheme, courses);
        return facts.Seats[held.PersonId].Where(seat => renewing.Contains(seat.CourseId))
            .Select(seat => HandlerDays.IfRenewedOn(held, seat.HeldOn))
            .FirstOrDefault(renewed => renewed != held, held);
    }
}

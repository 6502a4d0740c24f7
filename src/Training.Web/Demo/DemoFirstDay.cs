using Training.Courses;
using Training.Records;
using Training.Web.Settings;

namespace Training.Web.Demo;

/// <summary>What the invented provider did on its first day: said who it is, chose its courses, had their questions read, and wrote down for each site whom to call and which snakes live there.</summary>
/// <param name="data">What happened.</param>
/// <param name="courses">The shipped courses by id.</param>
/// <param name="library">The shipped species sheets.</param>
/// <param name="options">Of the demo.</param>
/// <param name="ids">Of every row of the data that is kept by now.</param>
/// <param name="at">An instant so many days ago.</param>
internal sealed class DemoFirstDay(
    DemoData data, IReadOnlyDictionary<string, Course> courses, SpeciesLibrary library, TrainingOptions options, IReadOnlyDictionary<string, Guid> ids,
    Func<int, DateTimeOffset> at)
{
    /// <summary>Keeps all of it.</summary>
    public async Task KeepAsync(RecordsContext records, CancellationToken cancellation)
    {
        var first = data.Reviews[0];
        var (lead, day, provider) = (ids[first.Person], at(first.DaysAgo), data.Provider);
        await records.KeepAsync(new AddressConfirmation { Address = options.PublicPage("").AbsoluteUri, LeadId = lead, ConfirmedAt = day }, cancellation);
        var details = new ProviderDetails
        {
            Id = Guid.CreateVersion7(day), LeadId = lead, SinceAt = day, Name = provider.Name, Address = provider.Address, Zone = provider.Zone,
            Region = provider.Region,
        };
        await records.KeepAsync(details, cancellation);
        await records.KeepAsync(new CourseChoice { Id = Guid.CreateVersion7(day), LeadId = lead, SinceAt = day, CourseIds = provider.Courses }, cancellation);
        foreach (var review in data.Reviews) await records.KeepAsync(Accepted(review), cancellation);
        foreach (var site in data.Sites)
        {
            var numbers = NumbersOf(site, lead);
            if (data.BitePlans.SingleOrDefault(plan => plan.Site == site.Site) is { } plan) await records.KeepAsync(PlanOf(plan, numbers), numbers, cancellation);
            else await records.KeepAsync(numbers, cancellation);
            await records.KeepAsync(SpeciesOf(site, lead, day), cancellation);
        }
    }

    private IReadOnlyList<QuestionReview> Accepted(DemoReview review)
    {
        var formId = Guid.CreateVersion7(at(review.DaysAgo));
        return
        [
            .. courses[review.Course].Questions.Select(question => new QuestionReview
            {
                FormId = formId, CourseId = review.Course, QuestionId = question.Id, QuestionVersion = question.Version, Outcome = ReviewOutcome.Accepted,
                ReviewerId = ids[review.Person], ReviewedAt = at(review.DaysAgo),
            }),
        ];
    }

    private SiteSpecies SpeciesOf(DemoSite site, Guid lead, DateTimeOffset day)
    {
        var region = library.Regions.SingleOrDefault(set => set.Id == site.SpeciesSet)
            ?? throw new InvalidDataException($"sites.csv, {site.Site}: no regional set '{site.SpeciesSet}'.");
        var inState = library.Of(region).Where(sheet => SpeciesLibrary.PresenceIn(sheet, site.Region) != SpeciesPresence.Elsewhere);
        return new() { Id = Guid.CreateVersion7(day), SiteId = ids[site.Site], LeadId = lead, KeptAt = day, SpeciesIds = [.. inState.Select(sheet => sheet.Id)] };
    }

    private BitePlan PlanOf(DemoBitePlan plan, EmergencyNumbers numbers) => new()
    {
        Id = Guid.CreateVersion7(numbers.KeptAt), SiteId = numbers.SiteId, LeadId = numbers.LeadId, KeptAt = numbers.KeptAt, CheckedOn = numbers.CheckedOn,
        Latitude = plan.Latitude, Longitude = plan.Longitude, AccessWords = plan.AccessWords, ReviewOn = numbers.CheckedOn.AddDays(plan.ReviewDays),
        Hospitals = [.. data.Hospitals.Where(hospital => hospital.Site == plan.Site)
            .Select(hospital => new PlannedHospital(hospital.Name, hospital.Contact, hospital.DriveMinutes, ToldOf(hospital)))],
    };

    private ToldOfAntivenom? ToldOf(DemoHospital hospital) => hospital is { Said: { Length: > 0 } said, ToldBy: { } by, ToldDaysAgo: { } days }
        ? new(said, by, DateOnly.FromDateTime(at(days).UtcDateTime))
        : null;

    private EmergencyNumbers NumbersOf(DemoSite site, Guid lead) => new()
    {
        Id = Guid.CreateVersion7(at(site.CheckedDaysAgo)), SiteId = ids[site.Site], LeadId = lead, EmergencyServices = site.EmergencyServices,
        PoisonControl = site.PoisonControl, OnSite = site.OnSite, WithoutSignal = site.WithoutSignal,
        CheckedOn = DateOnly.FromDateTime(at(site.CheckedDaysAgo).UtcDateTime), KeptAt = at(site.CheckedDaysAgo),
    };
}

using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;
using Training.Documents.BitePlans;
using Training.Records;
using Training.Web.Features.Shared;
using Training.Web.Shelf;

namespace Training.Web.Features.BitePlans;

/// <summary>Puts the bite plan of a site together: what a lead entered, whom to call, and first aid as guidance in force says it.</summary>
public sealed class BitePlanReading(RecordsContext records, CourseShelf shelf, PrintedPapers papers, TimeProvider clock)
{
    private const string Coral = "coral";

    /// <summary>The plan that serves at a site; null where nobody wrote one.</summary>
    public async Task<BitePlanPage?> FindAsync(Records.Site site, Language language, CancellationToken cancellation) =>
        await records.FindBitePlanAsync(site.Id, cancellation) is { } plan && await records.FindEmergencyNumbersAsync(site.Id, cancellation) is { } numbers
            ? await ComposeAsync(site, plan, numbers, language, cancellation)
            : null;

    /// <summary>A plan as it would be printed today, kept or not.</summary>
    public async Task<BitePlanPage> ComposeAsync(Records.Site site, BitePlan plan, EmergencyNumbers numbers, Language language, CancellationToken cancellation)
    {
        var today = DecisionDay.On(clock.GetUtcNow(), TimeZoneInfo.FindSystemTimeZoneById(site.Zone));
        var sheets = await records.SheetsOfAsync(shelf.Species, site.Id, cancellation);
        var names = await records.NamesOfAsync([plan.LeadId], today, cancellation);
        return new()
        {
            Language = language, Paper = papers.Size, ProviderName = papers.ProviderName, SiteName = site.Name, PrintedOn = today, IsDemonstration = papers.IsDemonstration,
            EmployerName = await records.Employers.Where(employer => employer.Id == site.EmployerId).Select(employer => employer.Name).SingleAsync(cancellation),
            EmergencyServices = numbers.EmergencyServices, PoisonControl = numbers.PoisonControl, OnSite = numbers.OnSite, WithoutSignal = numbers.WithoutSignal,
            Latitude = plan.Latitude, Longitude = plan.Longitude, AccessWords = plan.AccessWords,
            Hospitals = [.. plan.Hospitals.Select(hospital => new BitePlanHospital(hospital.Name, hospital.Contact, hospital.DriveMinutes))],
            Antivenom = [.. plan.Hospitals.SelectMany(hospital => hospital.Antivenom is { } told
                ? [new(hospital.Name, told.Said, told.ToldBy, told.ToldOn)]
                : Array.Empty<AntivenomHearsay>())],
            FirstAid = FirstAidWords.InForce(shelf.Guidance, site.Region, sheets.Count == 0 || sheets.Any(sheet => sheet.GuidanceGroup == Coral), today, language),
            CheckedOn = plan.CheckedOn, ReviewOn = plan.ReviewOn,
            CheckedBy = names.GetValueOrDefault(plan.LeadId),
        };
    }
}

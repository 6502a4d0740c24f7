using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Training.Certification;
using Training.Records;
using Training.Web.Features.Reminders;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Reminders;

/// <summary>Each is told once of what concerns them: holds, reviews, and the employer's week.</summary>
public sealed class ReviewSweepTests : IAsyncLifetime
{
    private readonly RunningSite site = RunningSite.Start(settings: [new("Training:Provider:TimeZone", "America/Denver")]);
    private ProgrammeCast cast = null!; // made by InitializeAsync

    public async ValueTask InitializeAsync()
    {
        cast = await ProgrammeCast.CreateAsync(site);
        await AddressAsync(cast.Worker, "worker@example.org");
        await AddressAsync(cast.Lead, "lead@example.org");
    }

    public ValueTask DisposeAsync()
    {
        site.Dispose();
        return default;
    }

    private Task AddressAsync(Guid person, string address) => site.RecordAsync(records => records.KeepMailAddressAsync(person, address, default));

    private async Task<ReviewRecord> OpenAsync(Guid person, bool isHold = true)
    {
        var today = DateOnly.FromDateTime(site.Clock.Now.UtcDateTime);
        var review = ReviewRecord.OfPerson(ReviewCause.NearMiss, Guid.CreateVersion7(), person, cast.Site, today, site.Clock.Now);
        await site.AddAsync(isHold ? review.WithHold() : [review]);
        return review;
    }

    /// <summary>Twice, as two servers would.</summary>
    private async Task<IReadOnlyList<string>> SweepAsync()
    {
        var sweep = site.Services.GetRequiredService<ReviewSweep>();
        await sweep.RunAsync(default);
        await sweep.RunAsync(default);
        IReadOnlyList<string> mails = [];
        await site.RecordAsync(async records => mails = await records.OutgoingMails.OrderBy(mail => mail.MadeAt).ThenBy(mail => mail.Address)
            .Select(mail => $"{mail.Address}: {mail.Subject}").ToListAsync());
        return mails;
    }

    [Fact]
    public async Task A_hold_and_its_end_are_told_once_to_whoever_it_is_about_and_reviews_to_leads()
    {
        var review = await OpenAsync(cast.Worker);

        Assert.Equal(["lead@example.org: Reviews wait for a lead", "worker@example.org: Do not handle a snake until a lead has reviewed"], await SweepAsync());

        site.Clock.Now += TimeSpan.FromDays(2);
        await site.RecordAsync(records => records.ConcludeReviewAsync(
            review.Id, new(DateOnly.FromDateTime(site.Clock.Now.UtcDateTime), cast.OtherLead, "The lid comes first."), site.Clock.Now, default));
        Assert.Equal("worker@example.org: The review is concluded", Assert.Single((await SweepAsync()).Skip(2)));
        await site.RecordAsync(async records => Assert.Contains(
            "The lid comes first.", await records.OutgoingMails.OrderByDescending(mail => mail.MadeAt).Select(mail => mail.Text).FirstAsync(), StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(14, 0)]
    [InlineData(15, 1)]
    public async Task An_overdue_review_is_told_to_leads_once_more(int days, int more)
    {
        await OpenAsync(cast.Worker, isHold: false);
        var first = await SweepAsync();

        site.Clock.Now += TimeSpan.FromDays(days);

        Assert.Equal(["lead@example.org: Reviews wait for a lead"], first);
        Assert.Equal(Enumerable.Repeat("lead@example.org: A review is overdue", more), (await SweepAsync()).Skip(1));
    }

    [Fact]
    public async Task A_review_of_a_lead_is_told_to_the_others_and_who_has_no_address_is_noted_without_a_mail()
    {
        await OpenAsync(cast.Lead);

        Assert.Equal(["lead@example.org: Do not handle a snake until a lead has reviewed"], await SweepAsync());

        await site.RecordAsync(async records => Assert.Equal(
            [(cast.Lead, ReviewNews.HoldSet, true), (cast.OtherLead, ReviewNews.Opened, false)],
            (await records.ReviewNotices.AsNoTracking().ToListAsync()).OrderBy(row => row.News).Select(row => (row.PersonId, row.News, row.MailId is not null))));
    }

    [Fact]
    public async Task The_employers_week_names_who_is_on_hold_and_counts_what_was_met()
    {
        var representative = await site.RepresentativeAsync(cast.Employer);
        await AddressAsync(representative, "employer@example.org");
        await OpenAsync(cast.Worker);
        foreach (var (kind, ago) in new[] { (EncounterKind.NearMiss, 1), (EncounterKind.Sighting, 7), (EncounterKind.Sighting, 8), (EncounterKind.Sighting, 0) })
        {
            await site.AddAsync(new EncounterRecord
            {
                Id = Guid.CreateVersion7(), SiteId = cast.Site, ReporterId = cast.Worker, Kind = kind, MetOn = ProgrammeCast.Today.AddDays(-ago), MetAt = null, Place = "Gate",
                Latitude = null, Longitude = null, SpeciesId = null, Done = "", FollowUp = "", CourseId = null, Handling = EncounterHandling.Nobody, HandlerId = null,
                ReportedOn = ProgrammeCast.Today, KeptAt = RunningSite.Now,
            });
        }

        var digests = site.Services.GetRequiredService<DigestSweep>();
        await digests.RunAsync(default);
        await digests.RunAsync(default);

        await site.RecordAsync(async records =>
        {
            var mail = await records.OutgoingMails.SingleAsync();
            Assert.Equal("employer@example.org", mail.Address);
            Assert.Contains("On hold, do not ask them to move a snake until a lead has reviewed:\n- Íñigo Peña-Ruiz", mail.Text, StringComparison.Ordinal);
            Assert.Contains("in the last 7 days: 2; bites or nearly so: 1.", mail.Text, StringComparison.Ordinal);
        });
    }
}

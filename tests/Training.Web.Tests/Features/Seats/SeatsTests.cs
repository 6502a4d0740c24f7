using Microsoft.EntityFrameworkCore;
using Training.Records;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Seats;

public sealed class SeatsTests(SharedSite shared)
{
    private static readonly DateOnly Ahead = ProgrammeCast.Today.AddDays(8);

    private RunningSite Site => shared.Site;

    private sealed record Crew(Guid EmployerId, Guid SiteId, Guid Representative, Guid Worker, Guid ClassId);

    private async Task<Crew> CrewAsync(int seats = 2)
    {
        var (employerId, siteId) = await Site.EmployerAsync();
        var crew = new Crew(employerId, siteId, await Site.RepresentativeAsync(employerId), await Site.WorkerAsync(employerId, siteId, "Desmond Baca"), Guid.CreateVersion7());
        await Site.AddAsync(new ClassRecord { Id = crew.ClassId, SiteId = siteId, HeldOn = Ahead, StartsAt = new(7, 30), CourseId = "handler", Capacity = seats });
        return crew;
    }

    private static string PathOf(Crew crew) => $"/en/employers/{crew.EmployerId}/classes/{crew.ClassId}";

    private static Dictionary<string, string> Badge(Guid person) => new() { ["Id"] = Guid.CreateVersion7().ToString(), ["Badge"] = $"b-{person:N}" };

    private Task<List<Guid>> SeatedAsync(Crew crew)
    {
        List<Guid> seated = [];
        return Site.RecordAsync(async records => seated.AddRange(await records.SeatsHeld().Where(seat => seat.ClassId == crew.ClassId).Select(seat => seat.PersonId).ToListAsync()))
            .ContinueWith(_ => seated, TaskScheduler.Default);
    }

    [Fact]
    public async Task An_employer_books_its_own_people_and_nobody_elses()
    {
        var (crew, other) = (await CrewAsync(), await CrewAsync());
        using var browser = await Site.SignInAsync(crew.Representative);

        var own = await browser.PostAsync($"{PathOf(crew)}/seats", Badge(crew.Worker));
        var foreign = await browser.PostAsync($"{PathOf(crew)}/seats", Badge(other.Worker), PathOf(crew));
        var elsewhere = await browser.PostAsync($"{PathOf(other)}/seats", Badge(crew.Worker), PathOf(crew));

        Assert.Equal((303, 422, 404), (own.Status, foreign.Status, elsewhere.Status));
        Assert.Equal([crew.Worker], await SeatedAsync(crew));
        Assert.Empty(await SeatedAsync(other));
        var page = (await browser.GetAsync(PathOf(crew))).Html;
        Assert.Contains("One seat is free on 3 December 2026.", page, StringComparison.Ordinal);
        Assert.Contains("07:30 to 15:30", page, StringComparison.Ordinal);
        Assert.Contains("Desmond Baca", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Who_finds_every_seat_taken_waits_and_gets_the_next_one()
    {
        var crew = await CrewAsync(seats: 1);
        var second = await Site.WorkerAsync(crew.EmployerId, crew.SiteId, "Araceli Norcross");
        using var browser = await Site.SignInAsync(crew.Representative);

        Assert.Equal(303, (await browser.PostAsync($"{PathOf(crew)}/seats", Badge(crew.Worker))).Status);
        Assert.Equal(303, (await browser.PostAsync($"{PathOf(crew)}/seats", Badge(second))).Status);
        Assert.Contains("number 1 of 1 in line", (await browser.GetAsync(PathOf(crew))).Html, StringComparison.Ordinal);
        using var worker = await Site.SignInAsync(second);
        Assert.Contains("You are number 1 in line", (await worker.GetAsync("/en/my/classes")).Html, StringComparison.Ordinal);
        var silent = await browser.PostAsync($"{PathOf(crew)}/returns", Return(crew.Worker, ""), PathOf(crew));
        var given = await browser.PostAsync($"{PathOf(crew)}/returns", Return(crew.Worker, "on leave"), PathOf(crew));

        Assert.Equal((422, 303), (silent.Status, given.Status));
        Assert.Equal([second], await SeatedAsync(crew));
        Assert.Contains("Your next class is on 3 December 2026, at 07:30.", (await worker.GetAsync("/en/my/classes")).Html, StringComparison.Ordinal);
        await Site.RecordAsync(async records => Assert.Equal(
            ("on leave", crew.Representative), await records.SeatReturns.Where(row => row.ClassId == crew.ClassId).Select(row => ValueTuple.Create(row.Reason, row.ReturnedById)).SingleAsync()));
    }

    [Fact]
    public async Task A_worker_gives_the_own_seat_back_without_saying_why()
    {
        var crew = await CrewAsync();
        await Site.AddAsync(new ClassAttendance { ClassId = crew.ClassId, PersonId = crew.Worker });
        using var browser = await Site.SignInAsync(crew.Worker);
        var path = $"/en/my/classes/{crew.ClassId}/returns";
        var form = new Dictionary<string, string> { ["Id"] = Guid.CreateVersion7().ToString(), ["Reason"] = "" };

        Assert.Equal(303, (await browser.PostAsync(path, form, "/en/my/classes")).Status);
        Assert.Equal(303, (await browser.PostAsync(path, form, "/en/my/classes")).Status);          // the same again
        form["Reason"] = "something else";
        Assert.Equal(409, (await browser.PostAsync(path, form, "/en/my/classes")).Status);

        Assert.Empty(await SeatedAsync(crew));
        Assert.Contains("You do not come: the seat was given back.", (await browser.GetAsync("/en/my/classes")).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Nobody_gives_back_what_is_not_theirs()
    {
        var (crew, other) = (await CrewAsync(), await CrewAsync());
        await Site.AddAsync(new ClassAttendance { ClassId = crew.ClassId, PersonId = crew.Worker });
        using var worker = await Site.SignInAsync(other.Worker);
        using var employer = await Site.SignInAsync(other.Representative);

        Assert.Equal(404, (await worker.PostAsync($"/en/my/classes/{crew.ClassId}/returns", Return(crew.Worker, ""), "/en/my/classes")).Status);
        Assert.Equal(404, (await employer.PostAsync($"{PathOf(crew)}/returns", Return(crew.Worker, "on leave"), PathOf(other))).Status);
        Assert.Equal(404, (await employer.PostAsync($"{PathOf(other)}/returns", Return(crew.Worker, "on leave"), PathOf(other))).Status);

        Assert.Equal([crew.Worker], await SeatedAsync(crew));
    }

    [Fact]
    public async Task A_lead_moves_and_cancels_a_class_with_a_reason()
    {
        var crew = await CrewAsync();
        var lead = await Site.AppointedAsync(AppointedRole.ProgrammeLead);
        using var browser = await Site.SignInAsync(lead);
        var page = $"/en/programme/classes/{crew.ClassId}";
        var form = new Dictionary<string, string>
        {
            ["Id"] = Guid.CreateVersion7().ToString(), ["ToOn"] = "2026-12-09", ["ToStartsAt"] = "13:15", ["ToHours"] = "2.5", ["ToSeats"] = "3", ["ChangeReason"] = "Heat warning.",
        };

        Assert.Equal(303, (await browser.PostAsync($"{page}/changes", form, page)).Status);
        Assert.Equal(303, (await browser.PostAsync($"{page}/changes", form, page)).Status);
        Assert.Equal(409, (await browser.PostAsync($"{page}/changes", new(form) { ["ToSeats"] = "5" }, page)).Status);
        Assert.Equal(422, (await browser.PostAsync($"{page}/changes", new(form) { ["Id"] = Guid.CreateVersion7().ToString(), ["ToStartsAt"] = "late" }, page)).Status);
        var moved = (await browser.GetAsync(page)).Html;
        Assert.Equal(422, (await browser.PostAsync($"{page}/cancellation", new() { ["CancelReason"] = " " }, page)).Status);
        Assert.Equal(303, (await browser.PostAsync($"{page}/cancellation", new() { ["CancelReason"] = "Storm." }, page)).Status);
        var off = (await browser.GetAsync(page)).Html;

        Assert.Contains("3 of 3 seats are free on 9 December 2026.", moved, StringComparison.Ordinal);
        Assert.Contains("13:15 to 15:45", moved, StringComparison.Ordinal);
        Assert.Contains("Heat warning.", moved, StringComparison.Ordinal);
        Assert.Contains("The class on 9 December 2026 does not take place.", off, StringComparison.Ordinal);
        Assert.Contains("Why: Storm.", off, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_start_that_the_clocks_skip_is_refused_and_what_its_people_are_to_know_is_kept()
    {
        var crew = await CrewAsync();
        using var browser = await Site.SignInAsync(await Site.AppointedAsync(AppointedRole.ProgrammeLead));
        var page = $"/en/programme/classes/{crew.ClassId}";
        var skipped = new Dictionary<string, string>
        {
            ["Id"] = Guid.CreateVersion7().ToString(), ["ToOn"] = "2027-03-14", ["ToStartsAt"] = "02:30", ["ToHours"] = "8", ["ToSeats"] = "2", ["ChangeReason"] = "Night work.",
        };
        var briefing = new Dictionary<string, string>
        {
            ["Id"] = Guid.CreateVersion7().ToString(), ["MeetingPlace"] = "Gate 3", ["Kit"] = "2 hooks\r\n\r\n 1 bucket ", ["Weather"] = "Stop at 41 °C.",
        };

        var refused = await browser.PostAsync($"{page}/changes", skipped, page);
        Assert.Equal(303, (await browser.PostAsync($"{page}/briefings", briefing, page)).Status);
        Assert.Equal(303, (await browser.PostAsync($"{page}/briefings", briefing, page)).Status);
        Assert.Equal(409, (await browser.PostAsync($"{page}/briefings", new(briefing) { ["Kit"] = "none" }, page)).Status);

        Assert.Equal(422, refused.Status);
        Assert.Contains("The clocks of the site skip that time on that day.", refused.Html, StringComparison.Ordinal);
        await Site.RecordAsync(async records =>
        {
            var kept = await records.ClassBriefings.SingleAsync(row => row.ClassId == crew.ClassId);
            Assert.Equal(("Gate 3", "2 hooks\n1 bucket", "Stop at 41 °C."), (kept.MeetingPlace, kept.Kit, kept.Weather));
        });
    }

    private static Dictionary<string, string> Return(Guid person, string reason) => new()
    {
        ["Id"] = Guid.CreateVersion7().ToString(), ["PersonId"] = person.ToString(), ["Reason"] = reason,
    };
}

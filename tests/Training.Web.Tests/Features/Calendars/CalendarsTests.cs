using System.Diagnostics;
using System.Text.Json;
using System.Text.RegularExpressions;
using Training.Certification;
using Training.Records;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Calendars;

/// <summary>Calendars through their addresses, read by two parsers that share no code with what wrote them.</summary>
public sealed partial class CalendarsTests : IDisposable
{
    private static readonly DateOnly Today = new(2026, 11, 25);

    // Of its own: a network may read 60 times a minute.
    private readonly RunningSite site = RunningSite.Start(isDemo: false, [new("Training:Provider:TimeZone", "America/Denver")]);

    public void Dispose() => site.Dispose();

    [Fact]
    public async Task An_employer_reads_lapses_and_classes_and_a_renewal_moves_its_event()
    {
        var (employerId, place) = await site.EmployerAsync();
        var worker = await site.WorkerAsync(employerId, place);
        var (_, _, decision) = await site.HoldAsync(worker, "handler", Today.AddDays(-345), Today.AddDays(20));
        var day = new ClassRecord { Id = Guid.CreateVersion7(), SiteId = place, HeldOn = new(2027, 3, 15), StartsAt = new(7, 30), CourseId = "handler", Capacity = 4 };
        await site.AddAsync(day);
        using var browser = await site.SignInAsync(await site.RepresentativeAsync(employerId));
        var address = await MakeAsync(browser, $"/en/employers/{employerId}/calendar");

        var first = await ReadAsync(address);
        await RenewAsync(worker, decision);
        var second = await ReadAsync(address);

        Assert.Equal(
            [($"class-{day.Id}", 0, "2027-03-15T13:30Z", "2027-03-15T21:30Z"), ($"lapse-{worker}-handler", 0, "2026-12-15", "2026-12-16")],
            first.Select(one => (one.Uid, one.Sequence, one.Start, one.End)).OrderBy(one => one.Uid, StringComparer.Ordinal));
        Assert.Equal(
            [($"class-{day.Id}", 0, "2027-03-15T13:30Z", "2027-03-15T21:30Z"), ($"lapse-{worker}-handler", 1, "2027-12-15", "2027-12-16")],
            second.Select(one => (one.Uid, one.Sequence, one.Start, one.End)).OrderBy(one => one.Uid, StringComparer.Ordinal));
        Assert.Contains(first, one => one.Summary == $"B-{worker:N}: “Tool-only snake handler”, last day");
        Assert.DoesNotContain(first, one => one.Summary.Contains("Ileana", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Another_employers_people_and_classes_are_not_in_it()
    {
        var ((own, _), (other, otherPlace)) = (await site.EmployerAsync(), await site.EmployerAsync());
        await site.HoldAsync(await site.WorkerAsync(other, otherPlace), "handler", Today.AddDays(-345), Today.AddDays(20));
        await site.AddAsync(new ClassRecord { Id = Guid.CreateVersion7(), SiteId = otherPlace, HeldOn = Today.AddDays(9), CourseId = "handler", Capacity = 4 });
        using var browser = await site.SignInAsync(await site.RepresentativeAsync(own));

        Assert.Empty(await ReadAsync(await MakeAsync(browser, $"/en/employers/{own}/calendar")));
        Assert.Equal(404, (await browser.GetAsync($"/en/employers/{other}/calendar")).Status);
    }

    [Fact]
    public async Task An_instructor_reads_the_own_classes_in_their_language_and_a_cancelled_one_stays_marked()
    {
        var (_, place) = await site.EmployerAsync();
        var instructor = await site.AppointedAsync(AppointedRole.Instructor, "Winifred Oakley");
        var lead = await site.AppointedAsync(AppointedRole.ProgrammeLead);
        var (own, others) = (Guid.CreateVersion7(), Guid.CreateVersion7());
        foreach (var id in new[] { own, others })
            await site.AddAsync(new ClassRecord { Id = id, SiteId = place, HeldOn = Today.AddDays(9), CourseId = "handler", Capacity = 4 });
        await site.AddAsync(new ClassTeaching { ClassId = own, InstructorId = instructor });
        using var browser = await site.SignInAsync(instructor);
        var address = await MakeAsync(browser, "/es/my/calendar");

        var before = Assert.Single(await ReadAsync(address));
        await site.RecordAsync(async records => await records.CancelAsync(
            new() { ClassId = own, CancelledAt = RunningSite.Now, CancelledById = lead, Reason = "Storm." }, default));
        var after = Assert.Single(await ReadAsync(address));

        Assert.Equal(($"class-{own}", 0, "CONFIRMED", "Clase: Manejo de serpientes solo con herramientas"), (before.Uid, before.Sequence, before.Status, before.Summary));
        Assert.Equal((before.Uid, 1, "CANCELLED"), (after.Uid, after.Sequence, after.Status));
    }

    [Fact]
    public async Task An_address_is_shown_once_and_answers_until_it_is_ended_or_its_maker_may_no_more()
    {
        var (employerId, _) = await site.EmployerAsync();
        var representative = await site.PersonAsync("Delphine Marrow");
        await site.AddAsync(new Representative { Id = Guid.CreateVersion7(), PersonId = representative, EmployerId = employerId, StartsOn = new(2020, 1, 1), EndsOn = Today });
        using var browser = await site.SignInAsync(representative);
        var page = $"/en/employers/{employerId}/calendar";
        var form = new Dictionary<string, string> { ["Id"] = Guid.CreateVersion7().ToString() };
        var made = await browser.PostAsync($"{page}/addresses", form, page);
        var again = await browser.PostAsync($"{page}/addresses", form, page);
        var second = await MakeAsync(browser, page);
        var first = new Uri(Address().Match(made.Html).Groups["address"].Value).AbsolutePath;
        using var nobody = site.OpenBrowser();

        Assert.Equal(40, first.Length - "/calendars/.ics".Length);
        Assert.StartsWith("no-store", made.Headers["Cache-Control"], StringComparison.Ordinal);
        Assert.DoesNotMatch(Address(), again.Html);
        Assert.Contains("This address was made a moment ago", again.Html, StringComparison.Ordinal);
        Assert.Equal((200, 200, 404), ((await nobody.GetAsync(first)).Status, (await nobody.GetAsync(second)).Status, (await nobody.GetAsync($"/calendars/{new string('a', 40)}.ics")).Status));
        var list = (await browser.GetAsync(page)).Html;
        Assert.DoesNotContain(first[11..51], list, StringComparison.Ordinal);
        Assert.Equal(303, (await browser.PostAsync($"{page}/addresses/{form["Id"]}/end", [], page)).Status);
        Assert.Equal((410, 200), ((await nobody.GetAsync(first)).Status, (await nobody.GetAsync(second)).Status));

        site.Clock.Now = site.Clock.Now.AddDays(1);         // the day after the last on which they represent the employer
        Assert.Equal(410, (await nobody.GetAsync(second)).Status);
    }

    [Fact]
    public async Task The_same_calendar_is_sent_once_and_a_network_that_asks_too_often_waits()
    {
        var (employerId, place) = await site.EmployerAsync();
        await site.AddAsync(new ClassRecord { Id = Guid.CreateVersion7(), SiteId = place, HeldOn = Today.AddDays(9), CourseId = "handler", Capacity = 4 });
        using var browser = await site.SignInAsync(await site.RepresentativeAsync(employerId));
        var address = await MakeAsync(browser, $"/en/employers/{employerId}/calendar");
        using var nobody = site.OpenBrowser();

        var first = await nobody.GetAsync(address);
        nobody.Header("If-None-Match", first.Headers["ETag"]);
        var second = await nobody.GetAsync(address);

        Assert.Equal(("text/calendar; charset=utf-8", 304, 0), (first.Headers["Content-Type"], second.Status, second.Bytes.Length));
        Reply? last = null;
        for (var read = 0; read < 60 && last?.Status != 429; read++) last = await nobody.GetAsync(address);
        Assert.Equal(429, last!.Status);
        Assert.True(int.Parse(last.Headers["Retry-After"], System.Globalization.CultureInfo.InvariantCulture) > 0);
    }

    private static async Task<string> MakeAsync(PlainBrowser browser, string page)
    {
        var answer = await browser.PostAsync($"{page}/addresses", new() { ["Id"] = Guid.CreateVersion7().ToString() }, page);
        Assert.Equal(200, answer.Status);
        return new Uri(Address().Match(answer.Html).Groups["address"].Value).AbsolutePath;
    }

    private Task RenewAsync(Guid personId, Guid decisionId) => site.RecordAsync(async records =>
    {
        var first = await Microsoft.EntityFrameworkCore.EntityFrameworkQueryableExtensions.SingleAsync(records.Periods, row => row.DecisionId == decisionId);
        var decision = await Microsoft.EntityFrameworkCore.EntityFrameworkQueryableExtensions.SingleAsync(records.Decisions, row => row.Id == decisionId);
        var renewed = Guid.CreateVersion7();
        records.Add(new DecisionRecord
        {
            Id = renewed, PersonId = personId, SchemeId = first.SchemeId, CourseHash = decision.CourseHash, Route = Route.Renewal, Outcome = DecisionOutcome.Granted,
            DecidedOn = Today, Zone = decision.Zone, LeadId = null, Reasons = decision.Reasons, KeptAt = RunningSite.Now,
        });
        records.Add(new PeriodRecord
        {
            DecisionId = renewed, PersonId = personId, SchemeId = first.SchemeId, Number = 2, DecidedOn = Today, StartsOn = Today, ExpiresOn = first.ExpiresOn.AddYears(1),
            Validity = first.Validity, Window = first.Window, Grace = first.Grace,
        });
        await records.SaveChangesAsync();
    });

    private sealed record ReadEvent(string Uid, int Sequence, string Start, string End, string Summary, string Status);

    /// <summary>The events as Debian's python3-icalendar and python3-vobject read them, which must agree.</summary>
    private async Task<IReadOnlyList<ReadEvent>> ReadAsync(string address)
    {
        const string Script = """
            import sys, json, datetime, icalendar, vobject
            text = open(sys.argv[1], 'rb').read()
            def when(value):
                if not isinstance(value, datetime.datetime): return value.isoformat()
                return value.astimezone(datetime.timezone.utc).strftime('%Y-%m-%dT%H:%MZ')
            one = [dict(Uid=str(e['uid']), Sequence=int(e['sequence']), Start=when(e['dtstart'].dt), End=when(e['dtend'].dt), Summary=str(e['summary']), Status=str(e.get('status', '')))
                   for e in icalendar.Calendar.from_ical(text).walk('vevent')]
            two = [dict(Uid=e.uid.value, Sequence=int(e.sequence.value), Start=when(e.dtstart.value), End=when(e.dtend.value), Summary=e.summary.value,
                        Status=e.status.value if hasattr(e, 'status') else '') for e in vobject.readOne(text.decode()).contents.get('vevent', [])]
            assert one == two, (one, two)
            print(json.dumps(one))
            """;
        using var nobody = site.OpenBrowser();
        var answer = await nobody.GetAsync(address);
        Assert.Equal(200, answer.Status);
        var file = Path.GetTempFileName();
        await File.WriteAllBytesAsync(file, answer.Bytes);
        using var python = Process.Start(new ProcessStartInfo("/usr/bin/python3", ["-c", Script, file]) { RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false })!; // not null: started
        var said = python.StandardError.ReadToEndAsync();
        var json = await python.StandardOutput.ReadToEndAsync();
        await python.WaitForExitAsync();
        File.Delete(file);
        Assert.True(python.ExitCode == 0, $"python3-icalendar and python3-vobject are needed, and must agree: {await said}");
        return JsonSerializer.Deserialize<ReadEvent[]>(json)!; // not null: a list was printed
    }

    [GeneratedRegex("<span class=\"address\">(?<address>https?://[^<]+)</span>", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Address();
}

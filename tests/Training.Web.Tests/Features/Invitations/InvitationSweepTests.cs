using System.Diagnostics;
using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Training.Courses;
using Training.Records;
using Training.Web.Features.Reminders;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Invitations;

/// <summary>Who is told about classes, through the records and a mail server that is not ours.</summary>
public sealed class InvitationSweepTests : IAsyncLifetime
{
    // 25 November 2026, 10:44 in Denver.
    private static readonly DateOnly Today = new(2026, 11, 25);

    private readonly MailServer server = new();
    private RunningSite site = null!; // made by InitializeAsync
    private Guid lead;

    public async ValueTask InitializeAsync()
    {
        site = RunningSite.Start(isDemo: false, [.. server.Settings, new("Training:Provider:TimeZone", "America/Denver")]);
        lead = await site.AppointedAsync(AppointedRole.ProgrammeLead);
    }

    public async ValueTask DisposeAsync()
    {
        site.Dispose();
        await server.DisposeAsync();
    }

    private Task RunAsync() => site.Services.GetRequiredService<ReminderJob>().RunAsync(default);

    private async Task<Guid> PersonAsync(string? address, Language language = Language.English)
    {
        var id = await site.PersonAsync("Íñigo Peña-Ruiz", language);
        await site.RecordAsync(records => records.KeepMailAddressAsync(id, address, default));
        return id;
    }

    private async Task<Guid> ClassAsync(DateOnly? on = null, string zone = "America/Denver", int seats = 4, params Guid[] people)
    {
        var (_, place) = await site.EmployerAsync(zone);
        var day = new ClassRecord { Id = Guid.CreateVersion7(), SiteId = place, HeldOn = on ?? Today.AddDays(20), CourseId = "handler", Capacity = seats };
        await site.RecordAsync(async records =>
        {
            Assert.IsType<Kept.Stored>(await records.KeepAsync(day, default));
            foreach (var person in people) Assert.IsType<Kept.Stored>(await records.AttendAsync(day.Id, person, default));
            Assert.IsType<Kept.Stored>(await records.BriefAsync(Guid.CreateVersion7(), day.Id, "Gate 3, ñandú sign", "2 hooks", "Stop at 41 °C.", lead, RunningSite.Now, default));
        });
        return day.Id;
    }

    [Fact]
    public async Task Who_has_a_seat_is_told_once_in_their_language_with_a_file_that_two_parsers_read()
    {
        var classId = await ClassAsync(people: await PersonAsync("inigo@example.org", Language.Spanish));

        await RunAsync();
        await RunAsync();

        var mail = Assert.Single(server.Accepted);
        Assert.Equal("Clase el 15 de diciembre de 2026", mail.Subject);
        Assert.Contains("Usted tiene un lugar en una clase: “Manejo de serpientes solo con herramientas”.", mail.TextBody, StringComparison.Ordinal);
        Assert.Contains("el 15 de diciembre de 2026, de 08:00 a 16:00 (hora del sitio), en Rim Line East", mail.TextBody, StringComparison.Ordinal);
        Assert.Contains("https://training.example.org/es/my/classes", mail.TextBody, StringComparison.Ordinal);
        Assert.Contains("Stop at 41 °C.", mail.TextBody, StringComparison.Ordinal);
        var read = Assert.Single(await ReadAsync());
        Assert.Equal(
            ("PUBLISH", 0, "2026-12-15T15:00Z", "2026-12-15T23:00Z", "CONFIRMED", "Rim Line East, Gate 3, ñandú sign", "Clase: Manejo de serpientes solo con herramientas"),
            (read.Method, read.Sequence, read.Start, read.End, read.Status, read.Location, read.Summary));
        Assert.StartsWith($"class-{classId}-", read.Uid, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_class_that_moves_moves_in_the_calendar_and_one_that_is_off_is_off_there()
    {
        var classId = await ClassAsync(people: await PersonAsync("inigo@example.org"));
        await RunAsync();
        await site.RecordAsync(async records => Assert.IsType<Kept.Stored>(await records.ChangeAsync(
            Guid.CreateVersion7(), classId, new(Today.AddDays(21), new(9, 30), 240, 4), lead, "Heat warning.", RunningSite.Now, default)));
        await RunAsync();
        await site.RecordAsync(async records => Assert.IsType<Kept.Stored>(await records.CancelAsync(
            new() { ClassId = classId, CancelledAt = RunningSite.Now, CancelledById = lead, Reason = "Storm." }, default)));
        await RunAsync();
        await RunAsync();

        Assert.Equal(["Class on 15 December 2026", "Changed: class on 16 December 2026", "No class on 16 December 2026"], server.Accepted.Select(mail => mail.Subject));
        Assert.Contains("Before: on 15 December 2026, 08:00 to 16:00", server.Accepted.ElementAt(1).TextBody, StringComparison.Ordinal);
        Assert.Contains("Why: Heat warning.", server.Accepted.ElementAt(1).TextBody, StringComparison.Ordinal);
        Assert.Contains("Why: Storm.", server.Accepted.ElementAt(2).TextBody, StringComparison.Ordinal);
        var read = await ReadAsync();
        Assert.Single(read.Select(one => one.Uid).Distinct());
        Assert.Equal([(0, "CONFIRMED"), (1, "CONFIRMED"), (2, "CANCELLED")], read.Select(one => (one.Sequence, one.Status)));
        Assert.Equal(["2026-12-15T15:00Z", "2026-12-16T16:30Z", "2026-12-16T16:30Z"], read.Select(one => one.Start));
    }

    [Fact]
    public async Task Who_gives_a_seat_back_is_told_and_so_is_who_gets_it()
    {
        var (first, second) = (await PersonAsync("first@example.org"), await PersonAsync("second@example.org"));
        var classId = await ClassAsync(seats: 1, people: first);
        await site.RecordAsync(async records => Assert.IsType<Kept.Stored>(await records.WaitAsync(Guid.CreateVersion7(), classId, second, second, RunningSite.Now, default)));
        await RunAsync();
        Assert.Equal("first@example.org", Assert.Single(server.Accepted).To.Mailboxes.Single().Address);      // who waits is told nothing yet
        await site.RecordAsync(async records => Assert.IsType<Kept.Stored>(await records.GiveBackAsync(
            Guid.CreateVersion7(), classId, first, first, null, RunningSite.Now, default)));

        await RunAsync();

        Assert.Equal(
            [("first@example.org", "Not expected on 15 December 2026"), ("second@example.org", "Class on 15 December 2026")],
            server.Accepted.Skip(1).Select(mail => (mail.To.Mailboxes.Single().Address, mail.Subject)).Order());
    }

    [Fact]
    public async Task A_seat_that_came_free_while_the_program_was_killed_is_given_by_the_next_look()
    {
        var (first, second) = (await PersonAsync("first@example.org"), await PersonAsync("second@example.org"));
        var classId = await ClassAsync(seats: 1, people: first);
        await site.RecordAsync(async records => Assert.IsType<Kept.Stored>(await records.WaitAsync(Guid.CreateVersion7(), classId, second, second, RunningSite.Now, default)));
        // Given back, and nothing after it: as a machine leaves it that lost its power.
        await site.AddAsync(new SeatReturn { Id = Guid.CreateVersion7(), ClassId = classId, PersonId = first, Turn = 1, ReturnedAt = RunningSite.Now, ReturnedById = first, Reason = null });

        await RunAsync();

        await site.RecordAsync(async records => Assert.Equal([second], await records.SeatsHeld().Where(seat => seat.ClassId == classId).Select(seat => seat.PersonId).ToListAsync()));
        Assert.Equal("second@example.org", Assert.Single(server.Accepted).To.Mailboxes.Single().Address);
    }

    [Fact]
    public async Task Five_days_before_the_class_a_reminder_goes_out_once()
    {
        await ClassAsync(people: await PersonAsync("inigo@example.org"));
        await RunAsync();
        foreach (var days in new[] { 14, 15, 15, 16, 19, 20 })
        {
            site.Clock.Now = RunningSite.Now.AddDays(days);
            await RunAsync();
        }

        Assert.Equal(["Class on 15 December 2026", "Class soon: 15 December 2026"], server.Accepted.Select(mail => mail.Subject));
        await site.RecordAsync(async records => Assert.Equal(RunningSite.Now.AddDays(15), (await records.ClassReminders.SingleAsync()).MadeAt));
    }

    [Fact]
    public async Task Who_has_no_address_is_told_by_the_list_of_their_crew()
    {
        var (employerId, place) = await site.EmployerAsync();
        var worker = await site.WorkerAsync(employerId, place, "Desmond Baca");
        var representative = await site.RepresentativeAsync(employerId);
        var classId = await ClassAsync(people: worker);
        using var browser = await site.SignInAsync(representative);

        await RunAsync();
        var told = (await browser.GetAsync($"/en/employers/{employerId}/crew-lists")).Html;
        await site.RecordAsync(async records => await records.GiveBackAsync(Guid.CreateVersion7(), classId, worker, worker, null, RunningSite.Now, default));
        await RunAsync();
        var toldAgain = (await browser.GetAsync($"/en/employers/{employerId}/crew-lists")).Html;

        Assert.Empty(server.Accepted);
        Assert.Contains("expected on 15 December 2026, 08:00, at Rim Line East.", told, StringComparison.Ordinal);
        Assert.Contains("on 15 December 2026 at Rim Line East: not expected any more.", toldAgain, StringComparison.Ordinal);
        Assert.DoesNotContain(": expected on", toldAgain, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2026-12-10T05:00:00Z", 20, 0)]     // 22:00 in Denver: quiet
    [InlineData("2026-12-10T15:00:00Z", 20, 1)]     // 8:00
    [InlineData("2026-12-15T12:00:00Z", 20, 1)]     // 5:00 of the class's own day: it cannot wait
    [InlineData("2026-12-16T15:00:00Z", 20, 0)]     // the day after it
    public async Task The_quiet_hours_hold_but_for_the_day_itself(string now, int daysAhead, int told)
    {
        await ClassAsync(Today.AddDays(daysAhead), people: await PersonAsync("inigo@example.org"));
        site.Clock.Now = DateTimeOffset.Parse(now, System.Globalization.CultureInfo.InvariantCulture);

        await RunAsync();

        Assert.Equal(told, server.Accepted.Count);
    }

    [Fact]
    public async Task Two_sweeps_at_once_tell_everybody_once()
    {
        var people = new List<Guid>();
        for (var person = 0; person < 8; person++) people.Add(await PersonAsync($"person-{person}@example.org"));
        await ClassAsync(seats: 8, people: [.. people]);

        await Task.WhenAll(RunAsync(), RunAsync());
        site.Clock.Now += MailKeeping.Lease;
        await RunAsync();

        Assert.Equal(8, server.Accepted.Select(mail => mail.MessageId).Distinct().Count());
        await site.RecordAsync(async records => Assert.Equal(8, await records.ClassInvitations.CountAsync()));
    }

    [Fact]
    public async Task Who_teaches_or_scores_is_told_too()
    {
        var teacher = await site.AppointedAsync(AppointedRole.Instructor, "Winifred Oakley");
        await site.RecordAsync(records => records.KeepMailAddressAsync(teacher, "winifred@example.org", default));
        var classId = await ClassAsync();
        await site.RecordAsync(async records => Assert.IsType<Kept.Stored>(await records.TeachAsync(classId, teacher, default)));

        await RunAsync();

        var mail = Assert.Single(server.Accepted);
        Assert.Contains("You teach a class", mail.TextBody, StringComparison.Ordinal);
        Assert.Contains("https://training.example.org/en/class-days", mail.TextBody, StringComparison.Ordinal);
        Assert.DoesNotContain("my/classes", mail.TextBody, StringComparison.Ordinal);
    }

    private sealed record ReadFile(string Uid, string Method, int Sequence, string Start, string End, string Summary, string Location, string Status);

    /// <summary>The attached files as Python's <c>email</c>, Debian's python3-icalendar and python3-vobject read them; the last two must agree.</summary>
    private async Task<IReadOnlyList<ReadFile>> ReadAsync()
    {
        const string Script = """
            import sys, json, email, email.policy, datetime, icalendar, vobject
            def utc(value): return value.astimezone(datetime.timezone.utc).strftime('%Y-%m-%dT%H:%MZ')
            read = []
            for path in sys.argv[1:]:
                mail = email.message_from_binary_file(open(path, 'rb'), policy=email.policy.default)
                part, = [part for part in mail.walk() if part.get_content_type() == 'text/calendar']
                assert part.get_filename() == 'class.ics' and part.get_content_disposition() == 'attachment'
                text = part.get_payload(decode=True)
                first = icalendar.Calendar.from_ical(text)
                assert part.get_param('method') == first['method']
                e, = first.walk('vevent')
                one = dict(Uid=str(e['uid']), Method=str(first['method']), Sequence=int(e['sequence']), Start=utc(e['dtstart'].dt), End=utc(e['dtend'].dt),
                           Summary=str(e['summary']), Location=str(e['location']), Status=str(e['status']))
                second = vobject.readOne(text.decode(part.get_content_charset()))
                v = second.vevent
                two = dict(Uid=v.uid.value, Method=second.method.value, Sequence=int(v.sequence.value), Start=utc(v.dtstart.value), End=utc(v.dtend.value),
                           Summary=v.summary.value, Location=v.location.value, Status=v.status.value)
                assert one == two, (one, two)
                read.append(one)
            print(json.dumps(read))
            """;
        var files = new List<string>();
        foreach (var bytes in server.Received)
        {
            var file = Path.GetTempFileName();
            await File.WriteAllBytesAsync(file, bytes);
            files.Add(file);
        }

        using var python = Process.Start(new ProcessStartInfo("/usr/bin/python3", ["-c", Script, .. files])
        {
            RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false,
        })!; // not null: started
        var said = python.StandardError.ReadToEndAsync();
        var json = await python.StandardOutput.ReadToEndAsync();
        await python.WaitForExitAsync();
        foreach (var file in files) File.Delete(file);
        Assert.True(python.ExitCode == 0, $"python3-icalendar and python3-vobject are needed, and must agree: {await said}");
        return JsonSerializer.Deserialize<ReadFile[]>(json)!; // not null: a list was printed
    }
}

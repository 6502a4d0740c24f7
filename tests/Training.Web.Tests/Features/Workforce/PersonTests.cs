using Training.Courses;
using Training.Records;
using Training.Scoring;
using Training.Web.Features.Workforce;
using Training.Web.Tests.House;
using static Training.Web.Tests.Features.Workforce.OwnPeople;

namespace Training.Web.Tests.Features.Workforce;

public sealed class PersonTests(SharedSite shared)
{
    private RunningSite Site => shared.Site;

    [Fact]
    public async Task The_page_of_a_worker_shows_the_evidence_and_no_question()
    {
        var (employer, site) = await Site.EmployerAsync();
        var (serial, worker, _) = await Site.IssueAsync("handler", Day("2025-11-03"), Day("2026-12-07"), "Niamh O’Dowd");
        await EmployAsync(worker, employer, site);
        var (teacher, scorer) = (await Site.AppointedAsync(AppointedRole.Instructor, "Rosalía Ibáñez Cuevas"), await Site.AppointedAsync(AppointedRole.Instructor, "Theodora Vance"));
        await KeepResultsAsync(worker, site, teacher, scorer);
        using var browser = await Site.SignInAsync(await Site.RepresentativeAsync(employer));

        var english = await browser.GetAsync($"/en/employers/{employer}/people/{worker}");
        var spanish = await browser.GetAsync($"/es/employers/{employer}/people/{worker}");

        Assert.Equal("Niamh O’Dowd: renew “Tool-only snake handler” by 7 December 2026.", english.Says());
        Assert.Equal("Niamh O’Dowd: renovar “Manejo de serpientes solo con herramientas” a más tardar el 7 de diciembre de 2026.", spanish.Says());
        foreach (var told in new[]
        {
            "3 November 2025 Granted. Current through 7 December 2026. Decided by the published rule.",
            "3 November 2026 quiz “Tool-only snake handler” not passed yet the answer key",
            "passed Theodora Vance Counts by a written exception",
            "10 November 2026 Rosalía Ibáñez Cuevas",
            "3 November 2025 Tool-only snake handler granted the published rule",
            $"7 December 2026 {serial}",
        }) Assert.Contains(told, english.Text(), StringComparison.Ordinal);
        Assert.Contains($"/en/verify/{serial.Value}", english.Html, StringComparison.Ordinal);
        Assert.Contains("aún no aprobado", spanish.Html, StringComparison.Ordinal);
        Assert.DoesNotContain("Only the lead reads this", english.Html, StringComparison.Ordinal);
        Assert.DoesNotContain(Site.Shelf.Find("handler")!.Questions[0].Id, english.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_not_current_comes_before_what_is()
    {
        var (employer, site) = await Site.EmployerAsync();
        var worker = await Site.HandlerAsync(employer, site, "Dario Venn", "2027-06-01");
        var (one, other) = (await Site.AppointedAsync(AppointedRole.ProgrammeLead), await Site.AppointedAsync(AppointedRole.ProgrammeLead));
        await Site.HoldAsync(worker, "awareness", Day("2025-11-03"), Day("2027-11-03"));
        await Site.AddAsync(new WithdrawalRecord
        {
            Id = Guid.CreateVersion7(), PersonId = worker, SchemeId = "handler", PeriodNumber = 1, WithdrawnOn = Day("2026-11-20"), LeadId = one,
            ConfirmedById = other, Reason = "Not the employer's to read", KeptAt = RunningSite.Now,
        });
        using var browser = await Site.SignInAsync(await Site.RepresentativeAsync(employer));

        var answer = await browser.GetAsync($"/en/employers/{employer}/people/{worker}");

        Assert.Equal("Dario Venn: “Tool-only snake handler” was withdrawn.", answer.Says());
        Assert.DoesNotContain("Not the employer's", answer.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Somebody_without_anything_holds_nothing_yet()
    {
        var (employer, site) = await Site.EmployerAsync();
        var worker = await Site.WorkerAsync(employer, site, "عمر بن الخطيب");
        using var browser = await Site.SignInAsync(await Site.RepresentativeAsync(employer));

        var answer = await browser.GetAsync($"/en/employers/{employer}/people/{worker}");

        Assert.Equal("عمر بن الخطيب holds nothing yet.", answer.Says());
        Assert.Contains("<bdi>عمر بن الخطيب</bdi>", answer.Html, StringComparison.Ordinal);
        Assert.DoesNotContain("<svg", answer.Html, StringComparison.Ordinal);
    }

    [Fact]
    public void The_strip_draws_a_renewed_period_up_to_the_next_and_a_withdrawn_one_up_to_its_day()
    {
        var terms = Site.Shelf.Find("handler")!.Scheme.Terms;
        Certification.Period Period(int number, string startsOn, string expiresOn) => new(number, Day(startsOn), Day(startsOn), Day(expiresOn), terms);
        var held = new Certification.HeldCertification(
            Guid.Empty, "handler", [Period(1, "2024-01-31", "2025-01-31"), Period(2, "2025-01-01", "2026-01-31")],
            [], [new(Day("2025-07-01"), Guid.Empty, Guid.Empty, "")]);

        var strip = TimeStrip.Of(held, Day("2026-01-01"));

        Assert.Equal(2, strip.Bars.Count);
        Assert.Equal(strip.Bars[1].X, strip.Bars[0].X + strip.Bars[0].Width, 1);
        Assert.InRange(strip.Bars[1].X + strip.Bars[1].Width, strip.Bars[1].X, strip.Today);
        Assert.Null(strip.Grace);
        Assert.Equal([2024, 2025, 2026], strip.Years.Select(year => year.Year).Prepend(2024).Distinct());
    }

    private Task EmployAsync(Guid worker, Guid employer, Guid site) => Site.AddAsync(
        new Employment { Id = Guid.CreateVersion7(), PersonId = worker, EmployerId = employer, StartsOn = Day("2020-01-01") },
        new SiteAssignment { Id = Guid.CreateVersion7(), PersonId = worker, SiteId = site, StartsOn = Day("2020-01-01") });

    private async Task KeepResultsAsync(Guid worker, Guid site, Guid teacher, Guid scorer)
    {
        var course = Site.Shelf.Find("handler")!;
        var (classId, sittingId, sheetId) = (Guid.CreateVersion7(), Guid.CreateVersion7(), Guid.CreateVersion7());
        await Site.AddAsync(
            new ClassRecord { Id = classId, SiteId = site, HeldOn = Day("2026-11-10"), CourseId = course.Id, Capacity = 5 },
            new ClassAttendance { ClassId = classId, PersonId = worker },
            new ClassTeaching { ClassId = classId, InstructorId = teacher },
            new SittingRecord
            {
                Id = sittingId, FormId = Guid.CreateVersion7(), Copy = 1, ContentHash = new('0', 64), PersonId = worker, CourseHash = course.Hash,
                QuizId = course.Quiz.Id, Seed = 1, StartedAt = RunningSite.Now, SubmittedAt = RunningSite.Now, TakenOn = Day("2026-11-03"),
                Zone = "America/Denver", KeptAt = RunningSite.Now,
            },
            new SittingResultRecord
            {
                Id = Guid.CreateVersion7(), SittingId = sittingId, Number = 1, CourseHash = course.Hash, IsPassed = false, Points = 1, MaxPoints = 20,
                Reasons = "[]", GradedAt = RunningSite.Now,
            },
            new ScoresheetRecord
            {
                Id = sheetId, FormId = Guid.CreateVersion7(), Copy = 1, ContentHash = new('1', 64), ClassId = classId, CandidateId = worker,
                InstructorId = scorer, CourseHash = course.Hash, ChecklistId = course.Checklists[0].Id, ChecklistVersion = course.Checklists[0].Version,
                Subject = Subject.Model, Try = 1, StoppedAtStep = null, Language = Language.English, IsIdentityConfirmed = true,
                SignedAt = RunningSite.Now, ScoredOn = Day("2026-11-10"), Zone = "America/Denver", Remarks = "", AirTemperature = null, Kit = "", SignedName = "", Surroundings = "", KeptAt = RunningSite.Now,
            },
            new ScoresheetResultRecord
            {
                Id = Guid.CreateVersion7(), ScoresheetId = sheetId, Number = 1, ChecklistVersion = course.Checklists[0].Version,
                Outcome = PracticalOutcome.Passed, Points = 40, MaxPoints = 40, Reasons = "[]", GradedAt = RunningSite.Now,
            },
            new SeparationReasonRecord
            {
                ScoresheetId = sheetId, WriterId = teacher, Reason = "Only the lead reads this", WrittenAt = RunningSite.Now,
            });
    }
}

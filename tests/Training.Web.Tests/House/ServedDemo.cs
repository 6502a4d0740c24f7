using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Scoring;
using Training.Web.Doors;
using Training.Web.Features.Reminders;
using Training.Web.Tests.Demo;
using Role = Training.Web.Doors.Role;

namespace Training.Web.Tests.House;

/// <summary>The whole demo, served: people of every role with work of their own, and others with theirs.</summary>
public sealed class ServedDemo : IAsyncLifetime
{
    /// <summary>Who stands for each role.</summary>
    internal static readonly IReadOnlyDictionary<Role, string> Actors = new Dictionary<Role, string>
    {
        [Role.Worker] = "araceli.norcross",
        [Role.Instructor] = "winifred.oakley",
        [Role.Employer] = "delphine.marrow",
        [Role.ProgrammeLead] = "marguerite.ashcombe",
    };

    /// <summary>Of every account of the demo.</summary>
    internal const string Password = "open gate closed lid";

    private static readonly DateTimeOffset Now = new(MadeDemo.Today, new(17, 44), TimeSpan.Zero);

    private readonly MadeDemo demo = new();
    private readonly KeyValuePair<string, string>[] settings;

    // One of each type in the open sitting, which looks different each: the first question among them.
    private IReadOnlyList<int> questionNumbers = [1];

    private readonly string folder = Directory.CreateTempSubdirectory("training-served-").FullName;

    internal RunningSite Site { get; private set; } = null!; // made by InitializeAsync

    /// <summary>What belongs to the actors.</summary>
    internal Belongings Own { get; private set; } = null!; // made by InitializeAsync

    /// <summary>What belongs to others like them.</summary>
    internal Belongings Foreign { get; private set; } = null!; // made by InitializeAsync

    public ServedDemo()
        : this([])
    {
    }

    /// <summary>The demo with settings of a test's own.</summary>
    internal ServedDemo(KeyValuePair<string, string>[] settings) => this.settings = settings;

    public async ValueTask InitializeAsync()
    {
        await demo.InitializeAsync();
        var database = Path.Combine(folder, "training.db");
        await using (var connection = new SqliteConnection($"Data Source={demo.Place.Database}"))
        {
            await connection.OpenAsync();
            await using var copy = connection.CreateCommand();
            copy.CommandText = "VACUUM INTO $file";
            copy.Parameters.AddWithValue("$file", database);
            await copy.ExecuteNonQueryAsync();
        }

        Site = RunningSite.Start(isDemo: true,
        [
            new("Training:Database:Connection", $"Data Source={database}"),
            new("Training:PublicAddress", "http://localhost:5080"),
            new("Training:Provider:TimeZone", "America/Phoenix"),
            new("Training:Verify:ChecksPerMinute", "10000"),
            .. settings,
        ]);
        Site.Clock.Now = Now;
        // The site that serves the demo signs with the keys that its papers were signed with.
        foreach (var file in Directory.EnumerateFiles(Path.Combine(demo.Place.Folder, "keys"))) File.Copy(file, Path.Combine(Site.DataFolder, "keys", Path.GetFileName(file)), overwrite: true);
        await Site.Services.GetRequiredService<ReminderSweep>().RunAsync(CancellationToken.None);
        Own = await BelongingsAsync("araceli.norcross", "winifred.oakley", "delphine.marrow", "joaquin.penuelas");
        Foreign = await BelongingsAsync("delbert.prado", "nestor.guerena", "osgood.laramore", "theodora.vance");
    }

    public async ValueTask DisposeAsync()
    {
        Site.Dispose();
        await demo.DisposeAsync();
        Directory.Delete(folder, recursive: true);
    }

    /// <summary>A browser signed in as one of the demo's accounts.</summary>
    internal async Task<PlainBrowser> SignInAsync(string signInName)
    {
        var browser = Site.OpenBrowser();
        var answer = await browser.PostAsync("/en/sign-in", new() { ["Name"] = signInName, ["Password"] = Password });
        Assert.Equal(303, answer.Status);
        return browser;
    }

    /// <summary>
    /// Every page once in each language, seen by the first role that may (null: a stranger), list made from the addresses of the running
    /// site; open work and finished work both. HTML as sent, entities and all.
    /// </summary>
    internal async Task<IReadOnlyList<(Role? Role, string Path, string Html)>> PagesAsync()
    {
        var pages = new List<(Role? Role, string Path, string Html)>();
        foreach (Role? role in (Role?[])[null, .. Actors.Keys.Select(role => (Role?)role)])
        {
            using var browser = role is null ? Site.OpenBrowser() : await SignInAsync(Actors[role.Value]);
            foreach (var (endpoint, _) in Addresses.Of(Site).Where(address => address.Method == "GET"))
            {
                var rows = DoorKeeper.Rows(endpoint, "GET");
                if (!rows.Any(row => role is null ? row.Whose == Whose.Public : row.Roles.Contains(role.Value))) continue;
                foreach (var path in Paths(endpoint).Where(path => pages.All(page => page.Path != path)))
                {
                    var answer = await browser.GetAsync(path);
                    if (answer.Status is 200 or 404 && answer.Headers["Content-Type"].StartsWith("text/html", StringComparison.Ordinal))
                        pages.Add((role, path, System.Text.Encoding.UTF8.GetString(answer.Bytes)));
                }
            }
        }

        return pages;
    }

    private IEnumerable<string> Paths(Microsoft.AspNetCore.Routing.RouteEndpoint endpoint) =>
        from language in new[] { "en", "es" }
        from isFinished in new[] { false, true }
        let path = Addresses.Path(endpoint, Own, language, isFinished)
        from number in path.EndsWith("/questions/1", StringComparison.Ordinal) ? questionNumbers : [1]
        select number == 1 ? path : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{path[..^1]}{number}");

    private async Task<Belongings> BelongingsAsync(string worker, string instructor, string representative, string lead)
    {
        Belongings? found = null;
        await Site.RecordAsync(async records =>
        {
            var workerId = await PersonAsync(records, worker);
            var instructorId = await PersonAsync(records, instructor);
            var representativeId = await PersonAsync(records, representative);
            var employerId = await records.Representatives.Where(row => row.PersonId == representativeId).Select(row => row.EmployerId).SingleAsync();
            var employed = from employment in records.Employments
                           where employment.EmployerId == employerId && employment.EndsOn == null
                           select employment.PersonId;
            var certified = await records.Periods.Where(period => period.SchemeId == "handler" && employed.Contains(period.PersonId)
                    && period.ExpiresOn > MadeDemo.Today && !records.Suspensions.Any(row => row.PersonId == period.PersonId)
                    && !records.Withdrawals.Any(row => row.PersonId == period.PersonId))
                .OrderBy(period => period.PersonId).FirstAsync();
            var sheet = await StartSheetAsync(records, instructorId);
            var (panel, outsideJudge) = await OpenPanelAsync(records, workerId);
            var siteId = await records.Sites.Where(row => row.EmployerId == employerId).OrderBy(row => row.NameKey).Select(row => row.Id).FirstAsync();
            var (bitePlanAddress, bitePlanSecret) = await BitePlanAddressAsync(records, siteId, await PersonAsync(records, lead));
            found = new(
                employerId, certified.PersonId, sheet.ClassId, sheet.CandidateId, sheet.Id,
                await records.Scoresheets.Where(row => row.InstructorId == instructorId && row.Copy == 1).Select(row => row.FormId).FirstAsync(),
                await StartSittingAsync(records, workerId),
                await records.Sittings.Where(row => row.PersonId == workerId && row.Copy == 1).Select(row => row.FormId).FirstAsync(),
                await (from period in records.Periods
                       where period.PersonId == workerId
                       join paper in records.Papers on period.DecisionId equals paper.DecisionId
                       select paper.Serial).FirstAsync(),
                await ProposeAsync(records, certified, await PersonAsync(records, lead)),
                await SendRosterAsync(records, employerId, representativeId, null),
                await SendRosterAsync(records, employerId, representativeId, Now),
                await GiveUpMailAsync(records, workerId),
                siteId,
                await RepresentAsync(records, certified.PersonId, employerId),
                await RoundAsync(records, isOpen: true),
                await RoundAsync(records, isOpen: false),
                await CorrectAsync(records, await PersonAsync(records, lead)),
                panel,
                outsideJudge,
                await records.KitPieces.OrderBy(row => row.LabelKey).Select(row => row.Id).FirstAsync(),
                await AppealAsync(records, workerId),
                await MeetAsync(records, workerId, certified.PersonId, EncounterKind.Sighting),
                await ReviewAsync(records, await MeetAsync(records, workerId, certified.PersonId, EncounterKind.NearMiss)),
                await SeatAsync(records, employerId, workerId),
                await FeedAsync(records, representativeId, employerId),
                await FeedAsync(records, instructorId, null),
                await PlanAsync(records, employerId, await PersonAsync(records, lead)),
                await RunAsync(records, certified, await PersonAsync(records, lead)),
                Site.Shelf.Find("handler")!.Hash, // not null: the shipped course
                bitePlanAddress,
                bitePlanSecret);
        });
        return found!; // not null: set above
    }

    private static async Task<Guid> MeetAsync(RecordsContext records, Guid reporterId, Guid handlerId, EncounterKind kind)
    {
        var site = await records.FindSiteAsync(reporterId, MadeDemo.Today, CancellationToken.None);
        var encounter = new EncounterRecord
        {
            Id = Guid.CreateVersion7(), SiteId = site!.Id, ReporterId = reporterId, Kind = kind, MetOn = MadeDemo.Today, MetAt = null, Place = "At the gate", // not null: the demo's workers have one
            Latitude = null, Longitude = null, SpeciesId = null, Done = "", FollowUp = "", CourseId = null, ReportedOn = MadeDemo.Today, KeptAt = Now,
            Handling = kind == EncounterKind.Sighting ? EncounterHandling.Nobody : EncounterHandling.Named,
            HandlerId = kind == EncounterKind.Sighting ? null : handlerId,
        };
        Assert.IsType<Kept.Stored>(await records.KeepAsync(encounter, null, new HashSet<string> { "handler" }, CancellationToken.None));
        return encounter.Id;
    }

    private static Task<Guid> ReviewAsync(RecordsContext records, Guid eventId) =>
        records.Reviews.Where(review => review.EventId == eventId).Select(review => review.Id).SingleAsync();

    private static Task<Guid> PersonAsync(RecordsContext records, string signInName)
    {
        var key = KeyText.Of(signInName);
        return records.Accounts.Where(account => account.NormalizedUserName == key).Select(account => account.PersonId).SingleAsync();
    }

    private static async Task<Guid> FeedAsync(RecordsContext records, Guid personId, Guid? employerId)
    {
        var feed = new CalendarFeed
        {
            Id = Guid.CreateVersion7(), SecretHash = AddressSecret.HashOf(AddressSecret.New()), PersonId = personId, EmployerId = employerId, Language = Language.English, MadeAt = Now,
        };
        Assert.True(await records.TryKeepAsync(feed, CancellationToken.None));
        return feed.Id;
    }

    private static async Task<(Guid Id, string Secret)> BitePlanAddressAsync(RecordsContext records, Guid siteId, Guid leadId)
    {
        var secret = AddressSecret.New();
        var address = new BitePlanAddress
        {
            Id = Guid.CreateVersion7(), SecretHash = AddressSecret.HashOf(secret), SiteId = siteId, MadeFor = "Saltbush Valley Hospital", LeadId = leadId, MadeAt = Now,
        };
        Assert.True(await records.TryKeepAsync(address, CancellationToken.None));
        return (address.Id, secret);
    }

    // A class ahead at the employer's first site, where the worker has a seat and once waited.
    private static async Task<Guid> SeatAsync(RecordsContext records, Guid employerId, Guid workerId)
    {
        var siteId = await records.Sites.Where(row => row.EmployerId == employerId).OrderBy(row => row.NameKey).Select(row => row.Id).FirstAsync();
        var day = new ClassRecord { Id = Guid.CreateVersion7(), SiteId = siteId, HeldOn = MadeDemo.Today.AddDays(33), CourseId = "handler", Capacity = 6 };
        Assert.IsType<Kept.Stored>(await records.KeepAsync(day, CancellationToken.None));
        Assert.IsType<Kept.Stored>(await records.AttendAsync(day.Id, workerId, CancellationToken.None));
        var waiting = new ClassWaiting { Id = Guid.CreateVersion7(), ClassId = day.Id, PersonId = workerId, Turn = 1, AskedAt = Now, AskedById = workerId };
        records.AddRange(waiting, new ClassWaitingEnd { WaitingId = waiting.Id, EndedAt = Now, EndedById = null });
        await records.SaveChangesAsync();
        records.ChangeTracker.Clear();
        return day.Id;
    }

    private async Task<Guid> StartSittingAsync(RecordsContext records, Guid personId)
    {
        var course = Site.Shelf.Find("awareness")!; // not null: the shipped course
        var types = course.Questions.ToDictionary(question => question.Id, question => question.Key.GetType(), StringComparer.Ordinal);
        var draw = Enumerable.Range(1, 20_000).Select(seed => QuizDraw.From(course, (ulong)seed))
            .First(draw => draw.Questions.Select(drawn => types[drawn.QuestionId]).Distinct().Count() == types.Values.Distinct().Count());
        questionNumbers = [.. draw.Questions.Index().DistinctBy(drawn => types[drawn.Item.QuestionId]).Select(drawn => drawn.Index + 1)];
        var id = await records.StartSittingAsync(Guid.CreateVersion7(), personId, draw, MadeDemo.Today, "America/Phoenix", ReadOut.Nobody, Now, CancellationToken.None);
        return id!.Value; // not null: the id is new
    }

    private async Task<StartedScoresheet> StartSheetAsync(RecordsContext records, Guid instructorId)
    {
        var course = Site.Shelf.Find("handler")!; // not null: the shipped course
        var seat = await (from scorer in records.ClassScorers
                          where scorer.InstructorId == instructorId
                          join attendance in records.ClassAttendances on scorer.ClassId equals attendance.ClassId
                          join day in records.Classes on scorer.ClassId equals day.Id
                          where !records.Scoresheets.Any(sheet => sheet.ClassId == day.Id && sheet.CandidateId == attendance.PersonId)
                          orderby day.HeldOn descending, attendance.PersonId
                          select new { scorer.ClassId, attendance.PersonId }).FirstAsync();
        var sheet = new StartedScoresheet
        {
            Id = Guid.CreateVersion7(), ClassId = seat.ClassId, CandidateId = seat.PersonId, InstructorId = instructorId, CourseHash = course.Hash,
            ChecklistId = course.Checklists[0].Id, ChecklistVersion = course.Checklists[0].Version, Subject = Subject.Model, Try = 1,
            Language = Language.English, StartedAt = Now, IsIdentityConfirmed = true, Surroundings = "Gravel pad, shade, light wind.",
            Kit = "H-02", InstructionsReadAt = Now,
        };
        Assert.IsType<Kept.Stored>(await records.StartAsync(sheet, TryChoice.Next, MadeDemo.Today, CancellationToken.None));
        return sheet;
    }

    private static Task<Guid> RoundAsync(RecordsContext records, bool isOpen) => records.CalibrationRounds
        .Where(round => records.CalibrationEnds.Any(end => end.RoundId == round.Id) != isOpen).OrderBy(round => round.OpenedAt).Select(round => round.Id).FirstAsync();

    // A text that nobody was asked: the page is there, and no result changes.
    private static async Task<Guid> CorrectAsync(RecordsContext records, Guid leadId)
    {
        var correction = new KeyCorrectionRecord
        {
            Id = Guid.CreateVersion7(), CourseId = "awareness", QuizId = "awareness-quiz", QuestionId = "bullsnake-friend", QuestionVersion = "an earlier text",
            Remedy = CorrectionRemedy.LeaveOut, ByHash = null, ByVersion = null, Reason = "Two answers were right.", LeadId = leadId, MadeAt = Now,
        };
        await records.KeepAsync(correction, null, CancellationToken.None);
        return correction.Id;
    }

    private async Task<(Guid Panel, Guid OutsideJudge)> OpenPanelAsync(RecordsContext records, Guid personId)
    {
        var course = Site.Shelf.Find("awareness")!; // not null: the shipped course
        var panel = new Panel
        {
            Id = Guid.CreateVersion7(), CourseId = course.Id, CourseHash = course.Hash, TargetId = course.Quiz.Id,
            ItemIds = [.. course.Questions.Select(question => question.Id)], Purpose = "A pass mark to defend.", JustCompetent = "Keeps back.",
            Balance = "One of the crew, one from outside.", LeadId = personId, OpenedAt = Now,
        };
        Assert.IsType<Kept.Stored>(await records.KeepAsync(panel, CancellationToken.None));
        var outsider = Guid.CreateVersion7();
        foreach (var (id, person) in new[] { (Guid.CreateVersion7(), (Guid?)personId), (outsider, null) })
        {
            Assert.IsType<Kept.Stored>(await records.KeepAsync(
                new PanelJudge
                {
                    Id = id, PanelId = panel.Id, Number = 0, PersonId = person, OutsiderName = person is null ? "Ottoline Vetch" : null,
                    Qualification = "Works there.", AddedById = personId, AddedAt = Now,
                },
                CancellationToken.None));
        }

        return (panel.Id, outsider);
    }

    private static async Task<Guid> GiveUpMailAsync(RecordsContext records, Guid personId)
    {
        var mail = new OutgoingMail
        {
            Id = Guid.CreateVersion7(), PersonId = personId, Address = "nobody@example.org", Language = Language.English, Subject = "A reminder", Text = "A reminder",
            MadeAt = Now, NextTryAt = Now, GivenUpAt = Now, LastAnswer = "Mailbox unavailable",
        };
        records.Add(mail);
        await records.SaveChangesAsync();
        return mail.Id;
    }

    private static async Task<Guid> RepresentAsync(RecordsContext records, Guid personId, Guid employerId)
    {
        var row = new Representative { Id = Guid.CreateVersion7(), PersonId = personId, EmployerId = employerId, StartsOn = MadeDemo.Today.AddDays(30) };
        Assert.IsType<Kept.Stored>(await records.KeepAsync(row, CancellationToken.None));
        return row.Id;
    }

    private static async Task<Guid> AppealAsync(RecordsContext records, Guid personId)
    {
        var id = Guid.CreateVersion7();
        var appeal = new NewAppeal(
            id, personId, AppealMatter.Complaint, id, "The class began an hour late, and nobody said so.", personId, MadeDemo.Today, "America/Phoenix");
        Assert.IsType<Kept.Stored>(await records.KeepAsync(appeal, null, Now, CancellationToken.None));
        return id;
    }

    private static async Task<Guid> PlanAsync(RecordsContext records, Guid employerId, Guid leadId)
    {
        var plan = new ClassPlanRecord
        {
            Id = Guid.CreateVersion7(), EmployerId = employerId, SchemeId = "handler", CourseId = "handler", StartsOn = MadeDemo.Today.AddDays(1),
            EndsOn = MadeDemo.Today.AddDays(60), Weekdays = 62, Seats = 12, MostClassesADay = 1, MostClassesEach = 10, MostTravelMinutes = 120, MarginDays = 7, People = 0,
            LeastClasses = 0, LeastUnmet = 0, IsSearchCut = false, LeadId = leadId, KeptAt = Now,
        };
        Assert.IsType<Kept.Stored>(await records.KeepAsync(plan, [], CancellationToken.None));
        return plan.Id;
    }

    // A run whose one paper was there already.
    private static async Task<Guid> RunAsync(RecordsContext records, PeriodRecord period, Guid leadId)
    {
        var run = new PaperRun
        {
            Id = Guid.CreateVersion7(), Kind = PaperRunKind.Missing, EmployerId = null, SchemeId = period.SchemeId, Reason = "The printer was out of ink.",
            LeadId = leadId, StartedAt = Now,
        };
        records.AddRange(run, new PaperRunItem { RunId = run.Id, Position = 1, DecisionId = period.DecisionId, Revision = 1 });
        await records.SaveChangesAsync();
        return run.Id;
    }

    private static async Task<Guid> SendRosterAsync(RecordsContext records, Guid employerId, Guid sentById, DateTimeOffset? appliedAt)
    {
        var site = await records.Sites.Where(row => row.EmployerId == employerId).OrderBy(row => row.NameKey).Select(row => row.Name).FirstAsync();
        var content = System.Text.Encoding.UTF8.GetBytes($"badge,name,site,crew,shoe size\nR-1041,Solveig Amaro,{site},North,38\n");
        var upload = new RosterUpload
        {
            Id = Guid.CreateVersion7(), FormId = Guid.CreateVersion7(), EmployerId = employerId, SentById = sentById, SentAt = Now,
            FileName = "roster.csv", Content = content, Sha256 = Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(content)),
            AppliedAt = appliedAt, AppliedById = appliedAt is null ? null : sentById, NewCount = appliedAt is null ? 0 : 1,
        };
        Assert.IsType<Kept.Stored>(await records.KeepAsync(upload, CancellationToken.None));
        return upload.Id;
    }

    private static async Task<Guid> ProposeAsync(RecordsContext records, PeriodRecord period, Guid leadId)
    {
        var id = Guid.CreateVersion7();
        Assert.IsType<Kept.Stored>(await records.ProposeWithdrawalAsync(
            id, period.PersonId, period.SchemeId, leadId, "Handled without a second person, twice.", MadeDemo.Today, Now, CancellationToken.None));
        return id;
    }
}

/// <summary>Ids of what belongs to a worker, an instructor, an employer and a lead's table.</summary>
internal sealed record Belongings(
    Guid EmployerId, Guid EmployeeId, Guid ClassId, Guid CandidateId, Guid OpenSheetId, Guid SignedSheetId, Guid OpenSittingId, Guid SentSittingId,
    string Serial, Guid ProposalId, Guid OpenRosterId, Guid AppliedRosterId, Guid MailId, Guid SiteId,
    Guid RoleId, Guid OpenRoundId, Guid ClosedRoundId, Guid CorrectionId, Guid PanelId, Guid OutsideJudgeId, Guid PieceId, Guid AppealId, Guid EncounterId,
    Guid ReviewId, Guid SeatClassId, Guid EmployerFeedId, Guid OwnFeedId, Guid PlanId, Guid RunId, string SchemeHash,
    Guid BitePlanAddressId, string BitePlanSecret);

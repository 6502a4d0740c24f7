using CsCheck;
using Microsoft.EntityFrameworkCore;
using Training.Courses;

namespace Training.Records.Tests;

public abstract partial class RecordsTests
{
    private static readonly DateOnly YearsAgo = new(2024, 1, 1);

    private static RosterRow RosterRow(Cast cast, string badge, string name = "Solveig Amaro Quist", string? crew = null, Guid? site = null) =>
        new(2, badge, name, site ?? cast.Site, site is null ? "Block 7" : "Block 8", crew, null, null, Cast.Today);

    private static Roster RosterOf(params RosterRow[] rows) => new(rows, SaysCrew: true, SaysMailAddress: true);

    private async Task<RosterDifference> DifferenceAsync(Cast cast, Roster roster, DateOnly? day = null)
    {
        await using var records = Database.Open();
        return RosterDifference.Between(await records.RosterPeopleAsync(cast.Employer, day ?? Cast.Today, Cancellation), roster);
    }

    private async Task<Guid> UploadAsync(Cast cast, Guid? formId = null)
    {
        await using var records = Database.Open();
        var upload = new RosterUpload
        {
            Id = Guid.CreateVersion7(), FormId = formId ?? Guid.CreateVersion7(), EmployerId = cast.Employer, SentById = cast.Lead, SentAt = Cast.Now,
            FileName = "roster.csv", Content = [1, 2, 3], Sha256 = new('a', 64),
        };
        return await records.KeepAsync(upload, Cancellation) switch
        {
            Kept.Stored stored => stored.Id,
            Kept.AlreadyStored stored => stored.Id,
            var other => throw new InvalidOperationException(other.ToString()),
        };
    }

    private async Task<Kept> ApplyAsync(Cast cast, Roster roster, RosterScope scope = RosterScope.Part, DateOnly? day = null, Guid? upload = null)
    {
        var fingerprint = (await DifferenceAsync(cast, roster, day)).Fingerprint();
        await using var records = Database.Open();
        return await records.ApplyAsync(
            new(upload ?? await UploadAsync(cast), cast.Employer, roster, day ?? Cast.Today, fingerprint, scope, cast.Lead, Cast.Now), Cancellation);
    }

    private async Task<RosterPerson> OnRosterAsync(Cast cast, string badge, DateOnly? day = null)
    {
        await using var records = Database.Open();
        return (await records.RosterPeopleAsync(cast.Employer, day ?? Cast.Today, Cancellation)).Single(person => person.BadgeKeys.Contains(badge));
    }

    [Fact]
    public async Task A_roster_brings_people_with_all_their_work_and_then_says_nothing_new()
    {
        var cast = await Cast.CreateAsync(Database);
        var roster = RosterOf(
            RosterRow(cast, "A-1", crew: "North") with { Language = Language.Spanish, MailAddress = "solveig@example.org" },
            RosterRow(cast, "A-2", "Anselm Pike", crew: "north"));

        Assert.IsType<Kept.Stored>(await ApplyAsync(cast, roster));

        var person = await OnRosterAsync(cast, "A-1");
        Assert.Equal(
            ("Solveig Amaro Quist", cast.Site, "North", Language.Spanish, "solveig@example.org", true),
            (person.Name, person.SiteId, person.Crew, person.Language, person.MailAddress, person.IsEmployed));
        Assert.Equal("North", (await OnRosterAsync(cast, "A-2")).Crew);
        Assert.True((await DifferenceAsync(cast, roster)).IsNothing);
    }

    [Fact]
    public async Task What_changes_ends_the_day_before_and_twice_on_one_day_leaves_the_last()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var site = new Site { Id = Guid.CreateVersion7(), EmployerId = cast.Employer, Name = "Block 8", Zone = "America/Denver", Region = "US" };
        Assert.IsType<Kept.Stored>(await records.KeepAsync(site, Cancellation));
        Assert.IsType<Kept.Stored>(await ApplyAsync(cast, RosterOf(RosterRow(cast, "A-1", crew: "North") with { StartsOn = YearsAgo })));

        Assert.IsType<Kept.Stored>(await ApplyAsync(cast, RosterOf(RosterRow(cast, "A-1", "Solveig Quist", "North", site.Id))));
        var last = RosterOf(RosterRow(cast, "a-1 ", "Solveig Amaro", "South", site.Id));
        Assert.IsType<Kept.Stored>(await ApplyAsync(cast, last));
        Assert.IsType<Kept.Stored>(await ApplyAsync(cast, RosterOf(RosterRow(cast, "A-1", "Solveig Amaro", "South"))));
        Assert.IsType<Kept.Stored>(await ApplyAsync(cast, last));

        Assert.True((await DifferenceAsync(cast, last)).IsNothing);
        var id = (await OnRosterAsync(cast, "A-1")).PersonId;
        var names = await records.PersonNames.Where(row => row.PersonId == id).OrderBy(row => row.StartsOn).Select(row => row.Text).ToListAsync(Cancellation);
        Assert.Equal(["Solveig Amaro Quist", "Solveig Amaro"], names);
        var places = await records.SiteAssignments.Where(row => row.PersonId == id).OrderBy(row => row.StartsOn).ToListAsync(Cancellation);
        Assert.Equal([(cast.Site, YearsAgo, Cast.Today.AddDays(-1)), (site.Id, Cast.Today, null)], places.Select(row => (row.SiteId, row.StartsOn, row.EndsOn)));
        Assert.Equal("South", (await OnRosterAsync(cast, "A-1")).Crew);
    }

    [Fact]
    public async Task A_name_that_a_paper_printed_keeps_its_text()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var made = await cast.KeepGrantedAsync(Database);
        records.Add(new Employment { Id = Guid.CreateVersion7(), PersonId = cast.Worker, EmployerId = cast.Employer, StartsOn = YearsAgo });
        records.Add(new Badge { Id = Guid.CreateVersion7(), PersonId = cast.Worker, EmployerId = cast.Employer, StartsOn = YearsAgo, Number = "A-1" });
        var printed = new PersonName { Id = Guid.CreateVersion7(), PersonId = cast.Worker, Text = "Íñigo Peña", StartsOn = Cast.Today };
        records.Add(printed);
        records.Add(new PaperRecord
        {
            Id = Guid.CreateVersion7(), DecisionId = made.Id, Revision = 1, Serial = Guid.CreateVersion7().ToString("N"), PersonNameId = printed.Id,
            IssuedAt = Cast.Now,
        });
        await records.SaveChangesAsync(Cancellation);

        Assert.IsType<Kept.Stored>(await ApplyAsync(cast, RosterOf(RosterRow(cast, "A-1", "Íñigo Ruiz"))));

        await using var read = Database.Open();
        Assert.Equal("Íñigo Peña", (await read.PersonNames.SingleAsync(row => row.Id == printed.Id, Cancellation)).Text);
        Assert.Equal("Íñigo Ruiz", (await OnRosterAsync(cast, "A-1")).Name);
    }

    [Fact]
    public async Task Who_is_missing_leaves_only_with_a_whole_roster_and_may_come_back_the_same_day()
    {
        var cast = await Cast.CreateAsync(Database);
        var both = RosterOf(RosterRow(cast, "A-1") with { StartsOn = YearsAgo }, RosterRow(cast, "A-2", "Anselm Pike"));
        var one = RosterOf(both.Rows[0]);
        await ApplyAsync(cast, both);

        Assert.IsType<Kept.Stored>(await ApplyAsync(cast, one));
        Assert.True((await OnRosterAsync(cast, "A-2")).IsEmployed);
        Assert.IsType<Kept.Stored>(await ApplyAsync(cast, RosterOf(both.Rows[1]), RosterScope.Whole));
        Assert.Equal(Cast.Today.AddDays(-1), (await OnRosterAsync(cast, "A-1")).LeftOn);
        Assert.Single((await DifferenceAsync(cast, one)).Returning);
        Assert.IsType<Kept.Stored>(await ApplyAsync(cast, one, RosterScope.Whole));
        Assert.IsType<Kept.Stored>(await ApplyAsync(cast, both, RosterScope.Whole));

        Assert.True((await DifferenceAsync(cast, both)).IsNothing);
        await using var records = Database.Open();
        var id = (await OnRosterAsync(cast, "A-1")).PersonId;
        var work = await records.Employments.Where(row => row.PersonId == id).OrderBy(row => row.StartsOn).ToListAsync(Cancellation);
        Assert.Equal([(YearsAgo, Cast.Today.AddDays(-1)), (Cast.Today, null)], work.Select(row => (row.StartsOn, row.EndsOn)));
    }

    [Fact]
    public async Task A_roster_is_applied_once_however_often_it_is_sent()
    {
        var cast = await Cast.CreateAsync(Database);
        var roster = RosterOf(RosterRow(cast, "A-1"));
        var form = Guid.CreateVersion7();
        var upload = await UploadAsync(cast, form);

        var kept = await Task.WhenAll(Enumerable.Range(0, 4).Select(_ => Task.Run(() => ApplyAsync(cast, roster, upload: upload))));

        Assert.Equal(upload, await UploadAsync(cast, form));
        Assert.Single(kept.OfType<Kept.Stored>());
        Assert.Equal(3, kept.OfType<Kept.AlreadyStored>().Count());
        await using var records = Database.Open();
        var row = await records.RosterUploads.SingleAsync(row => row.Id == upload, Cancellation);
        Assert.Equal((1, 0, 0, 0, cast.Lead), (row.NewCount, row.ReturningCount, row.ChangedCount, row.LeavingCount, row.AppliedById));
    }

    [Fact]
    public async Task What_was_looked_at_is_what_is_applied_or_nothing_is()
    {
        var cast = await Cast.CreateAsync(Database);
        var roster = RosterOf(RosterRow(cast, "A-1"), RosterRow(cast, "A-2", "Anselm Pike"));
        var seen = (await DifferenceAsync(cast, roster)).Fingerprint();
        var upload = await UploadAsync(cast);
        await ApplyAsync(cast, RosterOf(roster.Rows[1]));
        await using var records = Database.Open();

        var kept = await records.ApplyAsync(new(upload, cast.Employer, roster, Cast.Today, seen, RosterScope.Part, cast.Lead, Cast.Now), Cancellation);

        Assert.Equal([RecordsProblems.RosterChanged], Codes(kept));
        Assert.Single((await DifferenceAsync(cast, roster)).New);
        Assert.Null((await records.RosterUploads.SingleAsync(row => row.Id == upload, Cancellation)).AppliedAt);
    }

    [Fact]
    public async Task Another_employers_badges_and_sites_are_left_alone()
    {
        var (cast, other) = (await Cast.CreateAsync(Database), await Cast.CreateAsync(Database));
        await ApplyAsync(other, RosterOf(RosterRow(other, "A-1", "Somebody Else")));
        var roster = RosterOf(RosterRow(cast, "A-1"));

        Assert.Single((await DifferenceAsync(cast, roster)).New);
        Assert.IsType<Kept.Stored>(await ApplyAsync(cast, roster));
        var both = (await OnRosterAsync(cast, "A-1")).PersonId;
        await using var records = Database.Open();
        Assert.IsType<Kept.Stored>(await records.KeepAsync(new NewWork(both, Cast.Today.AddDays(1), other.Employer, "B-9", other.Site), Cancellation));

        var later = Cast.Today.AddDays(2);
        Assert.True((await DifferenceAsync(cast, roster, later)).IsNothing);
        Assert.IsType<Kept.Stored>(await ApplyAsync(cast, RosterOf(RosterRow(cast, "A-1", "Solveig Quist", "North")), day: later));
        Assert.Equal(other.Site, (await records.FindSiteAsync(both, later, Cancellation))?.Id);
        Assert.Equal("Somebody Else", (await OnRosterAsync(other, "A-1")).Name);
    }

    [Fact]
    public async Task A_file_that_nobody_applied_goes_after_thirty_days()
    {
        var cast = await Cast.CreateAsync(Database);
        var stale = await UploadAsync(cast);
        await using var records = Database.Open();

        await records.KeepAsync(
            new RosterUpload
            {
                Id = Guid.CreateVersion7(), FormId = Guid.CreateVersion7(), EmployerId = cast.Employer, SentById = cast.Lead,
                SentAt = Cast.Now.AddDays(30).AddSeconds(1), FileName = "roster.csv", Content = [1], Sha256 = new('b', 64),
            },
            Cancellation);

        Assert.False(await records.RosterUploads.AnyAsync(row => row.Id == stale, Cancellation));
    }

    [Fact]
    public async Task After_any_rosters_on_any_days_the_last_one_says_nothing_new()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var other = new Site { Id = Guid.CreateVersion7(), EmployerId = cast.Employer, Name = "Block 8", Zone = "America/Denver", Region = "US" };
        Assert.IsType<Kept.Stored>(await records.KeepAsync(other, Cancellation));
        var row =
            from name in Gen.OneOf("Solveig Amaro", "Anselm Pike", "Íñigo Peña")
            from site in Gen.OneOf<Guid?>(null, other.Id)
            from crew in Gen.OneOf<string?>(null, "North", "South")
            from language in Gen.OneOf<Language?>(null, Language.English, Language.Spanish)
            from address in Gen.OneOf<string?>(null, "crew@example.org")
            from shift in Gen.Int[-400, 40]
            select RosterRow(cast, "", name, crew, site) with { Language = language, MailAddress = address, StartsOn = Cast.Today.AddDays(shift) };
        var roster = Gen.Select(
            Gen.Shuffle(new[] { "A-1", "A-2", "A-3", "A-4" }), row.Array[4], Gen.Int[0, 4], Gen.Bool, Gen.Bool, Gen.Int[0, 2], Gen.Enum<RosterScope>(),
            (badges, rows, count, crews, addresses, days, scope) => (
                Roster: new Roster([.. rows.Take(count).Select((row, at) => new RosterRow(
                    at + 2, badges[at], row.Name, row.SiteId, row.SiteName, crews ? row.Crew : null, row.Language, addresses ? row.MailAddress : null, row.StartsOn))], crews, addresses),
                Days: days, Scope: scope));
        var day = Cast.Today;

        foreach (var (next, days, scope) in await Task.Run(() => Rosters(roster)))
        {
            day = day.AddDays(days);
            Assert.IsType<Kept.Stored>(await ApplyAsync(cast, next, scope, day));

            var difference = await DifferenceAsync(cast, next, day);
            Assert.Equal((0, 0, 0), (difference.New.Count, difference.Returning.Count, difference.Changed.Count));
            if (scope == RosterScope.Whole) Assert.Empty(difference.Missing);
            await AssertNoOverlapAsync(cast);
        }
    }

    // One employer lives through all of them, so that each starts from what the ones before left.
    private static List<(Roster Roster, int Days, RosterScope Scope)> Rosters(Gen<(Roster, int, RosterScope)> roster)
    {
        var all = new List<(Roster, int, RosterScope)>();
        roster.Sample(all.Add, iter: 60, threads: 1);
        return all;
    }

    private async Task AssertNoOverlapAsync(Cast cast)
    {
        await using var records = Database.Open();
        var people = records.Badges.Where(badge => badge.EmployerId == cast.Employer).Select(badge => badge.PersonId);
        DatedRow[][] kinds =
        [
            [.. await records.Employments.AsNoTracking().Where(row => people.Contains(row.PersonId)).ToListAsync(Cancellation)],
            [.. await records.SiteAssignments.AsNoTracking().Where(row => people.Contains(row.PersonId)).ToListAsync(Cancellation)],
            [.. await records.CrewAssignments.AsNoTracking().Where(row => people.Contains(row.PersonId)).ToListAsync(Cancellation)],
        ];
        foreach (var rows in kinds)
        {
            Assert.DoesNotContain(rows, row => rows.Any(other => other.Id != row.Id && other.PersonId == row.PersonId
                && !(row.EndsOn < other.StartsOn) && !(other.EndsOn < row.StartsOn)));
        }
    }
}

using Microsoft.EntityFrameworkCore;
using Training.Courses;

namespace Training.Records.Tests;

public abstract partial class RecordsTests
{
    /// <summary>The only test that makes accounts: it needs a database without any.</summary>
    [Fact]
    public async Task Of_two_with_one_code_one_becomes_the_first_lead_whole_and_nobody_after_them()
    {
        var hash = Cast.NewHash();
        await using var one = Database.Open();
        await using var other = Database.Open();
        await one.KeepAsync(new FirstLeadCode { Id = Guid.CreateVersion7(), CodeHash = hash, MadeAt = Cast.Now, EndsAt = Cast.Now.AddDays(7) }, Cancellation);
        var (first, second) = (ALead("ximena"), ALead("bram"));
        Assert.False(await one.MakeFirstLeadAsync(first, Cast.NewHash(), Cast.Now, Cancellation));
        Assert.False(await one.MakeFirstLeadAsync(first, hash, Cast.Now.AddDays(7), Cancellation));
        Assert.True(await one.IsWithoutAccountsAsync(Cancellation));

        var made = await Task.WhenAll(
            one.MakeFirstLeadAsync(first, hash, Cast.Now, Cancellation), other.MakeFirstLeadAsync(second, hash, Cast.Now, Cancellation));

        var winner = made[0] ? first : second;
        var loser = made[0] ? second : first;
        Assert.Single(made, isMade => isMade);
        await using var records = Database.Open();
        Assert.Equal(winner.Account.UserName, await records.Accounts.Select(account => account.UserName).SingleAsync(Cancellation));
        Assert.False(await records.Persons.AnyAsync(person => person.Id == loser.Account.PersonId, Cancellation));
        Assert.Equal("Ximena Albarrán", (await records.FindNameAsync(winner.Account.PersonId, Cast.Today, Cancellation))?.Text);
        Assert.Equal(
            AppointedRole.ProgrammeLead,
            await records.Appointments.Where(row => row.PersonId == winner.Account.PersonId).Select(row => row.Role).SingleAsync(Cancellation));
        var newer = Cast.NewHash();
        await records.KeepAsync(new FirstLeadCode { Id = Guid.CreateVersion7(), CodeHash = newer, MadeAt = Cast.Now, EndsAt = Cast.Now.AddDays(7) }, Cancellation);
        Assert.False(await records.MakeFirstLeadAsync(loser, newer, Cast.Now, Cancellation));
    }

    [Fact]
    public async Task Details_of_the_provider_are_kept_once_and_the_newest_serve()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        // Later than those of any other test.
        var later = Cast.Now.AddYears(50);
        ProviderDetails Details(string name, DateTimeOffset at) => new()
        {
            Id = Guid.CreateVersion7(), LeadId = cast.Lead, SinceAt = at, Name = name, Address = "12 Spillway Road", Zone = "America/Phoenix", Region = "US-AZ",
        };
        var newest = Details("Newest", later);
        await records.KeepAsync(newest, Cancellation);
        await records.KeepAsync(Details("Older", later.AddDays(-1)), Cancellation);
        await records.KeepAsync(newest, Cancellation);

        Assert.Equal("Newest", (await records.FindProviderDetailsAsync(Cancellation))?.Name);
    }

    [Fact]
    public async Task The_newest_choice_of_courses_serves_in_its_order()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var later = Cast.Now.AddYears(50);
        await records.KeepAsync(new CourseChoice { Id = Guid.CreateVersion7(), LeadId = cast.Lead, SinceAt = later, CourseIds = ["handler", "awareness"] }, Cancellation);
        await records.KeepAsync(new CourseChoice { Id = Guid.CreateVersion7(), LeadId = cast.Lead, SinceAt = later.AddDays(-1), CourseIds = ["awareness"] }, Cancellation);

        Assert.Equal(["handler", "awareness"], (await records.FindCourseChoiceAsync(Cancellation))?.CourseIds);
    }

    [Fact]
    public async Task The_newest_review_of_a_questions_own_version_decides_whether_it_is_asked()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var course = ACourse(cast.CourseId, "a", "b", "c");
        QuestionReview Review(string question, ReviewOutcome outcome, int minute, string version = "1") => new()
        {
            FormId = Guid.CreateVersion7(), CourseId = cast.CourseId, QuestionId = question, QuestionVersion = version, Outcome = outcome,
            ReviewerId = cast.Lead, ReviewedAt = Cast.Now.AddMinutes(minute),
        };

        await records.KeepAsync([Review("a", ReviewOutcome.Accepted, 1)], Cancellation);
        await records.KeepAsync([Review("b", ReviewOutcome.Accepted, 1)], Cancellation);
        await records.KeepAsync([Review("b", ReviewOutcome.SetAside, 2)], Cancellation);
        await records.KeepAsync([Review("c", ReviewOutcome.Accepted, 1, version: "0")], Cancellation);
        var again = Review("a", ReviewOutcome.Accepted, 3);
        await records.KeepAsync([again], Cancellation);
        await records.KeepAsync([again], Cancellation);

        Assert.Equal(["a"], (await records.AskedAsync(course, Cancellation)).Questions.Select(question => question.Id));
        Assert.Equal(4, await records.QuestionReviews.CountAsync(review => review.CourseId == cast.CourseId && review.QuestionVersion == "1", Cancellation));
    }

    [Fact]
    public async Task The_newest_numbers_of_a_site_serve_and_those_of_another_do_not()
    {
        var cast = await Cast.CreateAsync(Database);
        var other = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        EmergencyNumbers Numbers(Guid site, string onSite, int minute) => new()
        {
            Id = Guid.CreateVersion7(), SiteId = site, LeadId = cast.Lead, EmergencyServices = "911", PoisonControl = "1-800-222-1222", OnSite = onSite,
            WithoutSignal = "Radio", CheckedOn = Cast.Today, KeptAt = Cast.Now.AddMinutes(minute),
        };

        await records.KeepAsync(Numbers(cast.Site, "old", 1), Cancellation);
        await records.KeepAsync(Numbers(cast.Site, "new", 2), Cancellation);
        await records.KeepAsync(Numbers(other.Site, "elsewhere", 3), Cancellation);

        Assert.Equal("new", (await records.FindEmergencyNumbersAsync(cast.Site, Cancellation))?.OnSite);
    }

    [Fact]
    public async Task The_newest_list_of_a_sites_snakes_serves_also_where_it_is_empty_and_the_same_form_is_one_list()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        SiteSpecies List(int minute, params string[] species) => new()
        {
            Id = Guid.CreateVersion7(), SiteId = cast.Site, LeadId = cast.Lead, SpeciesIds = species, KeptAt = Cast.Now.AddMinutes(minute),
        };

        Assert.Null(await records.FindSiteSpeciesAsync(cast.Site, Cancellation));
        var first = List(1, "sidewinder", "texas-coral-snake");
        await records.KeepAsync(first, Cancellation);
        await records.KeepAsync(first, Cancellation);
        Assert.Equal(["sidewinder", "texas-coral-snake"], (await records.FindSiteSpeciesAsync(cast.Site, Cancellation))?.SpeciesIds);
        await records.KeepAsync(List(2), Cancellation);

        Assert.Equal([], (await records.FindSiteSpeciesAsync(cast.Site, Cancellation))?.SpeciesIds);
        Assert.Equal(2, await records.SiteSpecies.CountAsync(row => row.SiteId == cast.Site, Cancellation));
    }

    [Fact]
    public async Task A_role_ends_once_on_its_last_day_and_one_that_begins_later_on_its_first()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var ahead = new Representative { Id = Guid.CreateVersion7(), PersonId = cast.Worker, EmployerId = cast.Employer, StartsOn = Cast.Today.AddDays(9) };
        await records.KeepAsync(ahead, Cancellation);
        var lead = await records.Appointments.Where(row => row.PersonId == cast.Lead).Select(row => row.Id).SingleAsync(Cancellation);

        Assert.True(await records.EndAsync<Appointment>(cast.Lead, lead, Cast.Today, Cancellation));
        Assert.False(await records.EndAsync<Appointment>(cast.Lead, lead, Cast.Today.AddDays(1), Cancellation));
        Assert.False(await records.EndAsync<Appointment>(cast.OtherLead, lead, Cast.Today, Cancellation));
        Assert.True(await records.EndAsync<Representative>(cast.Worker, ahead.Id, Cast.Today, Cancellation));

        Assert.Equal(Cast.Today, (await records.Appointments.AsNoTracking().SingleAsync(row => row.Id == lead, Cancellation)).EndsOn);
        Assert.Equal(Cast.Today.AddDays(9), (await records.Representatives.AsNoTracking().SingleAsync(row => row.Id == ahead.Id, Cancellation)).EndsOn);
    }

    private static FirstLead ALead(string name) => new(
        new Account { Id = Guid.CreateVersion7(), PersonId = Guid.CreateVersion7(), UserName = name, NormalizedUserName = KeyText.Of(name) },
        "Ximena Albarrán", Language.Spanish, Cast.Today);

    /// <summary>A course that only asks: nothing else of it is looked at here.</summary>
    private static Course ACourse(string id, params string[] questions) => new(
        id, Cast.NewHash(), null! /* its rules are not asked for */, [], [], [],
        [.. questions.Select(question => new Question(
            question, "meeting", "step-back", Difficulty.Easy, false, new("meeting", "stop"), "F-TEST-01", [], ["a"], new QuestionKey.One("a"),
            new Dictionary<Language, QuestionWords>(), "1"))],
        new Quiz("quiz", 80, null, []), [], new Dictionary<Language, CourseWords>(), []);
}

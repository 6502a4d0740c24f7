using Training.Records;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.FirstDay;

/// <summary>Where the first day goes on; the whole way on a phone is in the browser tests.</summary>
public sealed class FirstDayControllerTests : IDisposable
{
    private readonly RunningSite site = RunningSite.StartEmpty();

    public void Dispose() => site.Dispose();

    private static async Task<string> NextAsync(PlainBrowser lead)
    {
        var html = (await lead.GetAsync("/en/programme/first-day")).Html;
        var at = html.IndexOf("class=\"do\" href=\"", StringComparison.Ordinal) + "class=\"do\" href=\"".Length;
        return html[at..html.IndexOf('"', at)];
    }

    [Fact]
    public async Task Each_step_leads_to_where_its_next_thing_is_to_be_done()
    {
        var person = await site.AppointedAsync(AppointedRole.ProgrammeLead);
        using var lead = await site.SignInAsync(person);
        Assert.Equal("/en/programme/provider#address", await NextAsync(lead));

        await site.AddAsync(new AddressConfirmation { Address = "https://training.example.org/", LeadId = person, ConfirmedAt = RunningSite.Now });
        Assert.Equal("/en/programme/provider#details", await NextAsync(lead));

        await site.AddAsync(new ProviderDetails
        {
            Id = Guid.CreateVersion7(), LeadId = person, SinceAt = RunningSite.Now, Name = "A", Address = "B", Zone = "America/Phoenix", Region = "US",
        });
        Assert.Equal("/en/programme/employers#add", await NextAsync(lead));

        var (employer, place) = (Guid.CreateVersion7(), Guid.CreateVersion7());
        await site.AddAsync(new Employer { Id = employer, Name = "Salt Fork Wind" });
        Assert.Equal($"/en/programme/employers/{employer}#add", await NextAsync(lead));

        await site.AddAsync(new Records.Site { Id = place, EmployerId = employer, Name = "Ridge 4", Zone = "America/Phoenix", Region = "US-AZ" });
        Assert.Equal($"/en/programme/sites/{place}#numbers", await NextAsync(lead));

        await site.AddAsync(new EmergencyNumbers
        {
            Id = Guid.CreateVersion7(), SiteId = place, LeadId = person, EmergencyServices = "911", PoisonControl = "1", OnSite = "2", WithoutSignal = "3",
            CheckedOn = new(2026, 11, 25), KeptAt = RunningSite.Now,
        });
        Assert.Equal("/en/programme/courses#use", await NextAsync(lead));

        var page = "/en/programme/courses";
        await lead.PostAsync("/en/programme/course-choices", new() { ["Id"] = Guid.CreateVersion7().ToString(), ["CourseIds"] = "awareness" }, page);
        Assert.Equal("/en/programme/courses/awareness/questions", await NextAsync(lead));

        await site.LookAsync();
        Assert.Equal($"/en/employers/{employer}/roster", await NextAsync(lead));

        await site.WorkerAsync(employer, place);
        Assert.Equal("/en/programme/classes#add", await NextAsync(lead));

        var day = Guid.CreateVersion7();
        await site.AddAsync(new ClassRecord { Id = day, SiteId = place, HeldOn = new(2026, 12, 3), CourseId = "awareness", Capacity = 12 });
        Assert.Equal("/en/programme/people#add", await NextAsync(lead));

        var teacher = await site.AppointedAsync(AppointedRole.Instructor);
        Assert.Equal($"/en/programme/classes/{day}", await NextAsync(lead));

        await site.AddAsync(new ClassTeaching { ClassId = day, InstructorId = teacher });
        Assert.Equal("/en/programme/people", await NextAsync(lead));
        Assert.Contains("First day: 6 of 7 steps done.", (await lead.GetAsync("/en/programme")).Html, StringComparison.Ordinal);

        await site.IssueAsync("awareness", new(2026, 11, 25), new(2028, 11, 25));
        Assert.Contains("Your first day is over", (await lead.GetAsync("/en/programme/first-day")).Html, StringComparison.Ordinal);
        Assert.DoesNotContain("First day:", (await lead.GetAsync("/en/programme")).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Only_a_lead_is_told_how_far_the_first_day_is()
    {
        var (employer, _) = await site.EmployerAsync();
        using var representative = await site.SignInAsync(await site.RepresentativeAsync(employer));

        Assert.DoesNotContain("First day:", (await representative.GetAsync($"/en/employers/{employer}/roster")).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_course_that_is_not_used_is_offered_to_nobody_and_one_must_be()
    {
        using var lead = await site.SignInAsync(await site.AppointedAsync(AppointedRole.ProgrammeLead));
        await site.LookAsync();
        using var worker = await site.SignInAsync(await site.PersonAsync());
        const string page = "/en/programme/courses";

        var none = await lead.PostAsync("/en/programme/course-choices", new() { ["Id"] = Guid.CreateVersion7().ToString() }, page);
        Assert.Equal(422, none.Status);
        Assert.Contains("Choose at least one course.", none.Html, StringComparison.Ordinal);
        Assert.Equal(200, (await worker.GetAsync("/en/my/courses/handler/quiz")).Status);

        await lead.PostAsync("/en/programme/course-choices", new() { ["Id"] = Guid.CreateVersion7().ToString(), ["CourseIds"] = "awareness" }, page);

        Assert.Equal((200, 404), ((await worker.GetAsync("/en/my/courses/awareness/quiz")).Status, (await worker.GetAsync("/en/my/courses/handler/quiz")).Status));
        Assert.DoesNotContain("/en/my/courses/handler", (await worker.GetAsync("/en/my")).Html, StringComparison.Ordinal);
        Assert.DoesNotContain("/en/courses/handler\"", (await worker.GetAsync("/en")).Html, StringComparison.Ordinal);
        // Who holds it may renew it.
        var holder = await site.PersonAsync();
        await site.HoldAsync(holder, "handler", new(2025, 12, 20), new(2026, 12, 20));
        using var holding = await site.SignInAsync(holder);
        Assert.Equal((200, 200), ((await holding.GetAsync("/en/my/courses/handler")).Status, (await holding.GetAsync("/en/my/courses/handler/quiz")).Status));
    }
}

using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Appeals;

public sealed class AppealsControllerTests(SharedSite shared)
{
    private const string Mine = "/en/my/appeals";
    private const string Programme = "/en/programme/appeals";

    private static Dictionary<string, string> Form(AppealMatter matter, Guid? of, string words = "I closed the lid before the stop.", Guid? id = null) => new(StringComparer.Ordinal)
    {
        ["Id"] = (id ?? Guid.CreateVersion7()).ToString(), ["Matter"] = matter.ToString(), ["Of"] = of?.ToString() ?? "", ["Words"] = words,
    };

    private static Dictionary<string, string> Outcome(AppealOutcome outcome, AppealRemedy? remedy, string reason = "The light was too poor to see the lid.") => new(StringComparer.Ordinal)
    {
        ["Outcome"] = outcome.ToString(), ["Remedy"] = remedy?.ToString() ?? "", ["Reason"] = reason, ["NoPart"] = "true",
    };

    private async Task<Guid> SheetOfAsync(ProgrammeCast cast)
    {
        var id = Guid.Empty;
        await shared.Site.RecordAsync(async records => id = await records.Scoresheets
            .Where(sheet => sheet.CandidateId == cast.Worker && sheet.Subject == Subject.Model).OrderBy(sheet => sheet.Id).Select(sheet => sheet.FormId).FirstAsync());
        return id;
    }

    private Task AddressAsync(Guid person) => shared.Site.RecordAsync(records => records.Persons.Where(one => one.Id == person)
        .ExecuteUpdateAsync(set => set.SetProperty(one => one.MailAddress, $"{person:N}@example.org")));

    private async Task<IReadOnlyList<OutgoingMail>> MailsAsync(Guid person)
    {
        IReadOnlyList<OutgoingMail> mails = [];
        await shared.Site.RecordAsync(async records => mails = await records.OutgoingMails.AsNoTracking().Where(mail => mail.PersonId == person).OrderBy(mail => mail.Id).ToListAsync());
        return mails;
    }

    [Fact]
    public async Task From_the_contest_to_the_closing_letter_each_step_is_shown_and_written_once()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        await cast.PassEverythingAsync();
        await AddressAsync(cast.Worker);
        var sheet = await SheetOfAsync(cast);
        using var worker = await shared.Site.SignInAsync(cast.Worker);
        using var lead = await shared.Site.SignInAsync(cast.Lead);
        var (id, form) = (Guid.CreateVersion7(), Form(AppealMatter.Scoresheet, sheet));
        form["Id"] = id.ToString();

        var page = await worker.GetAsync($"{Mine}/new?matter=Scoresheet&of={sheet}");
        var sent = await worker.PostAsync(Mine, form);
        var again = await worker.PostAsync(Mine, form);
        var other = await worker.PostAsync(Mine, new(form) { ["Words"] = "Something else." });
        var received = await worker.GetAsync($"{Mine}/{id}");
        var listed = await lead.GetAsync(Programme);
        var taken = await lead.PostAsync($"{Programme}/{id}/taking-up", []);
        var takenAgain = await lead.PostAsync($"{Programme}/{id}/taking-up", []);
        var takenUp = await worker.GetAsync($"{Mine}/{id}");
        var outcome = Outcome(AppealOutcome.Upheld, AppealRemedy.SetAside);
        var decided = await lead.PostAsync($"{Programme}/{id}/outcome", outcome);
        var decidedAgain = await lead.PostAsync($"{Programme}/{id}/outcome", outcome);
        var decidedOtherwise = await lead.PostAsync($"{Programme}/{id}/outcome", Outcome(AppealOutcome.NotUpheld, null));
        var closed = await worker.GetAsync($"{Mine}/{id}");
        var overview = await worker.GetAsync("/en/my");
        var person = await lead.GetAsync($"/en/programme/people/{cast.Worker}");

        Assert.Contains("it is decided by 25 December 2026", page.Html, StringComparison.Ordinal);
        Assert.Equal((303, 303, 409), (sent.Status, again.Status, other.Status));
        Assert.Contains("Somebody takes it up by 2 December 2026.", received.Html, StringComparison.Ordinal);
        Assert.Contains("Íñigo Peña-Ruiz", listed.Html, StringComparison.Ordinal);
        Assert.Equal((303, 303), (taken.Status, takenAgain.Status));
        Assert.Contains("Odalys Ferrante took it up. It is decided by 25 December 2026.", takenUp.Html, StringComparison.Ordinal);
        Assert.Equal((303, 303, 409), (decided.Status, decidedAgain.Status, decidedOtherwise.Status));
        Assert.Contains("The light was too poor to see the lid.", closed.Html, StringComparison.Ordinal);
        Assert.Contains("The result is set aside", closed.Html, StringComparison.Ordinal);
        Assert.Contains("Decided on 25 November 2026: Upheld.", overview.Html, StringComparison.Ordinal);
        Assert.Contains("set aside on appeal", person.Html, StringComparison.Ordinal);
        var mails = await MailsAsync(cast.Worker);
        Assert.Equal(
            ["Your appeal of 25 November 2026 has come in", "Your appeal of 25 November 2026 was taken up", "Your appeal of 25 November 2026 was decided"],
            mails.Select(mail => mail.Subject));
        Assert.Contains("The reason: The light was too poor to see the lid.", mails[2].Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_letter_is_written_in_the_language_of_the_appellant()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        await AddressAsync(cast.Worker);
        await shared.Site.RecordAsync(records => records.Persons.Where(one => one.Id == cast.Worker)
            .ExecuteUpdateAsync(set => set.SetProperty(one => one.Language, Language.Spanish)));
        using var worker = await shared.Site.SignInAsync(cast.Worker);

        Assert.Equal(303, (await worker.PostAsync(Mine, Form(AppealMatter.Complaint, null, "La clase empezó tarde."))).Status);

        var mail = Assert.Single(await MailsAsync(cast.Worker));
        Assert.StartsWith("Su apelación del 25 de noviembre de 2026 se recibió", mail.Subject, StringComparison.Ordinal);
        Assert.Contains("/es/my/appeals/", mail.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_lead_who_scored_sees_why_they_may_not_decide_and_does_not()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        await cast.PassEverythingAsync(cast.OtherLead);
        using var worker = await shared.Site.SignInAsync(cast.Worker);
        using var other = await shared.Site.SignInAsync(cast.OtherLead);
        var id = Guid.CreateVersion7();
        await worker.PostAsync(Mine, Form(AppealMatter.Scoresheet, await SheetOfAsync(cast), id: id));
        await other.PostAsync($"{Programme}/{id}/taking-up", []);

        var page = await other.GetAsync($"{Programme}/{id}");
        var refused = await other.PostAsync($"{Programme}/{id}/outcome", Outcome(AppealOutcome.NotUpheld, null));

        Assert.Contains("You scored this person, last on", page.Html, StringComparison.Ordinal);
        Assert.DoesNotContain("name=\"Outcome\"", page.Html, StringComparison.Ordinal);
        Assert.Equal(422, refused.Status);
        Assert.Contains("Decide the appeal of", (await other.GetAsync($"{Programme}/{id}")).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Where_every_lead_taught_the_page_says_what_to_do()
    {
        // A site of its own: the shared one has more leads than a page about one person reads teachings.
        using var site = RunningSite.Start();
        var cast = await ProgrammeCast.CreateAsync(site);
        Guid[] leads = [];
        await site.RecordAsync(async records => leads = await records.Appointments
            .Where(row => row.Role == AppointedRole.ProgrammeLead).Select(row => row.PersonId).Distinct().ToArrayAsync());
        await cast.TeachAsync(cast.Teacher);
        await site.AddAsync([.. leads.Where(lead => lead != cast.Teacher).Select(lead => new ClassTeaching { ClassId = cast.Class, InstructorId = lead })]);
        using var worker = await site.SignInAsync(cast.Worker);
        using var lead = await site.SignInAsync(cast.Lead);
        var id = Guid.CreateVersion7();
        await worker.PostAsync(Mine, Form(AppealMatter.Complaint, null, id: id));

        var page = await lead.GetAsync($"{Programme}/{id}");

        Assert.Contains("No lead is independent of this appeal", page.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Nobody_sees_or_contests_what_is_anothers()
    {
        var (cast, stranger) = (await ProgrammeCast.CreateAsync(shared.Site), await ProgrammeCast.CreateAsync(shared.Site));
        await cast.PassEverythingAsync();
        using var worker = await shared.Site.SignInAsync(cast.Worker);
        using var other = await shared.Site.SignInAsync(stranger.Worker);
        var (id, sheet) = (Guid.CreateVersion7(), await SheetOfAsync(cast));
        await worker.PostAsync(Mine, Form(AppealMatter.Complaint, null, id: id));

        Assert.Equal(404, (await other.GetAsync($"{Mine}/{id}")).Status);
        Assert.Equal(404, (await other.GetAsync($"{Mine}/new?matter=Scoresheet&of={sheet}")).Status);
        Assert.Equal(409, (await other.PostAsync(Mine, Form(AppealMatter.Scoresheet, sheet))).Status);
        Assert.Equal(404, (await other.GetAsync($"{Programme}/{id}")).Status);
    }

    [Fact]
    public async Task Words_and_reason_and_part_are_asked_for_and_what_was_typed_stays()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        using var worker = await shared.Site.SignInAsync(cast.Worker);
        using var lead = await shared.Site.SignInAsync(cast.Lead);
        var id = Guid.CreateVersion7();

        var empty = await worker.PostAsync(Mine, Form(AppealMatter.Complaint, null, words: " "));
        await worker.PostAsync(Mine, Form(AppealMatter.Complaint, null, id: id));
        await lead.PostAsync($"{Programme}/{id}/taking-up", []);
        var partial = await lead.PostAsync($"{Programme}/{id}/outcome", new() { ["Reason"] = "Seen and heard." });

        Assert.Equal(422, empty.Status);
        Assert.Contains("Write what is wrong, in your own words.", empty.Html, StringComparison.Ordinal);
        Assert.Equal(422, partial.Status);
        Assert.Contains("Choose what it comes to.", partial.Html, StringComparison.Ordinal);
        Assert.Contains("Tick it, or leave the decision to another lead.", partial.Html, StringComparison.Ordinal);
        Assert.Contains("Seen and heard.", partial.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task How_to_appeal_is_told_to_everybody()
    {
        using var nobody = shared.Site.OpenBrowser();

        var english = await nobody.GetAsync("/en/appeals");
        var spanish = await nobody.GetAsync("/es/appeals");
        var home = await nobody.GetAsync("/en");

        Assert.Contains("It is decided within 30 days.", english.Html, StringComparison.Ordinal);
        Assert.Contains("It costs nothing, and nobody is treated worse for it.", english.Html, StringComparison.Ordinal);
        Assert.Contains("Se decide en 30 días.", spanish.Html, StringComparison.Ordinal);
        Assert.Contains("href=\"/en/appeals\"", home.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_had_rested_on_it_is_put_before_a_lead_until_one_has_looked()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        await cast.PassEverythingAsync();
        using var worker = await shared.Site.SignInAsync(cast.Worker);
        using var lead = await shared.Site.SignInAsync(cast.Lead);
        var sheet = await SheetOfAsync(cast);
        var id = Guid.CreateVersion7();
        var decide = $"/en/programme/people/{cast.Worker}/decisions/handler";
        Assert.Equal(303, (await lead.PostAsync(decide, new() { ["Id"] = Guid.CreateVersion7().ToString(), ["Verdict"] = "Grant" }, decide)).Status);
        await worker.PostAsync(Mine, Form(AppealMatter.Scoresheet, sheet, id: id));
        await lead.PostAsync($"{Programme}/{id}/taking-up", []);
        await lead.PostAsync($"{Programme}/{id}/outcome", Outcome(AppealOutcome.Upheld, AppealRemedy.SetAside));

        var before = await lead.GetAsync(Programme);
        var page = await lead.GetAsync($"{Programme}/{id}");
        var looked = await lead.PostAsync($"{Programme}/{id}/look", new() { ["Finding"] = "Suspended until it is repeated." });
        var after = await lead.GetAsync(Programme);

        Assert.Contains($"{Programme}/{id}#rested", before.Html, StringComparison.Ordinal);
        Assert.Contains("Granted decisions on it: 1.", page.Html, StringComparison.Ordinal);
        Assert.Equal(303, looked.Status);
        Assert.DoesNotContain($"{Programme}/{id}#rested", after.Html, StringComparison.Ordinal);
    }
}

using System.Text.RegularExpressions;
using Training.Courses;
using Training.Records;
using Training.Web.Tests.Features.Sittings;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.MyTraining;

/// <summary>Every shipped course from its first page to the certificate, through the pages, in both languages.</summary>
public sealed partial class EveryCourseTests
{
    public static MatrixTheoryData<string, string> CoursesAndLanguages => new(["awareness", "handler", "handler-refresher", "instructor"], ["en", "es"]);

    [Theory, MemberData(nameof(CoursesAndLanguages))]
    public async Task A_course_is_taken_from_its_first_page_to_its_certificate(string courseId, string tag)
    {
        using var site = TakenQuiz.StartPrintingSite();
        var language = LanguageTags.Find(tag)!.Value; // not null: one of the two
        var room = await ClassRoom.OpenAsync(site);
        var (person, course) = (room.CandidateId, site.Shelf.Find(courseId)!);
        var held = new HashSet<string>(StringComparer.Ordinal);
        foreach (var asked in course.Scheme.Grant.OfType<Requirement.Holds>())
        {
            var (serial, _, _) = await site.HoldAsync(person, asked.SchemeId, ClassRoom.Today.AddMonths(-11), ClassRoom.Today.AddMonths(1));
            held.Add(serial.ToString());
        }

        using var quiz = await TakenQuiz.StartAsync(site, courseId, person);
        await ReadAsync(quiz.Browser, course, language);
        foreach (var number in Enumerable.Range(1, quiz.Count))
        {
            Assert.Equal(200, (await quiz.Browser.GetAsync($"{quiz.PathIn(tag)}/questions/{number}")).Status);
            Assert.Equal(303, (await quiz.AnswerAsync(number, tag: tag)).Status);
        }

        Assert.Equal(303, (await quiz.SubmitAsync()).Status);
        await PassPracticalsAsync(site, room, course);
        if (course.Scheme.Kind == SchemeKind.Certification) await GrantAsync(site, person, courseId, tag);

        var mine = (await quiz.Browser.GetAsync($"/{tag}/my")).Html;
        var own = Certificate().Matches(mine).Where(match => match.Groups["tag"].Value == tag && !held.Contains(Spelled(match.Groups["serial"].Value))).ToList();
        var paper = await quiz.Browser.GetAsync(Assert.Single(own).Value);
        Assert.Equal((200, "%PDF"), (paper.Status, System.Text.Encoding.ASCII.GetString(paper.Bytes[..4])));
    }

    private static string Spelled(string serial) => Certification.Serial.TryParse(serial, out var read) ? read.ToString() : serial;

    private static async Task ReadAsync(PlainBrowser browser, Course course, Language language)
    {
        var tag = language.Tag();
        Assert.Equal(200, (await browser.GetAsync($"/{tag}/courses/{course.Id}")).Status);
        foreach (var module in course.Modules)
        {
            var page = $"/{tag}/courses/{course.Id}/{module.Id}";
            Assert.Contains(module.Pages[language].Title, (await browser.GetAsync(page)).Html, StringComparison.Ordinal);
            Assert.Equal(303, (await browser.PostAsync($"/{tag}/my/courses/{course.Id}/modules/{module.Id}/reading", new() { ["text"] = course.Hash }, page)).Status);
        }
    }

    private static async Task PassPracticalsAsync(RunningSite site, ClassRoom room, Course course)
    {
        using var scorer = await room.SignInAsync();
        var watcher = await site.AppointedAsync(AppointedRole.ProgrammeLead, "Bram Kessler");
        foreach (var asked in course.Scheme.Grant.OfType<Requirement.PassedPractical>())
        {
            var form = asked.Subject == Subject.Live ? ClassRoom.LiveForm(watcher) : ClassRoom.Form();
            form["Checklist"] = asked.ChecklistId;
            var steps = course.Checklists.Single(list => list.Id == asked.ChecklistId).Steps.Count;
            await room.ScoreAsync(scorer, new string('d', steps), form);
            // A live snake comes after the pass on the model, not at the same instant.
            site.Clock.Now += TimeSpan.FromMinutes(1);
        }
    }

    private static async Task GrantAsync(RunningSite site, Guid person, string scheme, string tag)
    {
        using var lead = await site.SignInAsync(await site.AppointedAsync(AppointedRole.ProgrammeLead, "Odalys Ferrante"));
        var page = $"/{tag}/programme/people/{person}/decisions/{scheme}";
        var answer = await lead.PostAsync(page, new() { ["Id"] = Guid.CreateVersion7().ToString(), ["Verdict"] = "Grant" }, page);
        Assert.True(answer.Status == 303, answer.Html);
    }

    [GeneratedRegex("/(?<tag>en|es)/my/certificates/(?<serial>[A-Z0-9-]+)(?=\")", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Certificate();
}

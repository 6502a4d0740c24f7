using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Training.Records;
using Training.Web.Features.Reminders;
using Training.Web.Tests.Features.Sittings;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.TrainingChanges;

/// <summary>A value changes after somebody passed: they and their lead read of it, and a repeated pass ends it.</summary>
public sealed class TrainingChangesTests
{
    [Fact]
    public async Task Whoever_passed_before_a_value_changed_reads_what_it_is_now_until_they_pass_again()
    {
        using var site = RunningSite.Start();
        var cast = await ProgrammeCast.CreateAsync(site);
        using var lead = await site.SignInAsync(cast.Lead);
        using var worker = await site.SignInAsync(cast.Worker);
        using (var quiz = await TakenQuiz.StartAsync(site, personId: cast.Worker)) await PassAsync(quiz);
        Assert.DoesNotContain("What changed since training", (await worker.GetAsync("/en/my")).Html, StringComparison.Ordinal);

        await ChangeStandOffAsync(site, from: "2026-11-20");

        var mine = (await worker.GetAsync("/en/my")).Html;
        Assert.Contains("Stand-off for everybody who is not handling: now 15 feet (4.6 metres). Until then: 10 feet (3.0 metres).", mine, StringComparison.Ordinal);
        Assert.Contains("Since 20 November 2026.", mine, StringComparison.Ordinal);
        Assert.Contains("now 15 feet", (await lead.GetAsync($"/en/programme/people/{cast.Worker}")).Html, StringComparison.Ordinal);
        Assert.Contains("ahora 15 pies", (await worker.GetAsync("/es/my")).Html, StringComparison.Ordinal);

        site.Clock.Now += TimeSpan.FromMinutes(5);
        using (var again = await TakenQuiz.StartAsync(site, personId: cast.Worker)) await PassAsync(again);
        Assert.DoesNotContain("What changed since training", (await worker.GetAsync("/en/my")).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Whoever_holds_what_rests_on_the_old_value_is_told_once_by_mail()
    {
        using var site = RunningSite.Start();
        var cast = await ProgrammeCast.CreateAsync(site);
        using (var quiz = await TakenQuiz.StartAsync(site, personId: cast.Worker)) await PassAsync(quiz);
        await site.RecordAsync(records => records.KeepMailAddressAsync(cast.Worker, "worker@example.org", default));
        var sweep = site.Services.GetRequiredService<ReviewSweep>();
        async Task<List<string>> SweepAsync()
        {
            List<string> texts = [];
            await sweep.RunAsync(default);
            await sweep.RunAsync(default);
            await site.RecordAsync(async records => texts = await records.OutgoingMails.Where(mail => mail.PersonId == cast.Worker).Select(mail => mail.Text).ToListAsync());
            return texts;
        }

        await ChangeStandOffAsync(site, from: "2026-11-20");

        // The rule granted the certificate of training with the pass.
        Assert.Contains("Stand-off for everybody who is not handling: now 15 feet", Assert.Single(await SweepAsync()), StringComparison.Ordinal);
    }

    private static async Task PassAsync(TakenQuiz quiz)
    {
        foreach (var number in Enumerable.Range(1, quiz.Count)) await quiz.AnswerAsync(number);
        Assert.Equal(303, (await quiz.SubmitAsync()).Status);
    }

    /// <summary>A new entry takes over, and every place that named the old one names it: what a lead would do.</summary>
    private static async Task ChangeStandOffAsync(RunningSite site, string from)
    {
        foreach (var file in Directory.EnumerateFiles(site.CoursesFolder, "*.*", SearchOption.AllDirectories).Where(file => file.EndsWith(".md", StringComparison.Ordinal) || file.EndsWith("questions.yaml", StringComparison.Ordinal)))
        {
            await File.WriteAllTextAsync(file, (await File.ReadAllTextAsync(file)).Replace("stand-off-us-2024", "stand-off-us-2026", StringComparison.Ordinal));
        }

        var guidance = Path.Combine(site.CoursesFolder, "guidance.yaml");
        var text = await File.ReadAllTextAsync(guidance);
        var at = text.IndexOf("- id: stand-off-us-2024", StringComparison.Ordinal);
        var end = text.IndexOf("- id: ", at + 10, StringComparison.Ordinal);
        var entry = text[at..end].TrimEnd();
        entry = entry[..(entry.IndexOf("standing: confirmed", StringComparison.Ordinal) + "standing: confirmed".Length)];
        var old = entry + "\n  superseded-by: stand-off-us-2026\n";
        var successor = entry.Replace("id: stand-off-us-2024", "id: stand-off-us-2026", StringComparison.Ordinal)
            .Replace("value: 10", "value: 15", StringComparison.Ordinal).Replace("2024-01-01", from, StringComparison.Ordinal) + "\n";
        await File.WriteAllTextAsync(guidance, text.Replace(entry, old + successor.TrimEnd(), StringComparison.Ordinal));
        await site.LookAsync();
        Assert.Empty(site.Shelf.Findings.Select(finding => $"{finding.Code} {finding.Place.File}:{finding.Place.Line}"));
    }
}

using Training.Certification;
using Training.Records;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Verify;

/// <summary>Today is 25 November 2026, 10:44 in Denver.</summary>
public sealed class VerifyControllerTests(SharedSite shared)
{
    private static readonly DateOnly Start = new(2026, 1, 15);
    private readonly RunningSite site = shared.Site;

    public static TheoryData<DateOnly, string, string, string> Standings => new()
    {
        { new(2027, 6, 1), "Genuine, and current today.", "standing\">current", "(188 days left)" },
        { new(2026, 12, 7), "Genuine, and current today.", "standing due\">renewal due", "(12 days left)" },
        { new(2026, 11, 26), "Genuine, and current today.", "standing due\">renewal due", "(1 day left)" },
        { new(2026, 11, 25), "Genuine, and current today.", "standing due\">renewal due", "(today)" },
        { new(2026, 11, 24), "Genuine, but it lapsed after 24 November 2026.", "standing lapsed\">lapsed", "(1 day ago)" },
    };

    [Theory, MemberData(nameof(Standings))]
    public async Task The_first_line_says_whether_it_is_genuine_and_current_on_the_day(DateOnly expiresOn, string says, string tag, string days)
    {
        var (serial, _, _) = await site.IssueAsync("handler", Start, expiresOn);

        var (status, html) = await site.GetAsync($"/verify/{serial.Value}", "en");

        Assert.Equal(200, status);
        Assert.Contains($"<h1 class=\"says\">{says}</h1>", html, StringComparison.Ordinal);
        Assert.Contains(tag, html, StringComparison.Ordinal);
        Assert.Contains(days, html, StringComparison.Ordinal);
        Assert.Contains("Ileana Prado-Whitt", html, StringComparison.Ordinal);
        Assert.Contains(serial.ToString(), html, StringComparison.Ordinal);
        Assert.Contains("25 November 2026, 10:44, against our register", html, StringComparison.Ordinal);
        Assert.DoesNotContain("DEMO", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task It_speaks_Spanish_by_address_and_by_browser()
    {
        var (serial, _, _) = await site.IssueAsync("handler", Start, new(2026, 12, 7));

        foreach (var (path, language) in new[] { ($"/verify/{serial.Value}", "es-MX"), ($"/es/verify/{serial.Value}", "en") })
        {
            var (_, html) = await site.GetAsync(path, language);

            Assert.Contains("Auténtico y vigente hoy.", html, StringComparison.Ordinal);
            Assert.Contains("7 de diciembre de 2026", html, StringComparison.Ordinal);
            Assert.Contains("Manejo de serpientes solo con herramientas", html, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task A_suspension_comes_before_the_dates_and_a_withdrawal_before_a_suspension()
    {
        var (serial, personId, _) = await site.IssueAsync("handler", Start, new(2027, 6, 1));
        var lead = Guid.CreateVersion7();
        await site.RecordAsync(async records =>
        {
            records.Add(new Person { Id = lead, Language = Courses.Language.English });
            records.Add(new SuspensionRecord
            {
                Id = Guid.CreateVersion7(), PersonId = personId, SchemeId = "handler", PeriodNumber = 1, Number = 1, StartsOn = new(2026, 11, 9),
                LeadId = lead, Reason = "Worked without a watcher.", DeadlineOn = new(2027, 1, 9), KeptAt = RunningSite.Now,
            });
            await records.SaveChangesAsync();
        });

        var (_, suspended) = await site.GetAsync($"/en/verify/{serial.Value}");
        await site.RecordAsync(async records =>
        {
            var second = Guid.CreateVersion7();
            records.Add(new Person { Id = second, Language = Courses.Language.English });
            records.Add(new WithdrawalRecord
            {
                Id = Guid.CreateVersion7(), PersonId = personId, SchemeId = "handler", PeriodNumber = 1, WithdrawnOn = new(2026, 11, 20),
                LeadId = lead, ConfirmedById = second, Reason = "Not settled.", KeptAt = RunningSite.Now,
            });
            await records.SaveChangesAsync();
        });
        var (_, withdrawn) = await site.GetAsync($"/en/verify/{serial.Value}");

        Assert.Contains("Genuine, but suspended today.", suspended, StringComparison.Ordinal);
        Assert.DoesNotContain("watcher.", suspended, StringComparison.Ordinal);
        Assert.Contains("Genuine, but withdrawn.", withdrawn, StringComparison.Ordinal);
        Assert.DoesNotContain(" left)", suspended + withdrawn, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_corrected_paper_is_superseded_and_its_correction_is_genuine()
    {
        var (serial, personId, decisionId) = await site.IssueAsync("awareness", Start, new(2028, 1, 15), "Tomas Okafor");
        var corrected = Papers.ASerial();
        await site.RecordAsync(async records =>
        {
            var nameId = Guid.CreateVersion7();
            records.Add(new PersonName { Id = nameId, PersonId = personId, Text = "Tomás Okafor", StartsOn = new(2026, 2, 1) });
            records.Add(new PaperRecord
            {
                Id = Guid.CreateVersion7(), DecisionId = decisionId, Revision = 2, Serial = corrected.Value, PersonNameId = nameId, IssuedAt = RunningSite.Now,
            });
            await records.SaveChangesAsync();
        });

        Assert.Contains("a newer one has replaced it", (await site.GetAsync($"/en/verify/{serial.Value}")).Html, StringComparison.Ordinal);
        var (_, html) = await site.GetAsync($"/en/verify/{corrected.Value}");
        Assert.Contains("Genuine, and current today.", html, StringComparison.Ordinal);
        Assert.Contains("Tomás Okafor", html, StringComparison.Ordinal);
        Assert.Contains("Trained in", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Today_is_a_day_of_the_zone_kept_with_the_decision()
    {
        // 17:44 UTC on the 25th is already the 26th in Auckland.
        var (denver, _, _) = await site.IssueAsync("handler", Start, new(2026, 11, 25));
        var (auckland, _, _) = await site.IssueAsync("handler", Start, new(2026, 11, 25), zone: "Pacific/Auckland");

        Assert.Contains("current today", (await site.GetAsync($"/en/verify/{denver.Value}")).Html, StringComparison.Ordinal);
        Assert.Contains("lapsed after 25 November 2026", (await site.GetAsync($"/en/verify/{auckland.Value}")).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_serial_that_was_never_given_out_is_unknown()
    {
        var serial = Papers.ASerial();

        var (status, html) = await site.GetAsync($"/en/verify/{serial.Value}");

        Assert.Equal(404, status);
        Assert.Contains("No certificate of ours has this serial.", html, StringComparison.Ordinal);
        Assert.Contains(serial.ToString(), html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_single_wrong_character_is_no_serial_of_ours()
    {
        var (serial, _, _) = await site.IssueAsync("handler", Start, new(2027, 6, 1));

        for (var i = 0; i < Serial.Length; i++)
        {
            var wrong = serial.Value.ToCharArray();
            wrong[i] = wrong[i] == 'X' ? 'Y' : 'X';

            var (status, html) = await site.GetAsync($"/en/verify/{new string(wrong)}");

            Assert.Equal(404, status);
            Assert.Contains("This is not one of our serials. Check the characters.", html, StringComparison.Ordinal);
            Assert.DoesNotContain("Ileana", html, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("%3Cscript%3Ealert(1)%3C%2Fscript%3E")]
    [InlineData("..%2F..%2Fetc%2Fpasswd")]
    [InlineData("'%20OR%201=1--")]
    public async Task Whatever_else_is_asked_for_is_shown_as_text(string serial)
    {
        using var answer = await site.Client.GetAsync($"/en/verify/{serial}");
        var html = await answer.Content.ReadAsStringAsync();

        Assert.Equal(404, (int)answer.StatusCode);
        Assert.DoesNotContain("<script>", html, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("-")]
    public async Task The_form_leads_to_the_address_of_the_check(string hyphen)
    {
        var text = Papers.ASerial();
        var typed = text.ToString().Replace("-", hyphen, StringComparison.Ordinal).ToLowerInvariant();

        using var answer = await site.Client.GetAsync($"/es/verify?serial=%20{typed}%20");

        Assert.Equal((302, $"/es/verify/{text.Value}"), ((int)answer.StatusCode, answer.Headers.Location!.OriginalString));
    }

    [Fact]
    public async Task What_cannot_be_a_serial_is_cut_and_answered_not_carried_along()
    {
        using var answer = await site.Client.GetAsync($"/en/verify?serial={new string('x', 4000)}%2F%2Fevil.example");

        Assert.Equal("/en/verify/" + new string('x', 40), answer.Headers.Location!.OriginalString);
        Assert.Equal(200, (await site.GetAsync("/en/verify?serial=%20")).Status);
    }

    [Fact]
    public async Task A_name_is_kept_by_no_cache_and_listed_by_no_search_engine()
    {
        var (serial, _, _) = await site.IssueAsync("handler", Start, new(2027, 6, 1));

        using var answer = await site.Client.GetAsync($"/en/verify/{serial.Value}");

        Assert.True(answer.Headers.CacheControl!.NoStore);
        Assert.Equal("noindex, nofollow", string.Join(' ', answer.Headers.NonValidated["X-Robots-Tag"]));
    }

    [Fact]
    public async Task An_erased_name_is_said_to_be_erased()
    {
        var (serial, personId, _) = await site.IssueAsync("handler", Start, new(2027, 6, 1), "Maud Ellingsen");
        await site.RecordAsync(async records =>
        {
            records.PersonNames.Single(name => name.PersonId == personId).Text = null;
            await records.SaveChangesAsync();
        });

        Assert.Contains("erased at the holder’s request", (await site.GetAsync($"/en/verify/{serial.Value}")).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_invented_paper_says_DEMO()
    {
        using var demo = RunningSite.Start(isDemo: true);
        var (serial, _, _) = await demo.IssueAsync("handler", Start, new(2027, 6, 1));

        Assert.Contains("<strong>DEMO</strong>", (await demo.GetAsync($"/en/verify/{serial.Value}")).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task More_checks_than_the_limit_are_refused_with_the_time_to_wait_in_both_languages()
    {
        using var limited = RunningSite.Start(settings: [new("Training:Verify:ChecksPerMinute", "3")]);
        for (var check = 0; check < 3; check++) Assert.Equal(404, (await limited.GetAsync("/en/verify/X")).Status);

        using var answer = await limited.Client.GetAsync("/es/verify/X");

        Assert.Equal(429, (int)answer.StatusCode);
        Assert.InRange(answer.Headers.RetryAfter!.Delta!.Value.TotalSeconds, 1, 60);
        Assert.Contains("Espere un minuto.", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.Contains("Please wait a minute.", (await limited.GetAsync("/verify/X", "en")).Html, StringComparison.Ordinal);
        Assert.Equal(200, (await limited.GetAsync("/en")).Status);
    }
}

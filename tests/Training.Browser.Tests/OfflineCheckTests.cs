using System.Security.Cryptography;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using Training.Documents.Credentials;
using Training.Records;
using Training.Web.Tests.House;

namespace Training.Browser.Tests;

/// <summary>A guard's phone that was on the check page once, and then has no signal. Today is 25 November 2026, 10:44 in Denver.</summary>
public sealed class OfflineCheckTests(Chromium chromium) : IAsyncLifetime
{
    private const string Name = "María José Peña-Núñez";
    private static readonly DateOnly Start = new(2026, 1, 15);
    private static readonly DateOnly End = new(2027, 6, 1);

    private readonly RunningSite site = RunningSite.Start(settings: [new("Training:Verify:ChecksPerMinute", "10000")]);
    private IPage page = null!; // opened before each test

    public async ValueTask InitializeAsync()
    {
        page = await chromium.OpenAsync(site, width: 390);
        await page.Clock.SetFixedTimeAsync("2026-11-25T17:44:00Z");
    }

    public async ValueTask DisposeAsync()
    {
        await page.Context.CloseAsync();
        site.Dispose();
    }

    /// <summary>Opens the check page with signal and waits until it says that it works without.</summary>
    private async Task PrepareAsync(string path = "/en/verify")
    {
        await page.GotoAsync(path);
        await page.Locator("[data-ready]:not([hidden])").WaitForAsync();
    }

    private Task CutAsync() => page.Context.SetOfflineAsync(true);

    /// <summary>Scans a code: what its address holds, token and all.</summary>
    private async Task<string> ScanAsync(string address)
    {
        // Another page first: with the same one under another "#" a browser would not go anywhere.
        await page.GotoAsync("about:blank");
        await page.GotoAsync(address);
        await Assertions.Expect(page.Locator("h1")).Not.ToHaveTextAsync("Type the serial to learn if a certificate is genuine and current.");
        return await page.Locator("main").InnerTextAsync();
    }

    private static string CodeOf(IssuedPaper paper, string? token = null) => $"/verify/{paper.Serial}#{token ?? paper.Token}";

    private async Task WithdrawAsync(IssuedPaper paper)
    {
        var (lead, other) = (await site.AppointedAsync(AppointedRole.ProgrammeLead), await site.AppointedAsync(AppointedRole.ProgrammeLead, "Theodora Vance"));
        await site.RecordAsync(records => records.WithdrawAsync(
            Guid.CreateVersion7(), paper.PersonId, "handler", new(new(2026, 11, 20), lead, other, "Somebody else sat."), RunningSite.Now, CancellationToken.None));
    }

    private async Task SuspendAsync(IssuedPaper paper)
    {
        var lead = await site.AppointedAsync(AppointedRole.ProgrammeLead);
        await site.RecordAsync(records => records.SuspendAsync(
            Guid.CreateVersion7(), paper.PersonId, "handler", new(new(2026, 11, 9), lead, "Looked at.", new(2027, 1, 9), null), RunningSite.Now, CancellationToken.None));
    }

    [Fact]
    public async Task Papers_issued_before_and_after_the_signal_was_lost_are_both_told_to_be_genuine()
    {
        var before = await site.IssueSignedAsync(Start, End, Name);
        await PrepareAsync();
        await CutAsync();
        var after = await site.IssueSignedAsync(Start, new(2027, 3, 31), "Tomás Okafor");

        var first = await ScanAsync(CodeOf(before));
        var second = await ScanAsync(CodeOf(after));

        Assert.StartsWith("The code is genuine and holds through 1 June 2027.\nCompare the name with the person’s identification.", Lines(first), StringComparison.Ordinal);
        Assert.Contains(Name, first, StringComparison.Ordinal);
        Assert.Contains("Tool-only snake handler", first, StringComparison.Ordinal);
        Assert.Contains(before.Serial.ToString(), first, StringComparison.Ordinal);
        Assert.Contains("as of 25 November 2026, ", first, StringComparison.Ordinal);
        Assert.StartsWith("The code is genuine and holds through 31 March 2027.", second, StringComparison.Ordinal);
        Assert.Contains("Tomás Okafor", second, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Papers_that_were_withdrawn_or_suspended_before_the_list_came_are_told_to_be()
    {
        var (withdrawn, suspended) = (await site.IssueSignedAsync(Start, End, Name), await site.IssueSignedAsync(Start, End, Name));
        await WithdrawAsync(withdrawn);
        await SuspendAsync(suspended);
        await PrepareAsync();
        await CutAsync();

        Assert.StartsWith("The code is genuine, but the paper was withdrawn, or a newer one took its place.\nDo not accept it as current.", Lines(await ScanAsync(CodeOf(withdrawn))), StringComparison.Ordinal);
        Assert.StartsWith("The code is genuine, but the paper is suspended.", await ScanAsync(CodeOf(suspended)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Papers_outside_their_days_are_told_to_be()
    {
        var (lapsed, early) = (await site.IssueSignedAsync(Start, new(2026, 11, 24), Name), await site.IssueSignedAsync(new(2026, 11, 26), End, Name));
        await PrepareAsync();
        await CutAsync();

        Assert.StartsWith("The code is genuine, but it lapsed after 24 November 2026.", await ScanAsync(CodeOf(lapsed)), StringComparison.Ordinal);
        Assert.StartsWith("The code is genuine, but it holds only from 26 November 2026 on.", await ScanAsync(CodeOf(early)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Codes_that_are_not_what_they_seem_are_refused_with_the_reason()
    {
        var (paper, other) = (await site.IssueSignedAsync(Start, End, Name), await site.IssueSignedAsync(Start, End, "Tomás Okafor"));
        var stranger = new SigningKey(ECDsa.Create(ECCurve.NamedCurves.nistP256));
        await PrepareAsync();
        await CutAsync();
        var parts = paper.Token.Split('.');

        Assert.StartsWith("This code was changed.", await ScanAsync(CodeOf(paper, $"{parts[0]}.{other.Token.Split('.')[1]}.{parts[2]}")), StringComparison.Ordinal);
        Assert.StartsWith("This code was changed.", await ScanAsync(CodeOf(paper, paper.Token + "A")), StringComparison.Ordinal);
        Assert.StartsWith("This code belongs to another paper.", await ScanAsync(CodeOf(paper, other.Token)), StringComparison.Ordinal);
        Assert.StartsWith(
            "This code is signed with a key that is none of ours", await ScanAsync(CodeOf(paper, CompactToken.Write(paper.Credential, stranger))), StringComparison.Ordinal);
        Assert.StartsWith("This is not the code of a certificate.", await ScanAsync($"/en/verify#{Uri.EscapeDataString("https://menu.example/lunch")}"), StringComparison.Ordinal);
        Assert.DoesNotContain(Name, await ScanAsync(CodeOf(paper, paper.Token + "A")), StringComparison.Ordinal);
        Assert.StartsWith("Without signal a serial alone cannot be checked.", await ScanAsync($"/verify/{paper.Serial}"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_old_list_is_called_old_and_a_missing_one_missing()
    {
        var paper = await site.IssueSignedAsync(Start, End, Name);
        await PrepareAsync();
        await CutAsync();

        await page.Clock.SetFixedTimeAsync("2026-12-03T18:00:00Z");
        Assert.Contains("This phone’s list of withdrawn papers is 8 days old", await ScanAsync(CodeOf(paper)), StringComparison.Ordinal);
        await page.EvaluateAsync("caches.open('check-1').then(cache => cache.delete('/status/revocation'))");
        var without = await ScanAsync(CodeOf(paper));

        Assert.StartsWith("The code is genuine and holds through 1 June 2027. Whether it was withdrawn is not known.", without, StringComparison.Ordinal);
        Assert.Contains("not on this phone", without, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_clock_that_is_behind_does_not_make_an_ended_paper_current()
    {
        var lapsed = await site.IssueSignedAsync(Start, new(2026, 11, 24), Name);
        await PrepareAsync();
        await CutAsync();

        await page.Clock.SetFixedTimeAsync("2026-06-01T12:00:00Z");

        Assert.StartsWith("The code is genuine, but it lapsed after 24 November 2026.", await ScanAsync(CodeOf(lapsed)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task It_speaks_Spanish_and_the_switch_of_language_keeps_the_code()
    {
        var paper = await site.IssueSignedAsync(Start, End, Name);
        await PrepareAsync("/es/verify");
        await CutAsync();

        await ScanAsync($"/es{CodeOf(paper)}");
        await Assertions.Expect(page.Locator("h1")).ToHaveTextAsync("El código es auténtico y vale hasta el 1 de junio de 2027.");
        await page.GetByRole(AriaRole.Link, new() { Name = "English" }).ClickAsync();
        await Assertions.Expect(page.Locator("h1")).ToHaveTextAsync("The code is genuine and holds through 1 June 2027.");
    }

    [Fact]
    public async Task With_signal_the_register_answers_and_the_code_stands_beside_it()
    {
        var paper = await site.IssueSignedAsync(Start, End, Name);
        await PrepareAsync();

        await page.GotoAsync(CodeOf(paper));
        await page.Locator("[data-answer=beside]:not([hidden])").WaitForAsync();

        Assert.Equal("Genuine, and current today.", await page.Locator("h1").InnerTextAsync());
        Assert.Contains("What the code itself says\n\nThe code is genuine and holds through 1 June 2027.", await page.Locator("main").InnerTextAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task When_signal_comes_back_the_register_is_asked()
    {
        var paper = await site.IssueSignedAsync(Start, End, Name);
        await PrepareAsync();
        await CutAsync();
        await ScanAsync(CodeOf(paper));

        await page.Context.SetOfflineAsync(false);

        // A whole page is asked for first, and the machine may be busy: as long as the worker waits for it, and some more.
        await Assertions.Expect(page.Locator("h1")).ToHaveTextAsync("Genuine, and current today.", new() { Timeout = 20_000 });
    }

    [Fact]
    public async Task A_phone_that_says_it_has_signal_before_it_has_keeps_the_answer_and_asks_again()
    {
        var paper = await site.IssueSignedAsync(Start, End, Name);
        await page.Clock.InstallAsync(new() { TimeDate = RunningSite.Now.UtcDateTime });
        await PrepareAsync();
        await CutAsync();
        await ScanAsync(CodeOf(paper));
        await page.EvaluateAsync("window.isSameDocument = true");

        await page.RouteAsync("**", route => route.AbortAsync());
        await page.RunAndWaitForRequestAsync(() => page.Context.SetOfflineAsync(false), "**/status/revocation");
        await page.RunAndWaitForRequestAsync(() => page.Clock.RunForAsync(16_000), "**/status/revocation");
        Assert.Equal("The code is genuine and holds through 1 June 2027.", await page.Locator("h1").InnerTextAsync());
        Assert.True(await page.EvaluateAsync<bool>("window.isSameDocument"));
        await page.UnrouteAllAsync();
        await page.Clock.RunForAsync(16_000);

        await Assertions.Expect(page.Locator("h1")).ToHaveTextAsync("Genuine, and current today.", new() { Timeout = 20_000 });
    }

    [Fact]
    public async Task No_page_with_a_name_is_kept_on_the_phone()
    {
        var paper = await site.IssueSignedAsync(Start, End, Name);
        var guard = await site.PersonAsync("Wilhelmina Strand");
        await page.GotoAsync("/en/sign-in");
        await page.GetByLabel("Sign-in name").FillAsync(await Accounts.EnsureAsync(site.Services, guard));
        await page.GetByLabel("Password").FillAsync(Accounts.Password);
        await page.GetByRole(AriaRole.Button, new() { Name = "Sign in" }).ClickAsync();
        await page.Locator(".hats").WaitForAsync();

        await PrepareAsync(CodeOf(paper));
        Assert.Contains("Wilhelmina", await page.Locator("body").InnerTextAsync(), StringComparison.Ordinal);
        var kept = await page.EvaluateAsync<string[]>("""
            async () => {
              const texts = [];
              for (const name of await caches.keys()) {
                const cache = await caches.open(name);
                for (const request of await cache.keys()) texts.push(`${new URL(request.url).pathname} ${await (await cache.match(request)).text()}`);
              }
              return texts;
            }
            """);

        Assert.Equal(
            ["/check.js", "/credential.js", "/drop.js", "/en/verify", "/es/verify", "/keep.js", "/mark.svg", "/scan.js", "/site.css", "/status/revocation", "/status/suspension", "/verify/keys"],
            kept.Select(text => text.Split(' ')[0]).Order(StringComparer.Ordinal));
        Assert.DoesNotContain(kept, text => text.Contains("Peña", StringComparison.Ordinal) || text.Contains("Wilhelmina", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_new_version_leaves_nothing_of_the_old_one_behind()
    {
        await PrepareAsync();
        await page.EvaluateAsync("""
            async () => {
              await (await caches.open("check-0")).put("/en/verify", new Response("old"));
              const cache = await caches.open("check-1");
              await cache.put("/check.js?v=old", new Response("old"));
              // As a page of an old version is: its own files are not those of today.
              for (const request of await cache.keys()) if (request.url.includes("keep.js")) await cache.delete(request);
              for (const registration of await navigator.serviceWorker.getRegistrations()) await registration.unregister();
            }
            """);

        await PrepareAsync();

        Assert.Equal(["check-1"], await page.EvaluateAsync<string[]>("caches.keys()"));
        Assert.False(await page.EvaluateAsync<bool>("caches.open('check-1').then(async cache => Boolean(await cache.match('/check.js?v=old')))"));
    }

    [Fact]
    public async Task Where_the_browser_reads_codes_a_button_scans_one_and_leads_to_our_own_page()
    {
        var paper = await site.IssueSignedAsync(Start, End, Name);
        await page.AddInitScriptAsync($$"""
            window.BarcodeDetector = class {
              static async getSupportedFormats() { return ["qr_code"]; }
              async detect() { return [{ rawValue: "https://elsewhere.example/verify/{{paper.Serial}}#{{paper.Token}}" }]; }
            };
            navigator.mediaDevices.getUserMedia = async () => document.createElement("canvas").captureStream();
            HTMLMediaElement.prototype.play = async () => undefined;
            """);
        await page.GotoAsync("/en/verify");

        await page.GetByRole(AriaRole.Button, new() { Name = "Scan with this phone’s camera" }).ClickAsync();

        await page.WaitForURLAsync(new Regex($"^{Regex.Escape(site.Client.BaseAddress!.ToString())}en/verify/{paper.Serial}#", RegexOptions.None, TimeSpan.FromSeconds(1)));
        await Assertions.Expect(page.Locator("h1")).ToHaveTextAsync("Genuine, and current today.");
    }

    [Fact]
    public async Task Where_the_browser_reads_no_codes_there_is_no_button_and_where_the_camera_is_refused_it_says_so()
    {
        await page.AddInitScriptAsync("delete window.BarcodeDetector");
        await page.GotoAsync("/en/verify");
        await page.WaitForLoadStateAsync(LoadState.NetworkIdle);
        Assert.Equal(0, await page.GetByRole(AriaRole.Button, new() { Name = "Scan with this phone’s camera" }).CountAsync());

        await page.AddInitScriptAsync("""
            window.BarcodeDetector = class { static async getSupportedFormats() { return ["qr_code"]; } };
            navigator.mediaDevices.getUserMedia = async () => { throw new DOMException("", "NotAllowedError"); };
            """);
        await page.ReloadAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Scan with this phone’s camera" }).ClickAsync();
        await page.GetByText("The camera could not be used.").WaitForAsync();
    }

    [Fact]
    public async Task A_file_is_checked_by_choosing_or_dropping_it_and_one_too_large_is_not_sent()
    {
        var paper = await site.IssueSignedAsync(Start, End, Name);
        await page.GotoAsync("/en/verify");

        await page.GetByLabel("PDF of a certificate").SetInputFilesAsync(new FilePayload { Name = "a.pdf", MimeType = "application/pdf", Buffer = new byte[(20 * 1024 * 1024) + 1] });
        await page.GetByRole(AriaRole.Button, new() { Name = "Check this file" }).ClickAsync();
        await page.GetByText("The file is larger than 20 MB").WaitForAsync();
        var dropped = await page.EvaluateHandleAsync("""
            base64 => {
              const data = new DataTransfer();
              data.items.add(new File([Uint8Array.from(atob(base64), c => c.charCodeAt(0))], "a.pdf", { type: "application/pdf" }));
              return data;
            }
            """, Convert.ToBase64String(paper.Pdf));
        await page.Locator("form.drop").DispatchEventAsync("drop", new { dataTransfer = dropped });

        await Assertions.Expect(page.Locator("h1")).ToHaveTextAsync("We issued this file, and nothing in it was changed.");
    }

    // How far apart paragraphs are does not matter here.
    private static string Lines(string text) => text.Replace("\n\n", "\n", StringComparison.Ordinal);
}

using System.Diagnostics;
using System.Text;
using System.Text.RegularExpressions;
using Microsoft.EntityFrameworkCore;
using Training.Records;
using Training.Web.Features.Rosters;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Rosters;

/// <summary>The whole way of a roster, through a browser without script.</summary>
public sealed partial class RostersControllerTests(SharedSite shared)
{
    private const string Header = "badge,name,site,crew\n";

    private RunningSite Site => shared.Site;

    private async Task<(PlainBrowser Browser, Guid EmployerId, Guid SiteId)> RepresentativeAsync()
    {
        var (employer, site) = await Site.EmployerAsync();
        return (await Site.SignInAsync(await Site.RepresentativeAsync(employer)), employer, site);
    }

    private static async Task<Reply> SendAsync(PlainBrowser browser, Guid employer, byte[] content, Guid? form = null)
    {
        var page = $"/en/employers/{employer}/roster";
        return await browser.PostFileAsync(page, new() { ["Id"] = (form ?? Guid.CreateVersion7()).ToString() }, "File", "roster.csv", content, page);
    }

    private static async Task<string> SentAsync(PlainBrowser browser, Guid employer, string text)
    {
        var answer = await SendAsync(browser, employer, Encoding.UTF8.GetBytes(text));
        Assert.Equal(303, answer.Status);
        return answer.Location!; // not null: 303
    }

    private static async Task<Reply> ApplyAsync(PlainBrowser browser, string path, bool isWhole = false)
    {
        var page = (await browser.GetAsync(path)).Html;
        Dictionary<string, string> fields = new() { ["Fingerprint"] = Fingerprint().Match(page).Groups["value"].Value };
        if (isWhole) fields["IsWhole"] = "true";
        return await browser.PostAsync($"{path}/application", fields, page: path);
    }

    private static string Says(Reply answer) => Heading().Match(answer.Html).Groups["says"].Value.Trim();

    [Fact]
    public async Task A_file_is_shown_applied_once_and_then_says_nothing_new()
    {
        var (browser, employer, _) = await RepresentativeAsync();
        using var _1 = browser;
        const string text = Header + "A-1,Solveig Amaro,rim line east,North\nA-2,\"Pike, Anselm\",Rim Line East,\n";

        var path = await SentAsync(browser, employer, text);
        Assert.Equal("2 people are new.", Says(await browser.GetAsync(path)));
        var page = await browser.GetAsync(path);
        var fields = new Dictionary<string, string> { ["Fingerprint"] = Fingerprint().Match(page.Html).Groups["value"].Value };
        var first = await browser.PostAsync($"{path}/application", fields, page: path);
        var second = await browser.PostAsync($"{path}/application", fields);

        Assert.Equal((303, path, 303, path), (first.Status, first.Location, second.Status, second.Location));
        Assert.Equal("The roster was applied.", Says(await browser.GetAsync(path)));
        Assert.Equal("La lista quedó aplicada.", Says(await browser.GetAsync(path.Replace("/en/", "/es/", StringComparison.Ordinal))));
        Assert.Equal("The file says what the roster says.", Says(await browser.GetAsync(await SentAsync(browser, employer, text))));
        await Site.RecordAsync(async records => Assert.Equal(2, await records.Employments.CountAsync(row => row.EmployerId == employer)));
    }

    [Fact]
    public async Task Who_changes_and_who_is_missing_is_shown_and_leaves_only_when_the_box_is_ticked()
    {
        var (browser, employer, _) = await RepresentativeAsync();
        using var _1 = browser;
        await ApplyAsync(browser, await SentAsync(browser, employer, Header + "A-1,Solveig Amaro,Rim Line East,\nA-2,Anselm Pike,Rim Line East,\n"));

        var path = await SentAsync(browser, employer, Header + "A-1,Solveig Quist,Rim Line East,North\n");
        var page = await browser.GetAsync(path);
        Assert.Equal("1 person changes, 1 person is not in the file.", Says(page));
        Assert.Contains("Name: <bdi>Solveig Amaro</bdi> → <bdi>Solveig Quist</bdi>", page.Html, StringComparison.Ordinal);
        Assert.Equal(303, (await ApplyAsync(browser, path)).Status);
        var whole = await SentAsync(browser, employer, Header + "A-1,Solveig Quist,Rim Line East,North\n\n");
        Assert.Equal("1 person is not in the file.", Says(await browser.GetAsync(whole)));
        Assert.Equal(303, (await ApplyAsync(browser, whole, isWhole: true)).Status);

        var back = await browser.GetAsync(await SentAsync(browser, employer, Header + "A-2,Anselm Pike,Rim Line East,\nA-1,Solveig Quist,Rim Line East,North\n"));
        // Who began and left on one day never worked for a day; their number still names them.
        Assert.Equal("1 person returns.", Says(back));
    }

    [Fact]
    public async Task Another_difference_than_the_one_that_was_shown_is_shown_anew()
    {
        var (browser, employer, _) = await RepresentativeAsync();
        using var _1 = browser;
        var path = await SentAsync(browser, employer, Header + "A-1,Solveig Amaro,Rim Line East,\nA-2,Anselm Pike,Rim Line East,\n");
        var fingerprint = Fingerprint().Match((await browser.GetAsync(path)).Html).Groups["value"].Value;
        await ApplyAsync(browser, await SentAsync(browser, employer, Header + "A-1,Solveig Amaro,Rim Line East,\n"));

        var answer = await browser.PostAsync($"{path}/application", new() { ["Fingerprint"] = fingerprint }, page: path);

        Assert.Equal((409, "1 person is new."), (answer.Status, Says(answer)));
        Assert.Contains("The roster changed since you looked", answer.Html, StringComparison.Ordinal);
        Assert.Equal(303, (await ApplyAsync(browser, path)).Status);
    }

    [Fact]
    public async Task Nothing_is_applied_while_a_row_is_bad_and_every_bad_row_is_told()
    {
        var (browser, employer, _) = await RepresentativeAsync();
        using var _1 = browser;
        var rows = string.Concat(Enumerable.Range(1, 250).Select(number => $"A-{number},Solveig {number},Nowhere,\n"));
        var path = await SentAsync(browser, employer, Header + "A-0,Anselm Pike,Rim Line East,\n" + rows);

        var page = await browser.GetAsync(path);
        var applied = await browser.PostAsync($"{path}/application", new() { ["Fingerprint"] = "" }, page: path.Split("/uploads")[0]);
        var csv = await browser.GetAsync($"{path}/findings.csv");

        Assert.Equal("250 lines need mending; nothing was changed.", Says(page));
        Assert.Contains("Line 3", page.Html, StringComparison.Ordinal);
        Assert.Contains("Use one of: Rim Line East.", page.Html, StringComparison.Ordinal);
        Assert.DoesNotContain("Line 203,", page.Html, StringComparison.Ordinal);
        Assert.Equal(422, applied.Status);
        Assert.Equal(252, csv.Html.Split("\r\n").Length); // its heading, 250 rows, and the end
        await Site.RecordAsync(async records => Assert.False(await records.Badges.AnyAsync(row => row.EmployerId == employer)));
    }

    [Fact]
    public async Task The_same_file_from_the_same_form_is_one_upload_and_another_file_another()
    {
        var (browser, employer, _) = await RepresentativeAsync();
        using var _1 = browser;
        var form = Guid.CreateVersion7();

        var first = await SendAsync(browser, employer, "one"u8.ToArray(), form);
        var again = await SendAsync(browser, employer, "one"u8.ToArray(), form);
        var other = await SendAsync(browser, employer, "other"u8.ToArray(), form);

        Assert.Equal(first.Location, again.Location);
        Assert.NotEqual(first.Location, other.Location);
    }

    [Fact]
    public async Task Thirty_megabytes_are_answered_at_once_and_so_is_no_file()
    {
        var (browser, employer, _) = await RepresentativeAsync();
        using var _1 = browser;
        var watch = Stopwatch.StartNew();

        var large = await SendAsync(browser, employer, new byte[30 * 1024 * 1024]);
        var little = await SendAsync(browser, employer, new byte[RosterReader.MostBytes + 1]);
        var empty = await SendAsync(browser, employer, []);

        Assert.Equal((413, "The file is larger than 8 MB, so it was not read."), (large.Status, Says(large)));
        Assert.Equal((422, 422), (little.Status, empty.Status));
        Assert.Contains("it is empty", empty.Html, StringComparison.Ordinal);
        Assert.InRange(watch.Elapsed.TotalSeconds, 0, 30);
        await Site.RecordAsync(async records => Assert.False(await records.RosterUploads.AnyAsync(row => row.EmployerId == employer)));
    }

    [Fact]
    public async Task Another_employers_roster_is_not_found()
    {
        var (browser, employer, _) = await RepresentativeAsync();
        var (theirs, other, _) = await RepresentativeAsync();
        using var _1 = browser;
        using var _2 = theirs;
        var upload = (await SentAsync(theirs, other, Header + "A-1,Solveig Amaro,Rim Line East,\n")).Split('/')[^1];
        string[] paths =
        [
            $"{other}/roster", $"{other}/roster.csv", $"{other}/roster/sample.csv", $"{other}/roster/uploads/{upload}",
            $"{other}/roster/uploads/{upload}/findings.csv", $"{employer}/roster/uploads/{upload}", $"{employer}/roster/uploads/{upload}/findings.csv",
        ];

        foreach (var path in paths) Assert.Equal((path, 404), (path, (await browser.GetAsync($"/en/employers/{path}")).Status));
        Assert.Equal(404, (await browser.PostAsync($"/en/employers/{employer}/roster/uploads/{upload}/application", [], $"/en/employers/{employer}/roster")).Status);
        Assert.Equal(404, (await browser.PostAsync($"/en/employers/{other}/roster", [], $"/en/employers/{employer}/roster")).Status);
        using var lead = await Site.SignInAsync(await Site.AppointedAsync(AppointedRole.ProgrammeLead));
        Assert.Equal(200, (await lead.GetAsync($"/en/employers/{other}/roster/uploads/{upload}")).Status);
    }

    [Theory]
    [InlineData("en", "Badge number,Name,Site,Crew,Language,Mail address")]
    [InlineData("es", "Número de gafete,Nombre,Sitio,Cuadrilla,Idioma,Correo")]
    public async Task The_roster_that_is_downloaded_is_read_by_another_program_and_by_ours(string language, string header)
    {
        var (browser, employer, _) = await RepresentativeAsync();
        using var _1 = browser;
        await ApplyAsync(browser, await SentAsync(browser, employer, Header + "-7,\"Íñigo \"\"El Güero\"\" Peña, hijo\",Rim Line East,'=North\n"));

        var csv = await browser.GetAsync($"/{language}/employers/{employer}/roster.csv");

        Assert.Equal(
            [header, "'-7|Íñigo \"El Güero\" Peña, hijo|Rim Line East|'=North|English|"],
            (await PythonAsync(csv.Bytes)).Select((line, at) => at == 0 ? line.Replace('|', ',') : line));
        Assert.Equal("The file says what the roster says.", Says(await browser.GetAsync(await SentBytesAsync(browser, employer, csv.Bytes))));
    }

    [Fact]
    public async Task The_sample_file_can_be_sent_as_it_is()
    {
        var (browser, employer, _) = await RepresentativeAsync();
        using var _1 = browser;
        foreach (var language in new[] { "en", "es" })
        {
            var sample = await browser.GetAsync($"/{language}/employers/{employer}/roster/sample.csv");

            Assert.Equal("2 people are new.", Says(await browser.GetAsync(await SentBytesAsync(browser, employer, sample.Bytes))));
        }
    }

    private static async Task<string> SentBytesAsync(PlainBrowser browser, Guid employer, byte[] content) =>
        (await SendAsync(browser, employer, content)).Location!; // not null: every file that is small enough is kept

    /// <summary>The rows as Python's csv module reads them, cells with a bar between.</summary>
    private static async Task<string[]> PythonAsync(byte[] content)
    {
        var path = Path.GetTempFileName();
        await File.WriteAllBytesAsync(path, content);
        using var python = Process.Start(new ProcessStartInfo("/usr/bin/python3")
        {
            ArgumentList = { "-c", "import csv, sys\nsys.stdout.reconfigure(encoding='utf-8')\nfor row in csv.reader(open(sys.argv[1], encoding='utf-8-sig', newline='')): print('|'.join(row))", path },
            RedirectStandardOutput = true, StandardOutputEncoding = Encoding.UTF8, UseShellExecute = false,
        })!; // not null: it was started
        var read = await python.StandardOutput.ReadToEndAsync();
        await python.WaitForExitAsync();
        File.Delete(path);
        return read.Split('\n', StringSplitOptions.RemoveEmptyEntries);
    }

    [GeneratedRegex("name=\"Fingerprint\" value=\"(?<value>[0-9a-f]+)\"", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Fingerprint();

    [GeneratedRegex("<h1 class=\"says\">(?<says>[^<]*)</h1>", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Heading();
}

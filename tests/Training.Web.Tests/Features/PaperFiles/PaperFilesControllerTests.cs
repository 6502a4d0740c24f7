using System.Diagnostics;
using System.Net;
using System.Text;
using System.Text.RegularExpressions;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Training.Scoring;
using Training.Web.Commands;
using Training.Web.Features.PaperFiles;
using Training.Web.Keys;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.PaperFiles;

/// <summary>Today is 25 November 2026. Papers are issued and signed by the real code.</summary>
public sealed partial class PaperFilesControllerTests(SharedSite shared)
{
    private const string Name = "María José Peña-Núñez";
    private static readonly DateOnly Start = new(2026, 1, 15);
    private static readonly DateOnly End = new(2027, 6, 1);
    private readonly RunningSite site = shared.Site;

    /// <summary>What is done to a genuine file, and the first line about what came of it.</summary>
    public static TheoryData<string, string> Alterations => new()
    {
        { "a byte of the page", "We signed this file, but it was changed afterwards." },
        { "the serial", "We signed this file, but it was changed afterwards." },
        { "a line behind its end", "Something was added to this file after we signed it." },
        { "the last line", "A part of this file is missing." },
        { "the letters of the signature", "This file is not as we issue files." },
        { "a second signature", "This file is not as we issue files." },
        { "the signature", "This PDF bears no signature." },
        { "everything but the picture", "This file is no PDF." },
    };

    /// <summary>Every first line about a file that is not as we issued it.</summary>
    private static readonly string[] NotGenuine =
    [
        "We signed this file, but it was changed afterwards.", "Something was added to this file after we signed it.", "A part of this file is missing.",
        "This file is not as we issue files.", "This PDF bears no signature.", "This file is no PDF.", "This file is signed, but not by us.",
    ];

    private static byte[] Alter(byte[] pdf, string what)
    {
        // Latin-1 keeps every byte.
        var text = Encoding.Latin1.GetString(pdf);
        var contents = text.IndexOf("/Contents<", StringComparison.Ordinal) + 10;
        return Encoding.Latin1.GetBytes(what switch
        {
            "a byte of the page" => $"{text[..1000]}{(char)(text[1000] ^ 1)}{text[1001..]}",
            "the serial" => text.Insert(text.IndexOf("/Subject(", StringComparison.Ordinal) + 9, "X").Remove(text.IndexOf("/Subject(", StringComparison.Ordinal) + 10, 1),
            "a line behind its end" => text + "% seen\n",
            "the last line" => text[..^8],
            "the letters of the signature" => text[..contents] + text[contents..(contents + 400)].ToLowerInvariant() + text[(contents + 400)..],
            "a second signature" => text + text[text.IndexOf("/SubFilter", StringComparison.Ordinal)..],
            "the signature" => text.Replace("/SubFilter", "/SubFilters", StringComparison.Ordinal).Replace("/ByteRange", "/BiteRange", StringComparison.Ordinal),
            "everything but the picture" => "\u0089PNG\r\n" + text,
            _ => throw new UnreachableException(),
        });
    }

    [Theory, MemberData(nameof(Alterations))]
    public async Task A_file_that_was_changed_anywhere_is_told_from_a_genuine_one(string what, string says)
    {
        var paper = await site.IssueSignedAsync(Start, End, Name);

        var (status, html) = await SendAsync(Alter(paper.Pdf, what));

        Assert.Equal(200, status);
        Assert.Contains($"<h1 class=\"says\">{says}</h1>", html, StringComparison.Ordinal);
        Assert.DoesNotContain(Name, html, StringComparison.Ordinal);
        Assert.DoesNotContain("current today", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_thousand_files_with_one_byte_changed_at_random_are_all_told_from_a_genuine_one()
    {
        using var unhurried = RunningSite.Start(isDemo: false, [new("Training:Verify:ChecksPerMinute", "10000")]);
        var paper = await unhurried.IssueSignedAsync(Start, End, Name);
        var random = new SplitMix64(20261127);

        foreach (var _ in Enumerable.Range(0, 1_000))
        {
            var (place, mask) = ((int)random.NextBelow((ulong)paper.Pdf.Length), (byte)(1 + random.NextBelow(255)));
            byte[] changed = [.. paper.Pdf];
            changed[place] ^= mask;

            var (status, html) = await SendAsync(changed, unhurried);

            var says = Says().Match(html).Groups["says"].Value;
            Assert.True(status == 200 && NotGenuine.Contains(says), $"byte {place} xor {mask}: {status} {says}");
            Assert.DoesNotContain(Name, html, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task A_file_as_it_was_issued_is_genuine_and_says_how_its_paper_stands_today()
    {
        var paper = await site.IssueSignedAsync(Start, End, Name);

        var (status, html) = await SendAsync(paper.Pdf);

        Assert.Equal(200, status);
        Assert.Contains("<h1 class=\"says\">We issued this file, and nothing in it was changed.</h1>", html, StringComparison.Ordinal);
        Assert.Contains("Genuine, and current today.", html, StringComparison.Ordinal);
        Assert.Contains(Name, html, StringComparison.Ordinal);
        Assert.Contains($"href=\"/en/verify/{paper.Serial}\"", html, StringComparison.Ordinal);
        Assert.Contains("Emitimos este archivo y no se cambió nada en él.", (await SendAsync(paper.Pdf, path: "/es/verify/file")).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_genuine_file_of_a_paper_that_lapsed_says_so()
    {
        var paper = await site.IssueSignedAsync(Start, new(2026, 11, 2), Name);

        Assert.Contains("Genuine, but it lapsed after 2 November 2026.", (await SendAsync(paper.Pdf)).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_that_another_program_saved_again_is_not_taken_for_ours()
    {
        var paper = await site.IssueSignedAsync(Start, End, Name);
        var folder = Directory.CreateTempSubdirectory("training-file-").FullName;
        var (original, again) = (Path.Combine(folder, "a.pdf"), Path.Combine(folder, "b.pdf"));
        await File.WriteAllBytesAsync(original, paper.Pdf);

        await Script.RunAsync("qpdf", ["--linearize", "--warning-exit-0", original, again]);
        var (_, html) = await SendAsync(await File.ReadAllBytesAsync(again));

        Directory.Delete(folder, recursive: true);
        Assert.DoesNotContain("We issued this file", html, StringComparison.Ordinal);
        Assert.Matches("A part of this file is missing|This file is not as we issue files|it was changed afterwards|Something was added", html);
    }

    [Fact]
    public async Task A_file_of_another_issuer_is_signed_but_not_by_us()
    {
        using var other = RunningSite.Start();
        var paper = await other.IssueSignedAsync(Start, End, Name);

        Assert.Contains("This file is signed, but not by us.", (await SendAsync(paper.Pdf)).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_that_the_register_no_longer_keeps_is_known_by_its_signature_and_one_of_no_paper_is_not_relied_on()
    {
        var paper = await site.IssueSignedAsync(Start, End, Name);
        await site.RecordAsync(async records =>
        {
            var id = await records.Papers.Where(row => row.Serial == paper.Serial.Value).Select(row => row.Id).SingleAsync();
            await records.Renderings.Where(row => row.PaperId == id).ExecuteDeleteAsync();
        });

        var (_, erased) = await SendAsync(paper.Pdf);
        var another = Papers.ASerial();
        await site.RecordAsync(records => records.Papers.Where(row => row.Serial == paper.Serial.Value)
            .ExecuteUpdateAsync(set => set.SetProperty(row => row.Serial, another.Value)));
        var (_, unknown) = await SendAsync(paper.Pdf);

        Assert.Contains("We signed this file, and it was not changed since.", erased, StringComparison.Ordinal);
        Assert.Contains("Compare the name in it with the name below", erased, StringComparison.Ordinal);
        Assert.Contains("This file bears our signature, but our register does not know it.", unknown, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_signature_whose_key_others_may_have_is_worth_nothing_where_the_register_does_not_keep_the_file()
    {
        using var robbed = RunningSite.Start();
        var (kept, erased) = (await robbed.IssueSignedAsync(Start, End, Name), await robbed.IssueSignedAsync(Start, End, Name));
        await robbed.RecordAsync(async records =>
        {
            var id = await records.Papers.Where(row => row.Serial == erased.Serial.Value).Select(row => row.Id).SingleAsync();
            await records.Renderings.Where(row => row.PaperId == id).ExecuteDeleteAsync();
        });
        var kid = RegisteredKey.KidOf(robbed.Services.GetRequiredService<IssuerKeys>().Signers[^1]);

        var code = KeysCommand.Run(["distrust", kid, "2026-11-25T17:00:00Z", $"--Training:DataFolder={robbed.DataFolder}"], robbed.Clock, TextWriter.Null);

        Assert.Equal(0, code);
        Assert.Contains("We issued this file", (await SendAsync(kept.Pdf, robbed)).Html, StringComparison.Ordinal);
        Assert.Contains("This file bears our signature, but our register does not know it.", (await SendAsync(erased.Pdf, robbed)).Html, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("application/x-www-form-urlencoded", "file=x")]
    [InlineData("text/plain", "%PDF-1.7")]
    [InlineData("multipart/form-data", "no boundary")]
    [InlineData("multipart/form-data; boundary=b", "")]
    [InlineData("multipart/form-data; boundary=b", "--b\r\n\r\nno headers\r\n--b--")]
    [InlineData("multipart/form-data; boundary=b", "--b\r\nContent-Disposition: form-data; name=\"file\"; filename=\"\"\r\n\r\n\r\n--b--")]
    [InlineData("multipart/form-data; boundary=b", "--b\r\nContent-Disposition: form-data; name=\"other\"; filename=\"a\"\r\n\r\n%PDF-\r\n--b--")]
    [InlineData("multipart/form-data; boundary=b", "--b\r\nContent-Disposition: form-data; name=\"file\"; filename=\"a.pdf\"\r\n\r\n%PDF- and no end")]
    public async Task A_form_without_a_whole_file_is_asked_for_one(string type, string body)
    {
        using var content = new ByteArrayContent(Encoding.ASCII.GetBytes(body));
        content.Headers.TryAddWithoutValidation("Content-Type", type);

        using var answer = await site.Client.PostAsync("/en/verify/file", content);

        Assert.Equal(422, (int)answer.StatusCode);
        Assert.Contains("There was no file in what you sent.", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_of_100_MB_is_refused_in_one_sentence_before_it_is_read()
    {
        var watch = Stopwatch.StartNew();
        using var content = new MultipartFormDataContent { { new StreamContent(new Nothing(100L * 1024 * 1024)), FileReading.Field, "large.pdf" } };

        using var answer = await site.Client.PostAsync("/en/verify/file", content);

        Assert.Equal(413, (int)answer.StatusCode);
        Assert.Contains(
            "<h1 class=\"says\">The file is larger than 20 MB, so it is none of our papers.</h1>", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.InRange(watch.Elapsed.TotalSeconds, 0, 10);
    }

    [Fact]
    public async Task A_length_that_the_form_keeps_to_itself_helps_nobody()
    {
        using var content = new MultipartFormDataContent { { new StreamContent(new Nothing(21L * 1024 * 1024)), FileReading.Field, "large.pdf" } };
        using var request = new HttpRequestMessage(HttpMethod.Post, "/en/verify/file") { Content = content };
        request.Headers.TransferEncodingChunked = true;

        using var answer = await site.Client.SendAsync(request);

        Assert.Equal(413, (int)answer.StatusCode);
    }

    [Theory]
    [InlineData("/SubFilter/ETSI.CAdES.detached/ByteRange")]
    [InlineData("/ByteRange[0 0 0 0]")]
    [InlineData("1 0 obj<</Length 9/Filter[/FlateDecode/FlateDecode/FlateDecode]>>stream ")]
    [InlineData("<<[<<[<<[<<[")]
    public async Task A_file_that_is_made_to_keep_readers_busy_is_judged_at_once(string piece)
    {
        var bomb = Encoding.ASCII.GetBytes("%PDF-1.7\n" + string.Concat(Enumerable.Repeat(piece, (FileReading.MostBytes - 9) / piece.Length)));
        var watch = Stopwatch.StartNew();

        var (status, html) = await SendAsync(bomb);

        Assert.Equal(200, status);
        Assert.Matches("<h1 class=\"says\">(This file is not as we issue files|This PDF bears no signature)\\.</h1>", html);
        Assert.InRange(watch.Elapsed.TotalSeconds, 0, 10);
    }

    [Fact]
    public async Task Nothing_of_the_file_is_kept_logged_or_remembered_by_the_browser()
    {
        var paper = await site.IssueSignedAsync(Start, End, Name);
        var files = Directory.GetFileSystemEntries(site.DataFolder, "*", SearchOption.AllDirectories).Length;
        var temporary = Directory.GetFiles(Path.GetTempPath(), "ASPNETCORE_*").Length;
        var logged = site.Log.Lines.Count;

        using var answer = await PostAsync([.. paper.Pdf, .. new byte[300_000]], site, "/en/verify/file");

        Assert.True(answer.Headers.CacheControl!.NoStore);
        Assert.False(answer.Headers.Contains("Set-Cookie"));
        Assert.Equal(files, Directory.GetFileSystemEntries(site.DataFolder, "*", SearchOption.AllDirectories).Length);
        Assert.Equal(temporary, Directory.GetFiles(Path.GetTempPath(), "ASPNETCORE_*").Length);
        Assert.DoesNotContain(site.Log.Lines.Skip(logged), line => line.Line.Contains("certificate-of-maria", StringComparison.Ordinal));
    }

    [Fact]
    public async Task More_files_than_the_limit_are_refused_as_checks_are()
    {
        using var limited = RunningSite.Start(settings: [new("Training:Verify:ChecksPerMinute", "2")]);
        for (var check = 0; check < 2; check++) Assert.Equal(422, (int)(await limited.Client.PostAsync("/en/verify/file", null)).StatusCode);

        Assert.Equal(HttpStatusCode.TooManyRequests, (await limited.Client.PostAsync("/en/verify/file", null)).StatusCode);
    }

    [Fact]
    public async Task The_switch_of_language_leads_back_to_the_form()
    {
        using var answer = await site.Client.GetAsync("/es/verify/file");

        Assert.Equal((302, "/es/verify#file-check"), ((int)answer.StatusCode, answer.Headers.Location!.OriginalString));
    }

    [GeneratedRegex("<h1 class=\"says\">(?<says>[^<]+)</h1>", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Says();

    private Task<(int Status, string Html)> SendAsync(byte[] file, string path = "/en/verify/file") => SendAsync(file, site, path);

    private static async Task<(int Status, string Html)> SendAsync(byte[] file, RunningSite to, string path = "/en/verify/file")
    {
        using var answer = await PostAsync(file, to, path);
        return ((int)answer.StatusCode, WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync()));
    }

    private static async Task<HttpResponseMessage> PostAsync(byte[] file, RunningSite to, string path)
    {
        using var content = new MultipartFormDataContent { { new ByteArrayContent(file), FileReading.Field, "certificate-of-maria.pdf" } };
        return await to.Client.PostAsync(path, content);
    }

    /// <summary>So many zeros, made as they are read.</summary>
    private sealed class Nothing(long length) : Stream
    {
        public override bool CanRead => true;

        public override bool CanSeek => true;

        public override bool CanWrite => false;

        public override long Length => length;

        public override long Position { get; set; }

        public override int Read(byte[] buffer, int offset, int count)
        {
            var read = (int)Math.Min(count, length - Position);
            Array.Clear(buffer, offset, read);
            Position += read;
            return read;
        }

        public override long Seek(long offset, SeekOrigin origin) => Position = origin == SeekOrigin.Begin ? offset : length + offset;

        public override void Flush()
        {
            // Nothing is written.
        }

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
    }
}

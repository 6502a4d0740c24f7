using System.Diagnostics;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using CsvHelper;
using Microsoft.EntityFrameworkCore;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Tests.Demo;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.AuditFolders;

/// <summary>The folder for an auditor, made of the demo's records and opened by programs that are not ours.</summary>
[Collection(ServedDemoTests.Name)]
public sealed class AuditFolderTests(ServedDemo demo)
{
    private static readonly string Through = Iso(MadeDemo.Today);
    private static readonly string From = Iso(MadeDemo.Today.AddYears(-2));

    [Fact]
    public async Task Every_file_is_in_the_index_with_its_hash_and_python_and_sha256sum_agree()
    {
        using var lead = await demo.SignInAsync(ServedDemo.Actors[Role.ProgrammeLead]);
        var folder = await UnpackAsync(await MakeAsync(lead, $"/en/employers/{demo.Own.EmployerId}/audit-folders", Guid.CreateVersion7()));

        var index = Index(folder.Path);
        foreach (var row in index)
        {
            var bytes = await File.ReadAllBytesAsync(Path.Combine(folder.Path, row["path"]), TestContext.Current.CancellationToken);
            Assert.Equal((row["sha256"], row["bytes"]), (Convert.ToHexStringLower(SHA256.HashData(bytes)), bytes.Length.ToString(CultureInfo.InvariantCulture)));
            if (row["kept_sha256"].Length > 0) Assert.Equal(row["kept_sha256"], row["sha256"]);
        }

        string[] own = ["index.csv", "index.html", "sha256sums.txt"];
        Assert.Equal(
            index.Select(row => row["path"]).Concat(own).Order(StringComparer.Ordinal),
            Directory.EnumerateFiles(folder.Path, "*", SearchOption.AllDirectories).Select(file => Path.GetRelativePath(folder.Path, file)).Order(StringComparer.Ordinal));
        foreach (var kind in new[] { "standing", "decision", "certificate", "sitting", "scoresheet", "class", "rules" }) Assert.Contains(index, row => row["kind"] == kind);
        Assert.Equal((0, ""), await RunAsync(folder.Path, "sha256sum", "--check", "--strict", "--quiet", "sha256sums.txt"));
        Directory.Delete(folder.Path, recursive: true);
    }

    [Fact]
    public async Task It_holds_every_decision_paper_sitting_and_sheet_of_the_employers_people_and_nobody_elses()
    {
        using var employer = await demo.SignInAsync(ServedDemo.Actors[Role.Employer]);
        var folder = await UnpackAsync(await MakeAsync(employer, $"/en/employers/{demo.Own.EmployerId}/audit-folders", Guid.CreateVersion7()));
        var index = Index(folder.Path);
        var (from, through) = (MadeDemo.Today.AddYears(-2), MadeDemo.Today);

        await demo.Site.RecordAsync(async records =>
        {
            var own = await records.Employments.Where(row => row.EmployerId == demo.Own.EmployerId && row.StartsOn <= through && (row.EndsOn == null || row.EndsOn >= through))
                .Select(row => row.PersonId).ToListAsync();
            Assert.Equal(
                (await records.Decisions.Where(row => own.Contains(row.PersonId) && row.DecidedOn >= from && row.DecidedOn <= through).Select(row => row.Id).ToListAsync()).Select(id => id.ToString()).Order(StringComparer.Ordinal),
                Ids(index, "decision"));
            Assert.Equal(
                (await (from paper in records.Papers
                        join decision in records.Decisions on paper.DecisionId equals decision.Id
                        where own.Contains(decision.PersonId) && decision.DecidedOn >= @from && decision.DecidedOn <= through
                        select paper.Id).ToListAsync()).Select(id => id.ToString()).Order(StringComparer.Ordinal),
                Ids(index, "certificate"));
            foreach (var id in await records.Sittings.Where(row => own.Contains(row.PersonId) && row.Copy == 1 && row.TakenOn >= from && row.TakenOn <= through).Select(row => row.FormId).ToListAsync())
                Assert.Contains(id.ToString(), Ids(index, "sitting"));
            foreach (var id in await records.Scoresheets.Where(row => own.Contains(row.CandidateId) && row.Copy == 1 && row.ScoredOn >= from && row.ScoredOn <= through).Select(row => row.FormId).ToListAsync())
                Assert.Contains(id.ToString(), Ids(index, "scoresheet"));

            // Neither the id nor the name of anybody whom another employer employs and this one does not.
            var others = await records.Employments.Where(row => !own.Contains(row.PersonId) && (row.EndsOn == null || row.EndsOn >= through)).Select(row => row.PersonId).Distinct().ToListAsync();
            var instructors = await records.Appointments.Select(row => row.PersonId).ToListAsync();
            var names = (await records.NamesOfAsync(others.Except(instructors), through, default)).Values.ToHashSet(StringComparer.Ordinal);
            var ids = others.Except(instructors).Select(id => id.ToString()).ToHashSet(StringComparer.Ordinal);
            foreach (var file in TextFiles(folder.Path))
            {
                var text = await File.ReadAllTextAsync(file);
                Assert.DoesNotContain(ids, id => text.Contains(id, StringComparison.Ordinal));
                Assert.DoesNotContain(names, name => text.Contains(name, StringComparison.Ordinal));
            }
        });
        Directory.Delete(folder.Path, recursive: true);
    }

    [Fact]
    public async Task An_employers_folder_has_no_words_of_questions_no_answers_and_no_keys_and_a_leads_has_them()
    {
        using var employer = await demo.SignInAsync(ServedDemo.Actors[Role.Employer]);
        using var lead = await demo.SignInAsync(ServedDemo.Actors[Role.ProgrammeLead]);
        var path = $"/en/employers/{demo.Own.EmployerId}/audit-folders";
        var open = await UnpackAsync(await MakeAsync(employer, path, Guid.CreateVersion7()));
        var full = await UnpackAsync(await MakeAsync(lead, path, Guid.CreateVersion7()));
        var options = demo.Site.Shelf.Courses.SelectMany(course => course.Questions).SelectMany(question => question.Words[Language.English].OptionHtml.Values)
            .Where(option => option.Length > 30).ToHashSet(StringComparer.Ordinal);
        var stems = demo.Site.Shelf.Courses.SelectMany(course => course.Questions).SelectMany(question => question.Words.Values.Select(words => words.StemHtml)).ToHashSet(StringComparer.Ordinal);
        var sittings = Index(open.Path).Where(row => row["kind"] == "sitting").Select(row => row["path"]).ToList();

        foreach (var file in TextFiles(open.Path))
        {
            var text = await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken);
            Assert.DoesNotContain(options, option => text.Contains(option, StringComparison.Ordinal));
            Assert.DoesNotContain(stems, stem => text.Contains(stem, StringComparison.Ordinal));
        }

        foreach (var one in sittings.Where(one => one.EndsWith(".json", StringComparison.Ordinal)))
        {
            using var read = JsonDocument.Parse(await File.ReadAllTextAsync(Path.Combine(open.Path, one), TestContext.Current.CancellationToken));
            Assert.All(read.RootElement.GetProperty("questions").EnumerateArray(), question => Assert.Equal(
                ["answeredAt", "language", "questionId", "questionVersion"], question.EnumerateObject().Select(property => property.Name).Order(StringComparer.Ordinal)));
            Assert.All(read.RootElement.GetProperty("results").EnumerateArray(), result => Assert.False(result.TryGetProperty("questions", out _) || result.TryGetProperty("reasons", out _)));
        }

        Assert.DoesNotContain(Index(open.Path), row => row["kind"] == "rules" && row["path"].EndsWith(".json", StringComparison.Ordinal));
        var shown = await File.ReadAllTextAsync(Path.Combine(full.Path, sittings.First(one => one.EndsWith(".html", StringComparison.Ordinal))), TestContext.Current.CancellationToken);
        Assert.Contains(stems, stem => shown.Contains(stem, StringComparison.Ordinal));
        // The kept text of a course is in a lead's folder as it is: its hash is the one that decisions name.
        Assert.All(Index(full.Path).Where(row => row["kind"] == "rules" && row["path"].EndsWith(".json", StringComparison.Ordinal)), row => Assert.Equal(row["id"], row["sha256"]));
        Directory.Delete(open.Path, recursive: true);
        Directory.Delete(full.Path, recursive: true);
    }

    [Fact]
    public async Task The_same_folder_is_the_same_bytes_and_who_made_it_with_which_hash_is_on_record()
    {
        using var lead = await demo.SignInAsync(ServedDemo.Actors[Role.ProgrammeLead]);
        var (one, other) = (Guid.CreateVersion7(), Guid.CreateVersion7());
        var path = $"/es/employers/{demo.Own.EmployerId}/audit-folders";

        var first = await MakeAsync(lead, path, one);
        var again = await MakeAsync(lead, path, one);
        var second = await MakeAsync(lead, path, other);

        Assert.Equal(first.Bytes, again.Bytes);
        Assert.Equal(first.Bytes, second.Bytes);
        Assert.Equal(409, (await PostAsync(lead, path, one, from: Iso(MadeDemo.Today.AddYears(-1)))).Status);
        await demo.Site.RecordAsync(async records =>
        {
            var kept = await records.AuditFolders.SingleAsync(row => row.Id == one);
            Assert.Equal(first.Headers["X-Index-SHA256"], kept.IndexSha256);
            Assert.Equal((true, demo.Own.EmployerId, MadeDemo.Today), (kept.IsFull, kept.EmployerId!.Value, kept.EndsOn)); // not null: it is of one employer
            Assert.Equal(1, await records.AuditFolders.CountAsync(row => row.Id == other));
        });
        Assert.Contains(first.Headers["X-Index-SHA256"], (await lead.GetAsync("/en/programme/audit-folders")).Html, StringComparison.Ordinal);
        Assert.Contains(first.Headers["X-Index-SHA256"], (await lead.GetAsync($"/es/employers/{demo.Own.EmployerId}/files")).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task One_person_one_site_and_a_badge_that_is_nobodys()
    {
        using var employer = await demo.SignInAsync(ServedDemo.Actors[Role.Employer]);
        var path = $"/en/employers/{demo.Own.EmployerId}/audit-folders";
        var (badge, person) = ("", Guid.Empty);
        await demo.Site.RecordAsync(async records =>
        {
            var row = await records.Badges.FirstAsync(one => one.EmployerId == demo.Own.EmployerId && one.PersonId == demo.Own.EmployeeId);
            (badge, person) = (row.Number, row.PersonId);
        });

        var folder = await UnpackAsync(await MakeAsync(employer, path, Guid.CreateVersion7(), badge));
        var unknown = await PostAsync(employer, path, Guid.CreateVersion7(), badge: "no-such-badge");

        Assert.Equal([person.ToString()], Directory.EnumerateDirectories(Path.Combine(folder.Path, "people")).Select(one => Path.GetFileName(one)));
        Assert.Equal(303, unknown.Status);
        Assert.Contains("no person of yours has that badge number", (await employer.GetAsync(unknown.Location!)).Html, StringComparison.Ordinal); // not null: 303
        Assert.Equal(404, (await PostAsync(employer, $"/en/employers/{demo.Foreign.EmployerId}/audit-folders", Guid.CreateVersion7())).Status);
        Directory.Delete(folder.Path, recursive: true);
    }

    private static async Task<Reply> MakeAsync(PlainBrowser browser, string path, Guid id, string? badge = null)
    {
        var answer = await PostAsync(browser, path, id, badge: badge);
        Assert.Equal((200, "application/zip"), (answer.Status, answer.Headers["Content-Type"]));
        return answer;
    }

    private static Task<Reply> PostAsync(PlainBrowser browser, string path, Guid id, string? from = null, string? badge = null) => browser.PostAsync(
        path, new() { ["formId"] = id.ToString(), ["from"] = from ?? From, ["through"] = Through, ["badge"] = badge ?? "" }, page: "/en/my/password");

    /// <summary>By Python, which also checks the sum that a zip has of each file; all files have one date.</summary>
    private static async Task<(string Path, Reply Answer)> UnpackAsync(Reply answer)
    {
        var folder = Directory.CreateTempSubdirectory("training-audit-").FullName;
        var zip = folder + ".zip";
        await File.WriteAllBytesAsync(zip, answer.Bytes);
        var script = "import sys, zipfile; z = zipfile.ZipFile(sys.argv[1]); assert z.testzip() is None; z.extractall(sys.argv[2]); assert len({i.date_time for i in z.infolist()}) == 1";
        Assert.Equal((0, ""), await RunAsync(folder, "python3", "-c", script, zip, folder));
        File.Delete(zip);
        return (folder, answer);
    }

    private static List<Dictionary<string, string>> Index(string folder)
    {
        using var csv = new CsvReader(new StreamReader(Path.Combine(folder, "index.csv"), Encoding.UTF8), CultureInfo.InvariantCulture);
        return [.. csv.GetRecords<dynamic>().Select(row => ((IDictionary<string, object>)row).ToDictionary(cell => cell.Key, cell => (string)cell.Value, StringComparer.Ordinal))];
    }

    private static IEnumerable<string> Ids(List<Dictionary<string, string>> index, string kind) =>
        index.Where(row => row["kind"] == kind).Select(row => row["id"]).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal);

    private static IEnumerable<string> TextFiles(string folder) =>
        Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).Where(file => !file.EndsWith(".pdf", StringComparison.Ordinal));

    private static async Task<(int Code, string Said)> RunAsync(string folder, string program, params IReadOnlyList<string> arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { WorkingDirectory = folder, RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false })!; // not null: it was started
        var said = await Task.WhenAll(process.StandardOutput.ReadToEndAsync(), process.StandardError.ReadToEndAsync());
        await process.WaitForExitAsync();
        return (process.ExitCode, string.Concat(said).Trim());
    }

    private static string Iso(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}

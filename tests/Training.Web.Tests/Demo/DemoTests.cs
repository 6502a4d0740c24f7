using System.Globalization;
using System.Security.Cryptography;
using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Scoring;
using Training.Web.Demo;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Demo;

public sealed class DemoTests(MadeDemo demo) : IClassFixture<MadeDemo>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Every_standing_is_there_under_the_handler_scheme()
    {
        await using var records = demo.Open();
        var held = await records.AllHeldCertificationsAsync(Cancel).Where(certification => certification.SchemeId == "handler").ToListAsync(Cancel);

        Assert.Equal(Enum.GetValues<Standing>(), held.Select(certification => Standings.On(certification, MadeDemo.Today)!.Value).Distinct().Order());
    }

    [Fact]
    public async Task Every_outcome_of_a_sheet_and_every_reason_of_a_sitting_is_there()
    {
        await using var records = demo.Open();
        var outcomes = await records.ScoresheetResults.Select(result => result.Outcome).Distinct().ToListAsync(Cancel);
        var failed = await records.Sittings.Select(sitting => sitting.FormId).ToListAsync(Cancel);
        var reasons = new HashSet<Type>();
        foreach (var id in failed)
        {
            var stored = await records.FindSittingAsync(id, Cancel);
            reasons.UnionWith(stored!.Results[^1].Result.Reasons.Select(reason => reason.GetType()));
        }

        Assert.Equal(Enum.GetValues<PracticalOutcome>(), outcomes.Order());
        Assert.Equal(3, reasons.Count);
    }

    /// <summary>Evidence can be shown and graded again years later: the stored draw and answers give the stored result.</summary>
    [Fact]
    public async Task Grading_a_stored_sitting_again_gives_the_stored_result()
    {
        await using var records = demo.Open();
        foreach (var id in await records.Sittings.OrderBy(sitting => sitting.FormId).Select(sitting => sitting.FormId).Take(100).ToListAsync(Cancel))
        {
            var stored = await records.FindSittingAsync(id, Cancel) ?? throw new InvalidOperationException();
            var course = demo.Courses.Values.Single(course => course.Hash == stored.Sitting.Draw.CourseHash);
            var again = SittingGrader.Grade(course, stored.Sitting, []);

            Assert.Equivalent(stored.Results[0].Result, again, strict: true);
        }
    }

    [Fact]
    public async Task Nobody_is_certified_whom_the_rules_refuse()
    {
        await using var records = demo.Open();
        var decisions = await records.Decisions.Select(decision => decision.Id).ToListAsync(Cancel);
        var notYet = 0;
        foreach (var id in decisions)
        {
            var stored = await records.FindDecisionAsync(id, Cancel);
            if (stored!.Made.Decision is Decision.NotYet { Reasons.Count: > 0 }) notYet++;
        }

        Assert.Equal((101, 10), (decisions.Count, notYet));
        Assert.Equal(91, await records.Periods.CountAsync(Cancel));
    }

    [Fact]
    public async Task The_exception_from_the_separation_of_hats_shows_in_the_evidence()
    {
        await using var records = demo.Open();
        var exceptions = new List<SeparationException>();
        foreach (var id in await records.Decisions.Select(decision => decision.Id).ToListAsync(Cancel))
        {
            if ((await records.FindDecisionAsync(id, Cancel))!.Made.Decision is Decision.Granted granted) exceptions.AddRange(granted.Exceptions);
        }

        // Each of the four practicals of one person, scored by who had taught them.
        Assert.Equal(4, exceptions.Count);
        Assert.All(exceptions, exception => Assert.StartsWith("Only instructor with the range permit", exception.Reason, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Every_paper_lies_as_a_file_of_the_bytes_that_the_records_hold()
    {
        await using var records = demo.Open();
        var files = Directory.GetFiles(demo.Place.Papers).Select(file => Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(file)))).Order();

        Assert.Equal(await records.Renderings.Select(rendering => rendering.Sha256).OrderBy(hash => hash).ToListAsync(Cancel), files);
        Assert.Equal(await records.Periods.CountAsync(Cancel), await records.Papers.CountAsync(Cancel));
    }

    [Fact]
    public async Task Every_paper_says_what_the_records_say()
    {
        await using var records = demo.Open();
        var papers = await (
            from rendering in records.Renderings
            where rendering.Language == Language.English
            join paper in records.Papers on rendering.PaperId equals paper.Id
            join name in records.PersonNames on paper.PersonNameId equals name.Id
            join period in records.Periods on paper.DecisionId equals period.DecisionId
            select new { rendering.Bytes, paper.Serial, Name = name.Text, period.ExpiresOn }).ToListAsync(Cancel);

        Assert.Equal(await records.Papers.CountAsync(Cancel), papers.Count);
        foreach (var paper in papers)
        {
            var text = Pdf.Text(paper.Bytes);
            Assert.Contains(paper.Name!, text, StringComparison.Ordinal); // no name of the demo is erased
            Assert.Contains(paper.ExpiresOn.ToString("d MMMM yyyy", CultureInfo.InvariantCulture), text, StringComparison.Ordinal);
            Assert.Contains(string.Join(' ', paper.Serial.Chunk(4).Select(group => new string(group))), text, StringComparison.Ordinal);
            Assert.Contains("DEMO", text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task The_summary_prints_what_the_records_hold()
    {
        await using var records = demo.Open();
        var output = new StringWriter();
        await new DemoSummary(records, demo.Courses, MadeDemo.Today, output).PrintAsync(demo.Place, new("http://localhost:5080"), "open gate", Cancel);
        var text = output.ToString();

        var passed = await records.SittingResults.CountAsync(result => result.IsPassed, Cancel);
        Assert.Matches($@"Graded\s+{await records.SittingResults.CountAsync(Cancel)} sittings: {passed} passed", text);
        Assert.Matches($@"Issued\s+{await records.Papers.CountAsync(Cancel)} certificates as {await records.Renderings.CountAsync(Cancel)} PDF files", text);
        var held = await records.AllHeldCertificationsAsync(Cancel).ToListAsync(Cancel);
        foreach (var name in await records.Accounts.Select(account => account.UserName!).ToListAsync(Cancel)) Assert.Contains($" {name} ", text, StringComparison.Ordinal);
        Assert.Contains($"{Lapses.By(held, MadeDemo.Today, MadeDemo.Today.AddDays(60)).Count} lapse from today", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_demo_of_today_is_not_made_again_and_one_of_another_day_or_program_is()
    {
        await using var records = demo.Open();
        var schema = records.Database.GetMigrations().Last();

        Assert.True(demo.Place.IsOf(MadeDemo.Today, schema));
        Assert.False(demo.Place.IsOf(MadeDemo.Today.AddDays(1), schema));
        Assert.False(demo.Place.IsOf(MadeDemo.Today, "an older one"));
    }

    [Fact]
    public void A_database_that_the_demo_did_not_make_is_left_alone()
    {
        var strange = new DemoPlace(Directory.CreateTempSubdirectory("training-strange-").FullName);
        Directory.CreateDirectory(strange.Folder);
        File.WriteAllText(strange.Database, "somebody's");
        var problems = new List<Problem>();

        strange.LookForStrangers(problems);

        Assert.Equal(DemoProblems.NotOurs, Assert.Single(problems).Code);
        Assert.Equal("somebody's", File.ReadAllText(strange.Database));
        Directory.Delete(Path.GetDirectoryName(strange.Folder)!, recursive: true);
    }
}

using System.Globalization;
using System.Text.Json;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Training.Records;
using Training.Web.Commands;
using Training.Web.Features.IssueLog;
using Training.Web.Tests.Features.IssueLog;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Commands;

/// <summary>A log of five papers with a signed head, before and after somebody was at it.</summary>
public sealed class LogCommandTests : IClassFixture<WholeLog>, IDisposable
{
    private readonly string folder;

    public LogCommandTests(WholeLog whole) => folder = whole.CopyTo(Directory.CreateTempSubdirectory("training-log-").FullName);

    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }

    private string Head => Path.Combine(folder, "head.json");

    private async Task ForgeAsync(Func<RecordsContext, Task> forge)
    {
        var options = new DbContextOptionsBuilder<RecordsContext>();
        options.UseRecords(new DatabaseOptions { Connection = $"Data Source={Path.Combine(folder, "training.db")}" });
        await using var records = new RecordsContext(options.Options);
        await forge(records);
    }

    private async Task<(int Code, string Said)> RunAsync(params IReadOnlyList<string> options)
    {
        var output = new StringWriter();
        var code = await LogCommand.RunAsync([.. options, $"--Training:DataFolder={folder}"], output);
        return (code, output.ToString().Trim());
    }

    [Fact]
    public async Task A_whole_log_is_counted()
    {
        Assert.Equal((0, "The log is whole. Leaves: 5. Signed heads: 1. Papers older than the log, or erased from it: 0."), await RunAsync());
        Assert.Equal(0, (await RunAsync("--head", Head)).Code);
    }

    [Fact]
    public async Task One_flipped_bit_names_its_leaf()
    {
        await ForgeAsync(records => records.FlipAsync(index: 3));

        var (code, said) = await RunAsync();

        Assert.Equal(1, code);
        Assert.StartsWith("log: Leaf 3 is not what was appended: it, or its stored hash, was changed.", said, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_missing_row_names_the_place_where_it_is_missing()
    {
        await ForgeAsync(records => records.TakeOutAsync(index: 2));

        Assert.Contains("The row of leaf 2 is missing", (await RunAsync()).Said, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_cut_end_is_told_by_a_head_that_somebody_saved()
    {
        await ForgeAsync(records => records.CutAsync(from: 3));

        Assert.Equal(0, (await RunAsync()).Code);
        Assert.Contains("The log has 3 leaves, but a head was signed over 5: its end was cut off.", (await RunAsync("--head", Head)).Said, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_log_that_was_rewritten_with_all_its_hashes_is_told_by_its_heads()
    {
        await ForgeAsync(records => records.RewriteAsync(index: 3));

        Assert.Contains("The head over 5 leaves has another root", (await RunAsync()).Said, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_head_of_somebody_else_is_not_believed()
    {
        var text = await File.ReadAllTextAsync(Head);
        await File.WriteAllTextAsync(Head, text.Replace("\"size\":5", "\"size\":4", StringComparison.Ordinal));

        Assert.Contains("The head over 4 leaves, timestamp 1795628640000, is not signed by a key of ours", (await RunAsync("--head", Head)).Said, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_head_of_a_key_that_others_had_by_then_is_not_believed()
    {
        var kid = JsonSerializer.Deserialize<PublishedHead>(await File.ReadAllTextAsync(Head), JsonSerializerOptions.Web)!.Kid; // not null: as it was served

        var done = KeysCommand.Run(["distrust", kid, "2026-11-25T17:44:00Z", $"--Training:DataFolder={folder}"], new StoppedClock(RunningSite.Now), TextWriter.Null);

        Assert.Equal(0, done);
        Assert.Contains("is not signed by a key of ours that was good at that time", (await RunAsync()).Said, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_paper_whose_dates_were_changed_is_not_what_was_logged()
    {
        await ForgeAsync(records => records.Periods.OrderBy(row => row.DecisionId).Take(1)
            .ExecuteUpdateAsync(set => set.SetProperty(row => row.ExpiresOn, new DateOnly(2028, 6, 1))));

        Assert.Matches(@"The records say of leaf \d \(paper [0-9A-Z]{12}\) something else than was logged", (await RunAsync()).Said);
    }

    [Theory]
    [InlineData("")]
    [InlineData("{}")]
    [InlineData("{\"size\":1,\"timestamp\":1,\"root\":\"00\",\"signature\":\"00\",\"kid\":\"x\"}")]
    [InlineData("<html>")]
    public async Task A_file_that_is_no_head_is_said_to_be_none(string content)
    {
        await File.WriteAllTextAsync(Head, content);

        var (code, said) = await RunAsync("--head", Head);

        Assert.Equal((1, $"--head: “{Head}” is no file with a signed head. Name a file that holds what /log/head served, such as: log --head head.json."), (code, said));
    }

    [Fact]
    public async Task It_speaks_Spanish()
    {
        await ForgeAsync(records => records.FlipAsync(index: 1));
        CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("es-US");

        Assert.StartsWith("log: La hoja 1 no es lo que se añadió", (await RunAsync()).Said, StringComparison.Ordinal);
    }
}

using Microsoft.EntityFrameworkCore;
using Training.Records;
using Training.Web.Commands;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.PaperRuns;

/// <summary>The program itself, killed in the middle of a run (SIGKILL), again and again: each paper is made once, with one place in the log.</summary>
public sealed class KilledPaperRunTests : IDisposable
{
    private const int Kills = 5;
    private const int Holders = 120;

    private readonly string folder = Directory.CreateTempSubdirectory("training-killed-run-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public async Task A_run_goes_on_where_it_was_killed_and_makes_each_paper_once()
    {
        await StartRunAsync();
        var made = 0;
        for (var kill = 1; kill <= Kills; kill++)
        {
            using var killed = Server();
            killed.Begin();
            // Not at the same place of every batch: 9 papers more each time, and whatever is made until the signal comes.
            made = await UntilAsync(killed, papers => papers >= made + 9);
            killed.Kill();
        }

        Assert.InRange(made, Kills * 9, Holders - 1);
        using var last = Server();
        last.Begin();
        await UntilAsync(last, papers => papers == Holders);
        last.Kill();

        await last.RecordAsync(async records =>
        {
            var newer = await records.Papers.Where(paper => paper.Revision == 2).ToListAsync();
            Assert.Equal((Holders, Holders), (newer.Count, newer.Select(paper => paper.DecisionId).Distinct().Count()));
            Assert.Equal(Holders * 2, await records.Renderings.CountAsync(file => records.Papers.Any(paper => paper.Id == file.PaperId && paper.Revision == 2)));
            // The papers from before got theirs when the program first started.
            Assert.Equal(2 * Holders, await records.PaperCredentials.Select(credential => credential.StatusIndex).Distinct().CountAsync());
        });
        var output = new StringWriter();
        Assert.Equal(0, await LogCommand.RunAsync([$"--Training:DataFolder={folder}"], output));
        // Each earlier paper was issued and replaced, each newer one issued.
        Assert.StartsWith($"The log is whole. Leaves: {3 * Holders}.", output.ToString(), StringComparison.Ordinal);
    }

    private ServerProcess Server() => new(folder, "--Training:Provider:Name=Quillback Field Safety", "--Training:Provider:Address=1 Test Road, Rifle, Colorado");

    private static async Task<int> UntilAsync(ServerProcess process, Func<int, bool> isReached)
    {
        for (var tries = 0; tries < 2400; tries++)
        {
            var papers = 0;
            await process.RecordAsync(async records =>
            {
                Assert.Empty(await records.PaperRunFailures.Select(failure => $"{failure.Code} {failure.Field}").Take(1).ToListAsync());
                papers = await records.Papers.CountAsync(paper => paper.Revision == 2);
            });
            if (isReached(papers)) return papers;
            await Task.Delay(50);
        }

        throw new TimeoutException("The run did not go on within two minutes.");
    }

    private async Task StartRunAsync()
    {
        using var site = RunningSite.Start(isDemo: false, [new("Training:Database:Connection", $"Data Source={Path.Combine(folder, "training.db")}")]);
        var today = DateOnly.FromDateTime(TimeProvider.System.GetUtcNow().UtcDateTime);
        for (var holder = 0; holder < Holders; holder++) await site.IssueAsync("awareness", today.AddMonths(-1), today.AddMonths(23), $"Ileana Prado-Whitt {holder}");
        var lead = (await ProgrammeCast.CreateAsync(site)).Lead;
        await site.RecordAsync(async records => Assert.IsType<Kept.Stored>(await records.StartAsync(
            new PaperRun
            {
                Id = Guid.CreateVersion7(), Kind = PaperRunKind.Anew, EmployerId = null, SchemeId = "awareness", Reason = "Our address changed.", LeadId = lead,
                StartedAt = TimeProvider.System.GetUtcNow(),
            },
            today,
            CancellationToken.None)));
    }
}

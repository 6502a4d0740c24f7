using System.Data.Common;
using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Training.Courses;
using Training.Records;
using Training.Web.Features.IssueLog;
using Training.Web.Keys;
using Training.Web.Problems;
using Training.Web.Settings;

namespace Training.Web.Commands;

/// <summary>Verifies the whole log of what was issued, and names the first bad leaf. Changes nothing; a server may run beside it.</summary>
public static class LogCommand
{
    private const string HeadOption = "--head";

    /// <summary>Exit code 0 where the log is whole, 1 otherwise.</summary>
    /// <param name="settings"><c>--head FILE</c> for a head that somebody saved, as <c>/log/head</c> serves it; then settings.</param>
    /// <param name="output">Where what was found is told.</param>
    public static async Task<int> RunAsync(string[] settings, TextWriter output)
    {
        var problems = new List<Problem>();
        var (file, rest) = Split(settings);
        var saved = file is null ? null : Find(file, problems);
        var options = SettingsReader.Read(Site.Settings(rest), problems);
        var keys = options is null ? null : new KeyStore(options).Read(problems)?.Keys;
        if (options is not null && keys is not null && problems.Count == 0) await VerifyAsync(options, keys, saved, output, problems);
        foreach (var problem in problems) await output.WriteLineAsync(ProblemText.Line(problem, CultureInfo.CurrentUICulture));
        return problems.Count == 0 ? 0 : 1;
    }

    private static async Task VerifyAsync(
        TrainingOptions options, IReadOnlyList<RegisteredKey> keys, PublishedHead? saved, TextWriter output, List<Problem> problems)
    {
        try
        {
            var database = new DbContextOptionsBuilder<RecordsContext>();
            database.UseRecords(options.RecordsDatabase());
            await using var records = new RecordsContext(database.Options);
            var report = await new LogVerification(records, keys).RunAsync(saved, CancellationToken.None);
            problems.AddRange(report.Problems);
            if (problems.Count == 0) await output.WriteLineAsync(Summary(report));
        }
        catch (Exception e) when (e is DbException or InvalidOperationException)
        {
            var said = e.GetBaseException().Message.ReplaceLineEndings(" ").TrimEnd('.');
            problems.Add(new(SettingsProblems.DatabaseUnreachable, Place.Of("Training:Database"), options.Database.Engine.ToString(), said));
        }
    }

    private static string Summary(LogReport report) => string.Create(
        CultureInfo.InvariantCulture,
        $"The log is whole. Leaves: {report.Leaves}. Signed heads: {report.Heads}. Papers older than the log, or erased from it: {report.UnloggedPapers}.");

    private static (string? File, string[] Others) Split(string[] settings)
    {
        var at = Array.IndexOf(settings, HeadOption);
        return at < 0 ? (null, settings) : (settings.ElementAtOrDefault(at + 1) ?? "", [.. settings[..at], .. settings.Skip(at + 2)]);
    }

    private static PublishedHead? Find(string file, List<Problem> problems)
    {
        // No head is longer; a file that is something else is not read whole.
        const int MostCharacters = 4096;
        try
        {
            var text = new FileInfo(file) is { Exists: true, Length: <= MostCharacters } ? File.ReadAllText(file) : "";
            if (PublishedHead.Find(text) is { } head) return head;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException)
        {
            // Told below, as a file without a head.
        }

        problems.Add(new(IssueLogProblems.HeadUnreadable, Place.Of(HeadOption), file));
        return null;
    }
}

using System.Data.Common;
using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Training.Courses;
using Training.Records;
using Training.Web.Problems;
using Training.Web.Settings;

namespace Training.Web.Commands;

/// <summary>Runs the server until it is stopped.</summary>
public static class ServeCommand
{
    /// <summary>Exit code 0 after an orderly stop, 1 where the settings do not allow a start.</summary>
    public static async Task<int> RunAsync(string[] settings)
    {
        await using var app = Site.Build(settings);

        // Only now: the database tools build the same host and stop here, without an address to serve.
        var problems = new List<Problem>();
        if (SettingsReader.Read(app.Configuration, problems) is { } options)
        {
            SettingsReader.LookForServing(options, problems);
            if (problems.Count == 0) await OpenRecordsAsync(app, options, problems);
        }

        foreach (var problem in problems) await Console.Error.WriteLineAsync(ProblemText.Line(problem, CultureInfo.CurrentUICulture));
        if (problems.Count > 0) return 1;
        Site.Use(app);
        await app.RunAsync();
        return 0;
    }

    private static async Task OpenRecordsAsync(WebApplication app, TrainingOptions options, List<Problem> problems)
    {
        try
        {
            Directory.CreateDirectory(options.DataFolder);
            await using var records = await app.Services.GetRequiredService<IDbContextFactory<RecordsContext>>().CreateDbContextAsync();
            await records.Database.MigrateAsync();
        }
        catch (Exception e) when (e is DbException or IOException or UnauthorizedAccessException)
        {
            var said = e.GetBaseException().Message.ReplaceLineEndings(" ");
            problems.Add(new(SettingsProblems.DatabaseUnreachable, Place.Of("Training:Database"), options.Database.Engine.ToString(), said));
        }
    }
}

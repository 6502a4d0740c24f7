using System.Data.Common;
using System.Globalization;
using Microsoft.AspNetCore.Connections;
using Microsoft.EntityFrameworkCore;
using Training.Courses;
using Training.Records;
using Training.Web.Features.Certificates;
using Training.Web.Features.FirstLead;
using Training.Web.Features.IssueLog;
using Training.Web.Features.Reminders;
using Training.Web.Keys;
using Training.Web.Problems;
using Training.Web.Provider;
using Training.Web.Settings;

namespace Training.Web.Commands;

/// <summary>Runs the server until it is stopped.</summary>
public static class ServeCommand
{
    /// <summary>Exit code 0 after an orderly stop, 1 where the settings do not allow a start.</summary>
    public static async Task<int> RunAsync(string[] settings)
    {
        await using var app = Site.Build(settings, services => services.AddReminderClock().AddTreeHeadClock());

        // Only now: the database tools build the same host and stop here, without an address to serve.
        var problems = new List<Problem>();
        if (SettingsReader.Read(app.Configuration, problems) is { } options)
        {
            SettingsReader.LookForServing(options, problems);
            PaperFaces.Read(options.Papers, problems);
            if (problems.Count == 0) await OpenRecordsAsync(app, options, problems);
            if (problems.Count == 0) app.LookAtKeys(app.Services.GetRequiredService<TimeProvider>().GetUtcNow(), problems);
        }

        if (problems.Count == 0) await ServeAsync(app, problems);
        foreach (var problem in problems) await Console.Error.WriteLineAsync(ProblemText.Line(problem, CultureInfo.CurrentUICulture));
        return problems.Count == 0 ? 0 : 1;
    }

    private static async Task ServeAsync(WebApplication app, List<Problem> problems)
    {
        Site.Use(app);
        try
        {
            await app.RunAsync();
        }
        catch (IOException e) when (e.InnerException is AddressInUseException)
        {
            problems.Add(new(SettingsProblems.AddressInUse, Place.Of("Urls"), e.Message.TrimEnd('.')));
        }
    }

    private static async Task OpenRecordsAsync(WebApplication app, TrainingOptions options, List<Problem> problems)
    {
        try
        {
            Directory.CreateDirectory(options.DataFolder);
            await using var records = await app.Services.GetRequiredService<IDbContextFactory<RecordsContext>>().CreateDbContextAsync();
            var clock = app.Services.GetRequiredService<TimeProvider>();
            await records.BringUpToDateAsync(clock.GetUtcNow(), CancellationToken.None);
            // A certificate that is made at the first start names the provider as a lead called it.
            app.Services.GetRequiredService<OurProvider>().Take(await records.FindProviderDetailsAsync(CancellationToken.None));
            await FirstLeadInvitation.PrintAsync(records, options, clock, Console.Out, CancellationToken.None);
        }
        catch (Exception e) when (e is DbException or IOException or UnauthorizedAccessException)
        {
            var said = e.GetBaseException().Message.ReplaceLineEndings(" ").TrimEnd('.');
            problems.Add(new(SettingsProblems.DatabaseUnreachable, Place.Of("Training:Database"), options.Database.Engine.ToString(), said));
        }
    }
}

using Training.Documents.Fonts;
using Training.Records;
using Training.Web.Demo;
using Training.Web.Doors;
using Training.Web.Features.BitePlans;
using Training.Web.Features.Calendars;
using Training.Web.Features.Appeals;
using Training.Web.Features.AuditFolders;
using Training.Web.Features.Certificates;
using Training.Web.Features.ClassPlans;
using Training.Web.Features.Corrections;
using Training.Web.Features.Cover;
using Training.Web.Features.Credentials;
using Training.Web.Features.Decisions;
using Training.Web.Features.Files;
using Training.Web.Features.FirstDay;
using Training.Web.Features.Health;
using Training.Web.Features.Issuer;
using Training.Web.Features.Panels;
using Training.Web.Features.InstructorFiles;
using Training.Web.Features.IssueLog;
using Training.Web.Features.Lives;
using Training.Web.Features.People;
using Training.Web.Features.QuizStatistics;
using Training.Web.Features.PaperRuns;
using Training.Web.Features.PocketCards;
using Training.Web.Features.Reminders;
using Training.Web.Features.Rosters;
using Training.Web.Features.Scoresheets;
using Training.Web.Features.Shared;
using Training.Web.Features.SignIn;
using Training.Web.Features.Sittings;
using Training.Web.Features.TrainingChanges;
using Training.Web.Features.Verify;
using Training.Web.Features.Workforce;
using Training.Web.Keys;
using Training.Web.Languages;
using Training.Web.Provider;
using Training.Web.Security;
using Training.Web.Settings;
using Training.Web.Shelf;

namespace Training.Web;

/// <summary>Puts the web site together: what it is made of, and what a request passes through.</summary>
public static class Site
{
    /// <summary>The settings as <see cref="Build"/> would see them, without building anything.</summary>
    public static IConfiguration Settings(string[] args) => new ConfigurationBuilder()
        .SetBasePath(AppContext.BaseDirectory)
        .AddJsonFile("appsettings.json", optional: true)
        .AddEnvironmentVariables()
        .AddCommandLine(args)
        .Build();

    /// <summary>Everything that the site is made of. Touches no database.</summary>
    /// <param name="args">Settings of the command line.</param>
    /// <param name="more">What a command puts in place of the usual, such as <see cref="DemoMark"/>.</param>
    public static WebApplication Build(string[] args, Action<IServiceCollection>? more = null)
    {
        // appsettings.json and wwwroot lie beside the program; courses and data folder are relative to where it was started.
        var builder = WebApplication.CreateBuilder(new WebApplicationOptions { Args = args, ContentRootPath = AppContext.BaseDirectory });
        builder.WebHost.UseStaticWebAssets();
        builder.WebHost.ConfigureKestrel(kestrel => kestrel.AddServerHeader = false);

        var services = builder.Services;
        // Settings that cannot be used are told of before anything starts (ServeCommand); the host is built in any case.
        var options = SettingsReader.Read(builder.Configuration, []) ?? new();
        services.AddSingleton(options);
        services.AddSingleton(TimeProvider.System);
        services.AddSingleton(PaperFaces.Read(options.Papers, []) ?? FontFaces.Default);
        services.AddRecords(options.RecordsDatabase());
        services.AddSingleton(new DemoMark(IsOn: false));
        services.AddDoors();
        services.AddScoped<PasswordCheck>();
        services.AddScoped<NewPasswords>();
        services.AddShelf();
        services.AddProvider();
        services.AddScoped<PersonReading>();
        services.AddScoped<PastStandingReading>();
        services.AddScoped<AppealLetters>();
        services.AddScoped<InstructorReading>();
        services.AddScoped<TrainingChangeReading>();
        services.AddScoped<PanelReading>();
        services.AddIssuerKeys();
        services.AddIssuer();
        services.AddScoped<CredentialReading>();
        services.AddVerify();
        services.AddIssueLog();
        services.AddBitePlans();
        services.AddCalendars();
        services.AddWorkforce();
        services.AddFiles();
        services.AddCover();
        services.AddClassPlans();
        services.AddAuditFolders();
        services.AddQuizStatistics();
        services.AddCorrections();
        services.AddRosters();
        services.AddFirstDay();
        services.AddSingleton<PaperCredentials>().AddSingleton<CertificateIssue>().AddSingleton<PaperRunJob>();
        services.AddSingleton<PrintedPapers>();
        services.AddScoped<PocketCardReading>();
        services.AddScoped<ScoresheetPaperReading>();
        services.AddSingleton<RuleDecisions>();
        services.AddSingleton<StartedSittingSubmission>();
        services.AddReminders(options);
        services.AddHealth();
        services.AddLocalization();
        services.AddRouting(routing => routing.ConstraintMap["language"] = typeof(LanguageRouteConstraint));
        services.AddControllersWithViews().AddRazorOptions(razor =>
        {
            // A feature is one folder: views lie beside their controller.
            razor.ViewLocationFormats.Clear();
            razor.ViewLocationFormats.Add("/Features/{1}/{0}.cshtml");
            razor.ViewLocationFormats.Add("/Features/Shared/{0}.cshtml");
        });
        more?.Invoke(services);
        return builder.Build();
    }

    /// <summary>What a request passes through, in order.</summary>
    public static void Use(WebApplication app)
    {
        app.UseTrustedProxies();
        app.UseSecurityHeaders();
        app.UsePageLanguage();
        app.UseExceptionHandler("/refusals/500");
        app.UseStatusCodePagesWithReExecute("/refusals/{0}");
        app.UseStaticFiles();
        app.UseRouting();
        app.UseRateLimiter();
        app.UseAuthentication();
        app.UseDoors();
        app.MapHealth();
        app.MapControllers();
    }
}

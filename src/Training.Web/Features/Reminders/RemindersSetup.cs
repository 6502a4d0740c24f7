using Hangfire;
using Hangfire.InMemory;
using Training.Web.Features.Invitations;
using Training.Web.Mail;
using Training.Web.Settings;

namespace Training.Web.Features.Reminders;

/// <summary>Puts reminders into the site.</summary>
public static class RemindersSetup
{
    /// <summary>The job and what it is made of.</summary>
    public static IServiceCollection AddReminders(this IServiceCollection services, TrainingOptions options)
    {
        services.AddSingleton<ReminderSweep>();
        services.AddSingleton<InvitationLetters>();
        services.AddSingleton<InvitationSweep>();
        services.AddSingleton<DigestSweep>();
        services.AddSingleton<ReviewSweep>();
        services.AddSingleton<MailDelivery>();
        services.AddSingleton<ReminderJob>();
        if (options.Mail.Host.Length > 0) services.AddSingleton<IMailSender, SmtpMailSender>();
        else services.AddSingleton<IMailSender, FolderMailSender>();
        return services;
    }

    /// <summary>The clock of the jobs, in this process: <c>serve</c> and the demo have one, tests start the jobs themselves.</summary>
    /// <remarks>In memory, on every engine: what is due is worked out from the records, so a lost queue loses nothing (docs/decisions.md).</remarks>
    public static IServiceCollection AddReminderClock(this IServiceCollection services)
    {
        services.AddHangfire(hangfire => hangfire.UseInMemoryStorage(new InMemoryStorageOptions()));
        services.AddHangfireServer(server => server.WorkerCount = 1);
        services.AddHostedService<ReminderClock>();
        return services;
    }
}

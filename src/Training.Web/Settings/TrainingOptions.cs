using System.ComponentModel.DataAnnotations;
using Microsoft.Data.Sqlite;

namespace Training.Web.Settings;

/// <summary>All settings of the program: section <c>Training</c> of appsettings.json, each overridable by an environment variable.</summary>
/// <remarks>Listed for operators in docs/settings.md; a test compares the two.</remarks>
public sealed class TrainingOptions
{
    /// <summary>Name of the section.</summary>
    public const string Section = "Training";

    /// <summary>The address under which strangers reach this server, http or https; printed in QR codes for ever. No default.</summary>
    [Required]
    public Uri? PublicAddress { get; init; }

    /// <summary>Folder for all files that the program writes; relative to the working directory. Default <c>var</c>.</summary>
    [Required]
    public string DataFolder { get; init; } = "var";

    /// <summary>Folder that holds the courses; relative to the working directory. Default <c>courses</c>.</summary>
    [Required]
    public string CoursesFolder { get; init; } = "courses";

    /// <summary>IP addresses of proxies whose forwarded headers are believed, separated by commas. Default: none.</summary>
    public string TrustedProxies { get; init; } = "";

    /// <summary>Where the records are kept.</summary>
    public DatabaseOptions Database { get; init; } = new();

    /// <summary>Who trains and certifies.</summary>
    public ProviderOptions Provider { get; init; } = new();

    /// <summary>How papers are printed.</summary>
    public PapersOptions Papers { get; init; } = new();

    /// <summary>What papers and credentials are signed with.</summary>
    public KeysOptions Keys { get; init; } = new();

    /// <summary>The public check of certificates.</summary>
    public VerifyOptions Verify { get; init; } = new();

    /// <summary>The server that takes our mail.</summary>
    public MailOptions Mail { get; init; } = new();

    /// <summary>When reminders are made.</summary>
    public RemindersOptions Reminders { get; init; } = new();

    /// <summary>What only the demo obeys.</summary>
    public DemoOptions Demo { get; init; } = new();

    /// <summary>An address that strangers reach, for papers and mails.</summary>
    /// <param name="path">Below <see cref="PublicAddress"/>, without a slash at its start.</param>
    /// <exception cref="InvalidOperationException">No public address is set; <c>serve</c> and the demo do not start without one.</exception>
    public Uri PublicPage(string path) => new(PublicAddress ?? throw new InvalidOperationException("Papers and mails need a public address."), path);

    /// <summary>The address that mails come from: that of the settings, else one at the public address.</summary>
    public string MailFrom() => Mail.From.Length > 0 ? Mail.From : $"training@{PublicPage("").Host}";

    /// <summary>What the records are opened with; without a connection string, a file in the data folder.</summary>
    public Records.DatabaseOptions RecordsDatabase() => new()
    {
        Engine = Database.Engine,
        Connection = Database.Connection.Length > 0
            ? Database.Connection
            : new SqliteConnectionStringBuilder { DataSource = Path.Combine(Path.GetFullPath(DataFolder), "training.db") }.ToString(),
    };
}

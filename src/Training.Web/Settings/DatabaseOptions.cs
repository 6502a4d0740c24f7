using System.ComponentModel.DataAnnotations;
using Training.Records;

namespace Training.Web.Settings;

/// <summary>Section <c>Training:Database</c>.</summary>
public sealed class DatabaseOptions
{
    /// <summary>Which engine. Default <see cref="DatabaseEngine.Sqlite"/>.</summary>
    [Required]
    public DatabaseEngine Engine { get; init; } = DatabaseEngine.Sqlite;

    /// <summary>Connection string of the engine. Empty, the default: a file in the data folder; SQLite only.</summary>
    public string Connection { get; init; } = "";
}

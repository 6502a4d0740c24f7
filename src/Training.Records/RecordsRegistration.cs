using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;
using Microsoft.Extensions.DependencyInjection;

namespace Training.Records;

/// <summary>The database engines that the records run on.</summary>
public enum DatabaseEngine
{
    /// <summary>Embedded; the default.</summary>
    Sqlite,

    /// <summary>Microsoft SQL Server.</summary>
    SqlServer,

    /// <summary>PostgreSQL.</summary>
    Postgres,
}

/// <summary>Section <c>Training:Database</c> of the settings.</summary>
public sealed class DatabaseOptions
{
    /// <summary>Which engine; SQLite unless said otherwise.</summary>
    public DatabaseEngine Engine { get; set; } = DatabaseEngine.Sqlite;

    /// <summary>Connection string of that engine; by default a file in the data folder.</summary>
    public string Connection { get; set; } = "Data Source=var/training.db";
}

/// <summary>Puts the records into an application.</summary>
public static class RecordsRegistration
{
    /// <summary>Adds <see cref="RecordsContext"/> (scoped) and its factory (for jobs).</summary>
    public static IServiceCollection AddRecords(this IServiceCollection services, DatabaseOptions database) =>
        services.AddDbContextFactory<RecordsContext>(options => options.UseRecords(database), ServiceLifetime.Singleton);

    /// <summary>Chooses engine, connection and migrations. The migrations lie in a project of their own per engine, found by name.</summary>
    public static DbContextOptionsBuilder UseRecords(this DbContextOptionsBuilder options, DatabaseOptions database) =>
        // That the migrations say what the model says is tested; to ask again costs each start a second.
        options.UseEngine(database).ConfigureWarnings(warnings => warnings.Ignore(RelationalEventId.PendingModelChangesWarning));

    private static DbContextOptionsBuilder UseEngine(this DbContextOptionsBuilder options, DatabaseOptions database) => database.Engine switch
    {
        DatabaseEngine.Sqlite => options
            .UseSqlite(database.Connection, engine => engine.MigrationsAssembly("Training.Records.Sqlite"))
            .AddInterceptors(SqlitePragmas.Instance),
        DatabaseEngine.SqlServer => options
            .UseSqlServer(database.Connection, engine => engine.MigrationsAssembly("Training.Records.SqlServer")),
        DatabaseEngine.Postgres => options
            .UseNpgsql(database.Connection, engine => engine.MigrationsAssembly("Training.Records.Postgres")),
    };
}

using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Training.Records;

/// <summary>Sets each SQLite connection up. FULL: a power cut must not lose a committed certificate (NORMAL may, in WAL mode).</summary>
internal sealed class SqlitePragmas : DbConnectionInterceptor
{
    internal static readonly SqlitePragmas Instance = new();

    private const string Pragmas =
        "PRAGMA busy_timeout = 5000; PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA foreign_keys = ON;";

    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData)
    {
        using var command = connection.CreateCommand();
        command.CommandText = Pragmas;
        command.ExecuteNonQuery();
    }

    public override async Task ConnectionOpenedAsync(
        DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
    {
        await using var command = connection.CreateCommand();
        command.CommandText = Pragmas;
        await command.ExecuteNonQueryAsync(cancellationToken);
    }
}

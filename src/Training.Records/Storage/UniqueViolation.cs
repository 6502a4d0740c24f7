using Microsoft.Data.SqlClient;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Npgsql;

namespace Training.Records;

/// <summary>The one place that knows how each engine says "that key is taken".</summary>
internal static class UniqueViolation
{
    // SQLite: 2067 for a unique index, 1555 for a primary key. SQL Server: 2601 for an index, 2627 for a constraint.
    internal static bool Is(DbUpdateException exception) => exception.InnerException switch
    {
        SqliteException sqlite => sqlite.SqliteExtendedErrorCode is 2067 or 1555,
        PostgresException postgres => postgres.SqlState == PostgresErrorCodes.UniqueViolation,
        SqlException sqlServer => sqlServer.Number is 2601 or 2627,
        _ => false,
    };
}

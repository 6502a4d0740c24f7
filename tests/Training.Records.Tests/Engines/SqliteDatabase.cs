using Microsoft.Data.Sqlite;

namespace Training.Records.Tests;

public sealed class SqliteDatabase : TestDatabase
{
    private readonly string folder = Directory.CreateTempSubdirectory("training-records-").FullName;

    public override DatabaseOptions Options => new()
    {
        Engine = DatabaseEngine.Sqlite,
        Connection = $"Data Source={Path.Combine(folder, "records.db")}",
    };

    public override async ValueTask DisposeAsync()
    {
        await base.DisposeAsync();
        // The pool keeps the file open.
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }
}

public sealed class SqliteTests(SqliteDatabase database) : RecordsTests(database), IClassFixture<SqliteDatabase>;

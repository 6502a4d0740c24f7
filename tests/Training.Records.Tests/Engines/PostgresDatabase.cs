using Npgsql;

namespace Training.Records.Tests;

public sealed class PostgresDatabase : TestDatabase
{
    private readonly string name = $"records_{Guid.CreateVersion7():N}";

    public override DatabaseOptions Options => new() { Engine = DatabaseEngine.Postgres, Connection = Connection() };

    private string Connection()
    {
        var server = Environment.GetEnvironmentVariable("TEST_POSTGRES")
            ?? throw new InvalidOperationException("PostgreSQL is part of these tests: run tests/run, which starts it, or set TEST_POSTGRES to a connection string.");
        return new NpgsqlConnectionStringBuilder(server) { Database = name }.ConnectionString;
    }
}

public sealed class PostgresTests(PostgresDatabase database) : RecordsTests(database), IClassFixture<PostgresDatabase>;

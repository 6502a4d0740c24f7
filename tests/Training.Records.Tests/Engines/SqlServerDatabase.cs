using Microsoft.Data.SqlClient;

namespace Training.Records.Tests;

public sealed class SqlServerDatabase : TestDatabase
{
    private readonly string name = $"records_{Guid.CreateVersion7():N}";

    public override DatabaseOptions? Options => Environment.GetEnvironmentVariable("TEST_SQLSERVER") is { } server
        ? new() { Engine = DatabaseEngine.SqlServer, Connection = new SqlConnectionStringBuilder(server) { InitialCatalog = name }.ConnectionString }
        : null;
}

public sealed class SqlServerTests(SqlServerDatabase database) : RecordsTests(database), IClassFixture<SqlServerDatabase>;

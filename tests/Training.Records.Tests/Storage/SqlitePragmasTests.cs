using Microsoft.EntityFrameworkCore;

namespace Training.Records.Tests;

public sealed class SqlitePragmasTests(SqliteDatabase database) : IClassFixture<SqliteDatabase>
{
    [Theory]
    [InlineData("journal_mode", "wal")]
    [InlineData("synchronous", "2")]
    [InlineData("foreign_keys", "1")]
    [InlineData("busy_timeout", "5000")]
    public async Task Each_connection_is_set_up_to_lose_nothing(string pragma, string value)
    {
        await using var records = database.Open();
        await records.Database.OpenConnectionAsync();
        await using var command = records.Database.GetDbConnection().CreateCommand();
        command.CommandText = pragma switch
        {
            "journal_mode" => "PRAGMA journal_mode",
            "synchronous" => "PRAGMA synchronous",
            "foreign_keys" => "PRAGMA foreign_keys",
            _ => "PRAGMA busy_timeout",
        };

        Assert.Equal(value, Convert.ToString(await command.ExecuteScalarAsync()));
    }
}

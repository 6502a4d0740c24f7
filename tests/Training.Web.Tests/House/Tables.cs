using Microsoft.EntityFrameworkCore;
using Training.Records;

namespace Training.Web.Tests.House;

/// <summary>Breaks a database on purpose.</summary>
internal static class Tables
{
    public static async Task DropAsync(RecordsContext records, string table)
    {
        await records.Database.ExecuteSqlRawAsync("PRAGMA foreign_keys = OFF");
#pragma warning disable EF1002 // The name comes from the test itself; a table's name cannot be a parameter.
        await records.Database.ExecuteSqlRawAsync($"DROP TABLE \"{table}\"");
#pragma warning restore EF1002
    }
}

using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;

namespace Training.Records.Sqlite;

/// <summary>Lets <c>dotnet ef</c> build the model without a server and without the web application.</summary>
public sealed class DesignTimeRecords : IDesignTimeDbContextFactory<RecordsContext>
{
    /// <summary>A context that is never connected.</summary>
    public RecordsContext CreateDbContext(string[] args)
    {
        var options = new DbContextOptionsBuilder<RecordsContext>();
        options.UseRecords(new DatabaseOptions { Engine = DatabaseEngine.Sqlite, Connection = "Data Source=:memory:" });
        return new(options.Options);
    }
}

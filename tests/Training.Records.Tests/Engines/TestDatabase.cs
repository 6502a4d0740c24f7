using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Training.Records.Tests;

/// <summary>An empty, migrated database of one engine for one test class; dropped afterwards.</summary>
public abstract class TestDatabase : IAsyncLifetime
{
    /// <summary>Null where the engine is not configured and may be left out.</summary>
    public abstract DatabaseOptions? Options { get; }

    public RecordsContext Open(params IInterceptor[] interceptors)
    {
        var database = Options ?? throw new InvalidOperationException("Not configured.");
        var options = new DbContextOptionsBuilder<RecordsContext>();
        options.UseRecords(database).AddInterceptors(interceptors);
        return new(options.Options);
    }

    /// <summary>Sends each row by itself, so that something can go wrong between two.</summary>
    public RecordsContext OpenRowByRow(params IInterceptor[] interceptors)
    {
        var database = Options ?? throw new InvalidOperationException("Not configured.");
        var options = new DbContextOptionsBuilder<RecordsContext>();
        options.UseRecords(database).AddInterceptors(interceptors);
        _ = database.Engine switch
        {
            DatabaseEngine.Sqlite => options.UseSqlite(engine => engine.MaxBatchSize(1)),
            DatabaseEngine.SqlServer => options.UseSqlServer(engine => engine.MaxBatchSize(1)),
            DatabaseEngine.Postgres => options.UseNpgsql(engine => engine.MaxBatchSize(1)),
        };
        return new(options.Options);
    }

    public virtual async ValueTask InitializeAsync()
    {
        if (Options is null) return;
        await using var records = Open();
        await records.Database.MigrateAsync();
    }

    public virtual async ValueTask DisposeAsync()
    {
        GC.SuppressFinalize(this);
        if (Options is null) return;
        await using var records = Open();
        await records.Database.EnsureDeletedAsync();
    }
}

using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace Training.Records.Tests;

public sealed class RecordsRegistrationTests
{
    [Theory]
    [InlineData(DatabaseEngine.Sqlite, "Data Source=:memory:", "Microsoft.EntityFrameworkCore.Sqlite")]
    [InlineData(DatabaseEngine.SqlServer, "Server=none;Database=none", "Microsoft.EntityFrameworkCore.SqlServer")]
    [InlineData(DatabaseEngine.Postgres, "Host=none;Database=none", "Npgsql.EntityFrameworkCore.PostgreSQL")]
    public async Task An_application_gets_the_engine_that_its_settings_name(DatabaseEngine engine, string connection, string provider)
    {
        await using var services = new ServiceCollection()
            .AddRecords(new DatabaseOptions { Engine = engine, Connection = connection }).BuildServiceProvider();
        await using var request = services.CreateAsyncScope();

        var ofRequest = request.ServiceProvider.GetRequiredService<RecordsContext>();
        await using var ofJob = await services.GetRequiredService<IDbContextFactory<RecordsContext>>().CreateDbContextAsync();

        Assert.Equal((provider, provider), (ofRequest.Database.ProviderName, ofJob.Database.ProviderName));
        Assert.NotSame(ofRequest, ofJob);
    }
}

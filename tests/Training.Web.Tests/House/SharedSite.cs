[assembly: AssemblyFixture(typeof(Training.Web.Tests.House.SharedSite))]

namespace Training.Web.Tests.House;

/// <summary>One site for all tests that only read it or own the rows they write.</summary>
public sealed class SharedSite : IDisposable
{
    internal RunningSite Site { get; } = RunningSite.Start(settings: [new("Training:Verify:ChecksPerMinute", "10000")]);

    public void Dispose() => Site.Dispose();
}

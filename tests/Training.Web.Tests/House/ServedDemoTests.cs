namespace Training.Web.Tests.House;

/// <summary>Tests that look at the same served demo, one after the other.</summary>
[CollectionDefinition(Name)]
public sealed class ServedDemoTests : ICollectionFixture<ServedDemo>
{
    public const string Name = "served demo";
}

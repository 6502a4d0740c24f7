using Training.Web.Doors;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Doors;

/// <summary>The table against the addresses of the running site.</summary>
public sealed class DoorTableTests(SharedSite shared)
{
    [Fact]
    public void Every_address_has_a_row()
    {
        var without = Addresses.Of(shared.Site).Where(address => DoorKeeper.Rows(address.Endpoint, address.Method).Count == 0)
            .Select(address => $"{address.Method} {address.Endpoint.RoutePattern.RawText}");

        Assert.Empty(without);
    }

    [Fact]
    public void Every_row_has_an_address()
    {
        var used = Addresses.Of(shared.Site).SelectMany(address => DoorKeeper.Rows(address.Endpoint, address.Method)).ToHashSet();

        Assert.Empty(DoorTable.Rows.Except(used));
    }
}

using System.Net;
using Training.Web.Features.Verify;

namespace Training.Web.Tests.Features.Verify;

public sealed class VerifySetupTests
{
    [Theory]
    [InlineData("198.51.100.7", "198.51.100.7")]
    [InlineData("::ffff:198.51.100.7", "198.51.100.7")]
    [InlineData("2001:db8:1:2:3:4:5:6", "20010DB800010002")]
    [InlineData("2001:db8:1:2::9", "20010DB800010002")]
    [InlineData("2001:db8:1:3::9", "20010DB800010003")]
    public void One_asker_is_an_address_or_the_network_of_one_subscriber(string address, string asker) =>
        Assert.Equal(asker, VerifySetup.Asker(IPAddress.Parse(address)));
}

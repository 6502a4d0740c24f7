using System.Globalization;
using CsCheck;
using Training.Documents.BitePlans;

namespace Training.Documents.Tests.BitePlans;

public sealed class MapAngleTests
{
    [Theory]
    [InlineData("34.89512", 34, "53.707")]
    [InlineData("-117.02244", 117, "1.346")]
    [InlineData("0", 0, "0")]
    [InlineData("90", 90, "0")]
    [InlineData("-180", 180, "0")]
    [InlineData("34.9999917", 35, "0")]         // 59.9995 minutes are a degree, not 60.000
    [InlineData("34.9999916", 34, "59.999")]
    [InlineData("0.00001", 0, "0.001")]
    public void Degrees_become_degrees_and_minutes(string degrees, int whole, string minutes) =>
        Assert.Equal(new MapAngle(whole, Parse(minutes)), MapAngle.Of(Parse(degrees)));

    [Fact]
    public void Read_back_it_is_the_same_angle_to_half_a_thousandth_of_a_minute() => Gen.Decimal[-180, 180].Sample(degrees =>
    {
        var angle = MapAngle.Of(degrees);

        Assert.InRange(angle.Minutes, 0, 59.999m);
        Assert.True(Math.Abs((angle.Degrees * 60) + angle.Minutes - (Math.Abs(degrees) * 60)) <= 0.0005m);
    });

    private static decimal Parse(string number) => decimal.Parse(number, CultureInfo.InvariantCulture);
}

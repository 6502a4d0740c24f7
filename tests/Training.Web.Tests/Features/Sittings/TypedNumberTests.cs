using System.Globalization;
using Training.Web.Features.Sittings;

namespace Training.Web.Tests.Features.Sittings;

public sealed class TypedNumberTests
{
    [Theory]
    [InlineData("0", "0")]
    [InlineData("-3", "-3")]
    [InlineData("−3", "-3")]
    [InlineData("+3", "3")]
    [InlineData("3.", "3")]
    [InlineData(".5", "0.5")]
    [InlineData(",5", "0.5")]
    [InlineData("1 000", "1000")]
    [InlineData("1,000.25", "1000.25")]
    [InlineData("1.000,25", "1000.25")]
    [InlineData("1.5.2", null)]
    [InlineData("1,5,2", null)]
    [InlineData("", null)]
    [InlineData("1e3", null)]
    [InlineData("٣", null)]
    public void What_people_type_is_read_as_they_mean_it(string typed, string? meant) =>
        Assert.Equal(meant is null ? null : decimal.Parse(meant, CultureInfo.InvariantCulture), TypedNumber.Find(typed));

    [Theory]
    [InlineData("1,000", true)]
    [InlineData("-12,500", true)]
    [InlineData("0,125", false)]
    [InlineData("1,25", false)]
    [InlineData("1.000", false)]
    [InlineData("1234,500", false)]
    public void A_comma_before_three_digits_has_two_meanings(string typed, bool hasTwo) => Assert.Equal(hasTwo, TypedNumber.HasTwoMeanings(typed));
}

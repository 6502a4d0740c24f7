using CsCheck;
using Training.Web.Features.Shared;

namespace Training.Web.Tests.Features.Shared;

public sealed class SpreadsheetCellTests
{
    [Theory]
    [InlineData("-12", "'-12")]
    [InlineData("=1+1", "'=1+1")]
    [InlineData("'=1", "''=1")]
    [InlineData("O'Dell", "O'Dell")]
    [InlineData("'Tis", "'Tis")]
    [InlineData("", "")]
    public void A_cell_like_a_formula_is_escaped_and_reads_back(string cell, string written)
    {
        Assert.Equal(written, SpreadsheetCell.Write(cell));
        Assert.Equal(cell, SpreadsheetCell.Read(written));
    }

    [Fact]
    public void Any_cell_reads_back_as_it_was() =>
        Gen.String[Gen.Char["'=+-@\tab"], 0, 6].Sample(cell => SpreadsheetCell.Read(SpreadsheetCell.Write(cell)) == cell);
}

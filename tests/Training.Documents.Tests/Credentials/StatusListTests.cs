using System.IO.Compression;
using CsCheck;
using Training.Documents.Credentials;

namespace Training.Documents.Tests.Credentials;

public sealed class StatusListTests
{
    [Fact]
    public void The_bits_that_were_set_are_read_back_and_no_others() =>
        Gen.Select(Gen.Int[17, 22], Gen.Int[0, StatusList.FewestEntries - 1].HashSet[0, 40]).Sample(
            (power, set) =>
            {
                var list = StatusList.Find(StatusList.Of(1 << power, set.Append((1 << power) - 1)).Encode())!;

                Assert.Equal(1 << power, list.Entries);
                Assert.Equal(set.Append((1 << power) - 1).Order().Distinct(), Enumerable.Range(0, list.Entries).Where(index => list[index]));
            },
            iter: 20);

    // Bitstring Status List 1.0, 2.2: 16 KB at least; four places for each paper, and never fewer than before.
    [Theory]
    [InlineData(0, 131_072)]
    [InlineData(32_768, 131_072)]
    [InlineData(32_769, 262_144)]
    [InlineData(100_000, 524_288)]
    [InlineData(1_048_576, 4_194_304)]
    [InlineData(1_048_577, 4_194_304)]
    [InlineData(int.MaxValue, 4_194_304)]
    public void A_list_doubles_before_it_is_more_than_a_quarter_full(int papers, int entries) => Assert.Equal(entries, StatusList.SizeFor(papers));

    [Theory]
    [InlineData(0)]
    [InlineData(65_536)]
    [InlineData(131_073)]
    [InlineData(196_608)]
    [InlineData(8_388_608)]
    [InlineData(int.MinValue)]
    public void No_list_has_another_size(int entries) => Assert.Throws<ArgumentOutOfRangeException>(() => StatusList.Of(entries, []));

    // Bitstring Status List 1.0, 2.2: index 0 is the left-most bit.
    [Fact]
    public void Index_0_is_the_left_most_bit_of_the_first_byte()
    {
        var packed = System.Buffers.Text.Base64Url.DecodeFromChars(StatusList.Of(StatusList.FewestEntries, [0, 15]).Encode().AsSpan(1));
        using var gzip = new GZipStream(new MemoryStream(packed), CompressionMode.Decompress);

        Assert.Equal([0b1000_0000, 0b0000_0001], (byte[])[(byte)gzip.ReadByte(), (byte)gzip.ReadByte()]);
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(StatusList.FewestEntries)]
    public void There_is_no_place_outside_the_list(int index)
    {
        var list = StatusList.Of(StatusList.FewestEntries, []);

        Assert.Throws<ArgumentOutOfRangeException>(() => StatusList.Of(StatusList.FewestEntries, [index]));
        Assert.Throws<ArgumentOutOfRangeException>(() => list[index]);
        Assert.False(list.Has(index));
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(StatusList.MostEntries)]
    public void No_paper_has_a_place_that_no_list_has(int index) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Cast.Paper with { StatusIndex = index });

    [Theory]
    [InlineData(0)]
    [InlineData(16_383)]
    [InlineData(16_385)]
    [InlineData(24_576)]
    [InlineData(524_289)]
    [InlineData(1_048_576)]
    [InlineData(50_000_000)]
    public void A_list_of_another_length_is_none_however_much_it_unpacks_to(int bytes)
    {
        using var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.Optimal)) gzip.Write(new byte[bytes]);

        Assert.Null(StatusList.Find("u" + System.Buffers.Text.Base64Url.EncodeToString(packed.ToArray())));
    }

    [Fact]
    public void A_list_with_every_other_place_set_at_random_is_still_read()
    {
        var set = Enumerable.Range(0, StatusList.MostEntries).Where(index => (System.Security.Cryptography.SHA256.HashData(BitConverter.GetBytes(index))[0] & 1) == 1).ToList();
        var list = StatusList.Of(StatusList.MostEntries, set);

        Assert.NotNull(StatusList.Find(list.Encode()));
        var trust = new IssuerTrust
        {
            Issuer = Cast.Provider,
            Keys = Cast.Keys,
            StatusLists = [StatusListCredential.Write(Cast.Provider, StatusPurpose.Revocation, list, Cast.Now, TimeSpan.FromHours(1), TimeSpan.FromDays(1), Cast.Gate)],
        };
        Assert.NotNull(StatusListReading.FindNewest(trust, StatusPurpose.Revocation, StatusList.MostEntries - 1));
    }

    [Theory]
    [InlineData("revocation", StatusPurpose.Revocation)]
    [InlineData("suspension", StatusPurpose.Suspension)]
    [InlineData("message", null)]
    [InlineData(null, null)]
    public void A_purpose_is_found_by_the_word_of_the_standard(string? word, StatusPurpose? purpose) => Assert.Equal(purpose, StatusPurposes.Find(word));

    [Theory]
    [InlineData("")]
    [InlineData("u")]
    [InlineData("zabc")]
    [InlineData("uAAAA")]
    public void What_is_no_list_is_none(string text) => Assert.Null(StatusList.Find(text));
}

using System.IO.Compression;
using CsCheck;
using Training.Documents.Credentials;

namespace Training.Documents.Tests.Credentials;

public sealed class StatusListTests
{
    [Fact]
    public void The_bits_that_were_set_are_read_back_and_no_others() =>
        Gen.Int[0, StatusList.Entries - 1].HashSet[0, 40].Sample(
            set =>
            {
                var list = StatusList.Find(StatusList.Of(set).Encode())!;

                Assert.Equal(set.Order(), Enumerable.Range(0, StatusList.Entries).Where(index => list[index]));
            },
            iter: 20);

    // Bitstring Status List 1.0, 2.2: index 0 is the left-most bit.
    [Fact]
    public void Index_0_is_the_left_most_bit_of_the_first_byte()
    {
        var packed = System.Buffers.Text.Base64Url.DecodeFromChars(StatusList.Of([0, 15]).Encode().AsSpan(1));
        using var gzip = new GZipStream(new MemoryStream(packed), CompressionMode.Decompress);

        Assert.Equal([0b1000_0000, 0b0000_0001], (byte[])[(byte)gzip.ReadByte(), (byte)gzip.ReadByte()]);
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(StatusList.Entries)]
    public void There_is_no_place_outside_the_list(int index)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => StatusList.Of([index]));
        Assert.Throws<ArgumentOutOfRangeException>(() => StatusList.Of([])[index]);
        Assert.Throws<ArgumentOutOfRangeException>(() => Cast.Paper with { StatusIndex = index });
    }

    [Fact]
    public void A_place_is_drawn_among_the_free_ones_only()
    {
        var taken = Enumerable.Range(0, StatusList.Entries).Except([5, 70_000, 131_071]).ToHashSet();

        Assert.Equal([5, 70_000, 131_071], Enumerable.Range(0, 3).Select(drawn => StatusList.DrawIndex(free => free == 3 ? drawn : -1, taken)));
    }

    [Fact]
    public void A_full_list_gives_no_place_rather_than_one_twice() =>
        Assert.Throws<InvalidOperationException>(() => StatusList.DrawIndex(_ => 0, Enumerable.Range(0, StatusList.Entries).ToHashSet()));

    [Theory]
    [InlineData(0)]
    [InlineData(16_383)]
    [InlineData(16_385)]
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
        var set = Enumerable.Range(0, StatusList.Entries).Where(index => (System.Security.Cryptography.SHA256.HashData(BitConverter.GetBytes(index))[0] & 1) == 1).ToList();

        Assert.NotNull(StatusList.Find(StatusList.Of(set).Encode()));
        var trust = new IssuerTrust
        {
            Issuer = Cast.Provider,
            Keys = Cast.Keys,
            StatusLists = [StatusListCredential.Write(Cast.Provider, StatusPurpose.Revocation, StatusList.Of(set), Cast.Now, TimeSpan.FromHours(1), TimeSpan.FromDays(1), Cast.Gate)],
        };
        Assert.NotNull(StatusListReading.FindNewest(trust, StatusPurpose.Revocation));
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

using System.Text;
using Training.Documents.IssueLog;

namespace Training.Documents.Tests.IssueLog;

public sealed class IssueEntryTests
{
    private static readonly IssueEntry Entry = new(
        "4G7K29QXPDABC3DE", "tool-only-handler", new('a', 64), new(2026, 11, 26), new(2027, 12, 7), IssueEvent.Issued, new(2026, 11, 25, 18, 0, 0, TimeSpan.Zero));

    private static readonly byte[] Salt = new byte[IssueEntry.SaltSize];

    [Fact]
    public void A_leaf_is_33_bytes_that_begin_with_the_version_of_their_format()
    {
        var leaf = Entry.Leaf(Salt);

        Assert.Equal(33, leaf.Length);
        Assert.Equal(1, leaf[0]);
    }

    [Fact]
    public void Every_field_and_the_salt_change_the_leaf()
    {
        IssueEntry[] others =
        [
            Entry, Entry with { Serial = "4G7K29QXPDABC3DF" }, Entry with { SchemeId = "tool-only-handlers" }, Entry with { SchemeVersion = new('b', 64) },
            Entry with { StartsOn = new(2026, 11, 27) }, Entry with { ExpiresOn = new(2027, 12, 8) }, Entry with { HappenedAt = Entry.HappenedAt.AddMilliseconds(1) },
            .. Enum.GetValues<IssueEvent>().Where(what => what != Entry.Event).Select(what => Entry with { Event = what }),
        ];

        Assert.Distinct(others.Select(entry => Convert.ToHexString(entry.Leaf(Salt))).Append(Convert.ToHexString(Entry.Leaf([1, .. Salt.AsSpan(1)]))));
    }

    [Fact]
    public void Text_that_moves_from_one_field_to_the_next_is_another_leaf() =>
        Assert.NotEqual((Entry with { Serial = "A", SchemeId = "BC" }).Leaf(Salt), (Entry with { Serial = "AB", SchemeId = "C" }).Leaf(Salt));

    [Fact]
    public void An_instant_counts_to_the_millisecond_in_whatever_zone_it_was_written() =>
        Assert.Equal(Entry.Leaf(Salt), (Entry with { HappenedAt = Entry.HappenedAt.ToOffset(TimeSpan.FromHours(-7)).AddTicks(9_999) }).Leaf(Salt));

    [Fact]
    public void A_leaf_shows_nothing_of_what_it_commits_to()
    {
        var shown = Encoding.Latin1.GetString(Entry.Leaf(Salt));

        Assert.DoesNotContain(Entry.Serial, shown);
        Assert.DoesNotContain(Entry.SchemeId, shown);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(15)]
    [InlineData(17)]
    public void A_salt_of_another_size_is_refused(int size) => Assert.Throws<ArgumentException>(() => Entry.Leaf(new byte[size]));
}

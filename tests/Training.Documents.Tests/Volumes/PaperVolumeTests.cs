using Training.Courses;
using Training.Documents.Tests.Certificates;
using Training.Documents.Volumes;

namespace Training.Documents.Tests.Volumes;

/// <summary>Judged by poppler and qpdf.</summary>
public sealed class PaperVolumeTests
{
    [Fact]
    public void Papers_stand_behind_one_another_in_their_order()
    {
        var volume = PaperVolume.Write(
            [Pages.Print(Pages.Of(Language.English)), Pages.Print(Pages.Of(Language.Spanish)), Pages.Print(Pages.Of(Language.English))], "Papers, volume 1");

        Assert.Contains("Pages:           3", DebianTool.Info(volume), StringComparison.Ordinal);
        Assert.Contains("Papers, volume 1", DebianTool.Info(volume), StringComparison.Ordinal);
    }

    [Fact]
    public void There_is_no_volume_of_nothing_and_none_without_end() =>
        Assert.All([0, PaperVolume.MostPapers + 1], count => Assert.Throws<ArgumentException>(() => PaperVolume.Write([.. Enumerable.Repeat(Array.Empty<byte>(), count)], "Papers")));
}

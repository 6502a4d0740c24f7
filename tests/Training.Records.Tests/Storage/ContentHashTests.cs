using System.Security.Cryptography;
using System.Text;
using Training.Courses;
using Training.Scoring;

namespace Training.Records.Tests;

/// <summary>Holds the hashed layouts against text written by hand; a stored hash must be met again after every release.</summary>
public sealed class ContentHashTests
{
    private static readonly Guid Someone = Guid.Parse("01890000-0000-7000-8000-000000000001");

    private static readonly DateTimeOffset At = new(2026, 5, 4, 18, 0, 0, TimeSpan.Zero);

    [Fact]
    public void A_sitting_is_hashed_in_its_written_layout()
    {
        var sitting = new Sitting(
            Guid.CreateVersion7(), Someone, new Draw("c0", "quiz", ulong.MaxValue, [new("a", "v1", ["y", "x"]), new("b", "v2", [])]), At, At,
            [new("b", [], 1.50m, Language.Spanish, At), new("a", ["x"], null, Language.English, At)]);
        const string Layout = """["sitting/1","01890000-0000-7000-8000-000000000001","c0","quiz",18446744073709551615,[["a","v1",["y","x"]],["b","v2",[]]],[["a",["x"],null,"en"],["b",[],1.50,"es"]]]""";

        Assert.Equal(Sha256(Layout), ContentHash.Of(sitting));
    }

    [Fact]
    public void A_live_scoresheet_is_hashed_in_its_written_layout()
    {
        var sheet = new Scoresheet(
            Guid.CreateVersion7(), Someone, Someone, Someone, "c0", "move", "v1", Subject.Live, 2, [new("grip", Observation.DoneAfterPrompt)], null,
            new LiveConditions("P-1", new(2026, 4, 1), At, Someone, Someone), new PracticalConditions("sand, shade", null, "hook 2", [new(Someone, Someone)]),
            Language.English, true, At, "W. Oakley", "calm", Impression.Borderline, At, 275);
        const string Id = "\"01890000-0000-7000-8000-000000000001\"";
        var layout = $"""["scoresheet/3",{Id},{Id},{Id},"c0","move","v1","Live",2,[["grip","DoneAfterPrompt"]],null,["P-1","2026-04-01",1777917600000,{Id},{Id}],["sand, shade",null,"hook 2",[[{Id},{Id}]]],"en",true,"W. Oakley","calm",2,1777917600000,275]""";

        Assert.Equal(Sha256(layout), ContentHash.Of(sheet));
    }

    private static string Sha256(string text) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));
}

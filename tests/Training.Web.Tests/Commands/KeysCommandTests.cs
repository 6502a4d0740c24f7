using System.Globalization;
using Training.Web.Commands;
using Training.Web.Keys;
using Training.Web.Tests.Keys;

namespace Training.Web.Tests.Commands;

public sealed class KeysCommandTests : IDisposable
{
    private readonly KeyPlace place = new();

    public void Dispose() => place.Dispose();

    [Fact]
    public void Before_the_first_start_there_are_none() =>
        Assert.Equal((0, "There are no keys yet. The server makes them at its first start."), Run());

    [Fact]
    public void All_keys_are_listed_with_what_they_are_and_nothing_private()
    {
        var keys = place.Open();

        var (code, said) = Run();

        Assert.Equal(0, code);
        Assert.Equal(
            [
                $"credentials {keys.Credentials.Public.Kid} signs since 2026-11-25 17:44:00Z",
                $"badges {keys.Badges.Public.Kid} signs since 2026-11-25 17:44:00Z",
                $"papers {RegisteredKey.KidOf(keys.Papers)} signs since 2026-11-25 17:44:00Z",
                $"    certificate made here for CN=Quillback Field Safety, until 2036-11-25 17:44:00Z, SHA-256 {keys.Papers.GetCertHashString(System.Security.Cryptography.HashAlgorithmName.SHA256)}",
            ],
            said.Split('\n'));
        Assert.DoesNotContain("PRIVATE", said, StringComparison.Ordinal);
    }

    [Fact]
    public void It_speaks_Spanish()
    {
        place.Open();
        var before = CultureInfo.CurrentUICulture;
        CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("es-MX");
        try
        {
            Assert.Contains("firma desde 2026-11-25 17:44:00Z", Run().Said, StringComparison.Ordinal);
            Assert.Contains("firma desde ahora.", Run("rotate", "badges").Said, StringComparison.Ordinal);
            Assert.Contains("Copie su nombre de la lista", Run("distrust", "nobody", "2026-11-25T17:44:00Z").Said, StringComparison.Ordinal);
        }
        finally
        {
            CultureInfo.CurrentUICulture = before;
        }
    }

    [Fact]
    public void A_rotation_names_the_new_key()
    {
        var before = place.Open().Credentials.Public.Kid;
        place.Clock.Now = KeyPlace.First.AddDays(1);

        var (code, said) = Run("rotate", "credentials");

        var after = place.Open().Credentials.Public.Kid;
        Assert.Equal((0, true), (code, said.StartsWith($"credentials {after} signs from now on.", StringComparison.Ordinal)));
        Assert.Contains($"credentials {before} signed from 2026-11-25 17:44:00Z to 2026-11-26 17:44:00Z; what it signed stays good", Run().Said, StringComparison.Ordinal);
    }

    [Fact]
    public void A_new_certificate_bears_the_name_of_the_one_before()
    {
        place.Store().Open("Peña & Quillback", KeyPlace.First, []);

        Run("rotate", "papers");

        Assert.Equal("CN=Peña & Quillback", place.Open().Papers.Subject);
    }

    [Theory]
    [InlineData("2026-11-25T17:44:00Z")]
    [InlineData("2026-11-25T17:44Z")]
    [InlineData("2026-11-25T10:44:00-07:00")]
    [InlineData("2026-11-25T10:44-07:00")]
    public void A_key_is_distrusted_since_an_instant_and_another_signs(string instant)
    {
        var kid = place.Open().Credentials.Public.Kid;
        place.Clock.Now = KeyPlace.First.AddDays(1);

        var (code, said) = Run("distrust", kid, instant);

        Assert.Equal((0, true), (code, said.StartsWith($"{kid} is not believed since 2026-11-25 17:44:00Z.", StringComparison.Ordinal)));
        Assert.Contains("    not believed since 2026-11-25 17:44:00Z", Run().Said, StringComparison.Ordinal);
        Assert.NotEqual(kid, place.Open().Credentials.Public.Kid);
    }

    [Theory]
    [InlineData("yesterday")]
    [InlineData("2026-11-25")]
    [InlineData("2026-11-25T17:44:00")]
    [InlineData("2026-11-25T17:44:01Z")]
    public void An_instant_that_is_none_or_has_not_come_is_told_and_nothing_changes(string instant)
    {
        var keys = place.Open();

        var (code, said) = Run("distrust", keys.Credentials.Public.Kid, instant);

        Assert.Equal((1, true), (code, said.StartsWith($"keys: “{instant}” is not an instant, or lies ahead.", StringComparison.Ordinal)));
        Assert.Equal(keys.Register.Keys, place.Open().Register.Keys);
    }

    [Theory]
    [InlineData("rotate")]
    [InlineData("rotate", "everything")]
    [InlineData("distrust", "somebody")]
    [InlineData("dance")]
    public void Words_that_are_not_understood_are_answered_with_those_that_are(params string[] words)
    {
        var (code, said) = Run(words);

        Assert.Equal(UnknownVerb.ExitCode, code);
        Assert.StartsWith("keys lists the keys.", said, StringComparison.Ordinal);
    }

    [Fact]
    public void A_setting_that_is_not_known_is_told()
    {
        var (code, said) = Run("rotate", "badges", "--Training:Kees=1");

        Assert.Equal(1, code);
        Assert.Contains("There is no setting “Kees” here.", said, StringComparison.Ordinal);
    }

    private (int Code, string Said) Run(params string[] words)
    {
        var output = new StringWriter();
        var code = KeysCommand.Run([.. words, $"--Training:DataFolder={place.In("")}"], place.Clock, output);
        return (code, output.ToString().TrimEnd().ReplaceLineEndings("\n"));
    }
}

using System.Globalization;
using Training.Certification;
using Training.Courses;
using Training.Documents.Credentials;
using Training.Web.Keys;
using Training.Web.Problems;

namespace Training.Web.Tests.Keys;

[System.Runtime.Versioning.UnsupportedOSPlatform("windows")]
public sealed class KeyStoreTests : IDisposable
{
    private readonly KeyPlace place = new();

    public void Dispose() => place.Dispose();

    [Fact]
    public void The_first_start_makes_a_key_for_each_use_that_nobody_else_reads()
    {
        var keys = place.Open();

        Assert.Equal(KeyUses.All, keys.Register.Keys.Select(key => key.Use));
        Assert.All(keys.Register.Keys, key => Assert.Equal((KeyPlace.First, null, null, false), (key.From, key.RetiredAt, key.NotBelievedSince, key.IsBrought)));
        Assert.Equal(3, place.PrivateFiles.Count);
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute, File.GetUnixFileMode(place.Keys));
        Assert.All(Directory.EnumerateFiles(place.Keys), file => Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(file)));
    }

    [Fact]
    public void The_certificate_for_papers_names_the_provider_and_lasts_ten_years()
    {
        var certificate = place.Open().Papers;

        Assert.Equal("CN=Quillback Field Safety", certificate.Subject);
        Assert.Equal(
            (KeyPlace.First.UtcDateTime, KeyPlace.First.UtcDateTime.AddYears(10)), (certificate.NotBefore.ToUniversalTime(), certificate.NotAfter.ToUniversalTime()));
        Assert.True(certificate.HasPrivateKey);
    }

    [Fact]
    public void A_second_start_finds_what_the_first_one_made()
    {
        var first = place.Open();

        var second = place.Open(now: KeyPlace.First.AddDays(300));

        Assert.Equal(first.Register.Keys, second.Register.Keys);
        Assert.Equal((first.Credentials.Public, first.Badges.Public, first.Papers.Thumbprint), (second.Credentials.Public, second.Badges.Public, second.Papers.Thumbprint));
    }

    [Fact]
    public async Task Ten_that_start_at_once_have_the_same_keys()
    {
        var opened = await Task.WhenAll(Enumerable.Range(0, 10).Select(_ => Task.Run(() => place.Open())));

        Assert.Single(opened.Select(keys => keys.Credentials.Public.Kid).Distinct());
        Assert.Equal(3, opened[0].Register.Keys.Count);
    }

    [Theory]
    [InlineData(KeyUse.Credentials)]
    [InlineData(KeyUse.Badges)]
    [InlineData(KeyUse.Papers)]
    public void A_rotation_makes_another_key_and_keeps_the_public_part_of_the_one_before(KeyUse use)
    {
        var before = place.Open().Register.FindActive(use)!;
        var later = KeyPlace.First.AddDays(30);

        var made = place.Store().Rotate(use, KeyPlace.Provider, later, []);

        var register = place.Open().Register;
        Assert.Equal(made, register.FindActive(use));
        Assert.Equal(before with { RetiredAt = later }, register.Find(before.Kid));
        Assert.Equal(4, register.Keys.Count);
        Assert.DoesNotContain(place.PrivateFiles, file => file.Contains(before.Kid, StringComparison.Ordinal));
        Assert.Equal(3, place.PrivateFiles.Count);
    }

    [Fact]
    public void What_a_retired_key_signed_goes_on_to_verify()
    {
        var before = place.Open();
        var token = CompactToken.Write(APaper.Of(), before.Credentials);

        place.Store().Rotate(KeyUse.Credentials, KeyPlace.Provider, KeyPlace.First.AddDays(30), []);

        var after = place.Open();
        Assert.IsType<TokenVerdict.Current>(Read(token, after));
        Assert.IsType<TokenVerdict.Current>(Read(CompactToken.Write(APaper.Of(), after.Credentials), after));
        Assert.NotEqual(before.Credentials.Public.Kid, after.Credentials.Public.Kid);
    }

    [Fact]
    public void What_a_stolen_key_signed_counts_where_the_log_had_it_before()
    {
        var stolen = place.Open().Credentials;
        var token = CompactToken.Write(APaper.Of(), stolen);
        var since = KeyPlace.First.AddDays(3);

        place.Store().Distrust(stolen.Public.Kid, since, KeyPlace.Provider, KeyPlace.First.AddDays(30), []);

        var after = place.Open();
        Assert.Equal(new TokenVerdict.Refused(TokenFault.KeyNotBelieved), Read(token, after, loggedAt: since));
        Assert.IsType<TokenVerdict.Current>(Read(token, after, loggedAt: since.AddSeconds(-1)));
        Assert.NotEqual(stolen.Public.Kid, after.Credentials.Public.Kid);
        Assert.Equal((since, KeyPlace.First.AddDays(30)), (after.Register.Find(stolen.Public.Kid)!.NotBelievedSince, after.Register.Find(stolen.Public.Kid)!.RetiredAt));
    }

    [Fact]
    public void A_retired_key_is_distrusted_without_another_rotation_and_the_earlier_instant_counts()
    {
        var old = place.Open().Register.FindActive(KeyUse.Badges)!;
        place.Store().Rotate(KeyUse.Badges, KeyPlace.Provider, KeyPlace.First.AddDays(30), []);
        var active = place.Open().Register.FindActive(KeyUse.Badges);
        var (early, late) = (KeyPlace.First.AddDays(2), KeyPlace.First.AddDays(9));

        place.Store().Distrust(old.Kid, early, KeyPlace.Provider, KeyPlace.First.AddDays(40), []);
        place.Store().Distrust(old.Kid, late, KeyPlace.Provider, KeyPlace.First.AddDays(41), []);

        var register = place.Open().Register;
        Assert.Equal(early, register.Find(old.Kid)!.NotBelievedSince);
        Assert.Equal(active, register.FindActive(KeyUse.Badges));
    }

    [Fact]
    public void A_name_that_no_key_has_is_told()
    {
        place.Open();
        var problems = new List<Problem>();

        Assert.Null(place.Store().Distrust("nobody", KeyPlace.First, KeyPlace.Provider, KeyPlace.First, problems));
        Assert.Equal((KeysProblems.KeyUnknown, "nobody"), (Assert.Single(problems).Code, problems[0].Arguments[0]));
    }

    [Theory]
    [InlineData(UnixFileMode.GroupRead)]
    [InlineData(UnixFileMode.GroupWrite)]
    [InlineData(UnixFileMode.OtherRead)]
    [InlineData(UnixFileMode.OtherExecute)]
    public void A_folder_or_file_that_others_may_use_stops_the_start_with_one_line(UnixFileMode others)
    {
        place.Open();
        foreach (var path in place.PrivateFiles.Append(place.Keys))
        {
            var mode = File.GetUnixFileMode(path);
            File.SetUnixFileMode(path, mode | others);

            var problem = place.Refuse();

            Assert.Equal((KeysProblems.OpenToOthers, path), (problem.Code, problem.Arguments[0]));
            Assert.Equal(Convert.ToString((int)(mode | others), 8).PadLeft(4, '0'), problem.Arguments[1]);
            Assert.DoesNotContain('\n', ProblemText.Line(problem, CultureInfo.InvariantCulture));
            File.SetUnixFileMode(path, mode);
        }

        place.Open();
    }

    [Theory]
    [InlineData("")]
    [InlineData("keys")]
    [InlineData("{}")]
    [InlineData("""{"version":2,"keys":[]}""")]
    [InlineData("""{"version":1,"keys":[],"more":1}""")]
    [InlineData("""{"version":1,"keys":[{"use":"credentials","kid":"x","from":"2026-01-01T00:00:00+00:00","publicPart":"AAAA"}]}""")]
    [InlineData("""{"version":1,"keys":[{"use":"papers","kid":"x","from":"2026-01-01T00:00:00+00:00","publicPart":"?"}]}""")]
    public void A_register_that_cannot_be_read_is_left_as_it_is_and_stops_the_start(string text)
    {
        place.Open();
        var file = Path.Combine(place.Keys, "register.json");
        File.WriteAllText(file, text);

        Assert.Equal((KeysProblems.RegisterUnreadable, file), (place.Refuse().Code, place.Refuse().Arguments[0]));
        Assert.Equal(text, File.ReadAllText(file));
        Assert.Equal(3, place.PrivateFiles.Count);
    }

    [Fact]
    public void A_key_that_stands_in_the_register_under_another_name_is_refused()
    {
        place.Open();
        var file = Path.Combine(place.Keys, "register.json");
        var kid = place.Open().Credentials.Public.Kid;
        File.WriteAllText(file, File.ReadAllText(file).Replace(kid, "other", StringComparison.Ordinal));

        Assert.Equal(KeysProblems.RegisterUnreadable, place.Refuse().Code);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void A_private_part_that_is_missing_or_another_stops_the_start_and_a_rotation_mends_it(int file)
    {
        place.Open();
        var path = place.PrivateFiles[file];
        var use = KeyUses.Find(Path.GetFileName(path).Split('-')[0])!.Value;

        foreach (var text in new[] { null, "", "no key", File.ReadAllText(place.PrivateFiles[(file + 1) % 3]) })
        {
            File.Delete(path);
            if (text is not null)
            {
                File.WriteAllText(path, text);
                File.SetUnixFileMode(path, UnixFileMode.UserRead | UnixFileMode.UserWrite);
            }

            var problem = place.Refuse();

            Assert.Equal((KeysProblems.PrivatePartMissing, path, use.Name()), (problem.Code, problem.Arguments[0], problem.Arguments[1]));
        }

        Assert.NotNull(place.Store().Rotate(use, KeyPlace.Provider, KeyPlace.First.AddDays(1), []));
        Assert.Equal(4, place.Open().Register.Keys.Count);
    }

    [Fact]
    public void What_a_kill_left_unfinished_is_written_over()
    {
        place.Open();
        var unfinished = Path.Combine(place.Keys, "register.json.new");
        File.WriteAllText(unfinished, "half of it");
        File.SetUnixFileMode(unfinished, UnixFileMode.UserRead | UnixFileMode.UserWrite);

        place.Store().Rotate(KeyUse.Credentials, KeyPlace.Provider, KeyPlace.First.AddDays(1), []);

        Assert.False(File.Exists(unfinished));
        Assert.Equal(4, place.Open().Register.Keys.Count);
    }

    [Fact]
    public void A_folder_that_cannot_be_made_is_told()
    {
        File.WriteAllText(place.In("keys"), "a file where the folder should be");

        Assert.Equal(KeysProblems.FolderUnusable, place.Refuse().Code);
    }

    private static TokenVerdict Read(string token, OpenedKeys keys, DateTimeOffset? loggedAt = null) => TokenReading.Read(
        token, new() { Issuer = APaper.Issuer, Keys = keys.All, LoggedAt = (Serial _) => loggedAt }, KeyPlace.First.AddDays(30));
}

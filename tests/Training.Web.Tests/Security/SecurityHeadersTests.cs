using Training.Web.Tests.House;

namespace Training.Web.Tests.Security;

public sealed class SecurityHeadersTests(SharedSite shared)
{
    [Theory]
    [InlineData("/")]
    [InlineData("/en")]
    [InlineData("/es/verify/not-a-serial")]
    [InlineData("/site.css")]
    [InlineData("/healthz")]
    [InlineData("/nowhere")]
    public async Task Every_answer_says_what_a_browser_may_do_with_it(string path)
    {
        using var answer = await shared.Site.Client.GetAsync(path);
        string Header(string name) => string.Join(' ', answer.Headers.NonValidated[name]);

        Assert.Contains("default-src 'none'", Header("Content-Security-Policy"), StringComparison.Ordinal);
        Assert.Contains("frame-ancestors 'none'", Header("Content-Security-Policy"), StringComparison.Ordinal);
        Assert.Contains("object-src 'none'", Header("Content-Security-Policy"), StringComparison.Ordinal);
        Assert.Contains("base-uri 'none'", Header("Content-Security-Policy"), StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe", Header("Content-Security-Policy"), StringComparison.Ordinal);
        Assert.Equal("nosniff", Header("X-Content-Type-Options"));
        Assert.Equal("same-origin", Header("Referrer-Policy"));
        Assert.False(answer.Headers.Contains("Server"));
        Assert.False(answer.Headers.Contains("Set-Cookie"));
        if (answer.Content.Headers.ContentType is { MediaType: "text/html" } type) Assert.Equal("utf-8", type.CharSet);
    }

    private static readonly KeyValuePair<string, string> Http = new("Training:PublicAddress", "http://training.example.org");

    [Fact]
    public async Task A_visitor_cannot_claim_https_or_another_address()
    {
        using var site = RunningSite.Start(settings: [Http]);

        Assert.False((await HeadersAsync(site)).Contains("Strict-Transport-Security"));
    }

    [Fact]
    public async Task Where_the_operator_says_https_it_is_remembered_for_a_year() =>
        Assert.Equal("max-age=31536000", string.Join(' ', (await HeadersAsync(shared.Site)).NonValidated["Strict-Transport-Security"]));

    [Fact]
    public async Task Behind_a_proxy_that_the_operator_named_https_is_remembered_for_a_year()
    {
        using var site = RunningSite.Start(settings: [Http, new("Training:TrustedProxies", "127.0.0.1")]);

        Assert.Equal("max-age=31536000", string.Join(' ', (await HeadersAsync(site)).NonValidated["Strict-Transport-Security"]));
    }

    private static async Task<System.Net.Http.Headers.HttpResponseHeaders> HeadersAsync(RunningSite site)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, "/en");
        request.Headers.Add("X-Forwarded-Proto", "https");
        request.Headers.Add("X-Forwarded-For", "198.51.100.7");
        using var answer = await site.Client.SendAsync(request);
        return answer.Headers;
    }
}

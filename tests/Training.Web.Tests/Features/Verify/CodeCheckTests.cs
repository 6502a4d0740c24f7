using System.Text.Json;
using System.Text.RegularExpressions;
using Training.Documents.Credentials;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Verify;

/// <summary>What the server gives to the check of codes on a device; the check itself is looked at in a browser.</summary>
public sealed partial class CodeCheckTests(SharedSite shared)
{
    private readonly RunningSite site = shared.Site;

    [Theory]
    [InlineData("/en/verify")]
    [InlineData("/es/verify")]
    [InlineData("/en/verify/not-a-serial")]
    public async Task The_page_has_words_for_every_reason_that_a_token_is_refused_for_once(string path)
    {
        var (_, html) = await site.GetAsync(path);
        var faults = Faults().Matches(html).SelectMany(match => match.Groups["faults"].Value.Split(' ')).ToList();

        var all = Enum.GetNames<TokenFault>().Select(JsonNamingPolicy.CamelCase.ConvertName);
        Assert.Equal(all.Order(StringComparer.Ordinal), faults.Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("/en/verify")]
    [InlineData("/es/verify")]
    public async Task The_page_has_words_for_every_verdict(string path)
    {
        var (_, html) = await site.GetAsync(path);

        var verdicts = typeof(TokenVerdict).GetNestedTypes().Select(verdict => JsonNamingPolicy.CamelCase.ConvertName(verdict.Name)).Except(["refused"]);
        Assert.All(verdicts, verdict => Assert.Contains($"<template data-verdict=\"{verdict}\">", html, StringComparison.Ordinal));
        Assert.All(site.Shelf.Courses, course => Assert.Contains($"<template data-scheme=\"{course.Id}\">", html, StringComparison.Ordinal));
    }

    [Fact]
    public async Task The_keys_of_the_check_are_public_parts_that_name_their_issuer()
    {
        using var answer = await site.Client.GetAsync("/verify/keys");
        var keys = JsonSerializer.Deserialize<JsonElement>(await answer.Content.ReadAsStringAsync()).GetProperty("keys").EnumerateArray().ToList();

        Assert.Equal("application/json", answer.Content.Headers.ContentType!.MediaType);
        Assert.NotEmpty(keys);
        Assert.All(keys, key => Assert.Equal("did:web:training.example.org", key.GetProperty("iss").GetString()));
        Assert.All(keys, key => Assert.DoesNotContain(key.EnumerateObject(), member => member.Name is "d" or "p" or "q" or "dp" or "dq" or "qi"));
    }

    [Theory]
    [InlineData("/verify", "self")]
    [InlineData("/es/verify/not-a-serial", "self")]
    [InlineData("/en", "")]
    [InlineData("/en/courses/awareness", "")]
    public async Task Only_the_check_may_ask_for_the_camera(string path, string who)
    {
        using var answer = await site.Client.GetAsync(path);

        Assert.StartsWith($"camera=({who}),", string.Join(' ', answer.Headers.NonValidated["Permissions-Policy"]), StringComparison.Ordinal);
    }

    [GeneratedRegex("data-faults=\"(?<faults>[^\"]+)\"", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Faults();
}

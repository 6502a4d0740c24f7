using System.Net;
using System.Text.RegularExpressions;

namespace Training.Web.Tests.House;

/// <summary>What an answer came to.</summary>
/// <param name="Status">HTTP status.</param>
/// <param name="Html">Entities decoded.</param>
/// <param name="Location">Where it leads, or null.</param>
/// <param name="Bytes">As sent.</param>
/// <param name="Headers">All of them.</param>
internal sealed record Reply(int Status, string Html, string? Location, byte[] Bytes, IReadOnlyDictionary<string, string> Headers);

/// <summary>
/// A browser without script: keeps cookies (also those that want https, as a browser does behind a proxy), follows nothing by itself, and
/// sends forms as the page gave them, hidden fields included.
/// </summary>
internal sealed partial class PlainBrowser(Uri address) : IDisposable
{
    private readonly HttpClient client = new(new SocketsHttpHandler { AllowAutoRedirect = false, UseCookies = false }) { BaseAddress = address };
    private readonly Dictionary<string, string> headers = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> cookies = new(StringComparer.Ordinal);

    /// <summary>What it would send along.</summary>
    public IReadOnlyDictionary<string, string> Cookies => cookies;

    public Task<Reply> GetAsync(string path) => SendAsync(new(HttpMethod.Get, path));

    /// <summary>Sends a form with the token of <paramref name="page"/> (by default any page that has one).</summary>
    public async Task<Reply> PostAsync(string path, Dictionary<string, string> fields, string page = "/en/first-sign-in")
    {
        return await PostExactlyAsync(path, [.. fields, await TokenAsync(page)]);
    }

    /// <summary>The hidden field of a page's form.</summary>
    public async Task<KeyValuePair<string, string>> TokenAsync(string page) =>
        new("__RequestVerificationToken", Token().Match((await GetAsync(page)).Html).Groups["value"].Value);

    /// <summary>Sends exactly these fields; several may have one name.</summary>
    public Task<Reply> PostExactlyAsync(string path, params IReadOnlyList<KeyValuePair<string, string>> fields) =>
        SendAsync(new(HttpMethod.Post, path) { Content = new FormUrlEncodedContent(fields) });

    /// <summary>Sends a form with a file and the token of <paramref name="page"/>.</summary>
    public async Task<Reply> PostFileAsync(
        string path, Dictionary<string, string> fields, string field, string fileName, byte[] content, string page)
    {
        var form = new MultipartFormDataContent();
        foreach (var (name, value) in fields.Append(await TokenAsync(page))) form.Add(new StringContent(value), name);
        form.Add(new ByteArrayContent(content), field, fileName);
        return await SendAsync(new(HttpMethod.Post, path) { Content = form });
    }

    /// <summary>Forgets or brings a cookie.</summary>
    public void Cookie(string name, string? value)
    {
        if (value is null) cookies.Remove(name);
        else cookies[name] = value;
    }

    /// <summary>Sends a header along from now on.</summary>
    public void Header(string name, string value) => headers[name] = value;

    public void Dispose() => client.Dispose();

    private async Task<Reply> SendAsync(HttpRequestMessage request)
    {
        using var _ = request;
        if (cookies.Count > 0) request.Headers.Add("Cookie", string.Join("; ", cookies.Select(cookie => $"{cookie.Key}={cookie.Value}")));
        foreach (var (name, value) in headers) request.Headers.Add(name, value);
        using var answer = await client.SendAsync(request);
        if (answer.Headers.TryGetValues("Set-Cookie", out var set))
        {
            foreach (var cookie in set.Select(line => SetCookie().Match(line)))
                Cookie(cookie.Groups["name"].Value, cookie.Groups["value"].Value is { Length: > 0 } value ? value : null);
        }

        var bytes = await answer.Content.ReadAsByteArrayAsync();
        return new(
            (int)answer.StatusCode, WebUtility.HtmlDecode(System.Text.Encoding.UTF8.GetString(bytes)), answer.Headers.Location?.OriginalString, bytes,
            answer.Headers.Concat(answer.Content.Headers).ToDictionary(header => header.Key, header => string.Join(", ", header.Value), StringComparer.OrdinalIgnoreCase));
    }

    [GeneratedRegex("name=\"__RequestVerificationToken\" type=\"hidden\" value=\"(?<value>[^\"]+)\"", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Token();

    [GeneratedRegex("^(?<name>[^=]+)=(?<value>[^;]*)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex SetCookie();
}

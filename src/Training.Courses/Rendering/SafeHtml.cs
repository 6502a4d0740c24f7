using System.Collections.Concurrent;
using System.Security.Cryptography;
using System.Text;
using Ganss.Xss;

namespace Training.Courses;

/// <summary>
/// The last gate before a page: only elements, attributes, classes and addresses that the renderer itself writes get through, whatever
/// came in. Sanitising is the slow step of rendering (16–24 ms for 100 KB), so its results are kept by the hash of what came in.
/// </summary>
internal static class SafeHtml
{
    // Three times what the shipped courses are made of. A store that one reading overflows keeps nothing for the next: the oldest goes first.
    private const int MaxKept = 16_384;

    private static readonly string[] TextElements =
    [
        "p", "h1", "h2", "h3", "h4", "h5", "h6", "ul", "ol", "li", "blockquote", "pre", "code", "em", "strong", "a", "br", "hr",
        "table", "thead", "tbody", "tr", "th", "td", "figure", "sup", "span",
    ];

    private static readonly string[] TextAttributes =
        ["href", "title", "rel", "role", "id", "class", "start", "aria-labelledby", "aria-describedby"];

    private static readonly string[] Classes = ["drawing", "note", "value", "align-left", "align-center", "align-right"];
    private static readonly HtmlSanitizer Sanitizer = Make();
    private static readonly ConcurrentDictionary<string, string> Kept = new(StringComparer.Ordinal);
    private static readonly ConcurrentQueue<string> Order = new();

    public static string From(string html)
    {
        var key = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(html)));
        if (Kept.TryGetValue(key, out var known)) return known;
        var safe = Sanitizer.Sanitize(html).Trim();
        if (Kept.TryAdd(key, safe)) Order.Enqueue(key);
        while (Kept.Count > MaxKept && Order.TryDequeue(out var oldest)) Kept.TryRemove(oldest, out _);
        return safe;
    }

    private static HtmlSanitizer Make()
    {
        var comparer = StringComparer.OrdinalIgnoreCase;
        var sanitizer = new HtmlSanitizer(new HtmlSanitizerOptions
        {
            AllowedTags = new HashSet<string>(TextElements.Concat(Figure.Elements).Concat(["title", "desc"]), comparer),
            AllowedAttributes = new HashSet<string>(TextAttributes.Concat(Figure.Attributes), comparer),
            AllowedClasses = new HashSet<string>(Classes.Concat(Figure.Classes), StringComparer.Ordinal),
            AllowedSchemes = new HashSet<string>(["http", "https", "mailto", "tel"], comparer),
            UriAttributes = new HashSet<string>(["href", "src", "action", "formaction", "xlink:href", "background", "poster"], comparer),
        });

        // Markup that reads a foreign page must not hand it a way back, and no other site's address may pass without its scheme.
        sanitizer.PostProcessNode += (_, e) =>
        {
            if (e.Node is not AngleSharp.Html.Dom.IHtmlAnchorElement link || link.GetAttribute("href") is not { } address) return;
            if (Addresses.IsForeign(address)) link.SetAttribute("rel", "noopener");
            else if (!Addresses.IsAllowed(address)) link.RemoveAttribute("href");
        };
        return sanitizer;
    }
}

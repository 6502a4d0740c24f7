using System.Net;
using System.Text;

namespace Training.Web.Features.AuditFolders;

/// <summary>A page of a folder that reads offline: no script, nothing from elsewhere.</summary>
/// <param name="language">Tag of its language.</param>
/// <param name="title">Its heading.</param>
public sealed class AuditPage(string language, string title)
{
    private readonly StringBuilder body = new();

    /// <summary>A fact: what is known, and what it is. An empty value is left out.</summary>
    public AuditPage Fact(string label, string? value) => value is { Length: > 0 } ? Raw($"<p><b>{Of(label)}:</b> {Of(value)}</p>") : this;

    /// <summary>A heading.</summary>
    public AuditPage Heading(string text) => Raw($"<h2>{Of(text)}</h2>");

    /// <summary>A link to another file of the folder.</summary>
    public AuditPage Link(string label, string path) => Raw($"<p><a href=\"{Of(path)}\">{Of(label)}</a></p>");

    /// <summary>Words of a course, which are safe HTML already.</summary>
    public AuditPage Words(string html) => Raw(html);

    /// <summary>A table; its cells are HTML made by <see cref="Of"/> or words of a course.</summary>
    public AuditPage Table(IEnumerable<string> heads, IEnumerable<IEnumerable<string>> rows)
    {
        body.Append("<table><thead><tr>");
        foreach (var head in heads) body.Append("<th>").Append(Of(head)).Append("</th>");
        body.Append("</tr></thead><tbody>\n");
        foreach (var row in rows)
        {
            body.Append("<tr>");
            foreach (var cell in row) body.Append("<td>").Append(cell).Append("</td>");
            body.Append("</tr>\n");
        }

        return Raw("</tbody></table>");
    }

    /// <summary>Text as HTML.</summary>
    public static string Of(string? text) => WebUtility.HtmlEncode(text ?? "");

    /// <summary>The whole page.</summary>
    public byte[] ToBytes() => Encoding.UTF8.GetBytes($$"""
        <!DOCTYPE html>
        <html lang="{{language}}"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>{{Of(title)}}</title>
        <style>body{font:16px/1.5 Georgia,serif;max-width:60rem;margin:2rem auto;padding:0 1rem;color:#1d1a16;background:#fff}table{border-collapse:collapse;width:100%}th,td{text-align:left;vertical-align:top;border-bottom:1px solid #999;padding:.3rem .6rem .3rem 0;overflow-wrap:anywhere}td p{margin:0}</style></head>
        <body><h1>{{Of(title)}}</h1>
        {{body}}</body></html>

        """.ReplaceLineEndings("\n"));

    private AuditPage Raw(string html)
    {
        body.Append(html).Append('\n');
        return this;
    }
}

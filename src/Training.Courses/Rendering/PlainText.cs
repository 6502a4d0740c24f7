using System.Text;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Training.Courses;

/// <summary>The letters of a paragraph without its markup, white space joined.</summary>
internal static class PlainText
{
    /// <param name="leaf">Paragraph or heading.</param>
    /// <param name="autolink">What stands for an address in angle brackets; null: the address itself.</param>
    public static string Of(LeafBlock leaf, Func<AutolinkInline, string>? autolink = null) => Of(leaf.Inline, autolink);

    public static string Of(ContainerInline? container, Func<AutolinkInline, string>? autolink = null)
    {
        var text = new StringBuilder();
        Collect(container, text, autolink ?? (link => link.Url));
        return string.Join(' ', text.ToString().Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
    }

    private static void Collect(ContainerInline? container, StringBuilder text, Func<AutolinkInline, string> autolink)
    {
        foreach (var inline in container ?? Enumerable.Empty<Inline>())
        {
            if (inline is LiteralInline literal) text.Append(literal.Content.AsSpan());
            else if (inline is CodeInline code) text.Append(code.Content);
            else if (inline is LineBreakInline) text.Append(' ');
            else if (inline is HtmlEntityInline entity) text.Append(entity.Transcoded.AsSpan());
            else if (inline is AutolinkInline link) text.Append(autolink(link));
            else if (inline is ContainerInline inner) Collect(inner, text, autolink);
        }
    }
}

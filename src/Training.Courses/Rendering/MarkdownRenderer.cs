using Markdig;
using Markdig.Extensions.Tables;
using Markdig.Renderers;
using Markdig.Renderers.Html;
using Markdig.Renderers.Html.Inlines;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Training.Courses;

/// <summary>Markdown to safe HTML: CommonMark, pipe tables and passages between lines of colons; raw HTML is shown as text, pictures as their text.</summary>
public static class MarkdownRenderer
{
    internal static readonly MarkdownPipeline Pipeline =
        new MarkdownPipelineBuilder().UsePipeTables().Use<PassageFences>().DisableHtml().UsePreciseSourceLocation().Build();

    /// <summary>Renders one text that stands for itself: no facts, no guidance, no figures, no modules.</summary>
    /// <param name="markdown">Whatever somebody typed.</param>
    /// <returns>Safe HTML; text nested too deeply for Markdown is shown as it was typed.</returns>
    public static string ToHtml(string markdown) =>
        Parse(markdown) is { } document ? SafeHtml.From(RenderUnchecked(document)) : System.Net.WebUtility.HtmlEncode(markdown);

    /// <summary>The text as CommonMark renders it, before the gate: only for comparison with the specification's examples.</summary>
    internal static string RenderUnchecked(MarkdownDocument document) => Render(
        renderer => renderer.Render(document),
        renderer => renderer.ObjectRenderers.Replace<LinkInlineRenderer>(new PictureAsText()));

    /// <summary>Parses, and turns what would become a style attribute into classes. Null where it is nested too deeply.</summary>
    internal static MarkdownDocument? Parse(string markdown)
    {
        try
        {
            var document = Markdown.Parse(markdown, Pipeline);
            foreach (var table in document.Descendants<Table>()) AlignByClass(table);
            return document;
        }
        catch (ArgumentException)
        {
            // Markdig's guard against nesting that would exhaust the stack; it has no type of its own.
            return null;
        }
    }

    internal static string Render(Action<HtmlRenderer> write, Action<HtmlRenderer> prepare)
    {
        using var writer = new StringWriter { NewLine = "\n" };
        var renderer = new HtmlRenderer(writer);
        Pipeline.Setup(renderer);
        prepare(renderer);
        write(renderer);
        writer.Flush();
        return writer.ToString();
    }

    private static void AlignByClass(Table table)
    {
        foreach (var row in table.OfType<TableRow>())
        {
            for (var column = 0; column < row.Count && column < table.ColumnDefinitions.Count; column++)
            {
                if (table.ColumnDefinitions[column].Alignment is not { } alignment) continue;
                row[column].GetAttributes().AddClass(alignment switch
                {
                    TableColumnAlign.Left => "align-left",
                    TableColumnAlign.Center => "align-center",
                    TableColumnAlign.Right => "align-right",
                });
            }
        }

        foreach (var column in table.ColumnDefinitions) column.Alignment = null;
    }

    private sealed class PictureAsText : LinkInlineRenderer
    {
        protected override void Write(HtmlRenderer renderer, LinkInline link)
        {
            if (link.IsImage) renderer.WriteChildren(link);
            else base.Write(renderer, link);
        }
    }
}

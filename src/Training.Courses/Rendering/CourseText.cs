using Markdig.Extensions.CustomContainers;
using Markdig.Extensions.Tables;
using Markdig.Renderers;
using Markdig.Renderers.Html;
using Markdig.Renderers.Html.Inlines;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Training.Courses;

/// <summary>Renders a part of a word file: resolves guidance, facts, figures and links, and reports what leads nowhere.</summary>
/// <param name="file">The file that the blocks come from.</param>
/// <param name="folder">The course.</param>
/// <param name="part">The named part, for findings.</param>
/// <param name="notes">The foot of the page; null where there is none.</param>
internal sealed class CourseText(WordFile file, CourseFolder folder, string? part, NoteList? notes = null)
{
    private int figures;

    /// <summary>Sources cited so far.</summary>
    public IReadOnlyList<SourceNote> Notes => notes?.Notes ?? [];

    /// <summary>Paths of the figures shown.</summary>
    public SortedSet<string> Figures { get; } = new(StringComparer.Ordinal);

    /// <summary>Ids of the guidance entries shown.</summary>
    public SortedSet<string> Guidance { get; } = new(StringComparer.Ordinal);

    public string Blocks(IEnumerable<Block> blocks)
    {
        var list = blocks.ToList();
        list.ForEach(NotePlacing.KeepWithWord);
        return SafeHtml.From(MarkdownRenderer.Render(
            renderer =>
            {
                foreach (var block in list) renderer.Render(block);
            },
            Prepare));
    }

    /// <summary>Cuts a page where something stands that not every reader gets, or that the site fills in.</summary>
    public IReadOnlyList<PagePart> Parts(IEnumerable<Block> blocks)
    {
        var parts = new List<PagePart>();
        var run = new List<Block>();
        foreach (var block in blocks)
        {
            if (block is not CustomContainer && BlockNameOf(block) is null)
            {
                run.Add(block);
                continue;
            }

            // Before the part is rendered: sources are numbered in the order of reading.
            Close();
            // A block that nobody knows was told once; shown as text it would be told again, as one in the wrong place.
            if (PartOf(block) is { } part) parts.Add(part);
        }

        Close();
        return parts;

        void Close()
        {
            if (run.Count > 0) parts.Add(new PagePart.Text(Blocks(run), []));
            run.Clear();
        }
    }

    /// <summary>Every paragraph as plain text; what stands in tables and figures left out.</summary>
    public IReadOnlyList<string> Prose(IEnumerable<Block> blocks) =>
    [
        .. blocks.SelectMany(block => block is ParagraphBlock paragraph ? [paragraph] : block is Table or LeafBlock ? [] : block.Descendants<ParagraphBlock>())
            .Where(paragraph => FigurePathOf(paragraph) is null && BlockNameOf(paragraph) is null)
            .Select(paragraph => PlainText.Of(paragraph, link => IdAfter("fact:", link.Url) is not null ? "" : IdAfter("guidance:", link.Url) is { } id ? WordsOf(id) : link.Url))
            .Where(text => text.Length > 0),
    ];

    /// <summary>The content of one paragraph without its tags.</summary>
    public string Inline(LeafBlock leaf) => SafeHtml.From(MarkdownRenderer.Render(renderer => renderer.WriteLeafInline(leaf), Prepare));

    /// <summary>The letters alone; guidance as its value.</summary>
    public string Plain(LeafBlock leaf) =>
        PlainText.Of(leaf, link => IdAfter("guidance:", link.Url) is { } id ? ValueText(id, link) : link.Url);

    /// <summary>The path of the figure that a block is; null where it is none.</summary>
    public string? FigurePathOf(Block block) =>
        block is ParagraphBlock { Inline: { FirstChild: LinkInline { IsImage: true } link } } && link.NextSibling is null
            ? WordFile.Resolve(file.Path, link.Url ?? "")
            : null;

    private void Prepare(HtmlRenderer renderer)
    {
        renderer.ObjectRenderers.Replace<AutolinkInlineRenderer>(new References(this));
        renderer.ObjectRenderers.Replace<LinkInlineRenderer>(new Links(this));
        renderer.ObjectRenderers.Replace<ParagraphRenderer>(new Paragraphs(this));
        renderer.ObjectRenderers.Replace<PassageFences.Contents>(new StrayPassages(this));
    }

    private PagePart? PartOf(Block block)
    {
        if (block is CustomContainer passage) return PassageOf(passage);
        if (BlockNameOf(block) is not { } name) return null;
        if (PageBlocks.Find(name) is { } kind) return new PagePart.Block(kind);
        Report(CourseProblems.BlockUnknown, block, name, PageBlocks.Names);
        return null;
    }

    private PagePart.Text PassageOf(CustomContainer passage)
    {
        var snakes = (passage.Arguments ?? "").Split(' ', StringSplitOptions.RemoveEmptyEntries);
        // Without a closing fence Markdown ends a passage where the page ends, and with it what everybody should read.
        if (passage.Info != "only" || snakes.Length == 0 || !snakes.All(Ids.IsId) || passage.ClosingFencedCharCount == 0) Report(CourseProblems.PassageForm, passage);
        folder.Snakes.AddRange(snakes.Select(snake => new SnakeUse(snake, new(file.Path, file.LineOf(passage), part))));
        return new(Blocks(passage), snakes);
    }

    private static string? BlockNameOf(Block block) =>
        block is ParagraphBlock { Inline: { FirstChild: AutolinkInline only } } && only.NextSibling is null ? IdAfter(PageBlocks.Scheme, only.Url) : null;

    private string WordsOf(string guidanceId) =>
        folder.Shared.Guidance.Find(guidanceId) is { } entry ? folder.Shared.Guidance.Text(entry.Value, file.Language) ?? "" : "";

    private static string? IdAfter(string scheme, string url) => url.StartsWith(scheme, StringComparison.Ordinal) ? url[scheme.Length..] : null;

    private void Report(string code, MarkdownObject at, params IReadOnlyList<string> arguments) =>
        folder.Problems.Add(new(code, new(file.Path, file.LineOf(at), part), arguments));

    private string ValueText(string id, MarkdownObject at)
    {
        if (folder.UseGuidance(id, file.Path, file.LineOf(at), part) is not { } entry) return id;
        Guidance.Add(id);
        if (folder.Shared.Guidance.Text(entry.Value, file.Language) is { } text) return text;
        Report(CourseProblems.GuidanceWordsMissing, at, ((GuidanceValue.Code)entry.Value).Name, file.Language.Tag());
        return id;
    }

    private void WriteNote(HtmlRenderer renderer, SourceNote? note)
    {
        if (notes is null || note is null) return;
        var (number, isFirst) = notes.Cite(note);
        renderer.Write("<sup class=\"note\"><a role=\"doc-noteref\" href=\"#note-").Write(number).Write('"');
        if (isFirst) renderer.Write(" id=\"note-").Write(number).Write("-here\"");
        renderer.Write('>').Write(number).Write("</a></sup>");
    }

    private void WriteGuidance(HtmlRenderer renderer, string id, AutolinkInline at)
    {
        renderer.Write("<span class=\"value\">");
        renderer.WriteEscape(ValueText(id, at));
        renderer.Write("</span>");
        if (folder.Shared.Guidance.Find(id) is { } entry) WriteNote(renderer, new(id, entry.Source, entry.Standing, entry.EffectiveFrom));
    }

    private void WriteFact(HtmlRenderer renderer, string id, AutolinkInline at)
    {
        var fact = folder.UseFact(id, file.Path, file.LineOf(at), part);
        if (notes is null) Report(CourseProblems.NoteOutsideModule, at, id);
        else if (fact is not null) WriteNote(renderer, new(id, fact.Source, fact.Standing, null));
    }

    /// <summary>The address that a link of the file becomes, or null where it must not become one.</summary>
    private string? AddressOf(string url, MarkdownObject at)
    {
        if (Addresses.IsForeign(url)) return url;
        if (!Addresses.IsAllowed(url))
        {
            Report(CourseProblems.LinkUnsafe, at, url);
            return null;
        }

        if (!Addresses.IsOwnSite(url) || url.StartsWith('/')) return url;
        var (path, section) = Split(url);
        if (folder.FindPage(file, path, section) is { } moduleId) return path.Length == 0 ? url : folder.Address(file.Language, folder.Id, moduleId, section);
        Report(CourseProblems.LinkBroken, at, url);
        return null;
    }

    private static (string Path, string? Section) Split(string url)
    {
        var hash = url.IndexOf('#', StringComparison.Ordinal);
        return hash < 0 ? (url, null) : (url[..hash], url[(hash + 1)..]);
    }

    private void WriteFigure(HtmlRenderer renderer, LinkInline link)
    {
        var path = WordFile.Resolve(file.Path, link.Url ?? "");
        var name = PlainText.Of(link);
        if (name.Length == 0 || string.IsNullOrWhiteSpace(link.Title)) Report(CourseProblems.FigureWordsMissing, link, link.Url ?? "");
        if (path is null || !folder.HasFigure(path))
        {
            Report(CourseProblems.FigureMissing, link, link.Url ?? "");
            return;
        }

        Figures.Add(path);
        folder.ShownFigures.Add(path);
        figures++;
        // A lead reads a question in both languages on one page.
        var place = (part ?? file.Path).Split([' ', '/', '.'])[^1];
        var prefix = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{place}-{file.Language.Tag()}-figure-{figures}-");
        if (folder.FindFigure(path) is { } figure) renderer.Write(figure.ToHtml(name, link.Title ?? "", prefix));
    }

    private sealed class References(CourseText text) : AutolinkInlineRenderer
    {
        protected override void Write(HtmlRenderer renderer, AutolinkInline link)
        {
            if (link.IsEmail) base.Write(renderer, link);
            else if (IdAfter("guidance:", link.Url) is { } value) text.WriteGuidance(renderer, value, link);
            else if (IdAfter("fact:", link.Url) is { } fact) text.WriteFact(renderer, fact, link);
            else if (IdAfter(PageBlocks.Scheme, link.Url) is { } block) text.Report(CourseProblems.BlockPlace, link, block);
            else if (text.AddressOf(link.Url, link) is not null) base.Write(renderer, link);
            else renderer.WriteEscape(link.Url);
        }
    }

    private sealed class Links(CourseText text) : LinkInlineRenderer
    {
        protected override void Write(HtmlRenderer renderer, LinkInline link)
        {
            if (link.IsImage)
            {
                text.Report(CourseProblems.FigureNotAlone, link);
                renderer.WriteChildren(link);
                return;
            }

            var address = text.AddressOf(link.Url ?? "", link);
            if (address is null)
            {
                renderer.WriteChildren(link);
                return;
            }

            renderer.Write("<a href=\"").WriteEscapeUrl(address).Write("\">");
            renderer.WriteChildren(link);
            renderer.Write("</a>");
        }
    }

    private sealed class Paragraphs(CourseText text) : ParagraphRenderer
    {
        protected override void Write(HtmlRenderer renderer, ParagraphBlock paragraph)
        {
            var isFigure = paragraph.Inline is { FirstChild: LinkInline { IsImage: true } only } && only.NextSibling is null;
            if (isFigure) text.WriteFigure(renderer, (LinkInline)paragraph.Inline!.FirstChild!); // both seen on the line above
            else base.Write(renderer, paragraph);
        }
    }

    /// <summary>A passage anywhere but at the top of a module: nothing cuts it out there, so everybody would read it.</summary>
    private sealed class StrayPassages(CourseText text) : HtmlObjectRenderer<CustomContainer>
    {
        protected override void Write(HtmlRenderer renderer, CustomContainer passage)
        {
            text.Report(CourseProblems.PassageForm, passage);
            renderer.WriteChildren(passage);
        }
    }
}

using PdfSharp.Drawing;
using PdfSharp.UniversalAccessibility;
using Training.Courses;
using Training.Documents.Drawings;
using static Training.Documents.Typesetting.Look;

namespace Training.Documents.Typesetting;

/// <summary>A paper of one or more upright pages: a head, then blocks, and at the foot of each page which one it is.</summary>
/// <param name="ruler">Measures.</param>
/// <param name="paper">Its size.</param>
/// <param name="language">Of its words.</param>
/// <param name="isDemonstration">Stamped, so that it cannot be used.</param>
internal sealed class UprightPaper(Ruler ruler, PaperSize paper, Language language, bool isDemonstration)
{
    private const double Side = 48;
    private const double Top = 42;
    private const double Foot = 46;

    public static readonly TextStyle Title = new(FontRole.Strong, 19, 19, Ink, IsBalanced: true, IsFirm: true);
    public static readonly TextStyle Heading = TextStyle.Of(FontRole.Strong, 12, Ink);
    public static readonly TextStyle Body = TextStyle.Of(FontRole.Text, 10, Ink);
    public static readonly TextStyle BodyStrong = TextStyle.Of(FontRole.Strong, 10, Ink);
    public static readonly TextStyle Soft = TextStyle.Of(FontRole.Text, 9.5, InkSoft);

    private static readonly TextStyle Provider = new(FontRole.Strong, 11, 6, Ink);
    private static readonly TextStyle Stamp = TextStyle.Of(FontRole.Strong, 11, Ochre);
    private static readonly TextStyle Running = new(FontRole.Text, 8, 5, InkSoft);

    private readonly PaperWords _words = new(language);

    /// <summary>Of everything between the margins.</summary>
    public double Width => paper.Sides().Short - (2 * Side);

    /// <summary>What the first page begins with.</summary>
    /// <param name="provider">Who gives it out.</param>
    /// <param name="kind">What sort of paper it is and of what.</param>
    /// <param name="title">The first sentence: what a reader came for.</param>
    public IEnumerable<Block> Head(string provider, string kind, string title)
    {
        yield return new Block.Whole(
            new Piece.Stack(3, Text(provider, Provider), new Piece.Stack(1.8, new Piece.Rule(Width, Ink, 0.6), new Piece.Rule(Width, Ink, 0.6))), 0);
        if (isDemonstration) yield return new Block.Whole(DemoSign(), 8);
        yield return new Block.Whole(
            new Piece.Stack(1, Text(kind, Soft), Text(PdfBlockLevelElementTag.Heading1, title, Title)), 10);
    }

    public Piece.Text Text(string text, TextStyle style) => Text(PdfBlockLevelElementTag.Paragraph, text, style);

    public Piece.Text Text(PdfBlockLevelElementTag tag, string text, TextStyle style) => new(tag, ruler.Fit(text, style, Width));

    /// <summary>An item of a list, its mark beside it.</summary>
    public Piece.Element Item(string mark, string text)
    {
        const double Indent = 16;
        return new(PdfBlockLevelElementTag.ListItem, new Piece.Row(
            (0, new Piece.Text(PdfBlockLevelElementTag.Label, ruler.Fit(mark, Body, Indent))),
            (Indent, new Piece.Text(PdfBlockLevelElementTag.ListBody, ruler.Fit(text, Body, Width - Indent)))));
    }

    /// <summary>A heading and what it stands over, on one page.</summary>
    public Block.Whole Section(string heading, params ReadOnlySpan<Piece> pieces) =>
        new(new Piece.Stack(3, [Text(PdfBlockLevelElementTag.Heading2, heading, Heading), .. pieces]), 14);

    /// <summary>A heading and the table under it.</summary>
    /// <param name="heading">Stays with the first row.</param>
    /// <param name="table">Its shape.</param>
    /// <param name="rows">At least one.</param>
    public Block.Rows Section(string heading, Table table, IEnumerable<Piece> rows) =>
        new(table.Head(), [.. rows], 14, new Piece.Stack(3, Text(PdfBlockLevelElementTag.Heading2, heading, Heading), new Piece.Letters()));

    /// <summary>What keeps a reader from taking the paper for more than it is, between two thick lines.</summary>
    public Block.Whole Caution(string caution) => new(
        new Piece.Stack(
            5,
            new Piece.Rule(Width, Ink, 1.4),
            new Piece.Text(PdfBlockLevelElementTag.Paragraph, ruler.Fit(_words.CautionLabel, BodyStrong, Width), ruler.Fit(caution, Body, Width)),
            new Piece.Rule(Width, Ink, 1.4)),
        16);

    /// <summary>Draws all pages.</summary>
    /// <param name="document">Where to.</param>
    /// <param name="blocks">In reading order.</param>
    /// <param name="running">At the foot of every page: which paper this is.</param>
    public void Draw(PrintedDocument document, IEnumerable<Block> blocks, string running)
    {
        var (width, height) = paper.Sides();
        var pages = Flow.Deal(blocks, Side, Top, height - Foot - 8);
        foreach (var (index, page) in pages.Index())
        {
            var canvas = document.AddPage(width, height);
            foreach (var draw in page) draw(canvas);
            canvas.Repeat(again => DrawFoot(again, height - Foot, running, _words.PageOf(index + 1, pages.Count)));
            if (isDemonstration) canvas.Decorate(graphics => DemoStamp.Draw(graphics, new(Side, Top, Width, height - Top - Foot)));
        }
    }

    private Piece.Framed DemoSign()
    {
        var letters = new Piece.Text(
            PdfBlockLevelElementTag.Paragraph, ruler.Fit(_words.Demo, Stamp, Width - 16), ruler.Fit(_words.DemoDetail, Soft, Width - 16));
        return new(letters, Width, 8, 4, (graphics, box) => graphics.DrawRectangle(new XPen(Ochre, 1.6) { DashStyle = XDashStyle.Dash }, box));
    }

    private void DrawFoot(Canvas canvas, double y, string running, string page)
    {
        var number = ruler.Fit(page, Running, Width);
        var room = ruler.WidthOf(number);
        // A demonstration says so on every page, since pages come apart.
        var left = isDemonstration ? $"{_words.Demo} · {running}" : running;
        new Piece.Rule(Width, Ink, 0.6).Draw(canvas, Side, y);
        canvas.Letter(Side, y + 4, [ruler.Fit(left, Running, Width - room - 16, 24)]);
        canvas.Letter(Side + Width - room, y + 4, [number]);
    }
}

using PdfSharp.Drawing;
using PdfSharp.UniversalAccessibility;
using Training.Documents.Drawings;
using Training.Documents.Typesetting;
using static Training.Documents.Certificates.CertificateLook;
using static Training.Documents.Typesetting.Look;

namespace Training.Documents.Certificates;

/// <summary>Where everything stands: a band of scales, a head, a main column, a side column, a foot. Drawn in reading order.</summary>
internal sealed class CertificateLayout(CertificatePage page, Ruler ruler, Canvas canvas, double paperWidth, double paperHeight)
{
    private const double HeadHeight = 34;
    private const double FactGap = 16;

    private readonly CertificateWords _words = new(page);
    private readonly PaperWords _papers = new(page.Language);
    private readonly double _left = Margin + 8 + BandWidth + BandGap;
    private readonly double _right = paperWidth - Margin - Padding;
    private readonly double _top = Margin + Padding;
    private readonly double _bottom = paperHeight - Margin - Padding + 4;

    private double Width => _right - _left;

    private double MainWidth => Width - SideWidth - ColumnGap;

    private double SideLeft => _right - SideWidth;

    public void Draw()
    {
        canvas.Decorate(DrawFrame);
        DrawHead();
        var foot = Foot();
        var footTop = _bottom - foot.Height;
        var columnTop = _top + HeadHeight + 16;
        var columnHeight = footTop - 12 - columnTop;
        Main().Spread(columnHeight).Draw(canvas, _left, columnTop);
        Side().Spread(columnHeight).Draw(canvas, SideLeft, columnTop);
        foot.Draw(canvas, _left, footTop);
        // Last, over everything but the code: the code must still lead to the page that says DEMO too.
        if (page.IsDemonstration) canvas.Decorate(graphics => DemoStamp.Draw(graphics, new(_left, columnTop, MainWidth, columnHeight)));
    }

    private void DrawFrame(XGraphics graphics)
    {
        var frame = new XRect(Margin, Margin, paperWidth - (2 * Margin), paperHeight - (2 * Margin));
        graphics.DrawRectangle(new XPen(Ink, Line), frame);
        var band = new XRect(Margin + 8, Margin + 8, BandWidth, frame.Height - 16);
        ScaleBand.Draw(graphics, band, columns: 5);
        graphics.DrawRectangle(new XPen(Rule, 0.6), band);
    }

    private void DrawHead()
    {
        var width = page.IsDemonstration ? MainWidth : Width;
        new Piece.Text(
            PdfBlockLevelElementTag.Paragraph,
            ruler.Fit(page.ProviderName, Provider, width, 19),
            ruler.Fit(page.ProviderAddress, Address, width, 15)).Draw(canvas, _left, _top - 3);
        if (page.IsDemonstration) DrawDemoSign();
        // The double rule of the house, as on the pages of the site.
        foreach (var distance in (double[])[0, 2.4])
        {
            new Piece.Rule(Width, Ink, 0.6).Draw(canvas, _left, _top + HeadHeight + distance);
        }
    }

    private void DrawDemoSign()
    {
        var box = new XRect(SideLeft, _top - 6, SideWidth, HeadHeight);
        canvas.Decorate(graphics => graphics.DrawRectangle(new XPen(Ochre, 1.6) { DashStyle = XDashStyle.Dash }, box));
        new Piece.Text(
            PdfBlockLevelElementTag.Paragraph,
            ruler.Fit(_papers.Demo, Stamp, SideWidth - 16, 15.5),
            ruler.Fit(_papers.DemoDetail, Label, SideWidth - 16, 11)).Draw(canvas, box.X + 8, box.Y + 4.5);
    }

    private Piece.Stack Main() => new(
        0,
        Paragraph(PdfBlockLevelElementTag.Heading1, _words.Title, Title, 40),
        new Piece.Stack(
            1,
            Paragraph(PdfBlockLevelElementTag.Paragraph, _words.Lead, Lead, 14),
            Paragraph(PdfBlockLevelElementTag.Heading2, page.WorkerName, Name, 42),
            Paragraph(PdfBlockLevelElementTag.Paragraph, _words.TraineeNumber, Value, 13)),
        new Piece.Stack(
            1.5,
            Paragraph(PdfBlockLevelElementTag.Paragraph, _words.Met, Lead, 14),
            Paragraph(PdfBlockLevelElementTag.Heading2, page.SchemeTitle, Scheme, 38),
            Paragraph(PdfBlockLevelElementTag.Paragraph, _words.Rules, Label, 11)),
        Labelled(_words.ScopeLabel, MainWidth, ruler.Fit(page.ShownText, Body, MainWidth, 50)),
        Facts(),
        Paragraph(PdfBlockLevelElementTag.Paragraph, _words.Limits, Limit, 38));

    private Piece.Stack Facts()
    {
        var third = (MainWidth - (2 * FactGap)) / 3;
        var (second, last) = (third + FactGap, 2 * (third + FactGap));
        return new(
            5,
            new Piece.Rule(MainWidth, Ink, 0.6),
            new Piece.Row(
                (0, Labelled(_words.EffectiveLabel, third, ruler.Fit(_words.Effective, Date, third, 20))),
                (second, Labelled(_words.ExpiryLabel, third, ruler.Fit(_words.Expiry, Date, third, 20), ruler.Fit(_words.Counted, Note, third, 33))),
                (last, Labelled(_words.DecidedLabel, third, ruler.Fit(_words.Decided, Value, third, 40), ruler.Fit(_words.DecidedOn, Note, third, 12)))),
            new Piece.Rule(MainWidth, Rule, 0.6),
            new Piece.Row(
                (0, Labelled(_words.PlaceLabel, third, ruler.Fit(_words.Place, Value, third, 26))),
                (second, Labelled(_words.HoursLabel, third, ruler.Fit(_words.Hours, Value, third, 13))),
                (last, Labelled(_words.CreditsLabel, third, ruler.Fit(_words.Credits, Value, third, 26)))),
            new Piece.Rule(MainWidth, Ink, 0.6));
    }

    private Piece.Stack Side() => new(
        0,
        new Piece.Figure(SideWidth, PlateHeight, _words.PlateAlternative, FieldPlate.Draw),
        new Piece.Stack(
            5,
            new Piece.Rule(SideWidth, Ink, 0.6),
            new Piece.Text(
                PdfBlockLevelElementTag.Paragraph,
                ruler.Fit(_words.SerialLabel, Label, SideWidth, 11),
                ruler.Fit(_words.Serial, Serial, SideWidth, 20),
                ruler.Fit(_words.Revision, Note, SideWidth, 12))),
        new Piece.Stack(
            0,
            Code(),
            new Piece.Text(
                PdfBlockLevelElementTag.Paragraph,
                ruler.Fit(_words.Check, Small, SideWidth, 24),
                ruler.Fit(page.CheckAddress, Value with { Size = 8.5 }, SideWidth, 50))));

    // The dark part of the code stands flush with the text; its quiet zone reaches into the gap between the columns.
    private Piece.Row Code()
    {
        var code = new QrCode(page.CodeAddress);
        var figure = new Piece.Figure(CodeSide, CodeSide, _words.CodeAlternative, code.Draw);
        return new((-code.QuietWidth(CodeSide), figure));
    }

    private Piece.Stack Foot() => new(
        5,
        new Piece.Rule(Width, Ink, 1.4),
        new Piece.Text(
            PdfBlockLevelElementTag.Paragraph,
            ruler.Fit(_papers.CautionLabel, Limit, Width, 13),
            ruler.Fit(_words.Caution, Small, Width, 34)),
        new Piece.Rule(Width, Ink, 1.4),
        Paragraph(PdfBlockLevelElementTag.Paragraph, _words.Property, Note, Width, 20));

    private Piece.Text Labelled(string label, double width, params ReadOnlySpan<FittedText> values) =>
        new(PdfBlockLevelElementTag.Paragraph, [ruler.Fit(label, Label, width, 11), .. values]);

    private Piece.Text Paragraph(PdfBlockLevelElementTag tag, string text, TextStyle style, double height) =>
        Paragraph(tag, text, style, MainWidth, height);

    private Piece.Text Paragraph(PdfBlockLevelElementTag tag, string text, TextStyle style, double width, double height) =>
        new(tag, ruler.Fit(text, style, width, height));
}

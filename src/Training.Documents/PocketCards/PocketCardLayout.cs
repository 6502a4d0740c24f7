using PdfSharp.Drawing;
using PdfSharp.UniversalAccessibility;
using Training.Documents.Drawings;
using Training.Documents.Typesetting;
using static Training.Documents.PocketCards.PocketCardLook;

namespace Training.Documents.PocketCards;

/// <summary>Where everything stands on a card. Composed once, drawn wherever the card lies on its sheet.</summary>
internal sealed class PocketCardLayout
{
    private const double Left = Margin + BandWidth + BandGap;
    private const double Right = Width - Margin;
    private const double Wide = Right - Left;
    private const double CodeLeft = Right - CodeSide;
    private const double CodeTop = Height - Margin - CodeSide;
    private const double Narrow = CodeLeft - Left - 2;
    // The letters beside the code begin and end about where its dark part does.
    private const double SideTop = CodeTop + 3;
    private const double SideHeight = CodeSide - 4;
    private const double NameTop = 30;
    private const double DemoWidth = 88;

    private readonly PocketCardPage _page;
    private readonly PocketCardWords _words;
    private readonly PaperWords _papers;
    private readonly Fitting _fitting;
    private readonly Piece.Text _head;
    private readonly FittedText _name;
    private readonly Piece.Stack _side;
    private readonly Piece.Stack? _back;
    private readonly QrCode _code;
    private readonly Piece.Framed? _demo;

    /// <summary>Composes a card; what does not fit becomes a problem of the fitting.</summary>
    public PocketCardLayout(PocketCardPage page, Fitting fitting)
    {
        _page = page;
        _fitting = fitting;
        _words = new(page);
        _papers = new(page.Language);
        _head = Head();
        _name = Fit("worker-name", page.WorkerName, Name, Wide, CodeTop - NameTop);
        _code = fitting.Code("check-address", page.CheckAddress, CodeSide);
        _side = Side();
        _back = Back();
        _demo = page.IsDemonstration ? DemoSign() : null;
    }

    /// <summary>Draws the front with its upper left corner there.</summary>
    /// <param name="canvas">Where to.</param>
    /// <param name="x">From the left of the sheet.</param>
    /// <param name="y">From the top of the sheet.</param>
    /// <param name="heading">What the name is: a heading of the sheet.</param>
    public void DrawFront(Canvas canvas, double x, double y, PdfBlockLevelElementTag heading)
    {
        canvas.Decorate(graphics => DrawBand(graphics, x, y));
        _head.Draw(canvas, x + Left, y + Margin - 2);
        _demo?.Draw(canvas, x + Right - DemoWidth, y + Margin - 1);
        canvas.Write(heading, x + Left, y + NameTop + ((CodeTop - NameTop - _name.Height) / 2), _name);
        _side.Draw(canvas, x + Left, y + SideTop);
        canvas.Illustrate(_words.CodeAlternative, new(x + CodeLeft, y + CodeTop, CodeSide, CodeSide), _code.Draw);
        if (_page.IsDemonstration) canvas.Decorate(graphics => DemoStamp.Draw(graphics, new(x + Left, y + NameTop, Narrow, Height - NameTop - Margin)));
    }

    /// <summary>Draws the back with its upper left corner there.</summary>
    public void DrawBack(Canvas canvas, double x, double y)
    {
        _back?.Draw(canvas, x + Margin, y + Margin - 2);
        if (_page.IsDemonstration) canvas.Decorate(graphics => DemoStamp.Draw(graphics, new(x + Margin, y + Margin, Width - (2 * Margin), Height - (2 * Margin))));
    }

    private static void DrawBand(XGraphics graphics, double x, double y)
    {
        var band = new XRect(x + Margin, y + Margin, BandWidth, Height - (2 * Margin));
        ScaleBand.Draw(graphics, band, columns: 3);
        graphics.DrawRectangle(new XPen(Look.Rule, 0.4), band);
    }

    private Piece.Text Head()
    {
        var width = _page.IsDemonstration ? Wide - DemoWidth - 6 : Wide;
        return new(
            PdfBlockLevelElementTag.Paragraph,
            Fit("provider-name", _page.ProviderName, Provider, width, 13.2),
            Fit("kind", _words.Title, Kind, width, 10));
    }

    private Piece.Stack Side() => new Piece.Stack(
        0,
        new Piece.Text(PdfBlockLevelElementTag.Paragraph, Fit("scheme-title", _page.SchemeTitle, Scheme, Narrow, 24)),
        Labelled(_words.ExpiryLabel, "expires-on", _words.Expiry, Date, 14.5),
        Labelled(_words.SerialLabel, "serial", _words.Serial, Serial, 12.5)).Spread(SideHeight);

    private Piece.Text Labelled(string label, string field, string value, TextStyle style, double height) => new(
        PdfBlockLevelElementTag.Paragraph, Fit(field, label, Label, Narrow, 8.5), Fit(field, value, style, Narrow, height));

    // One size for all of it, as large as the card allows; without one the card cannot be printed.
    private Piece.Stack? Back()
    {
        const double Tall = Height - (2 * Margin) + 4;
        var back = BackSizes.Select(Back).FirstOrDefault(back => back.Height <= Tall);
        if (back is null) _fitting.Refuse("back");
        return back;
    }

    private Piece.Stack Back(double size)
    {
        var (strong, text, soft) = (TextStyle.Of(FontRole.Strong, size, Look.Ink), TextStyle.Of(FontRole.Text, size, Look.Ink), TextStyle.Of(FontRole.Text, size, Look.InkSoft));
        return new(
            size * 0.4,
            Paragraph((_words.What, strong), (_words.WhatItIs, text)),
            Paragraph((_words.Check, strong), (_words.HowToCheck, text), (_page.CheckAddress, text)),
            Paragraph((_words.Limits, text)),
            Paragraph((_words.Bite, strong), (_words.BiteFirst, text)),
            Paragraph([(_words.Found, soft), .. _page.IsDemonstration ? [(_papers.DemoDetail, soft)] : Array.Empty<(string, TextStyle)>()]));
    }

    private Piece.Text Paragraph(params ReadOnlySpan<(string Words, TextStyle Style)> parts)
    {
        var fitted = new List<FittedText>();
        foreach (var (words, style) in parts) fitted.Add(_fitting.Ruler.Fit(words, style, Width - (2 * Margin)));
        return new(PdfBlockLevelElementTag.Paragraph, fitted);
    }

    private Piece.Framed DemoSign()
    {
        var letters = new Piece.Text(PdfBlockLevelElementTag.Paragraph, Fit("demo", _papers.Demo, Stamp, DemoWidth - 6, 17));
        return new(letters, DemoWidth, 3, 1, (graphics, box) => graphics.DrawRectangle(new XPen(Look.Ochre, 1) { DashStyle = XDashStyle.Dash }, box));
    }

    private FittedText Fit(string field, string text, TextStyle style, double width, double height) => _fitting.Fit(field, text, style, width, height);
}

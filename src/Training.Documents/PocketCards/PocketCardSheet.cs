using PdfSharp.Drawing;
using PdfSharp.UniversalAccessibility;
using Training.Documents.Typesetting;
using static Training.Documents.PocketCards.PocketCardLook;

namespace Training.Documents.PocketCards;

/// <summary>Eight cards on an upright sheet, two columns of four: fronts on one page, backs on the next, with marks for cutting.</summary>
internal sealed class PocketCardSheet
{
    /// <summary>Cards of a sheet.</summary>
    public const int Cards = Columns * Rows;

    private const int Columns = 2;
    private const int Rows = 4;
    private const double MarkLength = 5;
    private const double MarkGap = 2.5;

    private readonly IReadOnlyList<PocketCardLayout> _cards;
    private readonly PocketCardWords _words;
    private readonly double _paperWidth;
    private readonly double _paperHeight;
    private readonly double _left;
    private readonly double _top;

    /// <param name="cards">1 to <see cref="Cards"/>.</param>
    /// <param name="words">Of their language.</param>
    /// <param name="paper">The sheet.</param>
    public PocketCardSheet(IReadOnlyList<PocketCardLayout> cards, PocketCardWords words, PaperSize paper)
    {
        (_cards, _words) = (cards, words);
        (_paperWidth, _paperHeight) = paper.Sides();
        // In the middle: a printer that turns the sheet over its long edge then lays each back on its front.
        _left = (_paperWidth - (Columns * Width) - ((Columns - 1) * Gutter)) / 2;
        _top = (_paperHeight - (Rows * Height) - ((Rows - 1) * Gutter)) / 2;
    }

    public void Draw(PrintedDocument document)
    {
        var front = document.AddPage(_paperWidth, _paperHeight);
        Announce(front, document.Ruler, PdfBlockLevelElementTag.Heading1, _words.SheetFronts);
        foreach (var (index, card) in _cards.Index())
        {
            var (x, y) = Place(index, index % Columns);
            front.Begin(PdfGroupingElementTag.Section);
            card.DrawFront(front, x, y, PdfBlockLevelElementTag.Heading2);
            front.End();
        }

        front.Decorate(DrawMarks);

        var back = document.AddPage(_paperWidth, _paperHeight);
        Announce(back, document.Ruler, PdfBlockLevelElementTag.Paragraph, _words.SheetBacks);
        foreach (var (index, card) in _cards.Index())
        {
            var (x, y) = Place(index, Columns - 1 - (index % Columns));
            back.Begin(PdfGroupingElementTag.Section);
            card.DrawBack(back, x, y);
            back.End();
        }

        back.Decorate(DrawMarks);
    }

    private (double X, double Y) Place(int index, int column) => (_left + (column * (Width + Gutter)), _top + (index / Columns * (Height + Gutter)));

    private void Announce(Canvas canvas, Ruler ruler, PdfBlockLevelElementTag tag, string words)
    {
        var width = (Columns * Width) + ((Columns - 1) * Gutter);
        var text = ruler.Fit(words, Note, width);
        canvas.Write(tag, _left, _top - MarkGap - MarkLength - 6 - text.Height, text);
    }

    // Both pages have the same marks in the same places, all eight cards' worth: the cut goes through the whole sheet.
    private void DrawMarks(XGraphics graphics)
    {
        var pen = new XPen(Look.Ink, 0.4);
        for (var card = 0; card < Cards; card++)
        {
            var (x, y) = Place(card, card % Columns);
            foreach (var (cornerX, right) in ((double, double)[])[(x, -1), (x + Width, 1)])
            foreach (var (cornerY, down) in ((double, double)[])[(y, -1), (y + Height, 1)])
            {
                graphics.DrawLine(pen, cornerX + (right * MarkGap), cornerY, cornerX + (right * (MarkGap + MarkLength)), cornerY);
                graphics.DrawLine(pen, cornerX, cornerY + (down * MarkGap), cornerX, cornerY + (down * (MarkGap + MarkLength)));
            }
        }
    }
}

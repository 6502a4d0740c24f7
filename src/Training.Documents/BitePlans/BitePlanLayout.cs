using System.Globalization;
using PdfSharp.Drawing;
using PdfSharp.UniversalAccessibility;
using Training.Documents.Drawings;
using Training.Documents.Typesetting;
using static Training.Documents.BitePlans.BitePlanLook;

namespace Training.Documents.BitePlans;

/// <summary>
/// Where everything stands on a plan, in the order in which it is needed: that it is overdue, whom to call and what to say, first aid, poison control,
/// hospitals, antivenom, who checked it.
/// </summary>
internal sealed class BitePlanLayout
{
    private const double Gap = 8;

    private readonly BitePlanPage _page;
    private readonly BitePlanWords _words;
    private readonly PaperWords _papers;
    private readonly BitePlanLook _look;
    private readonly Ruler _ruler;
    private readonly double _width;
    private readonly double _height;
    private readonly Piece.Stack _top;
    private readonly Piece.Row _columns;
    private readonly Piece.Stack _foot;

    private BitePlanLayout(BitePlanPage page, BitePlanLook look, Ruler ruler)
    {
        (_page, _look, _ruler) = (page, look, ruler);
        (_words, _papers) = (new(page), new(page.Language));
        var (width, height) = page.Paper.Sides();
        (_width, _height) = (width - (2 * Margin), height - (2 * Margin));
        _top = Top();
        _columns = Columns();
        _foot = Foot();
    }

    /// <summary>By how many points the plan is too tall; negative where room is left.</summary>
    public double Excess => _top.Height + _columns.Height + _foot.Height + (2 * Gap) - _height;

    /// <summary>The plan in the largest type that fits its page, or in the smallest where none does.</summary>
    public static BitePlanLayout Compose(BitePlanPage page, Ruler ruler) =>
        Largest.Select(look => new BitePlanLayout(page, look, ruler)).FirstOrDefault(layout => layout.Excess <= 0) ?? new(page, Largest[^1], ruler);

    public void Draw(Canvas canvas)
    {
        _top.Draw(canvas, Margin, Margin);
        _columns.Draw(canvas, Margin, Margin + _top.Height + Gap);
        _foot.Draw(canvas, Margin, Margin + _height - _foot.Height);
        if (!_page.IsDemonstration) return;
        var top = Margin + _top.Height + Gap;
        canvas.Decorate(graphics => DemoStamp.Draw(graphics, new(Margin, top, _width, Margin + _height - _foot.Height - top)));
    }

    private Piece.Stack Top()
    {
        var pieces = new List<Piece>();
        if (_page.IsOverdue) pieces.Add(Warning());
        if (_page.IsDemonstration) pieces.Add(Paragraph($"{_papers.Demo}. {_papers.DemoDetail}", Stamp, _width));
        pieces.Add(Paragraph(_words.Kind, _look.Strong, _width));
        pieces.Add(First());
        return new(3, pieces);
    }

    private Piece.Framed Warning()
    {
        const double Weight = 4, Across = 12;
        var inner = new Piece.Text(
            PdfBlockLevelElementTag.Paragraph,
            _ruler.Fit(_words.Overdue, Overdue, _width - (2 * Across)),
            _ruler.Fit(_words.OverdueSince, OverdueSince, _width - (2 * Across)));
        return Framed(inner, Across, new XPen(Look.Ink, Weight));
    }

    private Piece.Framed First()
    {
        var width = _width - (2 * Padding);
        return Framed(
            new Piece.Stack(
                5,
                new Piece.Text(PdfBlockLevelElementTag.Heading1, CallFirst(width)),
                Paragraph(_words.TheyDecide, _look.TheyDecide, width),
                new Piece.Rule(width, Look.Ink, 0.6),
                Labelled(_words.NoSignal, _page.WithoutSignal, _look.First, width),
                new Piece.Rule(width, Look.Ink, 0.6),
                new Piece.Text(
                    PdfBlockLevelElementTag.Paragraph,
                    _ruler.Fit(_words.SayWhere, _look.FirstLabel, width),
                    _ruler.Fit(_words.Decimal, _look.Angles, width),
                    _ruler.Fit(_words.DegreesMinutes, _look.Angles, width)),
                Labelled(_words.Access, _page.AccessWords, _look.First, width)),
            Padding,
            new XPen(Look.Ink, 2.2));
    }

    private FittedText CallFirst(double width) =>
        _ruler.Find(_words.Call, Call, width, Call.Size * Look.Leading) ?? _ruler.Fit(_words.Call, LongCall, width);

    private Piece.Row Columns() => LeftParts.Select(part => Columns((_width - ColumnGap) * part)).MinBy(row => row.Height)!; // not null: there are parts

    private Piece.Row Columns(double left) => new((0, FirstAid(left)), (left + ColumnGap, Elsewhere(_width - ColumnGap - left)));

    private Piece.Stack FirstAid(double width) => _page.FirstAid is not { } firstAid
        ? Under(_words.Do, width, Paragraph(_words.GuidanceSource, _look.Text, width))
        : new(
            Gap,
            Lines(_words.Do, firstAid.Do, number => string.Create(CultureInfo.InvariantCulture, $"{number}."), width),
            Lines(_words.DoNot, firstAid.DoNot, _ => "×", width),
            Paragraph(_words.GuidanceSource, Note, width));

    private Piece.Stack Elsewhere(double width) => new(
        Gap,
        Labelled(_words.PoisonControl, _page.PoisonControl, _look.Number, width),
        Labelled(_words.OnSite, _page.OnSite, _look.Strong, width),
        Under(_words.Hospitals, width, [Paragraph(_words.AsEntered, _look.Text, width), Hospitals(width)]),
        Under(_words.Antivenom, width, [.. Antivenom(width)]));

    private Piece Hospitals(double width)
    {
        if (_page.Hospitals.Count == 0) return Paragraph(_words.NothingEntered, _look.Text, width);
        var labels = _page.Hospitals.OrderBy(hospital => hospital.DriveMinutes)
            .Select(hospital => (Hospital: hospital, Minutes: _ruler.Fit(BitePlanWords.Minutes(hospital), _look.Strong, width))).ToList();
        var indent = labels.Max(label => _ruler.WidthOf(label.Minutes)) + 7;
        return List(labels.Select(label => Item(
            label.Minutes, indent, _ruler.Fit(label.Hospital.Name, _look.Strong, width - indent), _ruler.Fit(label.Hospital.Contact, _look.Text, width - indent))));
    }

    private IEnumerable<Piece> Antivenom(double width)
    {
        if (_page.Antivenom.Count == 0) yield return Paragraph(_words.NothingEntered, _look.Text, width);
        foreach (var hearsay in _page.Antivenom)
        {
            // One after the other on the same lines: on a full page each line counts.
            yield return Paragraph($"{hearsay.HospitalName}: {hearsay.Said.TrimEnd('.')}. {_words.Told(hearsay)}", _look.Text, width);
        }
    }

    private Piece.Stack Foot() => new(
        4,
        new Piece.Rule(_width, Look.Ink, 1.4),
        new Piece.Text(
            PdfBlockLevelElementTag.Paragraph, _ruler.Fit(_words.Checked, _look.Strong, _width), _ruler.Fit(_words.Review, _look.Strong, _width)),
        new Piece.Text(
            PdfBlockLevelElementTag.Paragraph,
            _ruler.Fit($"{_papers.CautionLabel}. {_words.Caution}", Note, _width),
            _ruler.Fit(_words.Printed, Note, _width)));

    private Piece.Stack Lines(string heading, IReadOnlyList<string> lines, Func<int, string> mark, double width)
    {
        var indent = _look.Body * 1.7;
        return Under(heading, width, [lines.Count == 0
            ? Paragraph(_words.NothingEntered, _look.Text, width)
            : List(lines.Select((line, index) => Item(_ruler.Fit(mark(index + 1), _look.Strong, indent), indent, _ruler.Fit(line, _look.Text, width - indent))))]);
    }

    private Piece.Stack Under(string heading, double width, params ReadOnlySpan<Piece> pieces) => new(
        2.5,
        [new Piece.Text(PdfBlockLevelElementTag.Heading2, _ruler.Fit(heading, _look.Heading, width)), new Piece.Rule(width, Look.Ink, 0.6), .. pieces]);

    private static Piece.Element List(IEnumerable<Piece> items) => new(PdfBlockLevelElementTag.List, new Piece.Stack(2, [.. items]));

    private static Piece.Element Item(FittedText label, double indent, params IReadOnlyList<FittedText> body) => new(
        PdfBlockLevelElementTag.ListItem,
        new Piece.Row((0, new Piece.Text(PdfBlockLevelElementTag.Label, label)), (indent, new Piece.Text(PdfBlockLevelElementTag.ListBody, body))));

    private Piece.Text Labelled(string label, string value, TextStyle style, double width) => new(
        PdfBlockLevelElementTag.Paragraph, _ruler.Fit(label, _look.FirstLabel, width), _ruler.Fit(value, style, width));

    private Piece.Text Paragraph(string text, TextStyle style, double width) => new(PdfBlockLevelElementTag.Paragraph, _ruler.Fit(text, style, width));

    private Piece.Framed Framed(Piece inner, double across, XPen pen) =>
        new(inner, _width, across, Padding - 2, (graphics, box) => graphics.DrawRectangle(pen, XRect.Inflate(box, -pen.Width / 2, -pen.Width / 2)));
}

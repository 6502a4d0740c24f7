using PdfSharp.Drawing;
using PdfSharp.UniversalAccessibility;

namespace Training.Documents.Typesetting;

/// <summary>A column.</summary>
/// <param name="Heading">Over it.</param>
/// <param name="Width">With the room on both sides, points.</param>
/// <param name="HeadsRows">Its cells say whose row it is.</param>
internal sealed record TableColumn(string Heading, double Width, bool HeadsRows = false);

/// <summary>The shape of a table: columns, room, lines. It makes the rows that a <see cref="Flow"/> places.</summary>
/// <param name="ruler">Measures.</param>
/// <param name="columns">From the left.</param>
/// <param name="leastHeight">Of a row; where people write by hand, more than the letters need.</param>
/// <param name="isOutlined">Every cell has its four lines, for writing in; else a line runs below each row.</param>
internal sealed class Table(Ruler ruler, IReadOnlyList<TableColumn> columns, double leastHeight = 0, bool isOutlined = false)
{
    private const double Across = 4;
    private const double Down = 4.5;

    private static readonly TextStyle Heading = TextStyle.Of(FontRole.Strong, 9, Look.Ink);
    private static readonly TextStyle Body = TextStyle.Of(FontRole.Text, 9.5, Look.Ink);
    private static readonly TextStyle RowHeading = TextStyle.Of(FontRole.Strong, 9.5, Look.Ink);

    /// <summary>The row of headings. Drawn again on every page that the table runs on to.</summary>
    public Piece.Framed Head() => Line(
        columns.Select(column => Cell(PdfBlockLevelElementTag.TableHeaderCell, new Piece.Letters(ruler.Fit(column.Heading, Heading, Room(column))), "Column")),
        new XPen(Look.Ink, 1.2),
        0);

    /// <summary>A row of texts; null leaves a cell empty.</summary>
    public Piece.Framed Row(params IReadOnlyList<string?> texts) =>
        Row([.. texts.Select((text, index) => new Piece.Letters(text is null ? [] : [ruler.Fit(text, StyleOf(columns[index]), Room(columns[index]))]))]);

    /// <summary>A row of pieces.</summary>
    public Piece.Framed Row(params IReadOnlyList<Piece> cells) => Line(
        cells.Select((cell, index) => columns[index].HeadsRows
            ? Cell(PdfBlockLevelElementTag.TableHeaderCell, cell, "Row")
            : Cell(PdfBlockLevelElementTag.TableDataCell, cell, null)),
        new XPen(isOutlined ? Look.Ink : Look.Rule, 0.6),
        leastHeight);

    /// <summary>A text as it stands in a column.</summary>
    public FittedText Fit(int column, string text) => ruler.Fit(text, StyleOf(columns[column]), Room(columns[column]));

    private static TextStyle StyleOf(TableColumn column) => column.HeadsRows ? RowHeading : Body;

    private static double Room(TableColumn column) => column.Width - (2 * Across);

    private static Piece.Element Cell(PdfBlockLevelElementTag tag, Piece inner, string? scope) => new(tag, inner, scope);

    private Piece.Framed Line(IEnumerable<Piece> cells, XPen pen, double least)
    {
        var edges = new List<double> { 0 };
        foreach (var column in columns) edges.Add(edges[^1] + column.Width);
        var row = new Piece.Row([.. cells.Select((cell, index) => (edges[index] + Across, cell))]);
        return new(new Piece.Element(PdfBlockLevelElementTag.TableRow, new Piece.AtLeast(row, least - (2 * Down))), edges[^1], 0, Down, Draw);

        void Draw(XGraphics graphics, XRect box)
        {
            graphics.DrawLine(pen, box.Left, box.Bottom, box.Right, box.Bottom);
            if (!isOutlined) return;
            // The head has no row above it to draw its upper line.
            graphics.DrawLine(pen, box.Left, box.Top, box.Right, box.Top);
            foreach (var edge in edges) graphics.DrawLine(pen, box.Left + edge, box.Top, box.Left + edge, box.Bottom);
        }
    }
}

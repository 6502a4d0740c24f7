using PdfSharp.Drawing;
using PdfSharp.UniversalAccessibility;

namespace Training.Documents.Certificates;

/// <summary>Something with a height that can be placed on the page. A closed family: first everything is measured, then it is drawn.</summary>
internal abstract record Piece
{
    private Piece()
    {
    }

    public abstract double Height { get; }

    public abstract void Draw(Canvas canvas, double x, double y);

    /// <summary>Texts of one element, below each other.</summary>
    public sealed record Text(PdfBlockLevelElementTag Tag, params IReadOnlyList<FittedText> Parts) : Piece
    {
        public override double Height => Parts.Sum(part => part.Height);

        public override void Draw(Canvas canvas, double x, double y) => canvas.Write(Tag, x, y, Parts);
    }

    /// <summary>Pieces below each other, a fixed distance apart.</summary>
    public sealed record Stack(double Gap, params IReadOnlyList<Piece> Pieces) : Piece
    {
        public override double Height => Pieces.Sum(piece => piece.Height) + (Gap * (Pieces.Count - 1));

        public override void Draw(Canvas canvas, double x, double y)
        {
            foreach (var piece in Pieces)
            {
                piece.Draw(canvas, x, y);
                y += piece.Height + Gap;
            }
        }

        /// <summary>The same pieces, spread so that they fill a height.</summary>
        /// <exception cref="InvalidOperationException">They are taller than it: the greatest lengths of the page are wrong.</exception>
        public Stack Spread(double height)
        {
            var gap = (height - Pieces.Sum(piece => piece.Height)) / (Pieces.Count - 1);
            return gap >= 0 ? this with { Gap = gap } : throw new InvalidOperationException($"The pieces are {-gap * (Pieces.Count - 1):0.0} points too tall.");
        }
    }

    /// <summary>Pieces beside each other, each starting at its own distance from the left.</summary>
    public sealed record Row(params IReadOnlyList<(double Left, Piece Piece)> Cells) : Piece
    {
        public override double Height => Cells.Max(cell => cell.Piece.Height);

        public override void Draw(Canvas canvas, double x, double y)
        {
            foreach (var (left, piece) in Cells) piece.Draw(canvas, x + left, y);
        }
    }

    /// <summary>A straight line that parts; nobody reads it.</summary>
    public sealed record Rule(double Width, XColor Colour, double Weight) : Piece
    {
        public override double Height => Weight;

        public override void Draw(Canvas canvas, double x, double y) =>
            canvas.Decorate(graphics => graphics.DrawLine(new XPen(Colour, Weight), x, y, x + Width, y));
    }

    /// <summary>A drawing with its description.</summary>
    public sealed record Figure(double Width, double Tall, string Alternative, Action<XGraphics, XRect> Picture) : Piece
    {
        public override double Height => Tall;

        public override void Draw(Canvas canvas, double x, double y) => canvas.Illustrate(Alternative, new(x, y, Width, Tall), Picture);
    }
}

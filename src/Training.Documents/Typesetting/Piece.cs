using PdfSharp.Drawing;
using PdfSharp.UniversalAccessibility;

namespace Training.Documents.Typesetting;

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

    /// <summary>Texts below each other inside the element around them.</summary>
    public sealed record Letters(params IReadOnlyList<FittedText> Parts) : Piece
    {
        public override double Height => Parts.Sum(part => part.Height);

        public override void Draw(Canvas canvas, double x, double y) => canvas.Letter(x, y, Parts);
    }

    /// <summary>An element around a piece; of a header cell, what it heads.</summary>
    public sealed record Element(PdfBlockLevelElementTag Tag, Piece Inner, string? Scope = null) : Piece
    {
        public override double Height => Inner.Height;

        public override void Draw(Canvas canvas, double x, double y)
        {
            canvas.Begin(Tag, Scope);
            Inner.Draw(canvas, x, y);
            canvas.End();
        }
    }

    /// <summary>A piece in a place that may be taller.</summary>
    public sealed record AtLeast(Piece Inner, double Least) : Piece
    {
        public override double Height => Math.Max(Inner.Height, Least);

        public override void Draw(Canvas canvas, double x, double y) => Inner.Draw(canvas, x, y);
    }

    /// <summary>A piece that reaches into the room above it, so that its letters stand on the line of its neighbours.</summary>
    public sealed record Raised(Piece Inner, double By) : Piece
    {
        public override double Height => Inner.Height - By;

        public override void Draw(Canvas canvas, double x, double y) => Inner.Draw(canvas, x, y - By);
    }

    /// <summary>A box around a piece. The line is drawn first: nothing of it is read.</summary>
    public sealed record Framed(Piece Inner, double Width, double Across, double Down, Action<XGraphics, XRect> Frame) : Piece
    {
        public override double Height => Inner.Height + (2 * Down);

        public override void Draw(Canvas canvas, double x, double y)
        {
            canvas.Decorate(graphics => Frame(graphics, new(x, y, Width, Height)));
            Inner.Draw(canvas, x + Across, y + Down);
        }
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

namespace Training.Courses;

/// <summary>A point of a figure, in the units of its <c>viewBox</c>.</summary>
public readonly record struct SpotPoint(decimal X, decimal Y);

/// <summary>A place on a figure that can be marked.</summary>
/// <param name="Id">The option that it is the place of.</param>
/// <param name="Shape">Where it lies.</param>
/// <param name="Number">The middle of the number that stands in it.</param>
public sealed record SpotRegion(string Id, SpotShape Shape, SpotPoint Number);

/// <summary>The outline of a region, in the units of the figure's <c>viewBox</c>. A closed family; the outline belongs to the region.</summary>
public abstract record SpotShape
{
    private SpotShape()
    {
    }

    /// <summary>The smallest upright box round it: left, top, right, bottom.</summary>
    public abstract (decimal Left, decimal Top, decimal Right, decimal Bottom) Bounds { get; }

    /// <summary>Where a number stands if the author names no other place: its centre, or the centre of its area.</summary>
    public abstract SpotPoint Middle { get; }

    /// <summary>Whether a point lies in it or on its outline.</summary>
    public abstract bool Contains(SpotPoint point);

    /// <summary>A circle; the radius is above 0.</summary>
    public sealed record Circle(SpotPoint Centre, decimal Radius) : SpotShape
    {
        /// <inheritdoc/>
        public override (decimal Left, decimal Top, decimal Right, decimal Bottom) Bounds =>
            (Centre.X - Radius, Centre.Y - Radius, Centre.X + Radius, Centre.Y + Radius);

        /// <inheritdoc/>
        public override SpotPoint Middle => Centre;

        /// <inheritdoc/>
        public override bool Contains(SpotPoint point)
        {
            var (x, y) = (point.X - Centre.X, point.Y - Centre.Y);
            return (x * x) + (y * y) <= Radius * Radius;
        }
    }

    /// <summary>An upright rectangle; width and height are above 0.</summary>
    public sealed record Rectangle(SpotPoint Corner, decimal Width, decimal Height) : SpotShape
    {
        /// <inheritdoc/>
        public override (decimal Left, decimal Top, decimal Right, decimal Bottom) Bounds =>
            (Corner.X, Corner.Y, Corner.X + Width, Corner.Y + Height);

        /// <inheritdoc/>
        public override SpotPoint Middle => new(Corner.X + (Width / 2), Corner.Y + (Height / 2));

        /// <inheritdoc/>
        public override bool Contains(SpotPoint point) =>
            point.X >= Corner.X && point.X <= Corner.X + Width && point.Y >= Corner.Y && point.Y <= Corner.Y + Height;
    }

    /// <summary>A polygon of three corners or more that bends one way only, so that the centre of its area lies in it.</summary>
    public sealed record Polygon(IReadOnlyList<SpotPoint> Corners) : SpotShape
    {
        /// <inheritdoc/>
        public override (decimal Left, decimal Top, decimal Right, decimal Bottom) Bounds =>
            (Corners.Min(corner => corner.X), Corners.Min(corner => corner.Y), Corners.Max(corner => corner.X), Corners.Max(corner => corner.Y));

        /// <inheritdoc/>
        public override SpotPoint Middle
        {
            get
            {
                // Of the triangles that it is cut into from its first corner, each centre weighted with its area.
                var first = Corners[0];
                var (sum, x, y) = (0m, 0m, 0m);
                for (var i = 1; i < Corners.Count - 1; i++)
                {
                    var area = Turn(first, Corners[i], Corners[i + 1]);
                    sum += area;
                    x += area * (first.X + Corners[i].X + Corners[i + 1].X) / 3;
                    y += area * (first.Y + Corners[i].Y + Corners[i + 1].Y) / 3;
                }

                return new(x / sum, y / sum);
            }
        }

        /// <summary>Whether it bends one way at every corner and goes round once.</summary>
        public bool IsConvex
        {
            get
            {
                if (Corners.Count < 3) return false;
                // Every corner on the same side of every edge: this also refuses a star, which bends one way but goes round twice.
                var turns = Edges().SelectMany(edge => Corners.Where(corner => corner != edge.From && corner != edge.To).Select(corner => Turn(edge.From, edge.To, corner))).ToList();
                return Corners.Distinct().Count() == Corners.Count && (turns.TrueForAll(turn => turn > 0) || turns.TrueForAll(turn => turn < 0));
            }
        }

        /// <inheritdoc/>
        public override bool Contains(SpotPoint point)
        {
            var turns = Edges().Select(edge => Turn(edge.From, edge.To, point)).ToList();
            return turns.TrueForAll(turn => turn >= 0) || turns.TrueForAll(turn => turn <= 0);
        }

        private static decimal Turn(SpotPoint from, SpotPoint to, SpotPoint point) =>
            ((to.X - from.X) * (point.Y - from.Y)) - ((to.Y - from.Y) * (point.X - from.X));

        private IEnumerable<(SpotPoint From, SpotPoint To)> Edges() => Corners.Select((corner, i) => (corner, Corners[(i + 1) % Corners.Count]));
    }
}

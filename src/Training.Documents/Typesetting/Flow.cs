using System.Diagnostics;
using PdfSharp.UniversalAccessibility;

namespace Training.Documents.Typesetting;

/// <summary>What stands below each other on a paper of several pages. A closed family.</summary>
/// <param name="Gap">Room above, where it does not begin a page.</param>
internal abstract record Block(double Gap)
{
    /// <summary>A piece that stays in one.</summary>
    public sealed record Whole(Piece Piece, double Gap) : Block(Gap);

    /// <summary>A table of at least one row that may run on: its head comes again on each page. What stands above it stays with its first row.</summary>
    public sealed record Rows(Piece Head, IReadOnlyList<Piece> Body, double Gap, Piece? Above = null) : Block(Gap);

    /// <summary>What follows begins a page.</summary>
    public sealed record NewPage() : Block(0);
}

/// <summary>Deals blocks out to pages, in order; no piece is cut.</summary>
internal sealed class Flow
{
    private readonly double _left;
    private readonly double _top;
    private readonly double _bottom;
    private readonly List<List<Action<Canvas>>> _pages = [[]];
    private double _y;

    private Flow(double left, double top, double bottom) => (_left, _top, _bottom, _y) = (left, top, bottom, top);

    /// <summary>What is to be drawn on each page. Elements that run on stay open from one page to the next.</summary>
    /// <exception cref="InvalidOperationException">A piece is taller than a page: the greatest lengths are wrong.</exception>
    public static IReadOnlyList<IReadOnlyList<Action<Canvas>>> Deal(IEnumerable<Block> blocks, double left, double top, double bottom)
    {
        var flow = new Flow(left, top, bottom);
        foreach (var block in blocks) flow.Take(block);
        return flow._pages;
    }

    private void Take(Block block)
    {
        switch (block)
        {
            case Block.Whole whole:
                MakeRoom(whole.Gap, whole.Piece.Height);
                Place(whole.Piece);
                break;
            case Block.Rows rows:
                // A head alone at the foot of a page would stand over nothing.
                MakeRoom(rows.Gap, (rows.Above?.Height ?? 0) + rows.Head.Height + rows.Body[0].Height);
                if (rows.Above is not null) Place(rows.Above);
                Lay(rows);
                break;
            case Block.NewPage:
                Turn();
                break;
            default:
                throw new UnreachableException();
        }
    }

    private void Lay(Block.Rows rows)
    {
        Do(canvas => canvas.Begin(PdfBlockLevelElementTag.Table));
        Do(canvas => canvas.Begin(PdfBlockLevelElementTag.TableHeadRowGroup));
        Place(rows.Head);
        Do(canvas => canvas.End());
        Do(canvas => canvas.Begin(PdfBlockLevelElementTag.TableBodyRowGroup));
        foreach (var row in rows.Body)
        {
            if (_y + row.Height > _bottom)
            {
                Turn();
                var y = _y;
                Do(canvas => canvas.Repeat(again => rows.Head.Draw(again, _left, y)));
                _y += rows.Head.Height;
            }

            Place(row);
        }

        Do(canvas => canvas.End());
        Do(canvas => canvas.End());
    }

    private void MakeRoom(double gap, double height)
    {
        if (_pages[^1].Count == 0) return;
        if (_y + gap + height > _bottom) Turn();
        else _y += gap;
    }

    private void Place(Piece piece)
    {
        if (_y + piece.Height > _bottom) throw new InvalidOperationException($"A piece of {piece.Height:0} points is taller than a page.");
        var y = _y;
        Do(canvas => piece.Draw(canvas, _left, y));
        _y += piece.Height;
    }

    private void Turn()
    {
        _pages.Add([]);
        _y = _top;
    }

    private void Do(Action<Canvas> draw) => _pages[^1].Add(draw);
}

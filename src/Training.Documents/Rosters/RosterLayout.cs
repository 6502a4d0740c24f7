using Training.Documents.Typesetting;

namespace Training.Documents.Rosters;

/// <summary>What stands on a roster, from the top: how many are current, as of when, who, and the caution.</summary>
internal sealed class RosterLayout(RosterPage page, RosterWords words, UprightPaper sheet, Ruler ruler)
{
    private const double BadgeWidth = 64;
    private const double StandingWidth = 88;
    private const double ThroughWidth = 126;

    private readonly PaperWords _papers = new(page.Language);

    public IEnumerable<Block> Blocks()
    {
        foreach (var block in sheet.Head(page.ProviderName, words.Kind, words.Title)) yield return block;
        yield return new Block.Whole(
            new Piece.Stack(2, sheet.Text(words.AsOf, UprightPaper.BodyStrong), sheet.Text(words.Changes, UprightPaper.Body)), 6);
        if (page.People.Count == 0) yield return new Block.Whole(sheet.Text(words.Nobody, UprightPaper.Body), 12);
        else yield return People();
        yield return sheet.Caution(words.Caution);
    }

    private Block.Rows People()
    {
        var rest = sheet.Width - BadgeWidth - StandingWidth - ThroughWidth;
        var table = new Table(ruler,
        [
            new(words.Name, rest * 0.52, HeadsRows: true),
            new(words.Badge, BadgeWidth),
            new(words.Scheme, rest * 0.48),
            new(words.Standing, StandingWidth),
            new(words.Through, ThroughWidth),
        ]);
        return new(table.Head(), [.. page.People.SelectMany(person => Rows(table, person))], 12);
    }

    // The name stands in every row of a person: a row that is read alone, or begins a page, still says whose it is.
    private IEnumerable<Piece> Rows(Table table, RosterPerson person)
    {
        var name = table.Fit(0, person.Name ?? _papers.NameErased);
        var badge = table.Fit(1, person.BadgeNumber ?? words.NoBadge);
        if (person.Holdings.Count == 0)
        {
            yield return table.Row(
                new Piece.Letters(name), new Piece.Letters(badge), new Piece.Letters(table.Fit(2, words.NothingHeld)), new Piece.Letters(), new Piece.Letters());
        }

        foreach (var holding in person.Holdings)
        {
            yield return table.Row(
                new Piece.Letters(name),
                new Piece.Letters(badge),
                new Piece.Letters(table.Fit(2, holding.SchemeTitle)),
                StandingTag.Of(holding.Standing, _papers.Standing(holding.Standing), ruler, StandingWidth - 8),
                new Piece.Letters(table.Fit(4, words.ThroughOf(holding))));
        }
    }
}

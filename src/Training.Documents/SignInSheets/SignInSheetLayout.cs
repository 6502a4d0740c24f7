using System.Globalization;
using PdfSharp.UniversalAccessibility;
using Training.Documents.Typesetting;

namespace Training.Documents.SignInSheets;

/// <summary>What stands on the paper of a class: the sheet to sign, and on a page of its own the roster and how the sheet is entered afterwards.</summary>
internal sealed class SignInSheetLayout(SignInSheetPage page, SignInSheetWords words, UprightPaper sheet, Ruler ruler)
{
    // Ten millimetres to sign in.
    private const double RoomToSign = 10 * Look.Millimetre;

    private readonly PaperWords _papers = new(page.Language);

    public IEnumerable<Block> Blocks()
    {
        foreach (var block in sheet.Head(page.ProviderName, words.Kind, words.Title)) yield return block;
        foreach (var text in Particulars()) yield return new Block.Whole(sheet.Text(text, UprightPaper.Body), 4);
        yield return new Block.Whole(sheet.Text(words.SignOnce, UprightPaper.BodyStrong), 8);
        if (page.Seated.Count + page.BlankRows > 0) yield return Signatures();
        if (page.BlankRows > 0) yield return new Block.Whole(sheet.Text(words.BlankRows, UprightPaper.Soft), 6);

        // Behind the sheet, for the instructor alone: so a class of a dozen takes two pages.
        yield return new Block.NewPage();
        if (page.Seated.Count + page.Waiting.Count > 0) yield return Roster();
        else yield return sheet.Section(words.Roster, sheet.Text(words.NoOneListed, UprightPaper.Body));
        yield return new Block.Whole(sheet.Text(words.SeatsOf, UprightPaper.Soft), 8);
        yield return sheet.Section(words.EnterBack, [EnterSteps(), sheet.Text(words.ClassId, UprightPaper.Soft)]);
        yield return sheet.Caution(words.Caution);
    }

    private IEnumerable<string> Particulars()
    {
        yield return words.When;
        yield return words.Where;
        if (page.Kit.Length > 0) yield return words.Kit;
        if (page.Weather.Length > 0) yield return words.Weather;
        yield return words.Teachers;
        yield return words.Scorers;
    }

    private Block.Rows Signatures()
    {
        const double Number = 30, Badge = 70, Time = 56;
        var rest = sheet.Width - Number - Badge - (2 * Time);
        var table = new Table(
            ruler,
            [
                new(words.Number, Number),
                new(words.Name, rest * 0.45, HeadsRows: true),
                new(words.Badge, Badge),
                new(words.In, Time),
                new(words.Out, Time),
                new(words.Signature, rest * 0.55),
            ],
            RoomToSign,
            isOutlined: true);
        var named = page.Seated.Select((line, index) => table.Row(Written(index), line.Name ?? _papers.NameErased, line.BadgeNumber, null, null, null));
        var blank = Enumerable.Range(page.Seated.Count, page.BlankRows).Select(index => table.Row(Written(index), null, null, null, null, null));
        return new(table.Head(), [.. named, .. blank], 8);
    }

    private Piece.Element EnterSteps() => new(
        PdfBlockLevelElementTag.List,
        new Piece.Stack(2, [.. words.EnterSteps.Select((step, index) => sheet.Item($"{Written(index)}.", step))]));

    private Block.Rows Roster()
    {
        const double Badge = 80, Language = 64, Seat = 100;
        var rest = sheet.Width - Badge - Language - Seat;
        var table = new Table(
            ruler,
            [
                new(words.Name, rest / 2, HeadsRows: true),
                new(words.Badge, Badge),
                new(words.Employer, rest / 2),
                new(words.Language, Language),
                new(words.Seat, Seat),
            ]);
        var seated = page.Seated.Select(line => RosterRow(table, line, words.HasSeat));
        var waiting = page.Waiting.Select((line, index) => RosterRow(table, line, words.InLine(index + 1)));
        return sheet.Section(words.Roster, table, [.. seated, .. waiting]);
    }

    private Piece.Framed RosterRow(Table table, SignInLine line, string seat) =>
        table.Row(line.Name ?? _papers.NameErased, line.BadgeNumber, line.EmployerName, words.NameOf(line.Language), seat);

    private static string Written(int index) => (index + 1).ToString(CultureInfo.InvariantCulture);
}

using System.Globalization;
using Training.Documents.Typesetting;

namespace Training.Documents.Scoresheets;

/// <summary>What stands on a printed scoresheet: what it came to and why, under what conditions, step by step, who signed, what the candidate said.</summary>
internal sealed class ScoresheetLayout(ScoresheetPage page, ScoresheetWords words, UprightPaper sheet, Ruler ruler)
{
    private const double NumberWidth = 34;
    private const double MarkWidth = 110;
    private const double CriticalWidth = 84;
    private const double LabelWidth = 130;

    public IEnumerable<Block> Blocks()
    {
        foreach (var block in sheet.Head(page.ProviderName, words.Kind, words.Title)) yield return block;
        foreach (var reason in words.Reasons) yield return new Block.Whole(sheet.Text(reason, UprightPaper.BodyStrong), 4);
        yield return Particulars();
        yield return Steps();
        yield return sheet.Section(words.SignaturesHead, [sheet.Text(words.Meaning, UprightPaper.Body), sheet.Text(words.Signed, UprightPaper.BodyStrong)]);
        yield return sheet.Section(words.WordHead, [.. words.Word.Select(line => sheet.Text(line, UprightPaper.Body))]);
        yield return new Block.Whole(sheet.Text(words.Record, UprightPaper.Soft), 14);
        yield return sheet.Caution(words.Caution);
    }

    private Block.Rows Particulars()
    {
        var table = new Table(ruler, [new(words.LabelHead, LabelWidth, HeadsRows: true), new(words.ValueHead, sheet.Width - LabelWidth)]);
        return sheet.Section(words.ParticularsHead, table, words.Particulars.Select(fact => table.Row(fact.Label, fact.Value)));
    }

    private Block.Rows Steps()
    {
        var table = new Table(ruler,
        [
            new(words.Number, NumberWidth, HeadsRows: true),
            new(words.Step, sheet.Width - NumberWidth - MarkWidth - CriticalWidth),
            new(words.Critical, CriticalWidth),
            new(words.Mark, MarkWidth),
        ]);
        return sheet.Section(words.MarksHead, table, page.Steps.Select((step, index) => table.Row(
            (index + 1).ToString(CultureInfo.InvariantCulture), step.Text, step.IsCritical ? words.CriticalStep : null, words.Called(step.Observation))));
    }
}

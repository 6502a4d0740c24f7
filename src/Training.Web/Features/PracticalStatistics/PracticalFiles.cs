using System.Globalization;
using Training.Courses;
using Training.Scoring;
using Training.Web.Features.Statistics;

namespace Training.Web.Features.PracticalStatistics;

/// <summary>Writes the marks of practicals for an outside statistician, with a codebook. Neither candidates nor scorers are named.</summary>
public static class PracticalFiles
{
    private static readonly (string Column, string Meaning, string Values)[] Columns =
    [
        ("performance", "One go at the checklist, live or recorded; sheets of one performance belong to scorers who saw the same. Numbered anew in each file.", "whole number from 1"),
        ("scorer", "Who scored. Numbered anew in each file.", "whole number from 1"),
        ("month", "Month of the performance.", "yyyy-MM"),
        ("outcome", "What the sheet came to.", "Passed, Failed, Incomplete"),
        ("step", "Id of the step in its checklist.", "text"),
        ("critical", "Whether failing the step stops the practical.", "1 yes, 0 no"),
        ("mark", "What was seen.", "Done, DoneAfterPrompt, NotDone, NotObserved"),
    ];

    /// <summary>One row for each step of each sheet.</summary>
    public static byte[] WriteMarks(Checklist checklist, IReadOnlyList<ScoredPerformance> performances)
    {
        var scorers = performances.SelectMany(performance => performance.Sheets).Select(sheet => sheet.ScorerId).Distinct().Order()
            .Select((id, index) => (id, index)).ToDictionary(one => one.id, one => one.index + 1);
        return PlainFile.Write(
        [
            [.. Columns.Select(column => column.Column)],
            .. from one in performances.Select((performance, index) => (Performance: performance, Number: index + 1))
               from sheet in one.Performance.Sheets
               from step in checklist.Steps
               select (string[])
               [
                   Whole(one.Number),
                   Whole(scorers[sheet.ScorerId]),
                   one.Performance.On.ToString("yyyy-MM", CultureInfo.InvariantCulture),
                   sheet.Outcome.ToString(),
                   step.Id,
                   step.IsCritical ? "1" : "0",
                   sheet.Marks.GetValueOrDefault(step.Id, Observation.NotObserved).ToString(),
               ],
        ]);
    }

    /// <summary>The codebook.</summary>
    public static byte[] WriteCodebook() =>
        PlainFile.Write([["column", "meaning", "values"], .. Columns.Select(column => (string[])[column.Column, column.Meaning, column.Values])]);

    private static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);
}

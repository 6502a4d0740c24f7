using Training.Courses;

namespace Training.Scoring;

/// <summary>Questions or steps of which so many count, no matter which.</summary>
/// <param name="Drawn">How many of them a form holds, at least 1.</param>
/// <param name="ItemIds">All from which they are drawn; at least one.</param>
public sealed record RatedCell(int Drawn, IReadOnlyList<string> ItemIds)
{
    /// <summary>What a panel rates for a quiz: per row of the blueprint, critical and other questions apart (docs/rules.md, "Cuts").</summary>
    /// <param name="quiz">Whose blueprint.</param>
    /// <param name="pool">Questions that may be drawn; those that the blueprint never draws are in no cell.</param>
    public static IReadOnlyList<RatedCell> Of(Quiz quiz, IReadOnlyList<Question> pool) =>
    [
        .. from row in quiz.Blueprint
           from cell in new[] { (Drawn: row.Critical, IsCritical: true), (Drawn: row.Questions - row.Critical, IsCritical: false) }
           let items = pool.Where(question => question.Topic == row.Topic && question.IsCritical == cell.IsCritical).ToList()
           where cell.Drawn > 0 && items.Count > 0
           select new RatedCell(cell.Drawn, [.. items.Select(question => question.Id)]),
    ];

    /// <summary>What a panel rates for a practical: every step, each counted once, since each earns as many points.</summary>
    public static IReadOnlyList<RatedCell> Of(Checklist checklist) => [new(checklist.Steps.Count, [.. checklist.Steps.Select(step => step.Id)])];
}

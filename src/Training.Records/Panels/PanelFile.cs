namespace Training.Records;

/// <summary>A panel with all that counts of what its judges said.</summary>
/// <param name="Panel">As it was opened.</param>
/// <param name="Judges">By number.</param>
/// <param name="Ends">Rounds that have ended, in order.</param>
/// <param name="Ratings">By judge and round, what each said last of each question or step.</param>
/// <param name="Bounds">By judge, what each would accept.</param>
/// <param name="Adoptions">Oldest first.</param>
public sealed record PanelFile(
    Panel Panel,
    IReadOnlyList<PanelJudge> Judges,
    IReadOnlyList<PanelRoundEnd> Ends,
    IReadOnlyDictionary<(Guid JudgeId, int Round), IReadOnlyDictionary<string, int>> Ratings,
    IReadOnlyDictionary<Guid, PanelBounds> Bounds,
    IReadOnlyList<CutAdoption> Adoptions)
{
    /// <summary>How many rounds a panel has.</summary>
    public const int Rounds = 2;

    private static readonly Dictionary<string, int> Nothing = new(StringComparer.Ordinal);

    /// <summary>The round in which judges may say something now; null once both have ended.</summary>
    public int? OpenRound => Ends.Count < Rounds ? Ends.Count + 1 : null;

    /// <summary>What a judge said in a round itself.</summary>
    public IReadOnlyDictionary<string, int> Said(Guid judgeId, int round) => Ratings.GetValueOrDefault((judgeId, round), Nothing);

    /// <summary>What counts for a judge in a round: what they said in it, and where they said nothing, what they said before.</summary>
    public IReadOnlyDictionary<string, int> Counting(Guid judgeId, int round)
    {
        var counting = new Dictionary<string, int>(Said(judgeId, 1), StringComparer.Ordinal);
        if (round > 1) foreach (var (item, percent) in Said(judgeId, round)) counting[item] = percent;
        return counting;
    }
}

namespace Training.Scoring;

/// <summary>A judge whose judgement a cut does without. Such judges are named beside the cut, never dropped in silence.</summary>
public sealed record LeftOutJudge(string Name, LeftOutReason Reason);

/// <summary>Why a judge is left out.</summary>
public enum LeftOutReason
{
    /// <summary>Not everything that was asked was answered. A sum over fewer items is no cut for all of them.</summary>
    Incomplete,

    /// <summary>A number is none, or lies outside its scale.</summary>
    OutOfRange,

    /// <summary>A smallest number is above the greatest.</summary>
    BoundsSwapped,
}

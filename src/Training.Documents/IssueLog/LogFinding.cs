namespace Training.Documents.IssueLog;

/// <summary>What is wrong with a stored log. A closed family.</summary>
public abstract record LogFinding
{
    private LogFinding()
    {
    }

    /// <summary>The first leaf whose stored hash is not its own: the leaf or its hash was changed.</summary>
    public sealed record LeafChanged(long Index) : LogFinding;

    /// <summary>The first stored hash that the leaves do not lead to.</summary>
    public sealed record NodeChanged(LogNode Node) : LogFinding;

    /// <summary>A row of this leaf holds more or fewer hashes than it completed.</summary>
    public sealed record NodesMissing(long Index) : LogFinding;

    /// <summary>A saved head says that there were more leaves: the tail was cut.</summary>
    public sealed record Truncated(long Size, TreeHead Saved) : LogFinding;

    /// <summary>A saved head has another root: a leaf before its size was changed together with its hashes.</summary>
    public sealed record RootDiffers(LogHash Computed, TreeHead Saved) : LogFinding;
}

namespace Training.Documents.IssueLog;

/// <summary>What happened to a paper.</summary>
public enum IssueEvent
{
    /// <summary>It was issued.</summary>
    Issued,

    /// <summary>A later paper took its place.</summary>
    Superseded,

    /// <summary>The certification that it shows was suspended.</summary>
    Suspended,

    /// <summary>A suspension of it ended without a withdrawal.</summary>
    Reinstated,

    /// <summary>The certification that it shows was withdrawn.</summary>
    Withdrawn,
}

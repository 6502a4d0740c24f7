namespace Training.Records;

/// <summary>Codes of what can be wrong where a panel is kept.</summary>
public static class PanelProblems
{
    /// <summary>The round has ended, or has not begun. Argument: the round.</summary>
    public const string RoundClosed = "panel.round-closed";

    /// <summary>The same form came before with other content.</summary>
    public const string FormReused = "panel.form-reused";
}

namespace Training.Web.Features.Panels;

/// <summary>Codes of what can be wrong with a file of ratings. Places name the line, and as part the column as the file spells it.</summary>
public static class PanelFileProblems
{
    /// <summary>A column that every file needs is not there. Argument: its name.</summary>
    public const string ColumnMissing = "panel-file.column-missing";

    /// <summary>No judge of the panel has this number. Argument: the cell.</summary>
    public const string JudgeUnknown = "panel-file.judge-unknown";

    /// <summary>The panel does not rate this question or step. Argument: the cell.</summary>
    public const string ItemUnknown = "panel-file.item-unknown";

    /// <summary>The round is not the one that is open. Arguments: the cell, the open round.</summary>
    public const string RoundNotOpen = "panel-file.round-not-open";

    /// <summary>A percent is no whole number from 0 to 100. Argument: the cell.</summary>
    public const string PercentForm = "panel-file.percent-form";

    /// <summary>The same judge, question and round stand twice. Argument: the line of the first.</summary>
    public const string RowTwice = "panel-file.row-twice";
}

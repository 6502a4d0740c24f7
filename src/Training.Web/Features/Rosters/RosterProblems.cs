namespace Training.Web.Features.Rosters;

/// <summary>Codes of what can be wrong with a roster file. Places name the line, and as part the column as the file spells it.</summary>
public static class RosterProblems
{
    /// <summary>The form came without a file, or with an empty one.</summary>
    public const string FileMissing = "roster.file-missing";

    /// <summary>The file is too large. Argument: the limit in megabytes.</summary>
    public const string FileTooLarge = "roster.file-too-large";

    /// <summary>The file is a picture, a workbook or something else that is no text.</summary>
    public const string NotText = "roster.not-text";

    /// <summary>A line is too long to be one of a roster. Argument: the limit in characters.</summary>
    public const string LineTooLong = "roster.line-too-long";

    /// <summary>The file has too many rows; nothing beyond was read. Argument: the limit.</summary>
    public const string TooManyRows = "roster.too-many-rows";

    /// <summary>A column that every roster needs is not there. Argument: the columns that are.</summary>
    public const string ColumnsMissing = "roster.columns-missing";

    /// <summary>Two columns are for the same. Argument: the second one's name.</summary>
    public const string ColumnTwice = "roster.column-twice";

    /// <summary>There is no row below the names of the columns.</summary>
    public const string NoRows = "roster.no-rows";

    /// <summary>A quote stands where none can, or is never closed.</summary>
    public const string QuoteBroken = "roster.quote-broken";

    /// <summary>The row has more cells than there are columns. Arguments: cells, columns.</summary>
    public const string TooManyCells = "roster.too-many-cells";

    /// <summary>A cell that every row needs is empty. Argument: the column.</summary>
    public const string CellEmpty = "roster.cell-empty";

    /// <summary>A cell is too long. Arguments: the column, the limit in characters.</summary>
    public const string CellTooLong = "roster.cell-too-long";

    /// <summary>The badge number stands on an earlier line too. Arguments: the number, that line.</summary>
    public const string BadgeTwice = "roster.badge-twice";

    /// <summary>The employer has no such site. Arguments: the name, the sites that it has.</summary>
    public const string SiteUnknown = "roster.site-unknown";

    /// <summary>Not a language that we have. Argument: what stands there.</summary>
    public const string LanguageUnknown = "roster.language-unknown";

    /// <summary>Not a mail address. Argument: what stands there.</summary>
    public const string MailAddressUnclear = "roster.mail-address-unclear";

    /// <summary>Not a date, or one that nobody can have begun on. Argument: what stands there.</summary>
    public const string DateUnclear = "roster.date-unclear";
}

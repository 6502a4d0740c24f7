namespace Training.Documents.Typesetting;

/// <summary>Codes of what can keep a paper from being printed. The place names the field.</summary>
public static class PaperProblems
{
    /// <summary>A required field is empty. No arguments.</summary>
    public const string FieldEmpty = "paper.field-empty";

    /// <summary>A field is longer than its place on the page. Argument 0: its length; 1: the greatest length.</summary>
    public const string FieldTooLong = "paper.field-too-long";

    /// <summary>The faces have no glyph for a character. Argument 0: the characters, separated by spaces.</summary>
    public const string CharacterMissing = "paper.character-missing";

    /// <summary>A list is longer than the paper takes. Argument 0: how many; 1: the greatest number.</summary>
    public const string TooMany = "paper.too-many";

    /// <summary>A number lies outside its range. Argument 0: the number; 1 and 2: the ends of the range.</summary>
    public const string OutOfRange = "paper.out-of-range";

    /// <summary>A text does not fit its place even in the smallest type. No arguments.</summary>
    public const string DoesNotFit = "paper.does-not-fit";

    /// <summary>All together is more than one page holds in the smallest type. Argument 0: by how many millimetres.</summary>
    public const string PageFull = "paper.page-full";
}

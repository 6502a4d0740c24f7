namespace Training.Documents.Fonts;

/// <summary>Codes of what can be wrong with an operator's font file. Argument 0: the file's name.</summary>
public static class FontProblems
{
    /// <summary>Not a TrueType font with a Unicode character map (a web font, a collection, PostScript outlines, something else).</summary>
    public const string NotTrueType = "fonts.not-truetype";

    /// <summary>Its maker forbids embedding it in a document, or embedding a part of it.</summary>
    public const string EmbeddingForbidden = "fonts.embedding-forbidden";
}

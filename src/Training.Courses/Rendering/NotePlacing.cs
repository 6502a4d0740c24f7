using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Training.Courses;

/// <summary>
/// Keeps the number of a source with the word before it. Authors write <c>word &lt;fact:id&gt;</c> or begin a line with the reference;
/// on the page a number that stands alone at the start of a line belongs to nothing, and two numbers side by side read as one.
/// </summary>
internal static class NotePlacing
{
    private const string NarrowSpace = "\u202F";

    /// <summary>Closes the gap before every fact reference of a block, before it is rendered.</summary>
    public static void KeepWithWord(MarkdownObject block)
    {
        // A paragraph by itself is a leaf: Markdig lists what hangs below blocks and below inlines, not below a leaf.
        var below = block is LeafBlock leaf ? leaf.Inline?.Descendants() ?? [] : block.Descendants();
        foreach (var reference in below.OfType<AutolinkInline>().Where(IsFact).ToList())
        {
            if (reference.PreviousSibling is LineBreakInline lineBreak) lineBreak.ReplaceBy(new LiteralInline());
            if (reference.PreviousSibling is LiteralInline { PreviousSibling: LiteralInline word } empty && empty.Content.IsEmpty)
            {
                empty.Remove();
                CloseGap(word);
            }
            else if (reference.PreviousSibling is LiteralInline before)
            {
                CloseGap(before);
            }
        }
    }

    private static bool IsFact(AutolinkInline link) => link.Url.StartsWith("fact:", StringComparison.Ordinal);

    private static void CloseGap(LiteralInline before)
    {
        var text = before.Content.ToString().TrimEnd(' ');
        var followsNote = text.Length == 0 && before.PreviousSibling is AutolinkInline;
        before.Content = new(followsNote ? NarrowSpace : text);
    }
}

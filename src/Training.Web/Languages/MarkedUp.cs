using System.Text.Encodings.Web;
using Microsoft.AspNetCore.Html;
using Microsoft.Extensions.Localization;

namespace Training.Web.Languages;

/// <summary>Puts markup into the holes of a text, such as a name that must keep its own direction.</summary>
public static class MarkedUp
{
    /// <summary>The text with its holes filled; what is not markup itself is encoded.</summary>
    public static IHtmlContent With(this LocalizedString text, params object?[] fillings) =>
        new HtmlFormattableString(HtmlEncoder.Default.Encode(text.Value), fillings);

    /// <summary>Text of somebody's own, with its direction kept apart from the sentence around it.</summary>
    public static IHtmlContent Own(string text) => new HtmlFormattableString("<bdi>{0}</bdi>", text);

    /// <summary>Several pieces with a separator between.</summary>
    public static IHtmlContent Joined(string separator, IEnumerable<IHtmlContent> pieces)
    {
        var whole = new HtmlContentBuilder();
        foreach (var (index, piece) in pieces.Index())
        {
            if (index > 0) whole.Append(separator);
            whole.AppendHtml(piece);
        }

        return whole;
    }
}

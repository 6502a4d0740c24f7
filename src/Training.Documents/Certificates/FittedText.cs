using PdfSharp.Drawing;

namespace Training.Documents.Certificates;

/// <summary>A text broken into lines at the greatest size at which it fits its place.</summary>
/// <param name="Lines">Each no wider than the place. A line that ended at a space keeps it, so that extracted words stay apart.</param>
/// <param name="Font">Face and size found.</param>
/// <param name="Colour">Of the letters.</param>
internal sealed record FittedText(IReadOnlyList<string> Lines, XFont Font, XColor Colour)
{
    private const double Step = 0.25;

    public double LineHeight => Font.Size * CertificateLook.Leading;

    public double Height => Lines.Count * LineHeight;

    /// <summary>Shrinks, then wraps, then breaks words, in this order: a whole word in smaller type reads better than a broken one.</summary>
    /// <exception cref="InvalidOperationException">It does not fit even so: the greatest lengths of the page are wrong.</exception>
    public static FittedText Fit(string text, TextStyle style, Func<TextStyle, double, XFont> fonts, XGraphics measure, double width, double height)
    {
        foreach (var breaksWords in (ReadOnlySpan<bool>)[false, true])
        {
            for (var size = style.Size; size >= style.LeastSize; size -= Step)
            {
                var font = fonts(style, size);
                var lines = Wrap(text, width, breaksWords, part => measure.MeasureString(part, font).Width);
                var fitted = new FittedText(lines ?? [], font, style.Colour);
                if (lines is null || fitted.Height > height) continue;
                return style.IsBalanced && lines.Count > 1 ? fitted.Balance(text, width, breaksWords, measure) : fitted;
            }
        }

        throw new InvalidOperationException($"A text of {text.Length} characters does not fit {width:0} by {height:0} points.");
    }

    // The narrowest place that needs no further line.
    private FittedText Balance(string text, double width, bool breaksWords, XGraphics measure)
    {
        var best = this;
        for (var narrower = width - 4; narrower > 0; narrower -= 4)
        {
            var lines = Wrap(text, narrower, breaksWords, part => measure.MeasureString(part, Font).Width);
            if (lines is null || lines.Count > Lines.Count) break;
            best = this with { Lines = lines };
        }

        return best;
    }

    /// <summary>Greedy lines, or null where a word is wider than the place and may not be broken.</summary>
    internal static IReadOnlyList<string>? Wrap(string text, double width, bool breaksWords, Func<string, double> measure)
    {
        var lines = new List<string>();
        var line = string.Empty;
        foreach (var word in Words(text))
        {
            if (line.Length > 0 && measure((line + word).TrimEnd()) > width)
            {
                lines.Add(line);
                line = string.Empty;
            }

            line += word;
            while (measure(line.TrimEnd()) > width)
            {
                if (!breaksWords) return null;
                var kept = LongestStart(line, width, measure);
                lines.Add(line[..kept]);
                line = line[kept..];
            }
        }

        lines.Add(line.TrimEnd());
        return lines;
    }

    // A word ends with its space, or after a slash: an address breaks there.
    private static IEnumerable<string> Words(string text)
    {
        var start = 0;
        for (var index = 0; index < text.Length; index++)
        {
            if (text[index] != ' ' && (text[index] != '/' || index + 1 == text.Length || text[index + 1] == '/')) continue;
            yield return text[start..(index + 1)];
            start = index + 1;
        }

        if (start < text.Length) yield return text[start..];
    }

    private static int LongestStart(string line, double width, Func<string, double> measure)
    {
        var kept = 1;
        while (kept < line.Length && measure(line[..(kept + 1)]) <= width) kept++;
        // Never between the two halves of one character.
        return kept > 1 && char.IsHighSurrogate(line[kept - 1]) ? kept - 1 : kept;
    }
}

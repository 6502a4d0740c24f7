namespace Training.Documents.Typesetting;

/// <summary>A text broken into lines at the greatest size at which it fits its place.</summary>
/// <param name="Lines">Each no wider than the place. A line that ended at a space keeps it, so that extracted words stay apart.</param>
/// <param name="Style">Face and colour.</param>
/// <param name="Size">The size found, points.</param>
internal sealed record FittedText(IReadOnlyList<string> Lines, TextStyle Style, double Size)
{
    private const double Step = 0.25;

    public double LineHeight => Size * Look.Leading;

    public double Height => Lines.Count * LineHeight;

    // What an operator's unusually wide face may shrink to before the page gives up; nobody's real name comes near.
    private const double LastResort = 2;

    /// <summary>
    /// The greatest size at which whole words fit; only below the style's least size are words broken, then shrunk further where the style lets
    /// them. Null where it does not fit even so.
    /// </summary>
    /// <param name="text">What is to be set.</param>
    /// <param name="style">How.</param>
    /// <param name="ruler">Width of a piece of text at size 1; widths grow with the size alone, so one measure serves all sizes.</param>
    /// <param name="width">Of the place.</param>
    /// <param name="height">Of the place.</param>
    public static FittedText? Find(string text, TextStyle style, Func<string, double> ruler, double width, double height)
    {
        var last = style.IsFirm ? style.LeastSize : Math.Min(style.LeastSize, LastResort);
        foreach (var (breaksWords, least) in (ReadOnlySpan<(bool, double)>)[(false, style.LeastSize), (true, last)])
        {
            for (var size = style.Size; size >= least; size -= Step)
            {
                var lines = Wrap(text, width / size, breaksWords, ruler);
                if (lines is null || lines.Count * size * Look.Leading > height) continue;
                if (style.IsBalanced) lines = Balance(lines, text, width / size, breaksWords, ruler);
                return new(lines, style, size);
            }
        }

        return null;
    }

    // In the narrowest place that needs no further line.
    private static IReadOnlyList<string> Balance(IReadOnlyList<string> lines, string text, double width, bool breaksWords, Func<string, double> ruler)
    {
        var best = lines;
        for (var part = 0.99; lines.Count > 1 && part > 0.5; part -= 0.01)
        {
            var narrower = Wrap(text, width * part, breaksWords, ruler);
            if (narrower is null || narrower.Count > lines.Count) break;
            best = narrower;
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

using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using System.Xml;
using System.Xml.Linq;

namespace Training.Courses;

/// <summary>
/// One drawing: SVG whose every element, attribute and value is on a list. Names and descriptions inside the file are dropped: the page
/// that shows it names and describes it in its own language.
/// </summary>
internal sealed partial class Figure
{
    public static readonly IReadOnlyCollection<string> Elements =
    [
        "svg", "g", "defs", "path", "rect", "circle", "ellipse", "line", "polyline", "polygon", "text", "tspan",
        "marker", "linearGradient", "radialGradient", "stop", "clipPath", "pattern",
    ];

    public static readonly IReadOnlyCollection<string> Attributes =
    [
        "id", "viewBox", "preserveAspectRatio", "x", "y", "x1", "y1", "x2", "y2", "cx", "cy", "r", "rx", "ry", "fx", "fy", "dx", "dy",
        "width", "height", "d", "points", "transform", "fill", "fill-opacity", "fill-rule", "stroke", "stroke-width", "stroke-opacity",
        "stroke-linecap", "stroke-linejoin", "stroke-miterlimit", "stroke-dasharray", "stroke-dashoffset", "opacity", "vector-effect",
        "font-size", "font-weight", "font-style", "font-family", "letter-spacing", "text-anchor", "dominant-baseline", "rotate",
        "marker-start", "marker-mid", "marker-end", "markerWidth", "markerHeight", "markerUnits", "refX", "refY", "orient",
        "gradientUnits", "gradientTransform", "spreadMethod", "offset", "stop-color", "stop-opacity", "clip-path", "clip-rule",
        "clipPathUnits", "patternUnits", "patternContentUnits", "patternTransform", "color",
    ];

    /// <summary>How a line or an area is drawn: the page's stylesheet knows these for light, dark and print, so no file names a colour.</summary>
    public static readonly IReadOnlyCollection<string> Classes = ["l", "thin", "wash", "mark"];

    private const int MaxDepth = 32;
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";
    private static readonly HashSet<string> Dropped = new(StringComparer.Ordinal) { "title", "desc", "metadata" };
    private static readonly HashSet<string> RootDropped = new(StringComparer.Ordinal) { "role", "version", "width", "height", "aria-hidden", "focusable" };
    private readonly XElement root;

    private Figure(XElement root) => this.root = root;

    /// <summary>Its view box: left, top, width, height; null where it has none that can be read.</summary>
    public (decimal Left, decimal Top, decimal Width, decimal Height)? ViewBox
    {
        get
        {
            var numbers = ((string?)root.Attribute("viewBox") ?? "").Split([' ', ',', '\n'], StringSplitOptions.RemoveEmptyEntries)
                .Select(text => Amounts.TryRead(text, out var number) ? number : (decimal?)null).ToList();
            return numbers is [{ } left, { } top, > 0, > 0] ? (left, top, numbers[2]!.Value, numbers[3]!.Value) : null; // not null: above 0
        }
    }

    /// <summary>Whether it has letters or numbers of its own.</summary>
    public bool HasText => root.Descendants(Svg + "text").Any();

    /// <summary>Reads a drawing; null where it is broken or unsafe, which is then among the problems, all of it at once.</summary>
    public static Figure? Read(string path, string text, ICollection<Problem> problems)
    {
        try
        {
            var settings = new XmlReaderSettings { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null, MaxCharactersInDocument = CourseFiles.MaxFileLength };
            using var reader = XmlReader.Create(new StringReader(text), settings);
            var svg = XDocument.Load(reader, LoadOptions.SetLineInfo).Root;
            var before = problems.Count;
            if (svg is null || svg.Name != Svg + "svg") problems.Add(new(CourseProblems.FigureUnsafe, new(path, 1), svg?.Name.LocalName ?? ""));
            else Check(svg, path, 0, problems);
            return problems.Count == before ? new(svg!) : null; // not null: a missing root is a problem
        }
        catch (XmlException e)
        {
            problems.Add(new(CourseProblems.FigureSyntax, new(path, Math.Max(1, e.LineNumber)), e.LinePosition.ToString(CultureInfo.InvariantCulture)));
            return null;
        }
    }

    /// <summary>The drawing as markup of a page.</summary>
    /// <param name="name">What it shows, in the language of the page.</param>
    /// <param name="description">What it tells, for somebody who cannot see it.</param>
    /// <param name="prefix">Begins every id inside, so that no two drawings of a page share one.</param>
    public string ToHtml(string name, string description, string prefix)
    {
        var html = new StringBuilder();
        html.Append("<figure class=\"drawing\">");
        Write(html, root, prefix, () => html
            .Append("<title id=\"").Append(prefix).Append("name\">").Append(Escape(name)).Append("</title>")
            .Append("<desc id=\"").Append(prefix).Append("tells\">").Append(Escape(description)).Append("</desc>"));
        return html.Append("</figure>\n").ToString();
    }

    private static void Check(XElement element, string path, int depth, ICollection<Problem> problems)
    {
        void Refuse(XObject what, string name) =>
            problems.Add(new(CourseProblems.FigureUnsafe, new(path, ((IXmlLineInfo)what).LineNumber), name));

        if (depth > MaxDepth || element.Name.Namespace != Svg || !Elements.Contains(element.Name.LocalName, StringComparer.Ordinal))
        {
            Refuse(element, $"<{element.Name.LocalName}>");
            return;
        }

        foreach (var attribute in element.Attributes().Where(attribute => !IsDropped(element, attribute)))
        {
            var isListed = attribute.Name.Namespace == XNamespace.None && Attributes.Contains(attribute.Name.LocalName, StringComparer.Ordinal);
            var isClass = attribute.Name == "class" && attribute.Value.Split(' ').All(name => Classes.Contains(name, StringComparer.Ordinal));
            if (!isClass && (!isListed || !IsSafeValue(attribute.Value))) Refuse(attribute, attribute.Name.LocalName);
        }

        foreach (var child in element.Elements().Where(child => !IsDropped(child))) Check(child, path, depth + 1, problems);
    }

    private static bool IsDropped(XElement element) => element.Name.Namespace == Svg && Dropped.Contains(element.Name.LocalName);

    private static bool IsDropped(XElement element, XAttribute attribute) =>
        (attribute.IsNamespaceDeclaration && attribute.Value == Svg.NamespaceName)
        || (element.Parent is null && (RootDropped.Contains(attribute.Name.LocalName) || attribute.Name.LocalName is "aria-labelledby" or "aria-label"));

    /// <summary>Numbers, colours, paths and <c>url(#id)</c>; nothing that a style sheet or a loader could take for more.</summary>
    private static bool IsSafeValue(string value) => SafeValue().IsMatch(OwnReference().Replace(value, ""));

    private static void Write(StringBuilder html, XElement element, string prefix, Action? first = null)
    {
        var name = element.Name.LocalName;
        html.Append('<').Append(name);
        if (first is not null) html.Append(CultureInfo.InvariantCulture, $" role=\"img\" aria-labelledby=\"{prefix}name\" aria-describedby=\"{prefix}tells\"");
        foreach (var attribute in element.Attributes().Where(attribute => !attribute.IsNamespaceDeclaration && !IsDropped(element, attribute)))
        {
            var value = attribute.Name.LocalName == "id" ? prefix + attribute.Value : OwnReference().Replace(attribute.Value, $"url(#{prefix}${{id}})");
            html.Append(' ').Append(attribute.Name.LocalName).Append("=\"").Append(Escape(value)).Append('"');
        }

        html.Append('>');
        first?.Invoke();
        foreach (var node in element.Nodes())
        {
            if (node is XElement child && !IsDropped(child)) Write(html, child, prefix);
            else if (node is XText text && name is "text" or "tspan") html.Append(Escape(text.Value));
        }

        html.Append("</").Append(name).Append('>');
    }

    private static string Escape(string text) => text
        .Replace("&", "&amp;", StringComparison.Ordinal)
        .Replace("<", "&lt;", StringComparison.Ordinal)
        .Replace(">", "&gt;", StringComparison.Ordinal)
        .Replace("\"", "&quot;", StringComparison.Ordinal);

    [GeneratedRegex("url\\(#(?<id>[A-Za-z][A-Za-z0-9_-]*)\\)", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1_000)]
    private static partial Regex OwnReference();

    [GeneratedRegex("^(?!.*url)[A-Za-z0-9 \\t\\n.,#%()+_-]*\\z", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture | RegexOptions.IgnoreCase | RegexOptions.Singleline, matchTimeoutMilliseconds: 1_000)]
    private static partial Regex SafeValue();
}

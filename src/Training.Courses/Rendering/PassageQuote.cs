using AngleSharp.Dom;
using AngleSharp.Html.Parser;

namespace Training.Courses;

/// <summary>Quotes a passage of a module on another page.</summary>
public static class PassageQuote
{
    /// <summary>
    /// What stands under a heading up to the next one of its level or above, as safe HTML; null where the module has no such heading.
    /// Left out is what needs the module around it: numbers of sources, drawings, ids.
    /// </summary>
    /// <param name="page">The module in one language.</param>
    /// <param name="section">Id of the heading.</param>
    public static string? Find(ModulePage page, string section)
    {
        var document = new HtmlParser().ParseDocument(page.Html);
        if (document.GetElementById(section) is not { } heading) return null;
        var quoted = new List<IElement>();
        for (var next = heading.NextElementSibling; next is not null && !Ends(next, heading); next = next.NextElementSibling) quoted.Add(next);
        foreach (var element in quoted) Strip(element);
        return string.Concat(quoted.Where(element => element.LocalName != "figure").Select(element => element.OuterHtml));
    }

    private static bool Ends(IElement element, IElement heading) =>
        element.LocalName is ['h', >= '1' and <= '6'] && string.CompareOrdinal(element.LocalName, heading.LocalName) <= 0;

    private static void Strip(IElement element)
    {
        foreach (var gone in element.QuerySelectorAll("sup.note, figure").ToList()) gone.Remove();
        foreach (var named in element.QuerySelectorAll("[id]").Append(element)) named.RemoveAttribute("id");
    }
}

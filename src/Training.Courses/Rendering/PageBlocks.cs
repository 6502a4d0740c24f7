namespace Training.Courses;

/// <summary>The names of page blocks in the files: <c>&lt;block:site-plan&gt;</c>.</summary>
internal static class PageBlocks
{
    public const string Scheme = "block:";

    private static readonly (string Name, PageBlock Kind)[] All =
    [
        ("site-species", PageBlock.SiteSpecies), ("site-plan", PageBlock.SitePlan), ("distance-calculator", PageBlock.DistanceCalculator),
    ];

    public static string Names => string.Join(", ", All.Select(block => block.Name));

    public static PageBlock? Find(string name)
    {
        foreach (var block in All)
        {
            if (block.Name == name) return block.Kind;
        }

        return null;
    }

    public static string NameOf(PageBlock kind) => All.Single(block => block.Kind == kind).Name;
}

namespace Training.Courses;

/// <summary>What reading one course knows while it goes on: its files, what it may refer to, what it referred to, what it found.</summary>
internal sealed class CourseFolder(CourseFiles files, string id, SharedSources shared, ModuleAddress address, ICollection<Problem> problems)
{
    private readonly Dictionary<string, Figure?> figures = new(StringComparer.Ordinal);

    public CourseFiles Files => files;

    public string Id => id;

    public SharedSources Shared => shared;

    public ModuleAddress Address => address;

    public ICollection<Problem> Problems => problems;

    public SortedSet<string> Facts { get; } = new(StringComparer.Ordinal);

    public SortedSet<string> Guidance { get; } = new(StringComparer.Ordinal);

    /// <summary>Where guidance is named, in the order of reading.</summary>
    public List<GuidanceUse> GuidanceUses { get; } = [];

    /// <summary>Where a text or question says which snakes it is about.</summary>
    public List<SnakeUse> Snakes { get; } = [];

    /// <summary>Paths of the figures that some text shows.</summary>
    public HashSet<string> ShownFigures { get; } = new(StringComparer.Ordinal);

    /// <summary>Sections of each module by language and path; set before any text is rendered.</summary>
    public Dictionary<string, (string ModuleId, IReadOnlySet<string> Sections)> Pages { get; } = new(StringComparer.Ordinal);

    public string PathOf(string name) => $"{id}/{name}";

    public string PathOf(Language language, string name) => $"{id}/{language.Tag()}/{name}";

    public void ReadFigures()
    {
        foreach (var path in files.Paths.Where(path => path.StartsWith(PathOf("figures/"), StringComparison.Ordinal) && path.EndsWith(".svg", StringComparison.Ordinal)))
        {
            figures[path] = Figure.Read(path, files.Find(path) ?? "", problems);
        }
    }

    public bool HasFigure(string path) => figures.ContainsKey(path);

    public IEnumerable<string> FigurePaths => figures.Keys;

    public Figure? FindFigure(string path) => figures.GetValueOrDefault(path);

    public Fact? UseFact(string factId, string file, int line, string? part)
    {
        if (factId.Length == 0) return null;
        Facts.Add(factId);
        if (shared.Facts.TryGetValue(factId, out var fact)) return fact;
        problems.Add(new(CourseProblems.FactUnknown, new(file, line, part), factId));
        return null;
    }

    public GuidanceEntry? UseGuidance(string entryId, string file, int line, string? part)
    {
        if (shared.Guidance.Find(entryId) is not { } entry)
        {
            problems.Add(new(CourseProblems.GuidanceUnknown, new(file, line, part), entryId));
            return null;
        }

        if (entry.SupersededBy is not null)
        {
            problems.Add(new(CourseProblems.GuidanceSuperseded, new(file, line, part), entryId, shared.Newest(entry).Id));
        }

        Guidance.Add(entryId);
        GuidanceUses.Add(new(entryId, new(file, line, part)));
        Facts.Add(entry.FactId);
        return entry;
    }

    /// <summary>The module that a relative path means from a file, where it has that section; an empty path is the page itself.</summary>
    public string? FindPage(WordFile from, string path, string? section)
    {
        var target = path.Length == 0 ? from.Path : WordFile.Resolve(from.Path, path);
        if (target is null || !Pages.TryGetValue(target, out var page)) return null;
        if (!target.StartsWith(PathOf(from.Language, ""), StringComparison.Ordinal)) return null;
        return section is null || page.Sections.Contains(section) ? page.ModuleId : null;
    }
}

/// <summary>A snake group or the id of a species sheet, and where a file names it.</summary>
internal sealed record SnakeUse(string Snake, Place Place);

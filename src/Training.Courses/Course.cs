namespace Training.Courses;

/// <summary>One checked course: a scheme's rules, modules, questions and checklists. Only a course without findings exists as this type.</summary>
/// <param name="Id">The folder's name.</param>
/// <param name="Hash">SHA-256 (lower-case hex) of the course's snapshot: every file of the folder and the guidance and facts resolved into it.</param>
/// <param name="Scheme">The rules that it prepares for.</param>
/// <param name="Topics">Ids, in order.</param>
/// <param name="Objectives">Ids, in order.</param>
/// <param name="Modules">In reading order.</param>
/// <param name="Questions">The pool, in file order.</param>
/// <param name="Quiz">What is drawn from it.</param>
/// <param name="Checklists">May be empty.</param>
/// <param name="Words">Titles of topics and objectives; one entry for each language.</param>
/// <param name="Guidance">The guidance that its texts and keys rest on, as it was when the course was read; in the order of ids.</param>
public sealed record Course(
    string Id,
    string Hash,
    Scheme Scheme,
    IReadOnlyList<string> Topics,
    IReadOnlyList<string> Objectives,
    IReadOnlyList<Module> Modules,
    IReadOnlyList<Question> Questions,
    Quiz Quiz,
    IReadOnlyList<Checklist> Checklists,
    IReadOnlyDictionary<Language, CourseWords> Words,
    IReadOnlyList<GuidanceEntry> Guidance);

/// <summary>The words of a course in one language, plain text.</summary>
/// <param name="Topics">Title of each topic by id.</param>
/// <param name="Objectives">Each objective by id: observable and measurable.</param>
public sealed record CourseWords(IReadOnlyDictionary<string, string> Topics, IReadOnlyDictionary<string, string> Objectives);

/// <summary>One part of a course to read.</summary>
/// <param name="Id">Unique within the course; also the name of its Markdown files.</param>
/// <param name="Topic">Id of the topic that it teaches.</param>
/// <param name="Minutes">About how long it takes to read.</param>
/// <param name="Objectives">Ids of the objectives that it teaches.</param>
/// <param name="Pages">One entry for each language.</param>
public sealed record Module(string Id, string Topic, int Minutes, IReadOnlyList<string> Objectives, IReadOnlyDictionary<Language, ModulePage> Pages)
{
    /// <summary>Whether it is about the reader's own site: then it is read again at the next one.</summary>
    public bool IsOfSite => Pages.Values.Any(page => page.Parts.Any(part => part is PagePart.Block { Kind: PageBlock.SiteSpecies or PageBlock.SitePlan }));
}

/// <summary>A module in one language.</summary>
/// <param name="Title">Plain text.</param>
/// <param name="Parts">What stands on the page, in order; the last one ends with the caution.</param>
/// <param name="Sections">Headings that a passage can name, in order.</param>
/// <param name="Notes">Sources of the facts and guidance it refers to, in the order of first reference, numbered from 1.</param>
/// <param name="Prose">Its paragraphs as plain text, in order: titles, tables and drawings left out. What its reading level is measured on.</param>
public sealed record ModulePage(
    string Title, IReadOnlyList<PagePart> Parts, IReadOnlyList<Section> Sections, IReadOnlyList<SourceNote> Notes, IReadOnlyList<string> Prose)
{
    /// <summary>All text of the page wherever it is read, without its blocks. Safe HTML.</summary>
    public string Html => string.Concat(Parts.OfType<PagePart.Text>().Select(text => text.Html));
}

/// <summary>A stretch of a page. A closed family.</summary>
public abstract record PagePart
{
    private PagePart()
    {
    }

    /// <summary>Text of the author.</summary>
    /// <param name="Html">Safe HTML: no script, no event attribute, no foreign origin, whatever the author typed.</param>
    /// <param name="Snakes">Snake groups and ids of species sheets: shown only where one of them lives. Empty: shown everywhere.</param>
    public sealed record Text(string Html, IReadOnlyList<string> Snakes) : PagePart;

    /// <summary>Something that the site knows and the author does not.</summary>
    public sealed record Block(PageBlock Kind) : PagePart;
}

/// <summary>What a page can show besides the words of its author.</summary>
public enum PageBlock
{
    /// <summary>The snakes of the reader's site; <c>site-species</c>.</summary>
    SiteSpecies,

    /// <summary>Whom to call from the reader's site; <c>site-plan</c>.</summary>
    SitePlan,

    /// <summary>Reach and minimum working length for a length that the reader types; <c>distance-calculator</c>.</summary>
    DistanceCalculator,
}

/// <summary>A heading that can be named.</summary>
/// <param name="Id">The same in both languages.</param>
/// <param name="Title">Plain text.</param>
public sealed record Section(string Id, string Title);

/// <summary>One footnote of a page: where a statement or value comes from.</summary>
/// <param name="Id">Fact or guidance id.</param>
/// <param name="Source">As <c>courses/facts.yaml</c> or <c>courses/guidance.yaml</c> gives it.</param>
/// <param name="Standing">How well it is confirmed.</param>
/// <param name="EffectiveFrom">For guidance, since when; null for a fact.</param>
public sealed record SourceNote(string Id, string Source, FactStanding Standing, DateOnly? EffectiveFrom);

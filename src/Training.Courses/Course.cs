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
    IReadOnlyDictionary<Language, CourseWords> Words);

/// <summary>The words of a course in one language, plain text.</summary>
/// <param name="Topics">Title of each topic by id.</param>
/// <param name="Objectives">Each objective by id: observable and measurable.</param>
public sealed record CourseWords(IReadOnlyDictionary<string, string> Topics, IReadOnlyDictionary<string, string> Objectives);

/// <summary>One part of a course to read.</summary>
/// <param name="Id">Unique within the course; also the name of its Markdown files.</param>
/// <param name="Topic">Id of the topic that it teaches.</param>
/// <param name="Minutes">About how long it takes to read.</param>
/// <param name="Pages">One entry for each language.</param>
public sealed record Module(string Id, string Topic, int Minutes, IReadOnlyDictionary<Language, ModulePage> Pages);

/// <summary>A module in one language.</summary>
/// <param name="Title">Plain text.</param>
/// <param name="Html">Safe HTML: no script, no event attribute, no foreign origin, whatever the author typed. Ends with the caution.</param>
/// <param name="Sections">Headings that a passage can name, in order.</param>
/// <param name="Notes">Sources of the facts and guidance it refers to, in the order of first reference, numbered from 1.</param>
public sealed record ModulePage(string Title, string Html, IReadOnlyList<Section> Sections, IReadOnlyList<SourceNote> Notes);

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

namespace Training.Courses;

/// <summary>Everything that reading a courses folder gave.</summary>
/// <param name="Courses">Courses without any finding, in the order of their ids.</param>
/// <param name="Snapshots">One for each of <paramref name="Courses"/>, same order.</param>
/// <param name="Problems">All findings of all files at once, in the order of file and line.</param>
/// <param name="Guidance">All entries, superseded ones included.</param>
/// <param name="Facts">All facts, in the order of their ids.</param>
/// <param name="Coverage">What teaches and what asks for each objective, broken courses included; none of either is a finding too.</param>
/// <param name="Library">Species sheets and regional sets; empty where there are no such files, null where one of them has a finding.</param>
/// <param name="Drafts">Every course that can be shown, findings or not: what an author looks at while writing. Never served to anybody else.</param>
/// <param name="GuidanceUses">Where each guidance entry is named, in the order of files: what a change of it touches. Broken courses included.</param>
public sealed record CourseReading(
    IReadOnlyList<Course> Courses,
    IReadOnlyList<CourseSnapshot> Snapshots,
    IReadOnlyList<Problem> Problems,
    GuidanceSet Guidance,
    IReadOnlyList<Fact> Facts,
    IReadOnlyList<ObjectiveCoverage> Coverage,
    SpeciesLibrary? Library,
    IReadOnlyList<GuidanceUse> GuidanceUses,
    IReadOnlyList<Course> Drafts)
{
    /// <summary>What reading a folder without any file gives.</summary>
    public static CourseReading Empty { get; } = CourseReader.Read(new CourseFiles([]));

    /// <summary>All sheets, in the order of the file; none where a file of theirs has a finding.</summary>
    public IReadOnlyList<SpeciesSheet> Species => Library?.Species ?? [];

    /// <summary>All regional sets, in the order of the file; none where a file of theirs has a finding.</summary>
    public IReadOnlyList<RegionalSet> Regions => Library?.Regions ?? [];
}

/// <summary>A place that names a guidance entry.</summary>
/// <param name="EntryId">The entry.</param>
/// <param name="Place">File, line and part.</param>
public sealed record GuidanceUse(string EntryId, Place Place);

/// <summary>What teaches an objective and what asks for it.</summary>
/// <param name="CourseId">The course.</param>
/// <param name="ObjectiveId">The objective.</param>
/// <param name="Modules">Ids of the modules that teach it, in reading order.</param>
/// <param name="Questions">Questions of the pool.</param>
/// <param name="Steps">Steps of the course's checklists.</param>
public sealed record ObjectiveCoverage(string CourseId, string ObjectiveId, IReadOnlyList<string> Modules, int Questions, int Steps);

namespace Training.Courses;

/// <summary>Everything that reading a courses folder gave.</summary>
/// <param name="Courses">Courses without any finding, in the order of their ids.</param>
/// <param name="Snapshots">One for each of <paramref name="Courses"/>, same order.</param>
/// <param name="Problems">All findings of all files at once, in the order of file and line.</param>
/// <param name="Guidance">All entries, superseded ones included.</param>
/// <param name="Facts">All facts, in the order of their ids.</param>
/// <param name="Coverage">How many questions and steps each objective has, broken courses included; none is a finding too.</param>
/// <param name="Library">Species sheets and regional sets; empty where there are no such files, null where one of them has a finding.</param>
public sealed record CourseReading(
    IReadOnlyList<Course> Courses,
    IReadOnlyList<CourseSnapshot> Snapshots,
    IReadOnlyList<Problem> Problems,
    GuidanceSet Guidance,
    IReadOnlyList<Fact> Facts,
    IReadOnlyList<ObjectiveCoverage> Coverage,
    SpeciesLibrary? Library)
{
    /// <summary>All sheets, in the order of the file; none where a file of theirs has a finding.</summary>
    public IReadOnlyList<SpeciesSheet> Species => Library?.Species ?? [];

    /// <summary>All regional sets, in the order of the file; none where a file of theirs has a finding.</summary>
    public IReadOnlyList<RegionalSet> Regions => Library?.Regions ?? [];
}

/// <summary>What asks for an objective.</summary>
/// <param name="CourseId">The course.</param>
/// <param name="ObjectiveId">The objective.</param>
/// <param name="Questions">Questions of the pool.</param>
/// <param name="Steps">Steps of the course's checklists.</param>
public sealed record ObjectiveCoverage(string CourseId, string ObjectiveId, int Questions, int Steps);

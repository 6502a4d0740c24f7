using Training.Courses;

namespace Training.Web.Shelf;

/// <summary>The courses being served: for each, the last version without findings, whatever its folder looks like now.</summary>
public sealed class CourseShelf
{
    private readonly Lock changing = new();
    private volatile HashSet<string>? chosen;
    private volatile IReadOnlyList<HeldBack> heldBack = [];
    private volatile IReadOnlyDictionary<string, Course> courses = new Dictionary<string, Course>(StringComparer.Ordinal);

    /// <summary>All courses, certificates of training first.</summary>
    public IReadOnlyList<Course> Courses =>
        [.. courses.Values.OrderBy(c => c.Scheme.Kind).ThenBy(c => c.Id, StringComparer.Ordinal)];

    /// <summary>The courses that the provider uses: offered to workers, counted in matrices, to be chosen for classes. All of them until a lead chose.</summary>
    public IReadOnlyList<Course> Used => chosen is { } ids ? [.. Courses.Where(course => ids.Contains(course.Id))] : Courses;

    /// <summary>Everything that the last reading of the folder gave; a course with findings goes on serving its last good text.</summary>
    public CourseReading LastReading { get; private set; } = CourseReading.Empty;

    /// <summary>What the last reading of the folder found wrong, and what keeps a text without findings out of force.</summary>
    public IReadOnlyList<Problem> Findings => [.. LastReading.Problems, .. heldBack.Select(one => one.Problem).OfType<Problem>()];

    /// <summary>The guidance that the last reading of the folder found.</summary>
    public GuidanceSet Guidance => LastReading.Guidance;

    /// <summary>Species sheets and regional sets: the last ones without a finding.</summary>
    public SpeciesLibrary Species { get; private set; } = SpeciesLibrary.Empty;

    /// <summary>Notes what a reading of the folder gave beside the courses that serve; without a library the one of before stays.</summary>
    public void Report(CourseReading reading) => (LastReading, Species) = (reading, reading.Library ?? Species);

    /// <summary>Notes which courses a lead chose; null: nobody chose.</summary>
    public void Choose(IEnumerable<string>? courseIds) => chosen = courseIds?.ToHashSet(StringComparer.Ordinal);

    /// <summary>Ids of the schemes whose kind is a certification: whoever holds one handles snakes.</summary>
    public IReadOnlySet<string> Certifications() =>
        Courses.Where(course => course.Scheme.Kind == SchemeKind.Certification).Select(course => course.Scheme.Id).ToHashSet(StringComparer.Ordinal);

    /// <summary>The course of an id, or null.</summary>
    public Course? Find(string id) => courses.GetValueOrDefault(id);

    /// <summary>The course of an id where the provider uses it, or null.</summary>
    public Course? FindUsed(string id) => chosen?.Contains(id) == false ? null : Find(id);

    /// <summary>The text of a course that is announced: its rules are in force from a later day on. Null where there is none.</summary>
    public Course? FindComing(string id) => heldBack.FirstOrDefault(one => one.Problem is null && one.Course.Id == id)?.Course;

    /// <summary>Notes which texts are not put in force.</summary>
    public void HoldBack(IReadOnlyList<HeldBack> texts) => heldBack = texts;

    /// <summary>Puts courses on the shelf, in place of the versions that stood there.</summary>
    public void Put(IEnumerable<Course> newer)
    {
        lock (changing)
        {
            var next = new Dictionary<string, Course>(courses, StringComparer.Ordinal);
            foreach (var course in newer) next[course.Id] = course;
            courses = next;
        }
    }

    /// <summary>Takes down what is not among <paramref name="ids"/>: somebody removed the folder on purpose.</summary>
    public void KeepOnly(IReadOnlySet<string> ids)
    {
        lock (changing)
        {
            courses = courses.Where(course => ids.Contains(course.Key)).ToDictionary(course => course.Key, course => course.Value, StringComparer.Ordinal);
        }
    }
}

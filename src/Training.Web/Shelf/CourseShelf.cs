using Training.Courses;

namespace Training.Web.Shelf;

/// <summary>The courses being served: for each, the last version without findings, whatever its folder looks like now.</summary>
public sealed class CourseShelf
{
    private readonly Lock changing = new();
    private volatile IReadOnlyDictionary<string, Course> courses = new Dictionary<string, Course>(StringComparer.Ordinal);

    /// <summary>All courses, certificates of training first.</summary>
    public IReadOnlyList<Course> Courses =>
        [.. courses.Values.OrderBy(c => c.Scheme.Kind).ThenBy(c => c.Id, StringComparer.Ordinal)];

    /// <summary>What the last reading of the folder found wrong; a course with findings goes on serving its last good text.</summary>
    public IReadOnlyList<Problem> Findings { get; private set; } = [];

    /// <summary>Notes what a reading of the folder found.</summary>
    public void Report(IReadOnlyList<Problem> findings) => Findings = findings;

    /// <summary>The course of an id, or null.</summary>
    public Course? Find(string id) => courses.GetValueOrDefault(id);

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

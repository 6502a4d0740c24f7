namespace Training.Courses;

/// <summary>One thing that is wrong with an input, as a value: what, where, and the words the mend needs.</summary>
/// <param name="Code">Stable name such as <c>course.topic-unknown</c>; a constant of a class named <c>…Problems</c>. Web and the
/// command line hold the sentence and the mend for each code in English and Spanish.</param>
/// <param name="Place">Where to look.</param>
/// <param name="Arguments">What the sentence names, in the order of its placeholders <c>{0}</c>, <c>{1}</c> …; never null.</param>
/// <remarks>The one problem type of the whole solution. Readers collect problems and answer null; they do not throw.</remarks>
public sealed record Problem(string Code, Place Place, params IReadOnlyList<string> Arguments);

/// <summary>Where a problem lies: a file and line for authors, a part (question, step, row, field) for everybody.</summary>
/// <param name="File">Path relative to the courses folder with forward slashes, or null where there is no file.</param>
/// <param name="Line">One-based line, or null where the whole file is meant.</param>
/// <param name="Part">The named part, such as <c>question stop-first</c>, <c>step grip</c> or <c>option c</c>; null for the whole.</param>
public sealed record Place(string? File = null, int? Line = null, string? Part = null)
{
    /// <summary>A place inside a submitted answer or sheet, where there is no file.</summary>
    public static Place Of(string part) => new(Part: part);
}

namespace Training.Courses;

/// <summary>The foot of a page: sources numbered from 1 in the order of their first citation.</summary>
internal sealed class NoteList
{
    private readonly List<SourceNote> notes = [];

    public IReadOnlyList<SourceNote> Notes => notes;

    /// <summary>The number of a source, and whether this is its first citation.</summary>
    public (string Number, bool IsFirst) Cite(SourceNote note)
    {
        var index = notes.FindIndex(known => known.Id == note.Id);
        var isFirst = index < 0;
        if (isFirst)
        {
            index = notes.Count;
            notes.Add(note);
        }

        return ((index + 1).ToString(System.Globalization.CultureInfo.InvariantCulture), isFirst);
    }
}

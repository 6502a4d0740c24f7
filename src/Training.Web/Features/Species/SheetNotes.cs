using System.Globalization;
using Training.Courses;

namespace Training.Web.Features.Species;

/// <summary>The sources of a page: those that the words cite, and after them those of the figures.</summary>
public sealed class SheetNotes(IEnumerable<SourceNote> cited)
{
    private readonly List<SourceNote> notes = [.. cited];

    /// <summary>In the order of their numbers, from 1.</summary>
    public IReadOnlyList<SourceNote> Notes => notes;

    /// <summary>The number of a fact.</summary>
    public NoteMark Cite(Fact fact) => Cite(new SourceNote(fact.Id, fact.Source, fact.Standing, null));

    /// <summary>The number of a value in force.</summary>
    public NoteMark Cite(GuidanceEntry entry) => Cite(new SourceNote(entry.Id, entry.Source, entry.Standing, entry.EffectiveFrom));

    private NoteMark Cite(SourceNote note)
    {
        var index = notes.FindIndex(known => known.Id == note.Id);
        if (index >= 0) return new((index + 1).ToString(CultureInfo.InvariantCulture), IsFirst: false);
        notes.Add(note);
        return new(notes.Count.ToString(CultureInfo.InvariantCulture), IsFirst: true);
    }
}

/// <summary>A number that leads to a source.</summary>
/// <param name="Number">As shown.</param>
/// <param name="IsFirst">The way back from the source leads here.</param>
public sealed record NoteMark(string Number, bool IsFirst);

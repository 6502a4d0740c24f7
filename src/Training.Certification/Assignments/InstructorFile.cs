using Training.Courses;

namespace Training.Certification;

/// <summary>What an instructor does at a class.</summary>
public enum Duty
{
    /// <summary>Teaches.</summary>
    Teach,

    /// <summary>Scores practicals.</summary>
    Score,
}

/// <summary>Somebody is competent to do something, as a lead wrote it down.</summary>
/// <param name="CourseId">For which course.</param>
/// <param name="Duty">To teach it or to score its practicals.</param>
/// <param name="Subject">On a model or on a live snake; the one does not stand in for the other.</param>
/// <param name="From">First day.</param>
/// <param name="Through">Last day, included; earlier than first written where a lead ended it.</param>
public sealed record Competence(string CourseId, Duty Duty, Subject Subject, DateOnly From, DateOnly Through);

/// <summary>Something stands between an instructor and a person, or an employer's people.</summary>
/// <param name="PersonId">Between them and this person; null where it is an employer.</param>
/// <param name="EmployerId">Between them and this employer's people; null where it is a person.</param>
/// <param name="From">First day.</param>
/// <param name="Through">Last day, included; null while it lasts.</param>
public sealed record ConflictOfInterest(Guid? PersonId, Guid? EmployerId, DateOnly From, DateOnly? Through)
{
    /// <summary>Whether it stands on that day.</summary>
    public bool Stands(DateOnly day) => From <= day && !(Through < day);
}

/// <summary>Everything that decides what an instructor may be assigned to.</summary>
/// <param name="Competences">All, past and to come ones too.</param>
/// <param name="Languages">That they score in, by their appointment of the day.</param>
/// <param name="Conflicts">All.</param>
/// <param name="StatedOn">The days on which they stated that nothing else stands in the way.</param>
public sealed record InstructorFile(
    IReadOnlyList<Competence> Competences, IReadOnlyList<Language> Languages, IReadOnlyList<ConflictOfInterest> Conflicts, IReadOnlyList<DateOnly> StatedOn);

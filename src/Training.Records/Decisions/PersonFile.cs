using Training.Certification;
using Training.Courses;

namespace Training.Records;

/// <summary>Everything that decisions about one person are made from, whatever the scheme.</summary>
/// <param name="PersonId">About whom.</param>
/// <param name="Evidence">The latest result of each sitting and sheet that counts.</param>
/// <param name="TaughtBy">Who taught them.</param>
/// <param name="Held">What they hold or held.</param>
public sealed record PersonFile(
    Guid PersonId, IReadOnlyList<Evidence> Evidence, IReadOnlyList<Teaching> TaughtBy, IReadOnlyList<HeldCertification> Held)
{
    /// <summary>The case under one scheme.</summary>
    public CaseFile Under(Scheme scheme) => new(PersonId, scheme, Evidence, TaughtBy, Held);
}

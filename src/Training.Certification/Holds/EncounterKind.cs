namespace Training.Certification;

/// <summary>What a meeting with a snake at work came to.</summary>
public enum EncounterKind
{
    /// <summary>A snake was seen.</summary>
    Sighting,

    /// <summary>A snake was moved.</summary>
    Moved,

    /// <summary>Nearly a bite: hands or legs were within reach, or it struck and missed.</summary>
    NearMiss,

    /// <summary>A snake bit somebody.</summary>
    Bite,
}

using Training.Certification;
using Training.Courses;
using Training.Scoring;

namespace Training.Records.Tests;

/// <summary>Holds the stored layout against text written by hand: renaming a type or a member must not make yesterday's rows unreadable.</summary>
public sealed class StoredJsonTests
{
    [Fact]
    public void Reasons_of_a_sitting_keep_their_layout()
    {
        const string Stored = """{"version":1,"items":[{"kind":"TopicBelowPass","topic":"bite","points":0,"maxPoints":1,"passPercent":50},{"kind":"CriticalMissed","questionId":"first-steps"}]}""";
        IReadOnlyList<SittingReason> reasons = [new SittingReason.TopicBelowPass("bite", 0, 1, 50), new SittingReason.CriticalMissed("first-steps")];

        Assert.Equal(Stored, StoredJson.Write(reasons));
        Assert.Equal(reasons, StoredJson.Read<SittingReason>(Stored));
    }

    [Fact]
    public void Reasons_of_a_decision_keep_their_layout()
    {
        const string Stored = """{"version":1,"items":[{"kind":"NotPassed","requirement":{"kind":"PassedPractical","checklistId":"move","subject":"Live","greatestAge":"P90D"},"latestResultId":"01890000-0000-7000-8000-000000000001"},{"kind":"NotHeld","schemeId":"awareness","standing":"Lapsed"}]}""";
        IReadOnlyList<DecisionReason> reasons =
        [
            new DecisionReason.NotPassed(
                new Requirement.PassedPractical("move", Subject.Live, new(90, DurationUnit.Days)), Guid.Parse("01890000-0000-7000-8000-000000000001")),
            new DecisionReason.NotHeld("awareness", Standing.Lapsed),
        ];

        Assert.Equal(Stored, StoredJson.Write(reasons));
        Assert.Equal(reasons, StoredJson.Read<DecisionReason>(Stored));
    }

    [Fact]
    public void Another_version_is_not_guessed_at() =>
        Assert.Throws<FormatException>(() => StoredJson.Read<SittingReason>("""{"version":2,"items":[]}"""));
}

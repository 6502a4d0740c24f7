using CsCheck;
using static Training.Certification.Tests.Cast;

namespace Training.Certification.Tests;

public sealed class InvitationsTests
{
    private static readonly ClassTime Time = new(On("2026-06-10"), new(8, 0), 480, "Gate 3");
    private static readonly ClassTime Moved = Time with { HeldOn = On("2026-06-12") };
    private static readonly DateOnly Early = On("2026-05-01");

    private static Invitation Told(int sequence, bool isCancellation = false, ClassTime? time = null) => new(sequence, isCancellation, time ?? Time);

    /// <summary>The table of docs/rules.md, "Invitations".</summary>
    public static TheoryData<Invitation?, bool, ClassTime, Invitation?> Told_and_owed => new()
    {
        { null, true, Time, Told(0) },
        { Told(0), true, Time, null },
        { Told(0), true, Moved, Told(1, time: Moved) },
        { Told(1, time: Moved), false, Moved, Told(2, isCancellation: true, Moved) },
        { Told(2, isCancellation: true, Moved), true, Moved, Told(3, time: Moved) },
        { Told(2, isCancellation: true, Moved), false, Moved, null },
        { null, false, Time, null },
    };

    [Theory, MemberData(nameof(Told_and_owed))]
    public void What_is_told_next_follows_from_what_was_told_last(Invitation? last, bool isExpected, ClassTime time, Invitation? owed) =>
        Assert.Equal(owed, Invitations.Owed(isExpected, time, last, Early));

    [Theory]
    [InlineData("StartsAt")]
    [InlineData("Length")]
    [InlineData("Place")]
    public void Another_start_length_or_place_is_told(string what)
    {
        var other = what switch { "StartsAt" => Time with { StartsAt = new(9, 0) }, "Length" => Time with { LengthMinutes = 240 }, _ => Time with { MeetingPlace = "Gate 4" } };

        Assert.Equal(Told(1, time: other), Invitations.Owed(true, other, Told(0), Early));
    }

    [Theory]
    [InlineData("2026-06-10", true)]
    [InlineData("2026-06-11", false)]
    public void Through_the_day_itself_something_is_told_and_not_after_it(string today, bool isTold)
    {
        Assert.Equal(isTold, Invitations.Owed(true, Time, null, On(today)) is not null);
        Assert.Equal(isTold, Invitations.Owed(false, Time, Told(0), On(today)) is not null);
    }

    [Theory]
    [InlineData("2026-06-04", "2026-06-04", false)]
    [InlineData("2026-06-04", "2026-06-05", true)]
    [InlineData("2026-06-04", "2026-06-09", true)]
    [InlineData("2026-06-04", "2026-06-10", false)]
    [InlineData("2026-06-05", "2026-06-05", false)]     // told on the first day of the reminder
    [InlineData("2026-06-05", "2026-06-09", false)]
    public void A_reminder_stands_from_five_days_before_through_the_day_before(string toldOn, string today, bool isDue)
    {
        Assert.Equal(isDue, Invitations.IsReminderDue(Told(0), On(toldOn), On(today)));
        Assert.False(Invitations.IsReminderDue(Told(1, isCancellation: true), On(toldOn), On(today)));
    }

    [Fact]
    public void Whatever_happens_nobody_is_told_the_same_twice_and_the_sequence_rises_by_one() =>
        Gen.Select(Gen.Bool, Gen.Int[0, 3], Gen.Int[-2, 2]).Array[1, 30].Sample(steps =>
        {
            Invitation? last = null;
            foreach (var (isExpected, move, today) in steps)
            {
                var time = Time with { HeldOn = Time.HeldOn.AddDays(move) };
                if (Invitations.Owed(isExpected, time, last, Time.HeldOn.AddDays(today)) is not { } owed) continue;
                Assert.Equal(last is null ? 0 : last.Sequence + 1, owed.Sequence);
                Assert.Equal(!isExpected, owed.IsCancellation);
                Assert.True(last is null || (last.IsCancellation, last.Time) != (owed.IsCancellation, owed.Time));
                last = owed;
                Assert.Null(Invitations.Owed(isExpected, time, last, Time.HeldOn.AddDays(today)));
            }
        });
}

using Training.Courses;

namespace Training.Records.Tests;

public abstract partial class RecordsTests
{
    [Fact]
    public async Task A_scheme_is_held_through_the_last_day_of_grace()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        Assert.False(await records.IsHeldAsync(cast.CourseId, DateOnly.MinValue, Cancellation));
        await cast.KeepGrantedAsync(Database);
        var last = Cast.Today.AddYears(1).AddDays(30);

        Assert.True(await records.IsHeldAsync(cast.CourseId, last, Cancellation));
        Assert.False(await records.IsHeldAsync(cast.CourseId, last.AddDays(1), Cancellation));
        Assert.False(await records.IsHeldAsync("another", last, Cancellation));
    }

    [Fact]
    public async Task Who_did_not_do_in_time_what_changed_rules_ask_is_listed_from_the_day_after()
    {
        var cast = await Cast.CreateAsync(Database);
        await cast.KeepGrantedAsync(Database); // with a quiz of that day
        var from = Cast.Today.AddDays(10);
        Scheme Asking(string quizId) => SchemeOf(cast) with
        {
            EffectiveFrom = from, Transition = new("0b7d31c2a9e4", from.AddDays(30), [new Requirement.PassedQuiz(quizId, new(60, DurationUnit.Days))]),
        };
        await using var records = Database.Open();

        Assert.Empty(await records.OverdueTransitionsAsync(Asking("new-quiz"), from.AddDays(30), Cancellation));
        Assert.Equal(
            [new OverdueTransition(cast.Worker, cast.CourseId, from.AddDays(30))],
            await records.OverdueTransitionsAsync(Asking("new-quiz"), from.AddDays(31), Cancellation));
        Assert.Empty(await records.OverdueTransitionsAsync(Asking("handler-quiz"), from.AddDays(31), Cancellation)); // it counted on the first day
        Assert.Empty(await records.OverdueTransitionsAsync(Asking("new-quiz") with { Transition = null }, from.AddDays(31), Cancellation));

        await cast.KeepGrantedAsync(Database, number: 2);
        Assert.Single(await records.OverdueTransitionsAsync(Asking("new-quiz"), from.AddDays(31), Cancellation)); // renewed before the new rules
        await using var more = Database.Open();
        Assert.IsType<Kept.Stored>(await more.KeepAsync(cast.Granted(3, [await cast.KeepPassedSittingAsync(Database)], from), Cast.Now, Cancellation));
        Assert.Empty(await records.OverdueTransitionsAsync(Asking("new-quiz"), from.AddDays(31), Cancellation)); // renewed by them
    }
}

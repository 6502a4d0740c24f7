using Training.Courses;
using Training.Scoring;

namespace Training.Records.Tests;

public abstract partial class RecordsTests
{
    [Fact]
    public async Task A_started_scoresheet_reads_back_with_its_marks_for_its_instructor_only()
    {
        var cast = await Cast.CreateAsync(Database);
        var sheet = Started(cast);
        await using var records = Database.Open();

        Assert.IsType<Kept.Stored>(await records.StartAsync(sheet, TryChoice.Next, Cast.Today, Cancellation));
        await records.MarkAsync(Mark(sheet, "grip", 2, Observation.DoneAfterPrompt), MarkEffect.GoesOn, Cancellation);

        var found = await records.FindStartedScoresheetAsync(cast.Instructor, sheet.Id, Cancellation);
        Assert.Equal(
            (cast.Worker, "Gravel, overcast", (int?)31, (LiveConditions?)null, (string?)null),
            (found!.CandidateId, found.Surroundings, found.AirTemperature, found.ReadLive(), found.StoppedAtStep));
        Assert.Equal(("grip", 2, Observation.DoneAfterPrompt), Assert.Single(found.Observations.Select(mark => (mark.StepId, mark.Position, mark.Observation))));
        Assert.Equal([new UsedKit(cast.Hook, cast.HookInspection)], found.ReadKit());
        Assert.Null(await records.FindStartedScoresheetAsync(cast.Lead, sheet.Id, Cancellation));
    }

    [Fact]
    public async Task Starting_the_same_again_is_the_same_sheet_and_other_entries_are_refused()
    {
        var cast = await Cast.CreateAsync(Database);
        var id = Guid.CreateVersion7();
        await using var records = Database.Open();
        await records.StartAsync(Started(cast, id), TryChoice.Next, Cast.Today, Cancellation);

        var again = await records.StartAsync(Started(cast, id), TryChoice.Next, Cast.Today, Cancellation);
        var other = await records.StartAsync(Started(cast, id, kit: "Another hook"), TryChoice.Next, Cast.Today, Cancellation);

        Assert.IsType<Kept.AlreadyStored>(again);
        Assert.Equal([RecordsProblems.StartedOtherwise], Codes(other));
        Assert.Equal("Hook 2", (await records.FindStartedScoresheetAsync(cast.Instructor, id, Cancellation))!.Kit);
    }

    [Fact]
    public async Task Twenty_identical_starts_at_once_are_one_sheet()
    {
        var cast = await Cast.CreateAsync(Database);
        var id = Guid.CreateVersion7();

        var kept = await Task.WhenAll(Enumerable.Range(0, 20).Select(_ => Task.Run(async () =>
        {
            await using var records = Database.Open();
            return await records.StartAsync(Started(cast, id), TryChoice.Next, Cast.Today, Cancellation);
        })));

        Assert.Single(kept.OfType<Kept.Stored>());
        Assert.Equal(19, kept.OfType<Kept.AlreadyStored>().Count());
    }

    [Fact]
    public async Task Nobody_starts_a_sheet_of_themselves_of_a_stranger_or_at_a_class_that_they_do_not_score()
    {
        var cast = await Cast.CreateAsync(Database);
        var other = await Cast.CreateAsync(Database);
        await using var records = Database.Open();

        Assert.Contains(RecordsProblems.ScoresOneself, Codes(await records.StartAsync(Started(cast, candidate: cast.Instructor), TryChoice.Next, Cast.Today, Cancellation)));
        Assert.Equal([RecordsProblems.NotInClass], Codes(await records.StartAsync(Started(cast, candidate: other.Worker), TryChoice.Next, Cast.Today, Cancellation)));
        Assert.Equal([RecordsProblems.NotAScorer], Codes(await records.StartAsync(Started(cast, instructor: other.Instructor), TryChoice.Next, Cast.Today, Cancellation)));
    }

    [Fact]
    public async Task A_second_mark_of_a_step_takes_the_place_of_the_first()
    {
        var cast = await Cast.CreateAsync(Database);
        var sheet = Started(cast);
        await using var records = Database.Open();
        await records.StartAsync(sheet, TryChoice.Next, Cast.Today, Cancellation);

        await records.MarkAsync(Mark(sheet, "grip", 2, Observation.NotDone), MarkEffect.GoesOn, Cancellation);
        await records.MarkAsync(Mark(sheet, "grip", 2, Observation.Done), MarkEffect.GoesOn, Cancellation);

        Assert.Equal(["2 Done"], await MarksAsync(records, cast, sheet));
    }

    [Fact]
    public async Task Marks_made_at_once_in_two_tabs_are_all_kept()
    {
        var cast = await Cast.CreateAsync(Database);
        var sheet = Started(cast);
        await using var records = Database.Open();
        await records.StartAsync(sheet, TryChoice.Next, Cast.Today, Cancellation);

        await Task.WhenAll(Enumerable.Range(1, 8).Select(place => Task.Run(async () =>
        {
            await using var tab = Database.Open();
            await tab.MarkAsync(Mark(sheet, $"s{place}", place, Observation.Done), MarkEffect.GoesOn, Cancellation);
        })));

        Assert.Equal(8, (await MarksAsync(records, cast, sheet)).Count);
    }

    [Fact]
    public async Task An_undo_that_is_posted_twice_takes_back_one_mark()
    {
        var cast = await Cast.CreateAsync(Database);
        var sheet = Started(cast);
        await using var records = Database.Open();
        await records.StartAsync(sheet, TryChoice.Next, Cast.Today, Cancellation);
        await records.MarkAsync(Mark(sheet, "inspect-tongs", 1, Observation.Done), MarkEffect.GoesOn, Cancellation);
        await records.MarkAsync(Mark(sheet, "grip", 2, Observation.NotDone), MarkEffect.GoesOn, Cancellation);

        Assert.IsType<Kept.Stored>(await records.UndoAsync(sheet.Id, "grip", Cancellation));
        Assert.IsType<Kept.AlreadyStored>(await records.UndoAsync(sheet.Id, "grip", Cancellation));

        Assert.Equal(["1 Done"], await MarksAsync(records, cast, sheet));
    }

    [Fact]
    public async Task A_mark_that_stops_is_the_last_until_it_is_taken_back()
    {
        var cast = await Cast.CreateAsync(Database);
        var sheet = Started(cast);
        await using var records = Database.Open();
        await records.StartAsync(sheet, TryChoice.Next, Cast.Today, Cancellation);

        Assert.IsType<Kept.Stored>(await records.MarkAsync(Mark(sheet, "grip", 2, Observation.NotDone), MarkEffect.Stops, Cancellation));
        Assert.IsType<Kept.AlreadyStored>(await records.MarkAsync(Mark(sheet, "grip", 2, Observation.NotDone), MarkEffect.Stops, Cancellation));
        Assert.Equal([RecordsProblems.StoppedAlready], Codes(await records.MarkAsync(Mark(sheet, "lid", 3, Observation.Done), MarkEffect.GoesOn, Cancellation)));
        Assert.Equal("grip", (await records.FindStartedScoresheetAsync(cast.Instructor, sheet.Id, Cancellation))!.StoppedAtStep);

        await records.UndoAsync(sheet.Id, "grip", Cancellation);

        Assert.Null((await records.FindStartedScoresheetAsync(cast.Instructor, sheet.Id, Cancellation))!.StoppedAtStep);
        Assert.Empty(await MarksAsync(records, cast, sheet));
    }

    [Fact]
    public async Task The_first_stop_stays()
    {
        var cast = await Cast.CreateAsync(Database);
        var sheet = Started(cast);
        await using var records = Database.Open();
        await records.StartAsync(sheet, TryChoice.Next, Cast.Today, Cancellation);

        Assert.IsType<Kept.Stored>(await records.StopAsync(sheet.Id, "grip", Cancellation));
        Assert.IsType<Kept.AlreadyStored>(await records.StopAsync(sheet.Id, "lid", Cancellation));

        Assert.Equal("grip", (await records.FindStartedScoresheetAsync(cast.Instructor, sheet.Id, Cancellation))!.StoppedAtStep);
    }

    [Fact]
    public async Task A_signed_sheet_is_no_longer_open_and_takes_no_mark_stop_or_undo()
    {
        var cast = await Cast.CreateAsync(Database);
        var (signed, open) = (Started(cast), Started(cast));
        await using var records = Database.Open();
        await records.StartAsync(signed, TryChoice.Next, Cast.Today, Cancellation);
        await records.StartAsync(open, TryChoice.Next, Cast.Today, Cancellation);
        await records.MarkAsync(Mark(signed, "grip", 2, Observation.Done), MarkEffect.GoesOn, Cancellation);
        await records.KeepAsync(cast.Sheet(signed.Id), Cast.PassedSheet(), Cast.Today, Cast.Zone, Cast.Now, Cancellation);

        Assert.Equal([RecordsProblems.SignedAlready], Codes(await records.MarkAsync(Mark(signed, "lid", 3, Observation.Done), MarkEffect.GoesOn, Cancellation)));
        Assert.Equal([RecordsProblems.SignedAlready], Codes(await records.StopAsync(signed.Id, "lid", Cancellation)));
        Assert.Equal([RecordsProblems.SignedAlready], Codes(await records.UndoAsync(signed.Id, "grip", Cancellation)));
        Assert.Equal(["2 Done"], await MarksAsync(records, cast, signed));
        Assert.Equal([open.Id], (await records.OpenScoresheetsOfAsync(cast.Instructor, Cancellation)).Select(sheet => sheet.Id));
    }

    [Fact]
    public async Task A_sheet_without_a_mark_that_was_started_anew_is_not_open_and_one_with_marks_is()
    {
        var cast = await Cast.CreateAsync(Database);
        var (blank, marked, last) = (Started(cast, after: 0), Started(cast, after: 1), Started(cast, after: 2));
        await using var records = Database.Open();
        foreach (var sheet in new[] { blank, marked, last }) await records.StartAsync(sheet, TryChoice.Next, Cast.Today, Cancellation);
        await records.MarkAsync(Mark(marked, "grip", 2, Observation.Done), MarkEffect.GoesOn, Cancellation);

        Assert.Equal([last.Id, marked.Id], (await records.OpenScoresheetsOfAsync(cast.Instructor, Cancellation)).Select(sheet => sheet.Id));
    }

    private static async Task<IReadOnlyList<string>> MarksAsync(RecordsContext records, Cast cast, StartedScoresheet sheet)
    {
        var found = await records.FindStartedScoresheetAsync(cast.Instructor, sheet.Id, Cancellation);
        return [.. found!.Observations.OrderBy(mark => mark.Position).Select(mark => $"{mark.Position} {mark.Observation}")];
    }

    [Fact]
    public async Task The_first_reading_of_the_instructions_stays()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var sheet = Started(cast);
        await records.StartAsync(sheet, TryChoice.Next, Cast.Today, Cancellation);

        Assert.IsType<Kept.Stored>(await records.KeepReadAsync(sheet.Id, Cast.Now, Cancellation));
        Assert.IsType<Kept.AlreadyStored>(await records.KeepReadAsync(sheet.Id, Cast.Now.AddMinutes(1), Cancellation));

        Assert.Equal(Cast.Now, records.StartedScoresheets.Single(row => row.Id == sheet.Id).InstructionsReadAt);
    }

    private static StartedScoresheet Started(
        Cast cast, Guid? id = null, string kit = "Hook 2", Guid? candidate = null, Guid? instructor = null, int after = 0) => new()
    {
        Id = id ?? Guid.CreateVersion7(), ClassId = cast.Class, CandidateId = candidate ?? cast.Worker, InstructorId = instructor ?? cast.Instructor,
        CourseHash = cast.CourseHash, ChecklistId = "move-to-bucket", ChecklistVersion = "v1", Subject = Subject.Model, Try = 1,
        Language = Language.English, StartedAt = Cast.Now.AddSeconds(after), IsIdentityConfirmed = true, Surroundings = "Gravel, overcast", AirTemperature = 31,
        Kit = kit, UsedKit = [new() { ScoresheetId = id ?? Guid.Empty, Position = 1, PieceId = cast.Hook, InspectionId = cast.HookInspection }],
    };

    private static StartedObservation Mark(StartedScoresheet sheet, string step, int position, Observation observation) =>
        new() { ScoresheetId = sheet.Id, StepId = step, Position = position, Observation = observation, SavedAt = Cast.Now };
}

using Training.Courses;
using Training.Records;
using Training.Scoring;
using Training.Web.Features.Panels;

namespace Training.Web.Demo;

/// <summary>The panels of the invented provider: opened, judged twice, and a cut adopted, through the code that real use goes through.</summary>
/// <param name="data">Who judges, and how severely.</param>
/// <param name="courses">The shipped courses by id.</param>
/// <param name="ids">Of every row of the data that is kept by now.</param>
/// <param name="at">An instant so many days ago.</param>
internal sealed class DemoPanels(
    DemoData data, IReadOnlyDictionary<string, Course> courses, IReadOnlyDictionary<string, Guid> ids, Func<int, DateTimeOffset> at)
{
    // Days from one step to the next: asked, judged, talked over, adopted.
    private const int Step = 5;

    /// <summary>Keeps all of it.</summary>
    public async Task KeepAsync(RecordsContext records, CancellationToken cancellation)
    {
        foreach (var panel in data.Panels) await KeepAsync(records, panel, cancellation);
    }

    private async Task KeepAsync(RecordsContext records, DemoPanel row, CancellationToken cancellation)
    {
        var (course, lead, opened) = (courses[row.Course], ids[row.Lead], at(row.DaysAgo));
        var cells = RatedCell.Of(course.Quiz, (await records.AskedAsync(course, cancellation)).Questions);
        var panel = new Panel
        {
            Id = Guid.CreateVersion7(opened), CourseId = course.Id, CourseHash = course.Hash, TargetId = course.Quiz.Id,
            ItemIds = [.. cells.SelectMany(cell => cell.ItemIds)], Purpose = row.Purpose, JustCompetent = row.JustCompetent, Balance = row.Balance,
            LeadId = lead, OpenedAt = opened,
        };
        await records.KeepAsync(panel, cancellation);
        var judges = new List<(DemoPanelJudge Row, Guid Id, IReadOnlyDictionary<string, int> First)>();
        foreach (var judge in data.PanelJudges.Where(judge => judge.Panel == row.Panel))
        {
            var id = Guid.CreateVersion7(opened);
            Guid? person = judge.Person.Length > 0 ? ids[judge.Person] : null;
            await records.KeepAsync(
                new PanelJudge
                {
                    Id = id, PanelId = panel.Id, Number = 0, PersonId = person, OutsiderName = person is null ? judge.Name : null,
                    Qualification = judge.Qualification, AddedById = lead, AddedAt = opened,
                },
                cancellation);
            judges.Add((judge, id, FirstRound(course, panel.ItemIds, judge)));
        }

        foreach (var (judge, id, first) in judges) await RateAsync(1, judge, id, first);
        await EndAsync(1);
        foreach (var (judge, id, first) in judges)
        {
            // After the talk each goes a third of the way to what all said.
            await RateAsync(2, judge, id, first.ToDictionary(
                one => one.Key,
                one => one.Value + (int)Math.Round((judges.Average(other => other.First[one.Key]) - one.Value) / 3),
                StringComparer.Ordinal));
            await records.KeepAsync(BoundsOf(judge, id), cancellation);
        }

        await EndAsync(2);
        await AdoptAsync(records, row, panel.Id, course, cancellation);

        DateTimeOffset After(int steps) => at(row.DaysAgo - (steps * Step));

        Guid TypistOf(DemoPanelJudge judge) => judge.Person.Length > 0 ? ids[judge.Person] : lead;

        Task EndAsync(int round) => records.KeepAsync(
            new PanelRoundEnd { PanelId = panel.Id, Round = round, LeadId = lead, EndedAt = After(2 * round) }, cancellation);

        Task<Kept> RateAsync(int round, DemoPanelJudge judge, Guid id, IReadOnlyDictionary<string, int> percents)
        {
            var form = Guid.CreateVersion7(After((2 * round) - 1));
            return records.KeepAsync(
                panel.Id,
                [
                    .. percents.Select(one => new PanelRating
                    {
                        FormId = form, JudgeId = id, ItemId = one.Key, Round = round, Percent = one.Value, KeptById = TypistOf(judge), KeptAt = After((2 * round) - 1),
                    }),
                ],
                cancellation);
        }

        PanelBounds BoundsOf(DemoPanelJudge judge, Guid id) => new()
        {
            Id = Guid.CreateVersion7(After(3)), JudgeId = id, LeastCut = judge.LeastCut, GreatestCut = judge.GreatestCut, LeastFail = judge.LeastFail,
            GreatestFail = judge.GreatestFail, KeptById = TypistOf(judge), KeptAt = After(3),
        };
    }

    private async Task AdoptAsync(RecordsContext records, DemoPanel row, Guid panelId, Course course, CancellationToken cancellation)
    {
        var file = await records.FindPanelAsync(panelId, cancellation) ?? throw new InvalidOperationException("The panel of a moment ago is gone.");
        var cut = AdoptableCut.Of(new JudgedPanel(file, course), Obstacle.NobodyScored, [])[0];
        var day = at(row.DaysAgo - (5 * Step));
        await records.KeepAsync(
            new CutAdoption
            {
                Id = Guid.CreateVersion7(day), PanelId = panelId, Method = cut.Method, Mean = cut.Mean, PassPercent = cut.PassPercent,
                StandardError = cut.StandardError, StandardDeviation = cut.StandardDeviation, Judges = cut.Judges, Rounds = cut.Rounds, Reason = row.Reason,
                LeadId = ids[row.Lead], AdoptedOn = DateOnly.FromDateTime(day.UtcDateTime), KeptAt = day,
            },
            cancellation);
    }

    // An invented judge: what a question's difficulty suggests, more for a critical one, the judge's severity, and up to twelve points of their own.
    private static Dictionary<string, int> FirstRound(Course course, IReadOnlyList<string> items, DemoPanelJudge judge)
    {
        var random = new SplitMix64(judge.Seed);
        return items.ToDictionary(
            item => item,
            item =>
            {
                var question = course.Questions.Single(question => question.Id == item);
                var suggested = question.Difficulty switch
                {
                    Difficulty.Easy => 83,
                    Difficulty.Medium => 75,
                    Difficulty.Hard => 64,
                };
                return Math.Clamp(suggested + (question.IsCritical ? 5 : 0) + judge.Severity + (int)random.NextBelow(25) - 12, 0, 100);
            },
            StringComparer.Ordinal);
    }
}

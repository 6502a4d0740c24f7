using System.Globalization;
using Microsoft.Extensions.Localization;
using Training.Courses;
using Training.Records;
using Training.Scoring;
using static Training.Web.Features.AuditFolders.AuditPage;
using static Training.Web.Features.AuditFolders.AuditText;

namespace Training.Web.Features.AuditFolders;

/// <summary>Writes sittings as they were shown, with their results.</summary>
/// <remarks>
/// Who is no lead gets no words of questions and no answers: with a sitting that was passed in full they would be its key (docs/rules.md,
/// "Audit folders").
/// </remarks>
public sealed class SittingFiles(IStringLocalizer<AuditFoldersText> text)
{
    /// <summary>Adds the files of one sitting, and remembers its rules.</summary>
    public async Task AddAsync(
        FolderBeingWritten folder, Guid personId, StoredSitting stored, IReadOnlyDictionary<Guid, string> names, CancellationToken cancellation)
    {
        var sitting = stored.Sitting;
        var course = await folder.CourseAsync(sitting.Draw.CourseHash, cancellation);
        var path = $"people/{personId}/sittings/{stored.TakenOn.Iso()}-{sitting.Draw.QuizId}-{sitting.Id}";
        var answers = sitting.Answers.ToDictionary(answer => answer.QuestionId);
        await folder.AddAsync($"{path}.json", "sitting", sitting.Id, folder.IsFull ? FullSitting(stored) : OpenSitting(stored), cancellation);

        var page = folder.Page(text["SittingOf", course?.Scheme.Words[folder.Language].Title ?? sitting.Draw.QuizId, text.NameOf(names, personId)])
            .Fact(text["Day"], $"{stored.TakenOn.Iso()} ({stored.Zone})")
            .Fact(text["Started"], Instant(sitting.StartedAt)).Fact(text["Sent"], Instant(sitting.SubmittedAt))
            .Fact(text["RulesHash"], sitting.Draw.CourseHash).Fact(text["RecordId"], sitting.Id.ToString());
        foreach (var result in stored.Results)
        {
            page.Heading(text["ResultNumber", result.Id])
                .Fact(text["Outcome"], result.Result.IsPassed ? text["Passed"] : text["NotPassed"])
                .Fact(text["Points"], $"{result.Result.Points} / {result.Result.MaxPoints}")
                .Fact(text["GradedAt"], Instant(result.GradedAt)).Fact(text["GradedAgain"], result.CorrectionReason)
                .Table([text["Topic"], text["Points"]], result.Result.Topics.Select(topic => (IEnumerable<string>)
                    [Of(course?.Words[folder.Language].Topics.GetValueOrDefault(topic.Topic) ?? topic.Topic), Of($"{topic.Points} / {topic.MaxPoints}")]));
        }

        var marks = stored.Results.Count == 0 ? [] : stored.Results[^1].Result.Questions.ToDictionary(one => one.QuestionId, one => one.Mark);
        page.Heading(text["Shown"]);
        if (folder.IsFull)
        {
            page.Table(
                [text["Number"], text["Question"], text["OptionsShown"], text["Answered"], text["Mark"], text["Key"]],
                sitting.Draw.Questions.Index().Select(one => ShownQuestion(
                    one.Index + 1, one.Item, course, answers.GetValueOrDefault(one.Item.QuestionId),
                    marks.TryGetValue(one.Item.QuestionId, out var mark) ? Said(mark) : "", folder.Language)));
        }
        else
        {
            page.Fact(text["Closed"], text["ClosedWhy"]).Table(
                [text["Number"], text["Question"], text["Version"], text["Answered"]],
                sitting.Draw.Questions.Index().Select(one => (IEnumerable<string>)
                [
                    Of(Number(one.Index + 1)), Of(one.Item.QuestionId), Of(one.Item.QuestionVersion),
                    Of(answers.GetValueOrDefault(one.Item.QuestionId) is { } answer ? $"{Instant(answer.SavedAt)}, {answer.Language.Tag()}" : ""),
                ]));
        }

        await folder.AddAsync($"{path}.html", "sitting", sitting.Id, page.ToBytes(), cancellation);
    }

    private static IEnumerable<string> ShownQuestion(int number, DrawnQuestion drawn, Course? course, Answer? answer, string mark, Language language)
    {
        var question = course?.Questions.FirstOrDefault(one => one.Id == drawn.QuestionId);
        var words = question?.Words[answer?.Language ?? language];
        string Option(string id) => words is null ? Of(id) : words.OptionHtml.TryGetValue(id, out var html) ? $"<span>{html}</span> <small>{Of(id)}</small>"
            : words.MatchText.TryGetValue(id, out var match) ? $"{Of(match)} <small>{Of(id)}</small>" : Of(id);
        var key = question?.Key switch
        {
            QuestionKey.One one => one.OptionId,
            QuestionKey.Several several => string.Join(", ", several.OptionIds),
            QuestionKey.Order order => string.Join(" → ", order.OptionIds),
            QuestionKey.Number of => string.Create(CultureInfo.InvariantCulture, $"{of.Value} ± {of.Tolerance} {of.Unit}"),
            QuestionKey.Match match => string.Join(", ", match.Pairs),
            QuestionKey.Spot spot => spot.RegionId,
            null => "",
            _ => throw new System.Diagnostics.UnreachableException(),
        };
        return
        [
            Of(Number(number)), $"{words?.StemHtml ?? Of(drawn.QuestionId)} <small>{Of(drawn.QuestionId)}</small>", string.Join("<br>", drawn.OptionIds.Select(Option)),
            Of(answer is null ? "" : answer.Number?.ToString(CultureInfo.InvariantCulture) ?? string.Join(", ", answer.OptionIds)), Of(mark), Of(key),
        ];
    }

    private static byte[] FullSitting(StoredSitting stored) => AuditJson.Write(new
    {
        stored.Sitting, stored.TakenOn, stored.Zone, stored.Reading,
        Results = stored.Results.Select(one => new
        {
            one.Id, one.GradedAt, one.CorrectionReason, one.Result.CourseHash, one.Result.IsPassed, one.Result.Points, one.Result.MaxPoints, one.Result.Topics,
            one.Result.Questions, Reasons = one.Result.Reasons.Select(AuditJson.Case),
        }),
    });

    // Of a question its id, version and place; of an answer when it came; of a result the topics. Reasons that name a question are only counted.
    private static byte[] OpenSitting(StoredSitting stored)
    {
        var sitting = stored.Sitting;
        var answers = sitting.Answers.ToDictionary(answer => answer.QuestionId);
        return AuditJson.Write(new
        {
            sitting.Id, sitting.PersonId, sitting.Draw.CourseHash, sitting.Draw.QuizId, sitting.StartedAt, sitting.SubmittedAt, stored.TakenOn, stored.Zone, stored.Reading,
            Questions = sitting.Draw.Questions.Select(drawn => new
            {
                drawn.QuestionId, drawn.QuestionVersion, AnsweredAt = answers.GetValueOrDefault(drawn.QuestionId)?.SavedAt, answers.GetValueOrDefault(drawn.QuestionId)?.Language,
            }),
            Results = stored.Results.Select(one => new
            {
                one.Id, one.GradedAt, one.CorrectionReason, one.Result.CourseHash, one.Result.IsPassed, one.Result.Points, one.Result.MaxPoints, one.Result.Topics,
                CriticalMissed = one.Result.Reasons.OfType<SittingReason.CriticalMissed>().Count(),
            }),
        });
    }

    private string Said(Mark mark) => mark switch
    {
        Mark.Right => text["Right"],
        Mark.Wrong => text["Wrong"],
        Mark.Blank => text["Blank"],
        Mark.Late => text["Late"],
        Mark.LeftOut => text["LeftOut"],
    };
}

using Training.Scoring;

namespace Training.Records;

/// <summary>Sittings and their results as rows, and back.</summary>
internal static class SittingRows
{
    internal static SittingRecord Of(Sitting sitting, string hash, int copy, DateOnly takenOn, string zone, DateTimeOffset now)
    {
        var id = Guid.CreateVersion7(now);
        return new()
        {
            Id = id,
            FormId = sitting.Id,
            Copy = copy,
            ContentHash = hash,
            PersonId = sitting.PersonId,
            CourseHash = sitting.Draw.CourseHash,
            QuizId = sitting.Draw.QuizId,
            Seed = sitting.Draw.Seed,
            StartedAt = sitting.StartedAt,
            SubmittedAt = sitting.SubmittedAt,
            TakenOn = takenOn,
            Zone = zone,
            KeptAt = now,
            Questions = [.. sitting.Draw.Questions.Select((question, index) => new DrawnQuestionRecord
            {
                SittingId = id,
                Position = index + 1,
                QuestionId = question.QuestionId,
                QuestionVersion = question.QuestionVersion,
                OptionIds = question.OptionIds,
            })],
            Answers = [.. sitting.Answers.Select(answer => new AnswerRecord
            {
                SittingId = id,
                QuestionId = answer.QuestionId,
                OptionIds = answer.OptionIds,
                Number = answer.Number,
                Language = answer.Language,
                SavedAt = answer.SavedAt,
            })],
        };
    }

    internal static SittingResultRecord Of(
        SittingResult result, Guid sittingId, int number, DateTimeOffset now, Guid? correctionId = null)
    {
        var id = Guid.CreateVersion7(now);
        return new()
        {
            Id = id,
            SittingId = sittingId,
            Number = number,
            CourseHash = result.CourseHash,
            IsPassed = result.IsPassed,
            Points = result.Points,
            MaxPoints = result.MaxPoints,
            Reasons = StoredJson.Write(result.Reasons),
            GradedAt = now,
            Regrading = correctionId is { } correction ? new() { ResultId = id, CorrectionId = correction } : null,
            Topics = [.. result.Topics.Select((topic, index) => new TopicResultRecord
            {
                ResultId = id,
                Position = index + 1,
                Topic = topic.Topic,
                Points = topic.Points,
                MaxPoints = topic.MaxPoints,
            })],
            Questions = [.. result.Questions.Select((question, index) => new QuestionResultRecord
            {
                ResultId = id,
                Position = index + 1,
                QuestionId = question.QuestionId,
                QuestionVersion = question.QuestionVersion,
                Mark = question.Mark,
            })],
        };
    }

    internal static Sitting Read(SittingRecord row)
    {
        var questions = row.Questions.OrderBy(question => question.Position).ToList();
        var places = questions.ToDictionary(question => question.QuestionId, question => question.Position, StringComparer.Ordinal);
        var draw = new Draw(row.CourseHash, row.QuizId, row.Seed,
            [.. questions.Select(question => new DrawnQuestion(question.QuestionId, question.QuestionVersion, question.OptionIds))]);
        return new(row.FormId, row.PersonId, draw, row.StartedAt, row.SubmittedAt,
            [.. row.Answers.OrderBy(answer => places[answer.QuestionId])
                .Select(answer => new Answer(answer.QuestionId, answer.OptionIds, answer.Number, answer.Language, answer.SavedAt))]);
    }

    internal static SittingResult Read(SittingResultRecord row) => new(
        row.CourseHash, row.IsPassed, row.Points, row.MaxPoints,
        [.. row.Topics.OrderBy(topic => topic.Position).Select(topic => new TopicResult(topic.Topic, topic.Points, topic.MaxPoints))],
        [.. row.Questions.OrderBy(question => question.Position)
            .Select(question => new QuestionResult(question.QuestionId, question.QuestionVersion, question.Mark))],
        StoredJson.Read<SittingReason>(row.Reasons));
}

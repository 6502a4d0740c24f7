using Training.Courses;
using Training.Records;
using Training.Scoring;
using Training.Web.Shelf;

namespace Training.Web.Features.Corrections;

/// <summary>Reads how questions that turned out wrong are graded, with the keys that this needs.</summary>
public sealed class CorrectionReading(CoursesByHash courses)
{
    /// <summary>The corrections of a course that count: of each text of a question the newest.</summary>
    public async Task<IReadOnlyList<KeyCorrection>> ReadAsync(RecordsContext records, string courseId, CancellationToken cancellation)
    {
        var counting = (await records.CorrectionsOfAsync(courseId, cancellation)).DistinctBy(row => (row.QuestionId, row.QuestionVersion));
        var read = new List<KeyCorrection>();
        foreach (var row in counting) read.Add(await ReadAsync(records, row, cancellation));
        return read;
    }

    /// <summary>One correction as the grading reads it.</summary>
    public async Task<KeyCorrection> ReadAsync(RecordsContext records, KeyCorrectionRecord row, CancellationToken cancellation)
    {
        if (row.ByHash is null) return new KeyCorrection.LeaveOut(row.QuestionId, row.QuestionVersion);
        var course = await courses.FindAsync(records, row.CourseId, row.ByHash, cancellation);
        var by = course?.Questions.FirstOrDefault(question => question.Id == row.QuestionId && question.Version == row.ByVersion)
            ?? throw new InvalidOperationException($"Correction {row.Id} names a key that was never kept.");
        return new KeyCorrection.OtherKey(row.QuestionId, row.QuestionVersion, by);
    }

    /// <summary>The question in the text that was asked, from the course that serves or an earlier one; null where no sitting was drawn from a text of the course that has it.</summary>
    public async Task<Question?> FindAskedAsync(RecordsContext records, Course course, string questionId, string version, CancellationToken cancellation)
    {
        foreach (var text in await records.DrawnTextsAsync(course.Quiz.Id, cancellation))
        {
            var drawn = await courses.FindAsync(records, course.Id, text.CourseHash, cancellation);
            if (drawn?.Questions.FirstOrDefault(question => question.Id == questionId && question.Version == version) is { } asked) return asked;
        }

        return null;
    }
}

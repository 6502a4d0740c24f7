using Training.Courses;
using Training.Records;
using Training.Scoring;
using Training.Web.Shelf;

namespace Training.Web.Features.Sittings;

/// <summary>What the page of a sent quiz is given: what it came to and what to reread, never the key.</summary>
/// <param name="SittingId">For addresses.</param>
/// <param name="CourseId">For addresses.</param>
/// <param name="CourseTitle">What the paper calls the course.</param>
/// <param name="Kind">What the course leads to.</param>
/// <param name="Result">What grading found.</param>
/// <param name="Needed">How many had to be right in all.</param>
/// <param name="SentAt">In the zone of the sitting.</param>
/// <param name="TakenOn">The day that it counts as.</param>
/// <param name="Answered">How many questions had an answer.</param>
/// <param name="Late">How many answers came after the time limit.</param>
/// <param name="Topics">In blueprint order.</param>
/// <param name="Critical">Critical questions that were not right, each with its passage quoted.</param>
/// <param name="Reread">Every other passage to reread, once each.</param>
/// <param name="Guidance">The guidance in force for the text that was asked about: what it is about, its value, its source and since when.</param>
/// <param name="Reading">Who read it out, as said at its start.</param>
/// <param name="Serial">The certificate that rests on it, as printed; null where there is none.</param>
/// <param name="Corrected">Earlier results with why each was followed by another, the oldest first; empty where it was graded once.</param>
public sealed record ResultPage(
    Guid SittingId,
    string CourseId,
    string CourseTitle,
    SchemeKind Kind,
    SittingResult Result,
    int Needed,
    DateTimeOffset SentAt,
    DateOnly TakenOn,
    int Answered,
    int Late,
    IReadOnlyList<TopicLine> Topics,
    IReadOnlyList<PassageLine> Critical,
    IReadOnlyList<PassageLine> Reread,
    IReadOnlyList<(string Subject, string Value, GuidanceEntry Entry)> Guidance,
    ReadOut Reading,
    string? Serial,
    IReadOnlyList<CorrectedResult> Corrected)
{
    /// <summary>Whether the visitor may try again today; looked at after a failure.</summary>
    public Retest Retest { get; init; } = new Retest.Allowed();

    /// <summary>The page in one language.</summary>
    /// <param name="course">The snapshot that it was graded with.</param>
    /// <param name="stored">The sitting; it has a result.</param>
    /// <param name="language">In which language.</param>
    /// <param name="words">Puts guidance in words.</param>
    /// <param name="serial">Of the certificate that rests on it, or null.</param>
    public static ResultPage Of(Course course, StoredSitting stored, Language language, GuidanceSet words, string? serial)
    {
        var (sitting, result) = (stored.Sitting, stored.Results[^1].Result);
        var feedback = SittingFeedback.For(course, result);
        var critical = feedback.Where(one => one.IsCritical).Select(one => PassageLine.Of(course, one, language)).DistinctBy(line => line.Address).ToList();
        return new(
            sitting.Id,
            course.Id,
            course.Scheme.Words[language].Title,
            course.Scheme.Kind,
            result,
            PassMarks.OfPercent(course.Quiz.PassPercent, result.MaxPoints),
            TimeZoneInfo.ConvertTimeBySystemTimeZoneId(sitting.SubmittedAt, stored.Zone),
            stored.TakenOn,
            result.Questions.Count(question => question.Mark is not (Mark.Blank or Mark.LeftOut)),
            result.Questions.Count(question => question.Mark == Mark.Late),
            [.. result.Topics.Zip(course.Quiz.Blueprint, (topic, row) => new TopicLine(
                course.Words[language].Topics[topic.Topic], topic.Points, topic.MaxPoints, PassMarks.OfPercent(row.PassPercent, topic.MaxPoints)))],
            critical,
            [.. feedback.Select(one => PassageLine.Of(course, one, language)).DistinctBy(line => line.Address)
                .Where(line => critical.All(other => other.Address != line.Address))],
            [.. course.Guidance.Select(entry => (words.SubjectText(entry.Subject, language), words.Text(entry.Value, language) ?? entry.Id, entry))],
            stored.Reading,
            serial,
            [.. stored.Results.Zip(stored.Results.Skip(1), (before, after) => new CorrectedResult(
                before.Result, DateOnly.FromDateTime(TimeZoneInfo.ConvertTimeBySystemTimeZoneId(after.GradedAt, stored.Zone).DateTime), after.CorrectionReason ?? ""))]);
    }
}

/// <summary>A result that another one followed.</summary>
/// <param name="Was">As it was.</param>
/// <param name="On">The day on which it was graded again, in the zone of the sitting.</param>
/// <param name="Reason">Why, in a lead's words.</param>
public sealed record CorrectedResult(SittingResult Was, DateOnly On, string Reason);

/// <summary>One topic of a result.</summary>
/// <param name="Title">In the page's language.</param>
/// <param name="Points">Right questions.</param>
/// <param name="MaxPoints">Drawn questions.</param>
/// <param name="Needed">How many had to be right; 0 where the topic has no minimum of its own.</param>
public sealed record TopicLine(string Title, int Points, int MaxPoints, int Needed);

/// <summary>A passage to reread.</summary>
/// <param name="Topic">Title of the topic.</param>
/// <param name="Title">Title of the passage.</param>
/// <param name="Address">Where it stands.</param>
/// <param name="QuoteHtml">Its words, as safe HTML.</param>
public sealed record PassageLine(string Topic, string Title, string Address, string QuoteHtml)
{
    /// <summary>The passage of one question that was not answered right.</summary>
    public static PassageLine Of(Course course, SittingFeedback feedback, Language language)
    {
        var (moduleId, sectionId) = feedback.Passage;
        var page = course.Modules.Single(module => module.Id == moduleId).Pages[language];
        return new(
            course.Words[language].Topics[feedback.Topic],
            page.Sections.FirstOrDefault(section => section.Id == sectionId)?.Title ?? page.Title,
            CourseAddresses.OfModule(language, course.Id, moduleId, sectionId),
            PassageQuote.Find(page, sectionId) ?? "");
    }
}

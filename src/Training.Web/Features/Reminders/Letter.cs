using System.Globalization;
using System.Resources;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Scoring;
using Training.Web.Features.TrainingChanges;
using Training.Web.Languages;

namespace Training.Web.Features.Reminders;

/// <summary>A mail in words: subject and plain text.</summary>
/// <param name="Subject">One line.</param>
/// <param name="Text">Paragraphs apart by an empty line.</param>
public sealed record Letter(string Subject, string Text)
{
    private static readonly ResourceManager Words = new(typeof(RemindersText));

    /// <summary>A calendar file that goes with it, or null.</summary>
    public string? Calendar { get; init; }

    /// <summary>The reminder to the holder of a certification.</summary>
    /// <param name="reminder">Which.</param>
    /// <param name="period">The period that it reminds of.</param>
    /// <param name="name">The holder's name; null where it was erased.</param>
    /// <param name="title">What the scheme is called.</param>
    /// <param name="day">Today, in the zone of the holder's site.</param>
    /// <param name="page">Address of the holder's own pages.</param>
    /// <param name="provider">Who writes.</param>
    /// <param name="language">The holder's.</param>
    public static Letter Of(
        Reminder reminder, Period period, string? name, string title, DateOnly day, Uri page, string provider, Language language) =>
        language.Speak(() =>
        {
            var isOver = day > reminder.ExpiresOn;
            var toDo = isOver
                ? day <= period.GraceEndsOn ? Word("StillRenew", Written.Date(period.GraceEndsOn)) : Word("WholeCourse")
                : day < period.WindowOpensOn ? Word("OpensOn", Written.Date(period.WindowOpensOn)) : Word("RenewNow");
            return new Letter(
                isOver ? Word("SubjectOver", title, Written.Date(reminder.ExpiresOn)) : Word("SubjectAhead", title, Written.Date(reminder.ExpiresOn)),
                Paragraphs(
                    name is null ? null : Word("Greeting", name),
                    isOver ? Word("Over", title, Written.Date(reminder.ExpiresOn)) : Word("Ahead", title, Written.Date(reminder.ExpiresOn)),
                    toDo,
                    Word("YourPages", page),
                    isOver ? Word("DoNotHandle") : null,
                    Word("SentBy", provider)));
        });

    /// <summary>The weekly summary to a representative of an employer.</summary>
    /// <param name="employer">Its name.</param>
    /// <param name="lapsed">One for each certification that lapsed lately, in the order that they are to be read in.</param>
    /// <param name="ahead">The same for those that lapse soon.</param>
    /// <param name="more">How many lines were left out.</param>
    /// <param name="told">Names of those who have no address and are to be told by somebody.</param>
    /// <param name="held">Names of those who are on hold.</param>
    /// <param name="met">Encounters at its sites in the last seven days, and how many of them were bites or nearly so.</param>
    /// <param name="page">Address of the employer's page.</param>
    /// <param name="provider">Who writes.</param>
    /// <param name="language">The representative's.</param>
    public static Letter OfWeek(
        string employer, IReadOnlyList<DigestLine> lapsed, IReadOnlyList<DigestLine> ahead, int more, IReadOnlyList<string> told,
        IReadOnlyList<string> held, (int All, int Close) met, Uri page, string provider, Language language) =>
        language.Speak(() => new Letter(
            Word("SubjectWeek", employer),
            Paragraphs(
                lapsed.Count == 0 ? null : Word("WeekLapsed", string.Join('\n', lapsed.Select(Line))),
                ahead.Count == 0 ? null : Word("WeekAhead", string.Join('\n', ahead.Select(Line))),
                more == 0 ? null : Word("WeekMore", more),
                told.Count == 0 ? null : Word("WeekTold", string.Join('\n', told.Select(name => $"- {name}"))),
                held.Count == 0 ? null : Word("WeekHeld", string.Join('\n', held.Select(name => $"- {name}"))),
                met.All == 0 ? null : met.Close == 0 ? Word("WeekMet", met.All) : Word("WeekMetClose", met.All, met.Close),
                Word("WeekPage", page),
                Word("SentBy", provider))));

    /// <summary>To whoever is on hold, or was until a review ended it.</summary>
    /// <param name="concluded">What was concluded; null while the hold lasts.</param>
    /// <param name="page">Address of their own pages.</param>
    /// <param name="provider">Who writes.</param>
    /// <param name="language">The reader's.</param>
    public static Letter OfHold(string? concluded, Uri page, string provider, Language language) =>
        language.Speak(() => new Letter(
            concluded is null ? Word("SubjectHold") : Word("SubjectHoldEnded"),
            Paragraphs(
                concluded is null ? Word("HoldSet") : Word("HoldEnded", concluded),
                Word("HoldMeans"),
                Word("HoldPage", page),
                Word("SentBy", provider))));

    /// <summary>To a lead: reviews that are new, and those that are overdue.</summary>
    /// <param name="opened">How many are new.</param>
    /// <param name="overdue">How many are overdue.</param>
    /// <param name="holds">How many of both keep somebody from handling.</param>
    /// <param name="page">Address of the reviews.</param>
    /// <param name="provider">Who writes.</param>
    /// <param name="language">The reader's.</param>
    public static Letter OfReviews(int opened, int overdue, int holds, Uri page, string provider, Language language) =>
        language.Speak(() => new Letter(
            overdue > 0 ? Word("SubjectOverdue") : Word("SubjectReviews"),
            Paragraphs(
                opened == 0 ? null : Word("ReviewsOpened", opened),
                overdue == 0 ? null : Word("ReviewsOverdue", overdue, Certification.Reviews.Days),
                holds == 0 ? null : Word("ReviewsHold", holds),
                Word("ReviewsPage", page),
                Word("SentBy", provider))));

    /// <summary>To somebody whose training rests on a value that is no longer so.</summary>
    /// <param name="changes">All of one day.</param>
    /// <param name="page">Address of their own pages.</param>
    /// <param name="provider">Who writes.</param>
    /// <param name="language">The reader's.</param>
    public static Letter OfGuidance(IReadOnlyList<TrainingChange> changes, Uri page, string provider, Language language) =>
        language.Speak(() => new Letter(
            Word("SubjectGuidance"),
            Paragraphs(
                Word("GuidanceChanged", string.Join('\n', changes.Select(change => Word("GuidanceLine", change.Subject, change.Is, change.Was)))),
                Word("GuidancePage", page),
                Word("SentBy", provider))));

    /// <summary>A result was corrected because a question turned out wrong: to the person, or to who represents their employer.</summary>
    /// <param name="name">The person's name where somebody else is told; null in the letter to the person.</param>
    /// <param name="title">What the course's paper is called.</param>
    /// <param name="takenOn">The day of the sitting.</param>
    /// <param name="was">The result before.</param>
    /// <param name="now">The result that counts from now on.</param>
    /// <param name="reason">Why, in a lead's words.</param>
    /// <param name="page">Where to look.</param>
    /// <param name="provider">Who writes.</param>
    /// <param name="language">The reader's.</param>
    public static Letter OfCorrection(
        string? name, string title, DateOnly takenOn, SittingResult was, SittingResult now, string reason, Uri page, string provider, Language language) =>
        language.Speak(() => new Letter(
            Word("SubjectCorrected", title),
            Paragraphs(
                name is null ? Word("CorrectedYours", title, Written.Date(takenOn)) : Word("CorrectedTheirs", title, Written.Date(takenOn), name),
                Word("CorrectedFrom", was.Points, was.MaxPoints, now.Points, now.MaxPoints),
                now.IsPassed == was.IsPassed ? Word("CorrectedSame") : now.IsPassed ? Word("CorrectedPass") : Word("CorrectedFail"),
                Word("CorrectedWhy", reason),
                Word("CorrectedPage", page),
                Word("SentBy", provider))));

    /// <summary>The letter as a mail that waits to be sent.</summary>
    /// <param name="to">Somebody with an address.</param>
    /// <param name="now">When it is written, UTC; it may be sent at once.</param>
    public OutgoingMail To(Recipient to, DateTimeOffset now) => new()
    {
        Id = Guid.CreateVersion7(), PersonId = to.PersonId, Language = to.Language, Subject = Subject, Text = Text, Calendar = Calendar, MadeAt = now, NextTryAt = now,
        Address = to.Address ?? throw new ArgumentException("Nobody is written to without an address.", nameof(to)),
    };

    private static string Line(DigestLine line) =>
        Word("WeekLine", line.Name ?? Word("NameErased"), line.Badge ?? Word("NoBadge"), line.Title, Written.Date(line.ExpiresOn));

    /// <summary>Paragraphs apart by an empty line; null ones are left out.</summary>
    internal static string Paragraphs(params IReadOnlyList<string?> paragraphs) => string.Join("\n\n", paragraphs.Where(text => text is not null)) + "\n";

    private static string Word(string key, params IReadOnlyList<object> values) =>
        string.Format(
            CultureInfo.CurrentCulture,
            Words.GetString(key, CultureInfo.CurrentUICulture) ?? throw new InvalidOperationException($"RemindersText has no {key}."),
            [.. values]);
}

/// <summary>One certification in a weekly summary.</summary>
/// <param name="Name">Whose; null where it was erased.</param>
/// <param name="Badge">Their number with this employer; null where none is kept.</param>
/// <param name="Title">What the scheme is called.</param>
/// <param name="ExpiresOn">Its last day.</param>
public sealed record DigestLine(string? Name, string? Badge, string Title, DateOnly ExpiresOn);

namespace Training.Web;

/// <summary>Everything that this program logs: ids and counts, never names, addresses of mail or answers.</summary>
internal static partial class Log
{
    [LoggerMessage(1, LogLevel.Information, "Courses read: {Courses} served from the folder, {Problems} findings")]
    public static partial void CoursesRead(ILogger logger, int courses, int problems);

    [LoggerMessage(2, LogLevel.Warning, "Course finding; the last good version keeps serving. {Finding}")]
    public static partial void CourseProblem(ILogger logger, string finding);

    [LoggerMessage(3, LogLevel.Warning, "The courses folder cannot be listed; what was read before keeps serving: {Folder}")]
    public static partial void CoursesFolderUnreadable(ILogger logger, string folder);

    [LoggerMessage(4, LogLevel.Error, "The records cannot be reached; courses are neither restored from them nor kept in them")]
    public static partial void RecordsUnreachable(ILogger logger, Exception exception);

    [LoggerMessage(7, LogLevel.Error, "The records cannot be reached; the name of the provider and the choice of courses stay as they were read before")]
    public static partial void ChoicesUnreadable(ILogger logger, Exception exception);

    [LoggerMessage(6, LogLevel.Error, "A look at the courses folder failed; what was read before keeps serving")]
    public static partial void LookFailed(ILogger logger, Exception exception);

    [LoggerMessage(5, LogLevel.Warning, "A kept course cannot be read by this version of the program and is not restored: {CourseId}")]
    public static partial void SnapshotUnreadable(ILogger logger, string courseId);

    [LoggerMessage(30, LogLevel.Warning, "A mail server refused the address of a person for good. Mail {MailId}, person {PersonId}")]
    public static partial void MailAddressRefused(ILogger logger, Guid mailId, Guid personId);

    [LoggerMessage(31, LogLevel.Error, "A mail was given up after its last try. Mail {MailId}, person {PersonId}")]
    public static partial void MailGivenUp(ILogger logger, Guid mailId, Guid personId);

    [LoggerMessage(32, LogLevel.Information, "Reminders: {Mails} written as mails, {Told} put on the lists of crews")]
    public static partial void Reminded(ILogger logger, int mails, int told);

    [LoggerMessage(33, LogLevel.Information, "Classes: {Told} people told or reminded, {Seated} who waited got a seat")]
    public static partial void ToldOfClasses(ILogger logger, int told, int seated);

    [LoggerMessage(34, LogLevel.Information, "Papers of runs: {Made} made, {Failed} that cannot be made")]
    public static partial void PapersMade(ILogger logger, int made, int failed);

    [LoggerMessage(40, LogLevel.Error, "The keys changed and cannot be read or exchanged; those of before go on signing: {Code}")]
    public static partial void KeysUnreadable(ILogger logger, string code);

    [LoggerMessage(41, LogLevel.Warning, "The certificate that papers are signed with has ended: {Kid}")]
    public static partial void CertificateEnded(ILogger logger, string kid);

    [LoggerMessage(42, LogLevel.Warning, "The timestamp authority did not answer; papers go out without its word for a minute")]
    public static partial void TimestampMissing(ILogger logger, Exception exception);

    [LoggerMessage(43, LogLevel.Warning, "The timestamp authority refused, or its answer is not for what was asked; papers go out without its word for a minute")]
    public static partial void TimestampUnusable(ILogger logger);

    [LoggerMessage(50, LogLevel.Error, "The log of what was issued has {Leaves} leaves, fewer than the {Signed} of its newest signed head; no head is signed until that is mended")]
    public static partial void LogWasCut(ILogger logger, long leaves, long signed);

    [LoggerMessage(20, LogLevel.Warning, "A rule granted, but its decision or paper has a problem. Person {PersonId}, scheme {SchemeId}: {Code}")]
    public static partial void RuleDecisionProblem(ILogger logger, Guid personId, string schemeId, string code);
}

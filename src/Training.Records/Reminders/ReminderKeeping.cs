namespace Training.Records;

/// <summary>Keeps reminders, invitations and weekly summaries, each with its mail: both or neither, and each once.</summary>
public static class ReminderKeeping
{
    /// <summary>Keeps a reminder and its mail. False where it was made before; nothing is written then.</summary>
    public static Task<bool> TryKeepAsync(this RecordsContext records, ReminderRecord reminder, OutgoingMail? mail, CancellationToken cancellation) =>
        mail is null ? records.TryInsertAsync(cancellation, reminder) : records.TryInsertAsync(cancellation, mail, reminder);

    /// <summary>Keeps a summary and its mail. False where it was made before; nothing is written then.</summary>
    public static Task<bool> TryKeepAsync(this RecordsContext records, DigestRecord digest, OutgoingMail? mail, CancellationToken cancellation) =>
        mail is null ? records.TryInsertAsync(cancellation, digest) : records.TryInsertAsync(cancellation, mail, digest);

    /// <summary>Keeps what somebody was told about a class, and its mail. False where it was made before; nothing is written then.</summary>
    public static Task<bool> TryKeepAsync(this RecordsContext records, ClassInvitation invitation, OutgoingMail? mail, CancellationToken cancellation) =>
        mail is null ? records.TryInsertAsync(cancellation, invitation) : records.TryInsertAsync(cancellation, mail, invitation);

    /// <summary>Keeps a reminder of a class and its mail. False where it was made before; nothing is written then.</summary>
    public static Task<bool> TryKeepAsync(this RecordsContext records, ClassReminder reminder, OutgoingMail? mail, CancellationToken cancellation) =>
        mail is null ? records.TryInsertAsync(cancellation, reminder) : records.TryInsertAsync(cancellation, mail, reminder);
}

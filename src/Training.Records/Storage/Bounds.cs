namespace Training.Records;

/// <summary>Lengths of text columns, in characters, and of lists. Every text column has one, but for stored JSON and course content.</summary>
public static class Bounds
{
    /// <summary>Ids that authors choose: courses, schemes, quizzes, checklists, topics, questions, steps.</summary>
    public const int Id = 100;

    /// <summary>A SHA-256 in lower-case hex.</summary>
    public const int Hash = 64;

    /// <summary>Names of people, employers, sites and crews.</summary>
    public const int Name = 200;

    /// <summary>Badge numbers, serials, permit numbers.</summary>
    public const int Number = 60;

    /// <summary>IANA time zones and regions.</summary>
    public const int Zone = 64;

    /// <summary>Surroundings and kit of a practical.</summary>
    public const int Conditions = 500;

    /// <summary>Where the people of a class meet.</summary>
    public const int MeetingPlace = 300;

    /// <summary>Reasons and remarks that people write.</summary>
    public const int Reason = 2000;

    /// <summary>What somebody signs in with.</summary>
    public const int SignInName = 100;

    /// <summary>A mail address (RFC 5321, 4.5.3.1.3: a path has at most 256 octets, its angle brackets included).</summary>
    public const int MailAddress = 254;

    /// <summary>The text of a mail: a weekly summary of a few hundred people.</summary>
    public const int MailText = 60_000;

    /// <summary>A calendar file that goes with a mail: one event and the clock changes around it.</summary>
    public const int Calendar = 8000;

    /// <summary>The name of the provider, as long as its papers have room for.</summary>
    public const int ProviderName = 120;

    /// <summary>Its postal address on one line.</summary>
    public const int ProviderAddress = 300;

    /// <summary>The public address of this server; short enough for an index key on every engine.</summary>
    public const int PublicAddress = 400;

    /// <summary>A milestone as it is stored.</summary>
    public const int Milestone = 10;

    /// <summary>A hashed password, as the framework writes it.</summary>
    public const int PasswordHash = 200;

    /// <summary>A key that protects cookies, as the framework writes it: about 1,000 characters unencrypted.</summary>
    public const int KeyXml = 4000;

    /// <summary>Most rows that one query about one person reads; the newest are kept.</summary>
    internal const int RowsOfOnePerson = 1000;

    /// <summary>How often a write is tried again that lost a race for a number. Each loss means that somebody else got through.</summary>
    internal const int Attempts = 50;
}

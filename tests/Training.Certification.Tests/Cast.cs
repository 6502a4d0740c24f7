using Training.Courses;
using Training.Scoring;

namespace Training.Certification.Tests;

/// <summary>Invented people and schemes that the tests share.</summary>
internal static class Cast
{
    public const string Handler = "tool-handler";
    public const string Awareness = "awareness";

    public static readonly Guid Worker = Id(100);
    public static readonly Guid Lead = Id(200);
    public static readonly Guid Scorer = Id(300);
    public static readonly Guid Teacher = Id(400);

    /// <summary>12 months, a window of 60 days, 30 days of grace.</summary>
    public static readonly Terms Annual = new(D("P12M"), D("P60D"), D("P30D"));

    public static readonly Requirement.PassedQuiz OnQuiz = new("tool-quiz", D("P90D"));
    public static readonly Requirement.PassedPractical OnModel = new("move-to-bucket", Subject.Model, D("P90D"));
    public static readonly Requirement.PassedPractical OnLive = new("move-to-bucket", Subject.Live, D("P90D"));
    public static readonly Requirement.Practised OnModelAgain = new("move-to-bucket", 2, D("P6M"));
    public static readonly Requirement.Holds HoldsAwareness = new(Awareness);

    public static Guid Id(int number) => new(number, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0);

    public static DateOnly On(string date) => DateOnly.ParseExact(date, "yyyy-MM-dd");

    public static Duration D(string text) =>
        Duration.TryParse(text, out var duration) ? duration : throw new ArgumentException(text, nameof(text));

    /// <summary>A certificate of training that the rule grants for a quiz.</summary>
    public static Scheme TrainingScheme(params Requirement[] requirements) => new(
        Handler, SchemeKind.CertificateOfTraining, On("2000-01-01"), On("2099-12-31"), Separation.None, Annual, [D("P90D"), D("P60D"), D("P30D"), D("P7D")],
        requirements, requirements, new Dictionary<Language, SchemeWords>());

    /// <summary>A certification, with its hats apart.</summary>
    public static Scheme CertificationScheme(params Requirement[] requirements) =>
        TrainingScheme(requirements) with { Kind = SchemeKind.Certification, Separation = Separation.TeachScoreDecide };

    public static CaseFile File(Scheme scheme, params Evidence[] evidence) => new(Worker, scheme, evidence, [], []);

    public static Evidence.OfQuiz Sitting(int id, string on, bool isPassed = true, string quiz = "tool-quiz") =>
        new() { ResultId = Id(id), PersonId = Worker, On = On(on), QuizId = quiz, IsPassed = isPassed };

    /// <summary>A sheet of a try of its own.</summary>
    public static Evidence.OfPractical Sheet(
        int id, string on, PracticalOutcome outcome = PracticalOutcome.Passed, Subject subject = Subject.Model) => new()
        {
            ResultId = Id(id),
            PersonId = Worker,
            On = On(on),
            ClassId = Id(900),
            Try = id,
            ChecklistId = "move-to-bucket",
            Subject = subject,
            Outcome = outcome,
            ScorerId = Scorer,
        };

    public static Teaching Taught(Guid by, string on) => new(Id(900), Worker, by, On(on));

    public static Period Period(int number, string startsOn, string expiresOn) =>
        new(number, On(startsOn), On(startsOn), On(expiresOn), Annual);

    public static HeldCertification Held(params Period[] periods) => new(Worker, Handler, periods, [], []);

    public static HeldCertification Suspended(this HeldCertification held, string from, string? reinstatedOn = null) => held with
    {
        Suspensions =
        [
            .. held.Suspensions,
            new(On(from), Lead, "asked for", On(from).AddDays(30), reinstatedOn is null ? null : new(On(reinstatedOn), Lead, "settled")),
        ],
    };

    public static HeldCertification Withdrawn(this HeldCertification held, string on) =>
        held with { Withdrawals = [.. held.Withdrawals, new(On(on), Lead, Id(201), "asked for")] };

    /// <summary>As it lies in the records where each row came there on its first day.</summary>
    public static KeptCertification Kept(HeldCertification held) => new(
        held.PersonId, held.SchemeId,
        [
            .. held.Periods.Select(period => new KeptPeriod(
                period, Id(5000 + period.Number), period.Number == 1 ? Route.Grant : Route.Renewal, Lead, "rules", "America/Phoenix", [], period.StartsOn)),
        ],
        [.. held.Suspensions.Select((one, index) => new KeptSuspension(Id(6000 + index), one, one.From, one.Reinstatement?.On))],
        [.. held.Withdrawals.Select((one, index) => new KeptWithdrawal(Id(7000 + index), one, one.On))]);

    public static IReadOnlyList<DecisionReason> Reasons(this Decision decision) =>
        Assert.IsType<Decision.NotYet>(decision).Reasons;

    public static Decision.Granted Granted(this Decision decision) => Assert.IsType<Decision.Granted>(decision);
}

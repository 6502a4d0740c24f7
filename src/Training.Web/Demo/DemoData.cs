using System.Globalization;
using CsvHelper;
using CsvHelper.Configuration;
using Training.Scoring;
using Training.Certification;
using YamlDotNet.Serialization;
using YamlDotNet.Serialization.NamingConventions;

namespace Training.Web.Demo;

/// <summary>The invented programme of <c>demo-data/</c>, as its files say it. Days are counted back from the day of the replay.</summary>
internal sealed class DemoData
{
    public required DemoProvider Provider { get; init; }

    public required IReadOnlyList<DemoEmployer> Employers { get; init; }

    public required IReadOnlyList<DemoSite> Sites { get; init; }

    public required IReadOnlyList<DemoBitePlan> BitePlans { get; init; }

    public required IReadOnlyList<DemoHospital> Hospitals { get; init; }

    public required IReadOnlyList<DemoPerson> People { get; init; }

    public required IReadOnlyList<DemoAppointment> Appointments { get; init; }

    public required IReadOnlyList<DemoRepresentative> Representatives { get; init; }

    public required IReadOnlyList<DemoAccount> Accounts { get; init; }

    public required IReadOnlyList<DemoEmployment> Employments { get; init; }

    public required IReadOnlyList<DemoClass> Classes { get; init; }

    public required IReadOnlyList<DemoAttendance> Attendance { get; init; }

    public required IReadOnlyList<DemoClassDay> ClassDays { get; init; }

    public required IReadOnlyList<DemoWaiting> ClassWaitings { get; init; }

    public required IReadOnlyList<DemoPresence> ClassPresences { get; init; }

    public required IReadOnlyList<DemoReview> Reviews { get; init; }

    public required IReadOnlyList<DemoSitting> Sittings { get; init; }

    public required IReadOnlyList<DemoHabit> Habits { get; init; }

    public required IReadOnlyList<DemoCalibration> Calibrations { get; init; }

    public required IReadOnlyList<DemoCalibrationSheet> CalibrationSheets { get; init; }
    public required IReadOnlyList<DemoKit> Kit { get; init; }

    public required IReadOnlyList<DemoKitInspection> KitInspections { get; init; }

    public required IReadOnlyList<DemoScoresheet> Scoresheets { get; init; }

    public required IReadOnlyList<DemoDecision> Decisions { get; init; }

    public required IReadOnlyList<DemoSuspension> Suspensions { get; init; }

    public required IReadOnlyList<DemoWithdrawal> Withdrawals { get; init; }

    public required IReadOnlyList<DemoPanel> Panels { get; init; }

    public required IReadOnlyList<DemoPanelJudge> PanelJudges { get; init; }
    public required IReadOnlyList<DemoCompetence> Competences { get; init; }

    public required IReadOnlyList<DemoStatement> Statements { get; init; }

    public required IReadOnlyList<DemoConflict> Conflicts { get; init; }

    public required IReadOnlyList<DemoCandidateWord> CandidateWords { get; init; }

    public required IReadOnlyList<DemoAppeal> Appeals { get; init; }

    public required IReadOnlyList<DemoEncounter> Encounters { get; init; }

    public required IReadOnlyList<DemoCoverNeed> CoverNeeds { get; init; }

    public required IReadOnlyList<DemoInstructorDays> InstructorDays { get; init; }

    public required IReadOnlyList<DemoTravel> Travels { get; init; }

    /// <exception cref="IOException">A file is missing.</exception>
    /// <exception cref="CsvHelperException">A file does not read; the message names row and column.</exception>
    public static DemoData Read(string folder) => new()
    {
        Provider = new DeserializerBuilder().WithNamingConvention(CamelCaseNamingConvention.Instance).Build()
            .Deserialize<DemoProvider>(File.ReadAllText(Path.Combine(folder, "provider.yaml"))),
        Employers = Rows<DemoEmployer>(folder, "employers.csv"),
        Sites = Rows<DemoSite>(folder, "sites.csv"),
        BitePlans = Rows<DemoBitePlan>(folder, "bite-plans.csv"),
        Hospitals = Rows<DemoHospital>(folder, "hospitals.csv"),
        People = Rows<DemoPerson>(folder, "people.csv"),
        Appointments = Rows<DemoAppointment>(folder, "appointments.csv"),
        Representatives = Rows<DemoRepresentative>(folder, "representatives.csv"),
        Accounts = Rows<DemoAccount>(folder, "accounts.csv"),
        Employments = Rows<DemoEmployment>(folder, "employments.csv"),
        Classes = Rows<DemoClass>(folder, "classes.csv"),
        Attendance = Rows<DemoAttendance>(folder, "attendance.csv"),
        ClassDays = Rows<DemoClassDay>(folder, "class-days.csv"),
        ClassWaitings = Rows<DemoWaiting>(folder, "class-waiting.csv"),
        ClassPresences = Rows<DemoPresence>(folder, "class-presences.csv"),
        Reviews = Rows<DemoReview>(folder, "reviews.csv"),
        Sittings = Rows<DemoSitting>(folder, "sittings.csv"),
        Habits = Rows<DemoHabit>(folder, "habits.csv"),
        Calibrations = Rows<DemoCalibration>(folder, "calibrations.csv"),
        CalibrationSheets = Rows<DemoCalibrationSheet>(folder, "calibration-sheets.csv"),
        Kit = Rows<DemoKit>(folder, "kit.csv"),
        KitInspections = Rows<DemoKitInspection>(folder, "kit-inspections.csv"),
        Scoresheets = Rows<DemoScoresheet>(folder, "scoresheets.csv"),
        Decisions = Rows<DemoDecision>(folder, "decisions.csv"),
        Suspensions = Rows<DemoSuspension>(folder, "suspensions.csv"),
        Withdrawals = Rows<DemoWithdrawal>(folder, "withdrawals.csv"),
        Panels = Rows<DemoPanel>(folder, "panels.csv"),
        PanelJudges = Rows<DemoPanelJudge>(folder, "panel-judges.csv"),
        Competences = Rows<DemoCompetence>(folder, "instructor-competence.csv"),
        Statements = Rows<DemoStatement>(folder, "instructor-statements.csv"),
        Conflicts = Rows<DemoConflict>(folder, "instructor-conflicts.csv"),
        CandidateWords = Rows<DemoCandidateWord>(folder, "candidate-words.csv"),
        Appeals = Rows<DemoAppeal>(folder, "appeals.csv"),
        Encounters = Rows<DemoEncounter>(folder, "encounters.csv"),
        CoverNeeds = Rows<DemoCoverNeed>(folder, "cover-needs.csv"),
        InstructorDays = Rows<DemoInstructorDays>(folder, "instructor-days.csv"),
        Travels = Rows<DemoTravel>(folder, "travels.csv"),
    };

    private static List<T> Rows<T>(string folder, string file)
    {
        var form = new CsvConfiguration(CultureInfo.InvariantCulture) { PrepareHeaderForMatch = header => Spell(header.Header) };
        using var text = new StreamReader(Path.Combine(folder, file));
        using var csv = new CsvReader(text, form);
        return [.. csv.GetRecords<T>()];
    }

    // Files write days_ago, records write DaysAgo.
    private static string Spell(string header) => header.Replace("_", "", StringComparison.Ordinal).ToUpperInvariant();
}

internal sealed class DemoProvider
{
    public required string Name { get; init; }

    public required string Address { get; init; }

    public required string Zone { get; init; }

    public required string Region { get; init; }

    public required List<string> Courses { get; init; }

    public required string Password { get; init; }
}

internal sealed record DemoEmployer(string Employer, string Name, string Kind);

internal sealed record DemoSite(
    string Site,
    string Employer,
    string Name,
    string Zone,
    string Region,
    string EmergencyServices,
    string PoisonControl,
    string OnSite,
    string WithoutSignal,
    int CheckedDaysAgo,
    string SpeciesSet);

/// <param name="Site">Row id; checked on the day on which its numbers were.</param>
/// <param name="Latitude">Degrees north.</param>
/// <param name="Longitude">Degrees east.</param>
/// <param name="AccessWords">In words.</param>
/// <param name="ReviewDays">How long the check holds.</param>
internal sealed record DemoBitePlan(string Site, decimal Latitude, decimal Longitude, string AccessWords, int ReviewDays);

/// <param name="Site">In whose plan.</param>
/// <param name="Name">Its name.</param>
/// <param name="Contact">Address and telephone.</param>
/// <param name="DriveMinutes">As entered.</param>
/// <param name="Said">Of antivenom; empty where nobody asked.</param>
/// <param name="ToldBy">Who said it.</param>
/// <param name="ToldDaysAgo">When.</param>
internal sealed record DemoHospital(string Site, string Name, string Contact, int DriveMinutes, string? Said, string? ToldBy, int? ToldDaysAgo);

/// <param name="Course">All of its questions, as they read when the demo is made.</param>
/// <param name="Person">The lead who accepted them.</param>
/// <param name="DaysAgo">When.</param>
internal sealed record DemoReview(string Course, string Person, int DaysAgo);

/// <param name="Panel">Row id.</param>
/// <param name="Course">Whose quiz.</param>
/// <param name="Lead">Who opened it and adopted its cut.</param>
/// <param name="DaysAgo">When it was opened.</param>
/// <param name="Purpose">In words.</param>
/// <param name="JustCompetent">In words.</param>
/// <param name="Balance">In words.</param>
/// <param name="Reason">Of the adoption.</param>
internal sealed record DemoPanel(string Panel, string Course, string Lead, int DaysAgo, string Purpose, string JustCompetent, string Balance, string Reason);

/// <param name="Panel">Of which panel.</param>
/// <param name="Person">Row id; empty for somebody from outside.</param>
/// <param name="Name">Of somebody from outside.</param>
/// <param name="Qualification">In words.</param>
/// <param name="Severity">Points that the judge asks for more than the others.</param>
/// <param name="Seed">Of what else they see otherwise.</param>
/// <param name="LeastCut">Percent.</param>
/// <param name="GreatestCut">Percent.</param>
/// <param name="LeastFail">Percent.</param>
/// <param name="GreatestFail">Percent.</param>
internal sealed record DemoPanelJudge(
    string Panel, string Person, string Name, string Qualification, int Severity, ulong Seed, int LeastCut, int GreatestCut, int LeastFail, int GreatestFail);

internal sealed record DemoPerson(string Person, string GivenName, string FamilyName, string Language)
{
    public string FullName => $"{GivenName} {FamilyName}";
}

internal sealed record DemoAppointment(string Person, string Role, int FromDaysAgo);

internal sealed record DemoRepresentative(string Person, string Employer, int FromDaysAgo);

internal sealed record DemoAccount(string Person, string SignInName);

internal sealed record DemoEmployment(
    string Person, string Employer, string Badge, string Site, string Crew, int FromDaysAgo, int? UntilDaysAgo);

/// <param name="Class">Row id.</param>
/// <param name="Site">Where.</param>
/// <param name="Course">Of which course.</param>
/// <param name="DaysAgo">When; negative for a day to come.</param>
/// <param name="TaughtBy">One instructor.</param>
/// <param name="ScoredBy">Who may score there, with spaces between; empty for nobody.</param>
/// <param name="Seats">How many.</param>
internal sealed record DemoClass(string Class, string Site, string Course, int DaysAgo, string TaughtBy, string ScoredBy, int Seats);

internal sealed record DemoAttendance(string Class, string Person);

/// <summary>What is known of a class besides its day.</summary>
/// <param name="Class">Row id.</param>
/// <param name="By">The lead who wrote it.</param>
/// <param name="StartsAt">On the clocks of the site.</param>
/// <param name="Hours">How long it lasts.</param>
/// <param name="MeetingPlace">Where people meet.</param>
/// <param name="Kit">What is needed, a bar between.</param>
/// <param name="Weather">What is planned for.</param>
internal sealed record DemoClassDay(string Class, string By, TimeOnly StartsAt, decimal Hours, string MeetingPlace, string Kit, string Weather);

/// <param name="Class">For which class.</param>
/// <param name="Person">Who waits, and asked.</param>
/// <param name="AskedDaysAgo">Since when.</param>
/// <param name="HourUtc">Hour of that day, UTC.</param>
internal sealed record DemoWaiting(string Class, string Person, int AskedDaysAgo, int HourUtc);

/// <param name="Class">At which class.</param>
/// <param name="Person">Who.</param>
/// <param name="Presence"><c>came</c> or <c>did-not-come</c>.</param>
/// <param name="By">Which instructor said so.</param>
/// <param name="Reason">What is known of why, or empty.</param>
internal sealed record DemoPresence(string Class, string Person, string Presence, string By, string Reason);

/// <param name="Sitting">Row id.</param>
/// <param name="Person">Who.</param>
/// <param name="Course">Whose quiz.</param>
/// <param name="DaysAgo">When.</param>
/// <param name="HourUtc">Hour of the day, UTC.</param>
/// <param name="Seed">Of the draw and of the answers.</param>
/// <param name="Language">Shown.</param>
/// <param name="Answers"><c>all-right</c>, <c>one-wrong</c>, <c>one-critical-wrong</c>, <c>half-right</c>, or empty: by <paramref name="Ability"/>.</param>
/// <param name="Ability">On the scale of <see cref="AnswerModel"/>.</param>
internal sealed record DemoSitting(
    string Sitting, string Person, string Course, int DaysAgo, int HourUtc, ulong Seed, string Language, string Answers, double Ability);

/// <summary>What people of this provider learned otherwise: who is able enough answers so, more often than not.</summary>
/// <param name="Course">Of which course.</param>
/// <param name="Question">Which question.</param>
/// <param name="Option">What they choose.</param>
/// <param name="AbilityFrom">From this ability on.</param>
/// <param name="Share">How many of them, 0–1.</param>
internal sealed record DemoHabit(string Course, string Question, string Option, double AbilityFrom, double Share);

/// <param name="Round">Row id.</param>
/// <param name="Course">Of which course.</param>
/// <param name="Checklist">Which checklist.</param>
/// <param name="Lead">Who opened and closed it.</param>
/// <param name="Title">What the demonstration is called.</param>
/// <param name="Recording">Where it is found.</param>
/// <param name="DaysAgo">When it was opened.</param>
/// <param name="ClosedDaysAgo">When it was closed, or empty.</param>
internal sealed record DemoCalibration(
    string Round, string Course, string Checklist, string Lead, string Title, string Recording, int DaysAgo, int? ClosedDaysAgo);

/// <param name="Round">Of which round.</param>
/// <param name="Instructor">Who.</param>
/// <param name="Marks">As on a scoresheet.</param>
internal sealed record DemoCalibrationSheet(string Round, string Instructor, string Marks);

/// <param name="Sheet">Row id.</param>
/// <param name="Class">The class day.</param>
/// <param name="Candidate">Who was assessed.</param>
/// <param name="Instructor">Who scored.</param>
/// <param name="Checklist">Of the handler course.</param>
/// <param name="Subject"><c>model</c> or <c>live</c>.</param>
/// <param name="Try">1 for the first of the day.</param>
/// <param name="DaysAgo">When.</param>
/// <param name="HourUtc">Hour of signing, UTC.</param>
/// <param name="Marks">A letter a step: d done, p after a prompt, n not done, - not observed.</param>
/// <param name="StoppedAtStep">Id of the step, or empty.</param>
/// <param name="Permit">Live only.</param>
/// <param name="BitePlanAgeDays">Live only: how old the check of the bite plan was on the day.</param>
/// <param name="Watcher">Live only.</param>
/// <param name="SeparationReason">Empty, or the lead who recorded it and the written reason, with a bar between.</param>
/// <param name="Surroundings">Ground, light and weather.</param>
/// <param name="AirTemperature">In °C, or empty.</param>
/// <param name="Kit">Labels of the pieces that were used, a space between.</param>
/// <param name="Impression">Of the performance as a whole; empty where it was not seen whole.</param>
/// <param name="Seconds">How long a drill took; empty where nothing is timed.</param>
internal sealed record DemoScoresheet(
    string Sheet,
    string Class,
    string Candidate,
    string Instructor,
    string Checklist,
    string Subject,
    int Try,
    int DaysAgo,
    int HourUtc,
    string Marks,
    string StoppedAtStep,
    string Permit,
    int? BitePlanAgeDays,
    string Watcher,
    string SeparationReason,
    string Surroundings,
    int? AirTemperature,
    string Kit,
    Impression? Impression,
    int? Seconds);

/// <param name="Label">As it is marked.</param>
/// <param name="Kind">What it is.</param>
/// <param name="RegisteredDaysAgo">When it came into the register.</param>
/// <param name="RegisteredBy">By whom.</param>
/// <param name="RetiredDaysAgo">When it was taken out of use, or empty.</param>
/// <param name="RetiredBy">By whom.</param>
/// <param name="RetirementReason">Why.</param>
internal sealed record DemoKit(
    string Label, KitKind Kind, int RegisteredDaysAgo, string RegisteredBy, int? RetiredDaysAgo, string RetiredBy, string RetirementReason);

/// <param name="Label">Of the piece.</param>
/// <param name="DaysAgo">When.</param>
/// <param name="By">Who inspected.</param>
/// <param name="Reason">Why it was not fit; empty where it was.</param>
/// <param name="DueAfterDays">How long the inspection holds; empty where it was not fit.</param>
internal sealed record DemoKitInspection(string Label, int DaysAgo, string By, string Reason, int? DueAfterDays);

/// <param name="Person">About whom.</param>
/// <param name="Scheme">Under which scheme.</param>
/// <param name="DaysAgo">When.</param>
/// <param name="DecidedBy">A lead, or <c>rule</c>.</param>
internal sealed record DemoDecision(string Person, string Scheme, int DaysAgo, string DecidedBy);

internal sealed record DemoSuspension(
    string Person,
    string Scheme,
    int DaysAgo,
    string By,
    string Reason,
    int DeadlineAfterDays,
    int? ReinstatedDaysAgo,
    string ReinstatedBy,
    string ReinstatementReason);

internal sealed record DemoWithdrawal(string Person, string Scheme, int DaysAgo, string ProposedBy, string ConfirmedBy, string Reason);

/// <param name="Sheet">To which scoresheet, on its day.</param>
/// <param name="Word"><c>agreed</c>, <c>objected</c> or <c>did-not-sign</c>.</param>
/// <param name="Reason">Why, or empty.</param>
internal sealed record DemoCandidateWord(string Sheet, string Word, string Reason);

/// <param name="Person">Who appeals.</param>
/// <param name="Matter"><c>objection</c> for the one that a candidate's word opened, <c>scoresheet</c>, or <c>complaint</c>.</param>
/// <param name="Sheet">The contested sheet, or empty.</param>
/// <param name="DaysAgo">When it came.</param>
/// <param name="Words">Why; empty for an objection, which has the candidate's.</param>
/// <param name="TakenUpBy">A lead, or empty.</param>
/// <param name="TakenUpDaysAgo">When.</param>
/// <param name="DecidedBy">A lead, or empty.</param>
/// <param name="DecidedDaysAgo">When.</param>
/// <param name="Outcome">What it came to, or null.</param>
/// <param name="Remedy">What followed, or null.</param>
/// <param name="Reason">The lead's.</param>
internal sealed record DemoAppeal(
    string Person,
    string Matter,
    string Sheet,
    int DaysAgo,
    string Words,
    string TakenUpBy,
    int? TakenUpDaysAgo,
    string DecidedBy,
    int? DecidedDaysAgo,
    AppealOutcome? Outcome,
    AppealRemedy? Remedy,
    string Reason);

/// <param name="Person">The instructor.</param>
/// <param name="Course">For which course.</param>
/// <param name="What">Duty and subject, such as <c>Score-Live</c>, with spaces between.</param>
/// <param name="FromDaysAgo">First day.</param>
/// <param name="ThroughDaysAhead">Last day.</param>
/// <param name="Evidence">What shows it.</param>
/// <param name="By">The lead who wrote it.</param>
internal sealed record DemoCompetence(string Person, string Course, string What, int FromDaysAgo, int ThroughDaysAhead, string Evidence, string By);

internal sealed record DemoStatement(string Person, int DaysAgo);

internal sealed record DemoConflict(string Person, string Other, string Words, int FromDaysAgo, string By);

/// <param name="Encounter">Row id.</param>
/// <param name="Site">Where.</param>
/// <param name="Reporter">Who reported it, on its day.</param>
/// <param name="Kind">What it came to.</param>
/// <param name="DaysAgo">When.</param>
/// <param name="Time">Of day, there.</param>
/// <param name="Place">On the site, in words.</param>
/// <param name="Species">A sheet, or empty.</param>
/// <param name="Done">What was done.</param>
/// <param name="Handler">Who handled it, <c>other</c>, or empty for nobody.</param>
/// <param name="FollowUp">What is still to be done, or empty.</param>
/// <param name="Course">A course to look at, or empty.</param>
/// <param name="DistanceMetres">How far it was moved; without it nothing is written down about the move.</param>
/// <param name="Tools">Used.</param>
/// <param name="Container">Used.</param>
/// <param name="MinutesHeld">In it.</param>
/// <param name="AirTemperature">Degrees Celsius.</param>
/// <param name="ReleaseCover">Where it was released.</param>
/// <param name="Permit">Its number.</param>
/// <param name="ReviewedDaysAgo">When the review that it opened was concluded, or null while it is open.</param>
/// <param name="ReviewedBy">A lead, or empty.</param>
/// <param name="Conclusion">The lead's words, or empty.</param>
internal sealed record DemoEncounter(
    string Encounter,
    string Site,
    string Reporter,
    EncounterKind Kind,
    int DaysAgo,
    string Time,
    string Place,
    string Species,
    string Done,
    string Handler,
    string FollowUp,
    string Course,
    int? DistanceMetres,
    string Tools,
    string Container,
    int? MinutesHeld,
    int? AirTemperature,
    string ReleaseCover,
    string Permit,
    int? ReviewedDaysAgo,
    string ReviewedBy,
    string Conclusion);

internal sealed record DemoCoverNeed(string Site, string Crew, string Scheme, int Handlers, int FromDaysAgo, string SaidBy);

internal sealed record DemoInstructorDays(
    string Person, string Weekdays, int FromDaysAgo, int ThroughDaysAhead, string What, string EnteredBy, int EnteredDaysAgo);

internal sealed record DemoTravel(string Site, string Other, int Minutes, string SaidBy, int SaidDaysAgo);

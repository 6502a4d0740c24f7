namespace Training.Web.Doors;

/// <summary>
/// Which role may do what to whose records: all of it, in one place. <see cref="DoorKeeper"/> lets nobody through without a row, and a test
/// walks every address of the running site with every role, on own and foreign records, and compares.
/// </summary>
public static class DoorTable
{
    private const string Get = "GET";
    private const string Post = "POST";

    private static readonly Role[] Everybody = [];
    private static readonly Role[] Workers = [Role.Worker];
    private static readonly Role[] SignedIn = Enum.GetValues<Role>();
    private static readonly Role[] Leads = [Role.ProgrammeLead];

    /// <summary>Every row; an address has one for each set of roles that finds other records there.</summary>
    public static IReadOnlyList<Door> Rows { get; } =
    [
        // What a stranger may see: courses, species sheets, the check of a certificate, and the way in.
        new(Get, "/", Everybody, Whose.Public),
        new(Get, "/{language:language}", Everybody, Whose.Public),
        new(Get, "/{language:language}/courses/{courseId}", Everybody, Whose.Public),
        new(Get, "/{language:language}/courses/{courseId}/{moduleId}", Everybody, Whose.Public),
        new(Get, "/{language:language}/distances", Everybody, Whose.Public),
        new(Get, "/{language:language}/species", Everybody, Whose.Public),
        new(Get, "/{language:language}/species/{speciesId}", Everybody, Whose.Public),
        new(Get, "/verify", Everybody, Whose.Public),
        new(Get, "/{language:language}/verify", Everybody, Whose.Public),
        new(Get, "/verify/{serial}", Everybody, Whose.Public),
        new(Get, "/{language:language}/verify/{serial}", Everybody, Whose.Public),
        new("*", "/healthz", Everybody, Whose.Public),
        new("*", "/refusals/{status:int}", Everybody, Whose.Public),

        // Doors.
        new(Get, "/{language:language}/sign-in", Everybody, Whose.Public),
        new(Post, "/{language:language}/sign-in", Everybody, Whose.Public),
        new(Get, "/{language:language}/first-sign-in", Everybody, Whose.Public),
        new(Post, "/{language:language}/first-sign-in", Everybody, Whose.Public),
        new(Get, "/{language:language}/first-lead", Everybody, Whose.Public),
        new(Post, "/{language:language}/first-lead", Everybody, Whose.Public),
        new(Post, "/{language:language}/sign-out", SignedIn, Whose.Own),
        new(Get, "/{language:language}/start", SignedIn, Whose.Own),
        new(Get, "/{language:language}/my/password", SignedIn, Whose.Own),
        new(Post, "/{language:language}/my/password", SignedIn, Whose.Own),

        // A worker's own training.
        new(Get, "/{language:language}/my", Workers, Whose.Own),
        new(Get, "/{language:language}/my/certificates/{serial}", Workers, Whose.Own),
        new(Get, "/{language:language}/my/courses/{courseId}", Workers, Whose.Own),
        new(Post, "/{language:language}/my/courses/{courseId}/modules/{moduleId}/reading", Workers, Whose.Own),
        new(Get, "/{language:language}/my/courses/{courseId}/practice", Workers, Whose.Own),
        new(Post, "/{language:language}/my/courses/{courseId}/practice", Workers, Whose.Own),
        new(Get, "/{language:language}/my/courses/{courseId}/quiz", Workers, Whose.Own),
        new(Post, "/{language:language}/my/courses/{courseId}/sittings", Workers, Whose.Own),
        new(Get, "/{language:language}/my/sittings/{sittingId:guid}", Workers, Whose.Own),
        new(Get, "/{language:language}/my/sittings/{sittingId:guid}/questions/{number:int}", Workers, Whose.Own),
        new(Post, "/{language:language}/my/sittings/{sittingId:guid}/questions/{number:int}", Workers, Whose.Own),
        new(Get, "/{language:language}/my/sittings/{sittingId:guid}/review", Workers, Whose.Own),
        new(Post, "/{language:language}/my/sittings/{sittingId:guid}/submission", Workers, Whose.Own),

        // The instructor: class days where they teach or score; sheets that they started themselves.
        new(Get, "/{language:language}/class-days", [Role.Instructor], Whose.Own),
        new(Get, "/{language:language}/class-days/{classId:guid}", [Role.Instructor], Whose.Own),
        new(Get, "/{language:language}/class-days/{classId:guid}/candidates/{personId:guid}/scoresheets", [Role.Instructor], Whose.Own),
        new(Post, "/{language:language}/class-days/{classId:guid}/candidates/{personId:guid}/scoresheets", [Role.Instructor], Whose.Own),
        new(Get, "/{language:language}/scoresheets/{sheetId:guid}", [Role.Instructor], Whose.Own),
        new(Get, "/{language:language}/scoresheets/{sheetId:guid}/steps/{number:int}", [Role.Instructor], Whose.Own),
        new(Post, "/{language:language}/scoresheets/{sheetId:guid}/steps/{number:int}", [Role.Instructor], Whose.Own),
        new(Get, "/{language:language}/scoresheets/{sheetId:guid}/stop", [Role.Instructor], Whose.Own),
        new(Post, "/{language:language}/scoresheets/{sheetId:guid}/stop", [Role.Instructor], Whose.Own),
        new(Post, "/{language:language}/scoresheets/{sheetId:guid}/undo", [Role.Instructor], Whose.Own),
        new(Get, "/{language:language}/scoresheets/{sheetId:guid}/sign-off", [Role.Instructor], Whose.Own),
        new(Post, "/{language:language}/scoresheets/{sheetId:guid}/signature", [Role.Instructor], Whose.Own),
        new(Get, "/{language:language}/sent-scoresheets", [Role.Instructor], Whose.Own),

        // An employer's people: their own for who represents it, everybody's for a programme lead.
        new(Get, "/{language:language}/employers/{employerId:guid}", [Role.Employer], Whose.Own),
        new(Get, "/{language:language}/employers/{employerId:guid}", [Role.ProgrammeLead], Whose.Any),
        new(Get, "/{language:language}/employers/{employerId:guid}/matrix", [Role.Employer], Whose.Own),
        new(Get, "/{language:language}/employers/{employerId:guid}/matrix", [Role.ProgrammeLead], Whose.Any),
        new(Get, "/{language:language}/employers/{employerId:guid}/matrix.csv", [Role.Employer], Whose.Own),
        new(Get, "/{language:language}/employers/{employerId:guid}/matrix.csv", [Role.ProgrammeLead], Whose.Any),
        new(Get, "/{language:language}/employers/{employerId:guid}/people/{personId:guid}", [Role.Employer], Whose.Own),
        new(Get, "/{language:language}/employers/{employerId:guid}/people/{personId:guid}", [Role.ProgrammeLead], Whose.Any),
        new(Get, "/{language:language}/employers/{employerId:guid}/crew-lists", [Role.Employer], Whose.Own),
        new(Get, "/{language:language}/employers/{employerId:guid}/crew-lists", [Role.ProgrammeLead], Whose.Any),
        new(Get, "/{language:language}/employers/{employerId:guid}/roster", [Role.Employer], Whose.Own),
        new(Get, "/{language:language}/employers/{employerId:guid}/roster", [Role.ProgrammeLead], Whose.Any),
        new(Post, "/{language:language}/employers/{employerId:guid}/roster", [Role.Employer], Whose.Own),
        new(Post, "/{language:language}/employers/{employerId:guid}/roster", [Role.ProgrammeLead], Whose.Any),
        new(Get, "/{language:language}/employers/{employerId:guid}/roster.csv", [Role.Employer], Whose.Own),
        new(Get, "/{language:language}/employers/{employerId:guid}/roster.csv", [Role.ProgrammeLead], Whose.Any),
        new(Get, "/{language:language}/employers/{employerId:guid}/roster/sample.csv", [Role.Employer], Whose.Own),
        new(Get, "/{language:language}/employers/{employerId:guid}/roster/sample.csv", [Role.ProgrammeLead], Whose.Any),
        new(Get, "/{language:language}/employers/{employerId:guid}/roster/uploads/{uploadId:guid}", [Role.Employer], Whose.Own),
        new(Get, "/{language:language}/employers/{employerId:guid}/roster/uploads/{uploadId:guid}", [Role.ProgrammeLead], Whose.Any),
        new(Get, "/{language:language}/employers/{employerId:guid}/roster/uploads/{uploadId:guid}/findings.csv", [Role.Employer], Whose.Own),
        new(Get, "/{language:language}/employers/{employerId:guid}/roster/uploads/{uploadId:guid}/findings.csv", [Role.ProgrammeLead], Whose.Any),
        new(Post, "/{language:language}/employers/{employerId:guid}/roster/uploads/{uploadId:guid}/application", [Role.Employer], Whose.Own),
        new(Post, "/{language:language}/employers/{employerId:guid}/roster/uploads/{uploadId:guid}/application", [Role.ProgrammeLead], Whose.Any),

        // The programme: all of it, and only for its leads.
        new(Get, "/{language:language}/programme", Leads, Whose.Any),
        new(Get, "/{language:language}/programme/first-day", Leads, Whose.Any),
        new(Get, "/{language:language}/programme/provider", Leads, Whose.Any),
        new(Post, "/{language:language}/programme/provider", Leads, Whose.Any),
        new(Post, "/{language:language}/programme/provider/address-confirmation", Leads, Whose.Any),
        new(Get, "/{language:language}/programme/decisions", Leads, Whose.Any),
        new(Get, "/{language:language}/programme/people", Leads, Whose.Any),
        new(Post, "/{language:language}/programme/people", Leads, Whose.Any),
        new(Get, "/{language:language}/programme/people/{personId:guid}", Leads, Whose.Any),
        new(Post, "/{language:language}/programme/people/{personId:guid}/employments", Leads, Whose.Any),
        new(Get, "/{language:language}/programme/people/{personId:guid}/sign-in-code", Leads, Whose.Any),
        new(Post, "/{language:language}/programme/people/{personId:guid}/sign-in-code", Leads, Whose.Any),
        new(Get, "/{language:language}/programme/people/{personId:guid}/roles", Leads, Whose.Any),
        new(Post, "/{language:language}/programme/people/{personId:guid}/roles", Leads, Whose.Any),
        new(Post, "/{language:language}/programme/people/{personId:guid}/roles/{roleId:guid}/end", Leads, Whose.Any),
        new(Get, "/{language:language}/programme/people/{personId:guid}/decisions/{schemeId}", Leads, Whose.Any),
        new(Post, "/{language:language}/programme/people/{personId:guid}/decisions/{schemeId}", Leads, Whose.Any),
        new(Post, "/{language:language}/programme/people/{personId:guid}/decisions/{schemeId}/separation-reasons", Leads, Whose.Any),
        new(Post, "/{language:language}/programme/people/{personId:guid}/certifications/{schemeId}/suspensions", Leads, Whose.Any),
        new(Post, "/{language:language}/programme/people/{personId:guid}/certifications/{schemeId}/reinstatements", Leads, Whose.Any),
        new(Post, "/{language:language}/programme/people/{personId:guid}/certifications/{schemeId}/withdrawal-proposals", Leads, Whose.Any),
        new(Post, "/{language:language}/programme/withdrawal-proposals/{proposalId:guid}/confirmation", Leads, Whose.Any),
        new(Post, "/{language:language}/programme/withdrawal-proposals/{proposalId:guid}/retraction", Leads, Whose.Any),
        new(Get, "/{language:language}/programme/employers", Leads, Whose.Any),
        new(Post, "/{language:language}/programme/employers", Leads, Whose.Any),
        new(Get, "/{language:language}/programme/employers/{employerId:guid}", Leads, Whose.Any),
        new(Post, "/{language:language}/programme/employers/{employerId:guid}/sites", Leads, Whose.Any),
        new(Get, "/{language:language}/programme/sites/{siteId:guid}", Leads, Whose.Any),
        new(Post, "/{language:language}/programme/sites/{siteId:guid}/emergency-numbers", Leads, Whose.Any),
        new(Get, "/{language:language}/programme/sites/{siteId:guid}/species", Leads, Whose.Any),
        new(Post, "/{language:language}/programme/sites/{siteId:guid}/species", Leads, Whose.Any),
        new(Get, "/{language:language}/programme/classes", Leads, Whose.Any),
        new(Post, "/{language:language}/programme/classes", Leads, Whose.Any),
        new(Get, "/{language:language}/programme/classes/{classId:guid}", Leads, Whose.Any),
        new(Post, "/{language:language}/programme/classes/{classId:guid}/attendances", Leads, Whose.Any),
        new(Post, "/{language:language}/programme/classes/{classId:guid}/teachers", Leads, Whose.Any),
        new(Post, "/{language:language}/programme/classes/{classId:guid}/scorers", Leads, Whose.Any),
        new(Get, "/{language:language}/programme/courses", Leads, Whose.Any),
        new(Post, "/{language:language}/programme/course-choices", Leads, Whose.Any),
        new(Get, "/{language:language}/programme/courses/{courseId}", Leads, Whose.Any),
        new(Get, "/{language:language}/programme/courses/{courseId}/modules/{moduleId}/preview", Leads, Whose.Any),
        new(Get, "/{language:language}/programme/guidance", Leads, Whose.Any),
        new(Get, "/{language:language}/programme/courses/{courseId}/questions", Leads, Whose.Any),
        new(Get, "/{language:language}/programme/courses/{courseId}/modules/{moduleId}/questions", Leads, Whose.Any),
        new(Post, "/{language:language}/programme/courses/{courseId}/modules/{moduleId}/questions/reviews", Leads, Whose.Any),
        new(Get, "/{language:language}/programme/standing", Leads, Whose.Any),
        new(Get, "/{language:language}/programme/people/{personId:guid}/mail-address", Leads, Whose.Any),
        new(Post, "/{language:language}/programme/people/{personId:guid}/mail-address", Leads, Whose.Any),
        new(Post, "/{language:language}/programme/people/{personId:guid}/mail-address/returns", Leads, Whose.Any),
        new(Get, "/{language:language}/programme/reminders", Leads, Whose.Any),
        new(Post, "/{language:language}/programme/reminders/mails/{mailId:guid}/tries", Leads, Whose.Any),
    ];
}

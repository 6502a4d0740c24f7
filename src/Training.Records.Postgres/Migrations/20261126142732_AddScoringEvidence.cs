using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Training.Records.Postgres.Migrations
{
    /// <inheritdoc />
    public partial class AddScoringEvidence : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(
                name: "IsKitInspected",
                table: "StartedScoresheets");

            migrationBuilder.DropColumn(
                name: "IsKitInspected",
                table: "Scoresheets");

            migrationBuilder.AddColumn<DateTime>(
                name: "InstructionsReadAt",
                table: "StartedScoresheets",
                type: "timestamp(3) with time zone",
                precision: 3,
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Impression",
                table: "Scoresheets",
                type: "character varying(30)",
                maxLength: 30,
                nullable: true);

            migrationBuilder.AddColumn<DateTime>(
                name: "InstructionsReadAt",
                table: "Scoresheets",
                type: "timestamp(3) with time zone",
                precision: 3,
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "Seconds",
                table: "Scoresheets",
                type: "integer",
                nullable: true);

            migrationBuilder.CreateTable(
                name: "Appeals",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    PersonId = table.Column<Guid>(type: "uuid", nullable: false),
                    Matter = table.Column<string>(type: "character varying(30)", maxLength: 30, nullable: false),
                    ContestedId = table.Column<Guid>(type: "uuid", nullable: false),
                    SittingId = table.Column<Guid>(type: "uuid", nullable: true),
                    ScoresheetId = table.Column<Guid>(type: "uuid", nullable: true),
                    DecisionId = table.Column<Guid>(type: "uuid", nullable: true),
                    Words = table.Column<string>(type: "character varying(2000)", maxLength: 2000, nullable: false),
                    EnteredById = table.Column<Guid>(type: "uuid", nullable: false),
                    ReceivedOn = table.Column<DateOnly>(type: "date", nullable: false),
                    Zone = table.Column<string>(type: "character varying(64)", maxLength: 64, nullable: false),
                    KeptAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false),
                    MailId = table.Column<Guid>(type: "uuid", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Appeals", x => x.Id);
                    table.CheckConstraint("CK_Appeal_Contested", "(CASE WHEN \"SittingId\" IS NULL THEN 0 ELSE 1 END) + (CASE WHEN \"ScoresheetId\" IS NULL THEN 0 ELSE 1 END) + (CASE WHEN \"DecisionId\" IS NULL THEN 0 ELSE 1 END) = (CASE WHEN \"Matter\" = 'Complaint' THEN 0 ELSE 1 END)");
                    table.ForeignKey(
                        name: "FK_Appeals_Decisions_DecisionId",
                        column: x => x.DecisionId,
                        principalTable: "Decisions",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Appeals_OutgoingMails_MailId",
                        column: x => x.MailId,
                        principalTable: "OutgoingMails",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Appeals_Persons_EnteredById",
                        column: x => x.EnteredById,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Appeals_Persons_PersonId",
                        column: x => x.PersonId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Appeals_Scoresheets_ScoresheetId",
                        column: x => x.ScoresheetId,
                        principalTable: "Scoresheets",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Appeals_Sittings_SittingId",
                        column: x => x.SittingId,
                        principalTable: "Sittings",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "CalibrationRounds",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    CourseId = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    CourseHash = table.Column<string>(type: "character varying(64)", maxLength: 64, nullable: false),
                    ChecklistId = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    Title = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    Recording = table.Column<string>(type: "character varying(500)", maxLength: 500, nullable: false),
                    LeadId = table.Column<Guid>(type: "uuid", nullable: false),
                    OpenedAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_CalibrationRounds", x => x.Id);
                    table.ForeignKey(
                        name: "FK_CalibrationRounds_CourseSnapshots_CourseHash",
                        column: x => x.CourseHash,
                        principalTable: "CourseSnapshots",
                        principalColumn: "Hash",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_CalibrationRounds_Persons_LeadId",
                        column: x => x.LeadId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "CandidateWords",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    ScoresheetId = table.Column<Guid>(type: "uuid", nullable: false),
                    Word = table.Column<string>(type: "character varying(30)", maxLength: 30, nullable: false),
                    SignedName = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: true),
                    Reason = table.Column<string>(type: "character varying(2000)", maxLength: 2000, nullable: true),
                    ContentHash = table.Column<string>(type: "character varying(64)", maxLength: 64, nullable: false),
                    Language = table.Column<string>(type: "character varying(30)", maxLength: 30, nullable: false),
                    InstructorId = table.Column<Guid>(type: "uuid", nullable: false),
                    KeptAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_CandidateWords", x => x.Id);
                    table.CheckConstraint("CK_CandidateWord_Signed", "(\"Word\" = 'DidNotSign' AND \"SignedName\" IS NULL AND \"Reason\" IS NOT NULL) OR (\"Word\" = 'Objected' AND \"SignedName\" IS NOT NULL AND \"Reason\" IS NOT NULL) OR (\"Word\" = 'Agreed' AND \"SignedName\" IS NOT NULL AND \"Reason\" IS NULL)");
                    table.ForeignKey(
                        name: "FK_CandidateWords_Persons_InstructorId",
                        column: x => x.InstructorId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_CandidateWords_Scoresheets_ScoresheetId",
                        column: x => x.ScoresheetId,
                        principalTable: "Scoresheets",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "CourseRereadings",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    PersonId = table.Column<Guid>(type: "uuid", nullable: false),
                    CourseId = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    CourseHash = table.Column<string>(type: "character varying(64)", maxLength: 64, nullable: false),
                    ReadOn = table.Column<DateOnly>(type: "date", nullable: false),
                    KeptAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_CourseRereadings", x => x.Id);
                    table.ForeignKey(
                        name: "FK_CourseRereadings_CourseSnapshots_CourseHash",
                        column: x => x.CourseHash,
                        principalTable: "CourseSnapshots",
                        principalColumn: "Hash",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_CourseRereadings_Persons_PersonId",
                        column: x => x.PersonId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "InstructorCompetences",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    EntryId = table.Column<Guid>(type: "uuid", nullable: false),
                    PersonId = table.Column<Guid>(type: "uuid", nullable: false),
                    CourseId = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    Duty = table.Column<string>(type: "character varying(30)", maxLength: 30, nullable: false),
                    Subject = table.Column<string>(type: "character varying(30)", maxLength: 30, nullable: false),
                    StartsOn = table.Column<DateOnly>(type: "date", nullable: false),
                    EndsOn = table.Column<DateOnly>(type: "date", nullable: false),
                    Evidence = table.Column<string>(type: "character varying(2000)", maxLength: 2000, nullable: false),
                    LeadId = table.Column<Guid>(type: "uuid", nullable: false),
                    KeptAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_InstructorCompetences", x => x.Id);
                    table.CheckConstraint("CK_InstructorCompetence_Dates", "\"EndsOn\" >= \"StartsOn\"");
                    table.CheckConstraint("CK_InstructorCompetence_NeverOneself", "\"LeadId\" <> \"PersonId\"");
                    table.ForeignKey(
                        name: "FK_InstructorCompetences_Persons_LeadId",
                        column: x => x.LeadId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_InstructorCompetences_Persons_PersonId",
                        column: x => x.PersonId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "InstructorConflicts",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    PersonId = table.Column<Guid>(type: "uuid", nullable: false),
                    OtherPersonId = table.Column<Guid>(type: "uuid", nullable: true),
                    EmployerId = table.Column<Guid>(type: "uuid", nullable: true),
                    Words = table.Column<string>(type: "character varying(2000)", maxLength: 2000, nullable: false),
                    StartsOn = table.Column<DateOnly>(type: "date", nullable: false),
                    LeadId = table.Column<Guid>(type: "uuid", nullable: false),
                    KeptAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_InstructorConflicts", x => x.Id);
                    table.CheckConstraint("CK_InstructorConflict_NeverOneself", "\"LeadId\" <> \"PersonId\"");
                    table.CheckConstraint("CK_InstructorConflict_One", "(\"OtherPersonId\" IS NULL AND \"EmployerId\" IS NOT NULL) OR (\"OtherPersonId\" IS NOT NULL AND \"EmployerId\" IS NULL)");
                    table.ForeignKey(
                        name: "FK_InstructorConflicts_Employers_EmployerId",
                        column: x => x.EmployerId,
                        principalTable: "Employers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_InstructorConflicts_Persons_LeadId",
                        column: x => x.LeadId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_InstructorConflicts_Persons_OtherPersonId",
                        column: x => x.OtherPersonId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_InstructorConflicts_Persons_PersonId",
                        column: x => x.PersonId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "InstructorStatements",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    PersonId = table.Column<Guid>(type: "uuid", nullable: false),
                    StatedOn = table.Column<DateOnly>(type: "date", nullable: false),
                    KeptAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_InstructorStatements", x => x.Id);
                    table.ForeignKey(
                        name: "FK_InstructorStatements_Persons_PersonId",
                        column: x => x.PersonId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "KeyCorrections",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    CourseId = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    QuizId = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    QuestionId = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    QuestionVersion = table.Column<string>(type: "character varying(64)", maxLength: 64, nullable: false),
                    Remedy = table.Column<string>(type: "character varying(30)", maxLength: 30, nullable: false),
                    ByHash = table.Column<string>(type: "character varying(64)", maxLength: 64, nullable: true),
                    ByVersion = table.Column<string>(type: "character varying(64)", maxLength: 64, nullable: true),
                    Reason = table.Column<string>(type: "character varying(2000)", maxLength: 2000, nullable: false),
                    LeadId = table.Column<Guid>(type: "uuid", nullable: false),
                    MadeAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_KeyCorrections", x => x.Id);
                    table.ForeignKey(
                        name: "FK_KeyCorrections_CourseSnapshots_ByHash",
                        column: x => x.ByHash,
                        principalTable: "CourseSnapshots",
                        principalColumn: "Hash",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_KeyCorrections_Persons_LeadId",
                        column: x => x.LeadId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "KitPieces",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    Label = table.Column<string>(type: "character varying(60)", maxLength: 60, nullable: false),
                    LabelKey = table.Column<string>(type: "character varying(60)", maxLength: 60, nullable: false),
                    Kind = table.Column<string>(type: "character varying(30)", maxLength: 30, nullable: false),
                    RegisteredById = table.Column<Guid>(type: "uuid", nullable: false),
                    RegisteredAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_KitPieces", x => x.Id);
                    table.ForeignKey(
                        name: "FK_KitPieces_Persons_RegisteredById",
                        column: x => x.RegisteredById,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Panels",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    CourseId = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    CourseHash = table.Column<string>(type: "character varying(64)", maxLength: 64, nullable: false),
                    TargetId = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    ItemIds = table.Column<string>(type: "text", nullable: false),
                    Purpose = table.Column<string>(type: "character varying(2000)", maxLength: 2000, nullable: false),
                    JustCompetent = table.Column<string>(type: "character varying(2000)", maxLength: 2000, nullable: false),
                    Balance = table.Column<string>(type: "character varying(2000)", maxLength: 2000, nullable: false),
                    LeadId = table.Column<Guid>(type: "uuid", nullable: false),
                    OpenedAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Panels", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Panels_CourseSnapshots_CourseHash",
                        column: x => x.CourseHash,
                        principalTable: "CourseSnapshots",
                        principalColumn: "Hash",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Panels_Persons_LeadId",
                        column: x => x.LeadId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "AppealTakeUps",
                columns: table => new
                {
                    AppealId = table.Column<Guid>(type: "uuid", nullable: false),
                    LeadId = table.Column<Guid>(type: "uuid", nullable: false),
                    TakenUpOn = table.Column<DateOnly>(type: "date", nullable: false),
                    KeptAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false),
                    MailId = table.Column<Guid>(type: "uuid", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_AppealTakeUps", x => x.AppealId);
                    table.ForeignKey(
                        name: "FK_AppealTakeUps_Appeals_AppealId",
                        column: x => x.AppealId,
                        principalTable: "Appeals",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_AppealTakeUps_OutgoingMails_MailId",
                        column: x => x.MailId,
                        principalTable: "OutgoingMails",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_AppealTakeUps_Persons_LeadId",
                        column: x => x.LeadId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "CalibrationEnds",
                columns: table => new
                {
                    RoundId = table.Column<Guid>(type: "uuid", nullable: false),
                    LeadId = table.Column<Guid>(type: "uuid", nullable: false),
                    ClosedAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_CalibrationEnds", x => x.RoundId);
                    table.ForeignKey(
                        name: "FK_CalibrationEnds_CalibrationRounds_RoundId",
                        column: x => x.RoundId,
                        principalTable: "CalibrationRounds",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_CalibrationEnds_Persons_LeadId",
                        column: x => x.LeadId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "CalibrationSheets",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    RoundId = table.Column<Guid>(type: "uuid", nullable: false),
                    InstructorId = table.Column<Guid>(type: "uuid", nullable: false),
                    Outcome = table.Column<string>(type: "character varying(30)", maxLength: 30, nullable: false),
                    SentAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_CalibrationSheets", x => x.Id);
                    table.ForeignKey(
                        name: "FK_CalibrationSheets_CalibrationRounds_RoundId",
                        column: x => x.RoundId,
                        principalTable: "CalibrationRounds",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_CalibrationSheets_Persons_InstructorId",
                        column: x => x.InstructorId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "InstructorCompetenceEnds",
                columns: table => new
                {
                    CompetenceId = table.Column<Guid>(type: "uuid", nullable: false),
                    EndsOn = table.Column<DateOnly>(type: "date", nullable: false),
                    Reason = table.Column<string>(type: "character varying(2000)", maxLength: 2000, nullable: false),
                    LeadId = table.Column<Guid>(type: "uuid", nullable: false),
                    KeptAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_InstructorCompetenceEnds", x => x.CompetenceId);
                    table.ForeignKey(
                        name: "FK_InstructorCompetenceEnds_InstructorCompetences_CompetenceId",
                        column: x => x.CompetenceId,
                        principalTable: "InstructorCompetences",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_InstructorCompetenceEnds_Persons_LeadId",
                        column: x => x.LeadId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "InstructorConflictEnds",
                columns: table => new
                {
                    ConflictId = table.Column<Guid>(type: "uuid", nullable: false),
                    EndsOn = table.Column<DateOnly>(type: "date", nullable: false),
                    Reason = table.Column<string>(type: "character varying(2000)", maxLength: 2000, nullable: false),
                    LeadId = table.Column<Guid>(type: "uuid", nullable: false),
                    KeptAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_InstructorConflictEnds", x => x.ConflictId);
                    table.ForeignKey(
                        name: "FK_InstructorConflictEnds_InstructorConflicts_ConflictId",
                        column: x => x.ConflictId,
                        principalTable: "InstructorConflicts",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_InstructorConflictEnds_Persons_LeadId",
                        column: x => x.LeadId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "CorrectionCases",
                columns: table => new
                {
                    CorrectionId = table.Column<Guid>(type: "uuid", nullable: false),
                    DecisionId = table.Column<Guid>(type: "uuid", nullable: false),
                    LeadId = table.Column<Guid>(type: "uuid", nullable: false),
                    Conclusion = table.Column<string>(type: "character varying(2000)", maxLength: 2000, nullable: false),
                    ConcludedAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_CorrectionCases", x => new { x.CorrectionId, x.DecisionId });
                    table.ForeignKey(
                        name: "FK_CorrectionCases_Decisions_DecisionId",
                        column: x => x.DecisionId,
                        principalTable: "Decisions",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_CorrectionCases_KeyCorrections_CorrectionId",
                        column: x => x.CorrectionId,
                        principalTable: "KeyCorrections",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_CorrectionCases_Persons_LeadId",
                        column: x => x.LeadId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Regradings",
                columns: table => new
                {
                    ResultId = table.Column<Guid>(type: "uuid", nullable: false),
                    CorrectionId = table.Column<Guid>(type: "uuid", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Regradings", x => x.ResultId);
                    table.ForeignKey(
                        name: "FK_Regradings_KeyCorrections_CorrectionId",
                        column: x => x.CorrectionId,
                        principalTable: "KeyCorrections",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Regradings_SittingResults_ResultId",
                        column: x => x.ResultId,
                        principalTable: "SittingResults",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "KitInspections",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    PieceId = table.Column<Guid>(type: "uuid", nullable: false),
                    InspectorId = table.Column<Guid>(type: "uuid", nullable: false),
                    InspectedOn = table.Column<DateOnly>(type: "date", nullable: false),
                    IsFit = table.Column<bool>(type: "boolean", nullable: false),
                    Reason = table.Column<string>(type: "character varying(2000)", maxLength: 2000, nullable: true),
                    NextDueOn = table.Column<DateOnly>(type: "date", nullable: true),
                    KeptAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_KitInspections", x => x.Id);
                    table.ForeignKey(
                        name: "FK_KitInspections_KitPieces_PieceId",
                        column: x => x.PieceId,
                        principalTable: "KitPieces",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_KitInspections_Persons_InspectorId",
                        column: x => x.InspectorId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "KitRetirements",
                columns: table => new
                {
                    PieceId = table.Column<Guid>(type: "uuid", nullable: false),
                    TakenById = table.Column<Guid>(type: "uuid", nullable: false),
                    RetiredOn = table.Column<DateOnly>(type: "date", nullable: false),
                    Reason = table.Column<string>(type: "character varying(2000)", maxLength: 2000, nullable: false),
                    KeptAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_KitRetirements", x => x.PieceId);
                    table.ForeignKey(
                        name: "FK_KitRetirements_KitPieces_PieceId",
                        column: x => x.PieceId,
                        principalTable: "KitPieces",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_KitRetirements_Persons_TakenById",
                        column: x => x.TakenById,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "CutAdoptions",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    PanelId = table.Column<Guid>(type: "uuid", nullable: false),
                    Method = table.Column<string>(type: "character varying(30)", maxLength: 30, nullable: false),
                    Mean = table.Column<decimal>(type: "numeric(5,2)", precision: 5, scale: 2, nullable: false),
                    PassPercent = table.Column<int>(type: "integer", nullable: false),
                    StandardError = table.Column<decimal>(type: "numeric(5,2)", precision: 5, scale: 2, nullable: true),
                    StandardDeviation = table.Column<decimal>(type: "numeric(5,2)", precision: 5, scale: 2, nullable: true),
                    Judges = table.Column<int>(type: "integer", nullable: false),
                    Rounds = table.Column<int>(type: "integer", nullable: false),
                    Reason = table.Column<string>(type: "character varying(2000)", maxLength: 2000, nullable: false),
                    LeadId = table.Column<Guid>(type: "uuid", nullable: false),
                    AdoptedOn = table.Column<DateOnly>(type: "date", nullable: false),
                    KeptAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_CutAdoptions", x => x.Id);
                    table.ForeignKey(
                        name: "FK_CutAdoptions_Panels_PanelId",
                        column: x => x.PanelId,
                        principalTable: "Panels",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_CutAdoptions_Persons_LeadId",
                        column: x => x.LeadId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "PanelJudges",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    PanelId = table.Column<Guid>(type: "uuid", nullable: false),
                    Number = table.Column<int>(type: "integer", nullable: false),
                    PersonId = table.Column<Guid>(type: "uuid", nullable: true),
                    OutsiderName = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: true),
                    Qualification = table.Column<string>(type: "character varying(2000)", maxLength: 2000, nullable: false),
                    AddedById = table.Column<Guid>(type: "uuid", nullable: false),
                    AddedAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PanelJudges", x => x.Id);
                    table.CheckConstraint("CK_PanelJudge_PersonOrOutsider", "(\"PersonId\" IS NULL AND \"OutsiderName\" IS NOT NULL) OR (\"PersonId\" IS NOT NULL AND \"OutsiderName\" IS NULL)");
                    table.ForeignKey(
                        name: "FK_PanelJudges_Panels_PanelId",
                        column: x => x.PanelId,
                        principalTable: "Panels",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_PanelJudges_Persons_AddedById",
                        column: x => x.AddedById,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_PanelJudges_Persons_PersonId",
                        column: x => x.PersonId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "PanelRoundEnds",
                columns: table => new
                {
                    PanelId = table.Column<Guid>(type: "uuid", nullable: false),
                    Round = table.Column<int>(type: "integer", nullable: false),
                    LeadId = table.Column<Guid>(type: "uuid", nullable: false),
                    EndedAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PanelRoundEnds", x => new { x.PanelId, x.Round });
                    table.ForeignKey(
                        name: "FK_PanelRoundEnds_Panels_PanelId",
                        column: x => x.PanelId,
                        principalTable: "Panels",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_PanelRoundEnds_Persons_LeadId",
                        column: x => x.LeadId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "AppealDecisions",
                columns: table => new
                {
                    AppealId = table.Column<Guid>(type: "uuid", nullable: false),
                    Outcome = table.Column<string>(type: "character varying(30)", maxLength: 30, nullable: false),
                    Remedy = table.Column<string>(type: "character varying(30)", maxLength: 30, nullable: true),
                    Reason = table.Column<string>(type: "character varying(2000)", maxLength: 2000, nullable: false),
                    LeadId = table.Column<Guid>(type: "uuid", nullable: false),
                    DecidedOn = table.Column<DateOnly>(type: "date", nullable: false),
                    KeptAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false),
                    MailId = table.Column<Guid>(type: "uuid", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_AppealDecisions", x => x.AppealId);
                    table.CheckConstraint("CK_AppealDecision_Remedy", "(\"Outcome\" = 'NotUpheld' AND \"Remedy\" IS NULL) OR (\"Outcome\" <> 'NotUpheld' AND \"Remedy\" IS NOT NULL)");
                    table.ForeignKey(
                        name: "FK_AppealDecisions_AppealTakeUps_AppealId",
                        column: x => x.AppealId,
                        principalTable: "AppealTakeUps",
                        principalColumn: "AppealId",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_AppealDecisions_OutgoingMails_MailId",
                        column: x => x.MailId,
                        principalTable: "OutgoingMails",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_AppealDecisions_Persons_LeadId",
                        column: x => x.LeadId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "CalibrationMarks",
                columns: table => new
                {
                    SheetId = table.Column<Guid>(type: "uuid", nullable: false),
                    StepId = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    Observation = table.Column<string>(type: "character varying(30)", maxLength: 30, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_CalibrationMarks", x => new { x.SheetId, x.StepId });
                    table.ForeignKey(
                        name: "FK_CalibrationMarks_CalibrationSheets_SheetId",
                        column: x => x.SheetId,
                        principalTable: "CalibrationSheets",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "ScoresheetKit",
                columns: table => new
                {
                    ScoresheetId = table.Column<Guid>(type: "uuid", nullable: false),
                    Position = table.Column<int>(type: "integer", nullable: false),
                    PieceId = table.Column<Guid>(type: "uuid", nullable: false),
                    InspectionId = table.Column<Guid>(type: "uuid", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ScoresheetKit", x => new { x.ScoresheetId, x.Position });
                    table.ForeignKey(
                        name: "FK_ScoresheetKit_KitInspections_InspectionId",
                        column: x => x.InspectionId,
                        principalTable: "KitInspections",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_ScoresheetKit_KitPieces_PieceId",
                        column: x => x.PieceId,
                        principalTable: "KitPieces",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_ScoresheetKit_Scoresheets_ScoresheetId",
                        column: x => x.ScoresheetId,
                        principalTable: "Scoresheets",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "StartedKit",
                columns: table => new
                {
                    ScoresheetId = table.Column<Guid>(type: "uuid", nullable: false),
                    Position = table.Column<int>(type: "integer", nullable: false),
                    PieceId = table.Column<Guid>(type: "uuid", nullable: false),
                    InspectionId = table.Column<Guid>(type: "uuid", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_StartedKit", x => new { x.ScoresheetId, x.Position });
                    table.ForeignKey(
                        name: "FK_StartedKit_KitInspections_InspectionId",
                        column: x => x.InspectionId,
                        principalTable: "KitInspections",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_StartedKit_KitPieces_PieceId",
                        column: x => x.PieceId,
                        principalTable: "KitPieces",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_StartedKit_StartedScoresheets_ScoresheetId",
                        column: x => x.ScoresheetId,
                        principalTable: "StartedScoresheets",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "PanelBounds",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    JudgeId = table.Column<Guid>(type: "uuid", nullable: false),
                    LeastCut = table.Column<int>(type: "integer", nullable: false),
                    GreatestCut = table.Column<int>(type: "integer", nullable: false),
                    LeastFail = table.Column<int>(type: "integer", nullable: false),
                    GreatestFail = table.Column<int>(type: "integer", nullable: false),
                    KeptById = table.Column<Guid>(type: "uuid", nullable: false),
                    KeptAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PanelBounds", x => x.Id);
                    table.ForeignKey(
                        name: "FK_PanelBounds_PanelJudges_JudgeId",
                        column: x => x.JudgeId,
                        principalTable: "PanelJudges",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_PanelBounds_Persons_KeptById",
                        column: x => x.KeptById,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "PanelRatings",
                columns: table => new
                {
                    FormId = table.Column<Guid>(type: "uuid", nullable: false),
                    JudgeId = table.Column<Guid>(type: "uuid", nullable: false),
                    ItemId = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    Round = table.Column<int>(type: "integer", nullable: false),
                    Percent = table.Column<int>(type: "integer", nullable: false),
                    KeptById = table.Column<Guid>(type: "uuid", nullable: false),
                    KeptAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PanelRatings", x => new { x.FormId, x.JudgeId, x.ItemId, x.Round });
                    table.CheckConstraint("CK_PanelRating_Range", "\"Percent\" >= 0 AND \"Percent\" <= 100 AND \"Round\" >= 1 AND \"Round\" <= 2");
                    table.ForeignKey(
                        name: "FK_PanelRatings_PanelJudges_JudgeId",
                        column: x => x.JudgeId,
                        principalTable: "PanelJudges",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_PanelRatings_Persons_KeptById",
                        column: x => x.KeptById,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "ScoresheetSetAsides",
                columns: table => new
                {
                    ScoresheetId = table.Column<Guid>(type: "uuid", nullable: false),
                    AppealId = table.Column<Guid>(type: "uuid", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ScoresheetSetAsides", x => x.ScoresheetId);
                    table.ForeignKey(
                        name: "FK_ScoresheetSetAsides_AppealDecisions_AppealId",
                        column: x => x.AppealId,
                        principalTable: "AppealDecisions",
                        principalColumn: "AppealId",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_ScoresheetSetAsides_Scoresheets_ScoresheetId",
                        column: x => x.ScoresheetId,
                        principalTable: "Scoresheets",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "SetAsideLooks",
                columns: table => new
                {
                    AppealId = table.Column<Guid>(type: "uuid", nullable: false),
                    LeadId = table.Column<Guid>(type: "uuid", nullable: false),
                    Finding = table.Column<string>(type: "character varying(2000)", maxLength: 2000, nullable: false),
                    LookedOn = table.Column<DateOnly>(type: "date", nullable: false),
                    KeptAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_SetAsideLooks", x => x.AppealId);
                    table.ForeignKey(
                        name: "FK_SetAsideLooks_AppealDecisions_AppealId",
                        column: x => x.AppealId,
                        principalTable: "AppealDecisions",
                        principalColumn: "AppealId",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_SetAsideLooks_Persons_LeadId",
                        column: x => x.LeadId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "SittingSetAsides",
                columns: table => new
                {
                    SittingId = table.Column<Guid>(type: "uuid", nullable: false),
                    AppealId = table.Column<Guid>(type: "uuid", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_SittingSetAsides", x => x.SittingId);
                    table.ForeignKey(
                        name: "FK_SittingSetAsides_AppealDecisions_AppealId",
                        column: x => x.AppealId,
                        principalTable: "AppealDecisions",
                        principalColumn: "AppealId",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_SittingSetAsides_Sittings_SittingId",
                        column: x => x.SittingId,
                        principalTable: "Sittings",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_AppealDecisions_LeadId",
                table: "AppealDecisions",
                column: "LeadId");

            migrationBuilder.CreateIndex(
                name: "IX_AppealDecisions_MailId",
                table: "AppealDecisions",
                column: "MailId");

            migrationBuilder.CreateIndex(
                name: "IX_Appeals_DecisionId",
                table: "Appeals",
                column: "DecisionId");

            migrationBuilder.CreateIndex(
                name: "IX_Appeals_EnteredById",
                table: "Appeals",
                column: "EnteredById");

            migrationBuilder.CreateIndex(
                name: "IX_Appeals_MailId",
                table: "Appeals",
                column: "MailId");

            migrationBuilder.CreateIndex(
                name: "IX_Appeals_Matter_ContestedId",
                table: "Appeals",
                columns: new[] { "Matter", "ContestedId" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Appeals_PersonId_ReceivedOn",
                table: "Appeals",
                columns: new[] { "PersonId", "ReceivedOn" });

            migrationBuilder.CreateIndex(
                name: "IX_Appeals_ScoresheetId",
                table: "Appeals",
                column: "ScoresheetId");

            migrationBuilder.CreateIndex(
                name: "IX_Appeals_SittingId",
                table: "Appeals",
                column: "SittingId");

            migrationBuilder.CreateIndex(
                name: "IX_AppealTakeUps_LeadId",
                table: "AppealTakeUps",
                column: "LeadId");

            migrationBuilder.CreateIndex(
                name: "IX_AppealTakeUps_MailId",
                table: "AppealTakeUps",
                column: "MailId");

            migrationBuilder.CreateIndex(
                name: "IX_CalibrationEnds_LeadId",
                table: "CalibrationEnds",
                column: "LeadId");

            migrationBuilder.CreateIndex(
                name: "IX_CalibrationRounds_CourseHash",
                table: "CalibrationRounds",
                column: "CourseHash");

            migrationBuilder.CreateIndex(
                name: "IX_CalibrationRounds_LeadId",
                table: "CalibrationRounds",
                column: "LeadId");

            migrationBuilder.CreateIndex(
                name: "IX_CalibrationRounds_OpenedAt",
                table: "CalibrationRounds",
                column: "OpenedAt");

            migrationBuilder.CreateIndex(
                name: "IX_CalibrationSheets_InstructorId",
                table: "CalibrationSheets",
                column: "InstructorId");

            migrationBuilder.CreateIndex(
                name: "IX_CalibrationSheets_RoundId_InstructorId",
                table: "CalibrationSheets",
                columns: new[] { "RoundId", "InstructorId" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_CandidateWords_InstructorId",
                table: "CandidateWords",
                column: "InstructorId");

            migrationBuilder.CreateIndex(
                name: "IX_CandidateWords_ScoresheetId",
                table: "CandidateWords",
                column: "ScoresheetId",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_CorrectionCases_DecisionId",
                table: "CorrectionCases",
                column: "DecisionId");

            migrationBuilder.CreateIndex(
                name: "IX_CorrectionCases_LeadId",
                table: "CorrectionCases",
                column: "LeadId");

            migrationBuilder.CreateIndex(
                name: "IX_CourseRereadings_CourseHash",
                table: "CourseRereadings",
                column: "CourseHash");

            migrationBuilder.CreateIndex(
                name: "IX_CourseRereadings_PersonId_CourseId_ReadOn",
                table: "CourseRereadings",
                columns: new[] { "PersonId", "CourseId", "ReadOn" });

            migrationBuilder.CreateIndex(
                name: "IX_CutAdoptions_LeadId",
                table: "CutAdoptions",
                column: "LeadId");

            migrationBuilder.CreateIndex(
                name: "IX_CutAdoptions_PanelId_KeptAt",
                table: "CutAdoptions",
                columns: new[] { "PanelId", "KeptAt" });

            migrationBuilder.CreateIndex(
                name: "IX_InstructorCompetenceEnds_LeadId",
                table: "InstructorCompetenceEnds",
                column: "LeadId");

            migrationBuilder.CreateIndex(
                name: "IX_InstructorCompetences_EntryId_Duty_Subject",
                table: "InstructorCompetences",
                columns: new[] { "EntryId", "Duty", "Subject" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_InstructorCompetences_LeadId",
                table: "InstructorCompetences",
                column: "LeadId");

            migrationBuilder.CreateIndex(
                name: "IX_InstructorCompetences_PersonId_CourseId",
                table: "InstructorCompetences",
                columns: new[] { "PersonId", "CourseId" });

            migrationBuilder.CreateIndex(
                name: "IX_InstructorConflictEnds_LeadId",
                table: "InstructorConflictEnds",
                column: "LeadId");

            migrationBuilder.CreateIndex(
                name: "IX_InstructorConflicts_EmployerId",
                table: "InstructorConflicts",
                column: "EmployerId");

            migrationBuilder.CreateIndex(
                name: "IX_InstructorConflicts_LeadId",
                table: "InstructorConflicts",
                column: "LeadId");

            migrationBuilder.CreateIndex(
                name: "IX_InstructorConflicts_OtherPersonId",
                table: "InstructorConflicts",
                column: "OtherPersonId");

            migrationBuilder.CreateIndex(
                name: "IX_InstructorConflicts_PersonId",
                table: "InstructorConflicts",
                column: "PersonId");

            migrationBuilder.CreateIndex(
                name: "IX_InstructorStatements_PersonId_StatedOn",
                table: "InstructorStatements",
                columns: new[] { "PersonId", "StatedOn" });

            migrationBuilder.CreateIndex(
                name: "IX_KeyCorrections_ByHash",
                table: "KeyCorrections",
                column: "ByHash");

            migrationBuilder.CreateIndex(
                name: "IX_KeyCorrections_CourseId_MadeAt",
                table: "KeyCorrections",
                columns: new[] { "CourseId", "MadeAt" });

            migrationBuilder.CreateIndex(
                name: "IX_KeyCorrections_LeadId",
                table: "KeyCorrections",
                column: "LeadId");

            migrationBuilder.CreateIndex(
                name: "IX_KitInspections_InspectorId",
                table: "KitInspections",
                column: "InspectorId");

            migrationBuilder.CreateIndex(
                name: "IX_KitInspections_PieceId_InspectedOn",
                table: "KitInspections",
                columns: new[] { "PieceId", "InspectedOn" });

            migrationBuilder.CreateIndex(
                name: "IX_KitPieces_LabelKey",
                table: "KitPieces",
                column: "LabelKey",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_KitPieces_RegisteredById",
                table: "KitPieces",
                column: "RegisteredById");

            migrationBuilder.CreateIndex(
                name: "IX_KitRetirements_TakenById",
                table: "KitRetirements",
                column: "TakenById");

            migrationBuilder.CreateIndex(
                name: "IX_PanelBounds_JudgeId_KeptAt",
                table: "PanelBounds",
                columns: new[] { "JudgeId", "KeptAt" });

            migrationBuilder.CreateIndex(
                name: "IX_PanelBounds_KeptById",
                table: "PanelBounds",
                column: "KeptById");

            migrationBuilder.CreateIndex(
                name: "IX_PanelJudges_AddedById",
                table: "PanelJudges",
                column: "AddedById");

            migrationBuilder.CreateIndex(
                name: "IX_PanelJudges_PanelId_Number",
                table: "PanelJudges",
                columns: new[] { "PanelId", "Number" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_PanelJudges_PersonId",
                table: "PanelJudges",
                column: "PersonId");

            migrationBuilder.CreateIndex(
                name: "IX_PanelRatings_JudgeId_KeptAt",
                table: "PanelRatings",
                columns: new[] { "JudgeId", "KeptAt" });

            migrationBuilder.CreateIndex(
                name: "IX_PanelRatings_KeptById",
                table: "PanelRatings",
                column: "KeptById");

            migrationBuilder.CreateIndex(
                name: "IX_PanelRoundEnds_LeadId",
                table: "PanelRoundEnds",
                column: "LeadId");

            migrationBuilder.CreateIndex(
                name: "IX_Panels_CourseHash",
                table: "Panels",
                column: "CourseHash");

            migrationBuilder.CreateIndex(
                name: "IX_Panels_LeadId",
                table: "Panels",
                column: "LeadId");

            migrationBuilder.CreateIndex(
                name: "IX_Panels_OpenedAt",
                table: "Panels",
                column: "OpenedAt");

            migrationBuilder.CreateIndex(
                name: "IX_Regradings_CorrectionId",
                table: "Regradings",
                column: "CorrectionId");

            migrationBuilder.CreateIndex(
                name: "IX_ScoresheetKit_InspectionId",
                table: "ScoresheetKit",
                column: "InspectionId");

            migrationBuilder.CreateIndex(
                name: "IX_ScoresheetKit_PieceId",
                table: "ScoresheetKit",
                column: "PieceId");

            migrationBuilder.CreateIndex(
                name: "IX_ScoresheetSetAsides_AppealId",
                table: "ScoresheetSetAsides",
                column: "AppealId",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_SetAsideLooks_LeadId",
                table: "SetAsideLooks",
                column: "LeadId");

            migrationBuilder.CreateIndex(
                name: "IX_SittingSetAsides_AppealId",
                table: "SittingSetAsides",
                column: "AppealId",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_StartedKit_InspectionId",
                table: "StartedKit",
                column: "InspectionId");

            migrationBuilder.CreateIndex(
                name: "IX_StartedKit_PieceId",
                table: "StartedKit",
                column: "PieceId");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "CalibrationEnds");

            migrationBuilder.DropTable(
                name: "CalibrationMarks");

            migrationBuilder.DropTable(
                name: "CandidateWords");

            migrationBuilder.DropTable(
                name: "CorrectionCases");

            migrationBuilder.DropTable(
                name: "CourseRereadings");

            migrationBuilder.DropTable(
                name: "CutAdoptions");

            migrationBuilder.DropTable(
                name: "InstructorCompetenceEnds");

            migrationBuilder.DropTable(
                name: "InstructorConflictEnds");

            migrationBuilder.DropTable(
                name: "InstructorStatements");

            migrationBuilder.DropTable(
                name: "KitRetirements");

            migrationBuilder.DropTable(
                name: "PanelBounds");

            migrationBuilder.DropTable(
                name: "PanelRatings");

            migrationBuilder.DropTable(
                name: "PanelRoundEnds");

            migrationBuilder.DropTable(
                name: "Regradings");

            migrationBuilder.DropTable(
                name: "ScoresheetKit");

            migrationBuilder.DropTable(
                name: "ScoresheetSetAsides");

            migrationBuilder.DropTable(
                name: "SetAsideLooks");

            migrationBuilder.DropTable(
                name: "SittingSetAsides");

            migrationBuilder.DropTable(
                name: "StartedKit");

            migrationBuilder.DropTable(
                name: "CalibrationSheets");

            migrationBuilder.DropTable(
                name: "InstructorCompetences");

            migrationBuilder.DropTable(
                name: "InstructorConflicts");

            migrationBuilder.DropTable(
                name: "PanelJudges");

            migrationBuilder.DropTable(
                name: "KeyCorrections");

            migrationBuilder.DropTable(
                name: "AppealDecisions");

            migrationBuilder.DropTable(
                name: "KitInspections");

            migrationBuilder.DropTable(
                name: "CalibrationRounds");

            migrationBuilder.DropTable(
                name: "Panels");

            migrationBuilder.DropTable(
                name: "AppealTakeUps");

            migrationBuilder.DropTable(
                name: "KitPieces");

            migrationBuilder.DropTable(
                name: "Appeals");

            migrationBuilder.DropColumn(
                name: "InstructionsReadAt",
                table: "StartedScoresheets");

            migrationBuilder.DropColumn(
                name: "Impression",
                table: "Scoresheets");

            migrationBuilder.DropColumn(
                name: "InstructionsReadAt",
                table: "Scoresheets");

            migrationBuilder.DropColumn(
                name: "Seconds",
                table: "Scoresheets");

            migrationBuilder.AddColumn<bool>(
                name: "IsKitInspected",
                table: "StartedScoresheets",
                type: "boolean",
                nullable: false,
                defaultValue: false);

            migrationBuilder.AddColumn<bool>(
                name: "IsKitInspected",
                table: "Scoresheets",
                type: "boolean",
                nullable: false,
                defaultValue: false);
        }
    }
}

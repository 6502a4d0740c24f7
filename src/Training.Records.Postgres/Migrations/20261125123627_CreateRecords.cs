using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Training.Records.Postgres.Migrations
{
    /// <inheritdoc />
    public partial class CreateRecords : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "CourseSnapshots",
                columns: table => new
                {
                    Hash = table.Column<string>(type: "character varying(64)", maxLength: 64, nullable: false),
                    CourseId = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    Content = table.Column<string>(type: "text", nullable: false),
                    FirstLoadedAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_CourseSnapshots", x => x.Hash);
                });

            migrationBuilder.CreateTable(
                name: "Employers",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    Name = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    NameKey = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Employers", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Persons",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    Language = table.Column<string>(type: "character varying(30)", maxLength: 30, nullable: false),
                    Version = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Persons", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "CoursesInForce",
                columns: table => new
                {
                    CourseId = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    Number = table.Column<int>(type: "integer", nullable: false),
                    Hash = table.Column<string>(type: "character varying(64)", maxLength: 64, nullable: false),
                    SinceAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_CoursesInForce", x => new { x.CourseId, x.Number });
                    table.ForeignKey(
                        name: "FK_CoursesInForce_CourseSnapshots_Hash",
                        column: x => x.Hash,
                        principalTable: "CourseSnapshots",
                        principalColumn: "Hash",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Sites",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    EmployerId = table.Column<Guid>(type: "uuid", nullable: false),
                    Name = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    NameKey = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    Zone = table.Column<string>(type: "character varying(64)", maxLength: 64, nullable: false),
                    Region = table.Column<string>(type: "character varying(64)", maxLength: 64, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Sites", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Sites_Employers_EmployerId",
                        column: x => x.EmployerId,
                        principalTable: "Employers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Appointments",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    Role = table.Column<string>(type: "character varying(30)", maxLength: 30, nullable: false),
                    Languages = table.Column<string>(type: "character varying(60)", maxLength: 60, nullable: false),
                    PersonId = table.Column<Guid>(type: "uuid", nullable: false),
                    StartsOn = table.Column<DateOnly>(type: "date", nullable: false),
                    EndsOn = table.Column<DateOnly>(type: "date", nullable: true),
                    Version = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Appointments", x => x.Id);
                    table.CheckConstraint("CK_Appointment_Dates", "\"EndsOn\" IS NULL OR \"EndsOn\" >= \"StartsOn\"");
                    table.ForeignKey(
                        name: "FK_Appointments_Persons_PersonId",
                        column: x => x.PersonId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Badges",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    EmployerId = table.Column<Guid>(type: "uuid", nullable: false),
                    Number = table.Column<string>(type: "character varying(60)", maxLength: 60, nullable: false),
                    NumberKey = table.Column<string>(type: "character varying(60)", maxLength: 60, nullable: false),
                    PersonId = table.Column<Guid>(type: "uuid", nullable: false),
                    StartsOn = table.Column<DateOnly>(type: "date", nullable: false),
                    EndsOn = table.Column<DateOnly>(type: "date", nullable: true),
                    Version = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Badges", x => x.Id);
                    table.CheckConstraint("CK_Badge_Dates", "\"EndsOn\" IS NULL OR \"EndsOn\" >= \"StartsOn\"");
                    table.ForeignKey(
                        name: "FK_Badges_Employers_EmployerId",
                        column: x => x.EmployerId,
                        principalTable: "Employers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Badges_Persons_PersonId",
                        column: x => x.PersonId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Decisions",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    PersonId = table.Column<Guid>(type: "uuid", nullable: false),
                    SchemeId = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    CourseHash = table.Column<string>(type: "character varying(64)", maxLength: 64, nullable: false),
                    Route = table.Column<string>(type: "character varying(30)", maxLength: 30, nullable: false),
                    Outcome = table.Column<string>(type: "character varying(30)", maxLength: 30, nullable: false),
                    DecidedOn = table.Column<DateOnly>(type: "date", nullable: false),
                    Zone = table.Column<string>(type: "character varying(64)", maxLength: 64, nullable: false),
                    LeadId = table.Column<Guid>(type: "uuid", nullable: true),
                    Reasons = table.Column<string>(type: "text", nullable: false),
                    KeptAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Decisions", x => x.Id);
                    table.CheckConstraint("CK_Decision_NeverOneself", "\"LeadId\" IS NULL OR \"LeadId\" <> \"PersonId\"");
                    table.ForeignKey(
                        name: "FK_Decisions_CourseSnapshots_CourseHash",
                        column: x => x.CourseHash,
                        principalTable: "CourseSnapshots",
                        principalColumn: "Hash",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Decisions_Persons_LeadId",
                        column: x => x.LeadId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Decisions_Persons_PersonId",
                        column: x => x.PersonId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Employments",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    EmployerId = table.Column<Guid>(type: "uuid", nullable: false),
                    PersonId = table.Column<Guid>(type: "uuid", nullable: false),
                    StartsOn = table.Column<DateOnly>(type: "date", nullable: false),
                    EndsOn = table.Column<DateOnly>(type: "date", nullable: true),
                    Version = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Employments", x => x.Id);
                    table.CheckConstraint("CK_Employment_Dates", "\"EndsOn\" IS NULL OR \"EndsOn\" >= \"StartsOn\"");
                    table.ForeignKey(
                        name: "FK_Employments_Employers_EmployerId",
                        column: x => x.EmployerId,
                        principalTable: "Employers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Employments_Persons_PersonId",
                        column: x => x.PersonId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "PersonNames",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    PersonId = table.Column<Guid>(type: "uuid", nullable: false),
                    Text = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: true),
                    StartsOn = table.Column<DateOnly>(type: "date", nullable: false),
                    Version = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PersonNames", x => x.Id);
                    table.ForeignKey(
                        name: "FK_PersonNames_Persons_PersonId",
                        column: x => x.PersonId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Sittings",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    FormId = table.Column<Guid>(type: "uuid", nullable: false),
                    Copy = table.Column<int>(type: "integer", nullable: false),
                    ContentHash = table.Column<string>(type: "character varying(64)", maxLength: 64, nullable: false),
                    PersonId = table.Column<Guid>(type: "uuid", nullable: false),
                    CourseHash = table.Column<string>(type: "character varying(64)", maxLength: 64, nullable: false),
                    QuizId = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    Seed = table.Column<long>(type: "bigint", nullable: false),
                    StartedAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false),
                    SubmittedAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false),
                    TakenOn = table.Column<DateOnly>(type: "date", nullable: false),
                    Zone = table.Column<string>(type: "character varying(64)", maxLength: 64, nullable: false),
                    KeptAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Sittings", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Sittings_CourseSnapshots_CourseHash",
                        column: x => x.CourseHash,
                        principalTable: "CourseSnapshots",
                        principalColumn: "Hash",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Sittings_Persons_PersonId",
                        column: x => x.PersonId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Classes",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    SiteId = table.Column<Guid>(type: "uuid", nullable: false),
                    HeldOn = table.Column<DateOnly>(type: "date", nullable: false),
                    CourseId = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    Capacity = table.Column<int>(type: "integer", nullable: false),
                    Version = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Classes", x => x.Id);
                    table.CheckConstraint("CK_Class_Capacity", "\"Capacity\" >= 1");
                    table.ForeignKey(
                        name: "FK_Classes_Sites_SiteId",
                        column: x => x.SiteId,
                        principalTable: "Sites",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Crews",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    SiteId = table.Column<Guid>(type: "uuid", nullable: false),
                    Name = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    NameKey = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Crews", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Crews_Sites_SiteId",
                        column: x => x.SiteId,
                        principalTable: "Sites",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "SiteAssignments",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    SiteId = table.Column<Guid>(type: "uuid", nullable: false),
                    PersonId = table.Column<Guid>(type: "uuid", nullable: false),
                    StartsOn = table.Column<DateOnly>(type: "date", nullable: false),
                    EndsOn = table.Column<DateOnly>(type: "date", nullable: true),
                    Version = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_SiteAssignments", x => x.Id);
                    table.CheckConstraint("CK_SiteAssignment_Dates", "\"EndsOn\" IS NULL OR \"EndsOn\" >= \"StartsOn\"");
                    table.ForeignKey(
                        name: "FK_SiteAssignments_Persons_PersonId",
                        column: x => x.PersonId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_SiteAssignments_Sites_SiteId",
                        column: x => x.SiteId,
                        principalTable: "Sites",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Periods",
                columns: table => new
                {
                    DecisionId = table.Column<Guid>(type: "uuid", nullable: false),
                    PersonId = table.Column<Guid>(type: "uuid", nullable: false),
                    SchemeId = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    Number = table.Column<int>(type: "integer", nullable: false),
                    DecidedOn = table.Column<DateOnly>(type: "date", nullable: false),
                    StartsOn = table.Column<DateOnly>(type: "date", nullable: false),
                    ExpiresOn = table.Column<DateOnly>(type: "date", nullable: false),
                    Validity = table.Column<string>(type: "character varying(6)", maxLength: 6, nullable: false),
                    Window = table.Column<string>(type: "character varying(6)", maxLength: 6, nullable: false),
                    Grace = table.Column<string>(type: "character varying(6)", maxLength: 6, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Periods", x => x.DecisionId);
                    table.UniqueConstraint("AK_Periods_PersonId_SchemeId_Number", x => new { x.PersonId, x.SchemeId, x.Number });
                    table.CheckConstraint("CK_Period_Dates", "\"Number\" >= 1 AND \"ExpiresOn\" >= \"StartsOn\"");
                    table.ForeignKey(
                        name: "FK_Periods_Decisions_DecisionId",
                        column: x => x.DecisionId,
                        principalTable: "Decisions",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Periods_Persons_PersonId",
                        column: x => x.PersonId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "DrawnQuestions",
                columns: table => new
                {
                    SittingId = table.Column<Guid>(type: "uuid", nullable: false),
                    QuestionId = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    Position = table.Column<int>(type: "integer", nullable: false),
                    QuestionVersion = table.Column<string>(type: "character varying(64)", maxLength: 64, nullable: false),
                    OptionIds = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_DrawnQuestions", x => new { x.SittingId, x.QuestionId });
                    table.ForeignKey(
                        name: "FK_DrawnQuestions_Sittings_SittingId",
                        column: x => x.SittingId,
                        principalTable: "Sittings",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "SittingResults",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    SittingId = table.Column<Guid>(type: "uuid", nullable: false),
                    Number = table.Column<int>(type: "integer", nullable: false),
                    CourseHash = table.Column<string>(type: "character varying(64)", maxLength: 64, nullable: false),
                    IsPassed = table.Column<bool>(type: "boolean", nullable: false),
                    Points = table.Column<int>(type: "integer", nullable: false),
                    MaxPoints = table.Column<int>(type: "integer", nullable: false),
                    Reasons = table.Column<string>(type: "text", nullable: false),
                    GradedAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_SittingResults", x => x.Id);
                    table.ForeignKey(
                        name: "FK_SittingResults_CourseSnapshots_CourseHash",
                        column: x => x.CourseHash,
                        principalTable: "CourseSnapshots",
                        principalColumn: "Hash",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_SittingResults_Sittings_SittingId",
                        column: x => x.SittingId,
                        principalTable: "Sittings",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "ClassAttendances",
                columns: table => new
                {
                    ClassId = table.Column<Guid>(type: "uuid", nullable: false),
                    PersonId = table.Column<Guid>(type: "uuid", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ClassAttendances", x => new { x.ClassId, x.PersonId });
                    table.ForeignKey(
                        name: "FK_ClassAttendances_Classes_ClassId",
                        column: x => x.ClassId,
                        principalTable: "Classes",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_ClassAttendances_Persons_PersonId",
                        column: x => x.PersonId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "ClassTeachings",
                columns: table => new
                {
                    ClassId = table.Column<Guid>(type: "uuid", nullable: false),
                    InstructorId = table.Column<Guid>(type: "uuid", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ClassTeachings", x => new { x.ClassId, x.InstructorId });
                    table.ForeignKey(
                        name: "FK_ClassTeachings_Classes_ClassId",
                        column: x => x.ClassId,
                        principalTable: "Classes",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_ClassTeachings_Persons_InstructorId",
                        column: x => x.InstructorId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Scoresheets",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    FormId = table.Column<Guid>(type: "uuid", nullable: false),
                    Copy = table.Column<int>(type: "integer", nullable: false),
                    ContentHash = table.Column<string>(type: "character varying(64)", maxLength: 64, nullable: false),
                    ClassId = table.Column<Guid>(type: "uuid", nullable: false),
                    CandidateId = table.Column<Guid>(type: "uuid", nullable: false),
                    InstructorId = table.Column<Guid>(type: "uuid", nullable: false),
                    CourseHash = table.Column<string>(type: "character varying(64)", maxLength: 64, nullable: false),
                    ChecklistId = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    ChecklistVersion = table.Column<string>(type: "character varying(64)", maxLength: 64, nullable: false),
                    Subject = table.Column<string>(type: "character varying(30)", maxLength: 30, nullable: false),
                    Try = table.Column<int>(type: "integer", nullable: false),
                    StoppedAtStep = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: true),
                    Language = table.Column<string>(type: "character varying(30)", maxLength: 30, nullable: false),
                    IsIdentityConfirmed = table.Column<bool>(type: "boolean", nullable: false),
                    SignedAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false),
                    ScoredOn = table.Column<DateOnly>(type: "date", nullable: false),
                    Zone = table.Column<string>(type: "character varying(64)", maxLength: 64, nullable: false),
                    Remarks = table.Column<string>(type: "character varying(2000)", maxLength: 2000, nullable: false),
                    KeptAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Scoresheets", x => x.Id);
                    table.CheckConstraint("CK_Scoresheet_NeverOneself", "\"InstructorId\" <> \"CandidateId\"");
                    table.ForeignKey(
                        name: "FK_Scoresheets_Classes_ClassId",
                        column: x => x.ClassId,
                        principalTable: "Classes",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Scoresheets_CourseSnapshots_CourseHash",
                        column: x => x.CourseHash,
                        principalTable: "CourseSnapshots",
                        principalColumn: "Hash",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Scoresheets_Persons_CandidateId",
                        column: x => x.CandidateId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Scoresheets_Persons_InstructorId",
                        column: x => x.InstructorId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "CrewAssignments",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    CrewId = table.Column<Guid>(type: "uuid", nullable: false),
                    PersonId = table.Column<Guid>(type: "uuid", nullable: false),
                    StartsOn = table.Column<DateOnly>(type: "date", nullable: false),
                    EndsOn = table.Column<DateOnly>(type: "date", nullable: true),
                    Version = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_CrewAssignments", x => x.Id);
                    table.CheckConstraint("CK_CrewAssignment_Dates", "\"EndsOn\" IS NULL OR \"EndsOn\" >= \"StartsOn\"");
                    table.ForeignKey(
                        name: "FK_CrewAssignments_Crews_CrewId",
                        column: x => x.CrewId,
                        principalTable: "Crews",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_CrewAssignments_Persons_PersonId",
                        column: x => x.PersonId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Papers",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    DecisionId = table.Column<Guid>(type: "uuid", nullable: false),
                    Revision = table.Column<int>(type: "integer", nullable: false),
                    Serial = table.Column<string>(type: "character varying(60)", maxLength: 60, nullable: false),
                    PersonNameId = table.Column<Guid>(type: "uuid", nullable: false),
                    IssuedAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Papers", x => x.Id);
                    table.CheckConstraint("CK_Paper_Revision", "\"Revision\" >= 1");
                    table.ForeignKey(
                        name: "FK_Papers_Periods_DecisionId",
                        column: x => x.DecisionId,
                        principalTable: "Periods",
                        principalColumn: "DecisionId",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Papers_PersonNames_PersonNameId",
                        column: x => x.PersonNameId,
                        principalTable: "PersonNames",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Suspensions",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    PersonId = table.Column<Guid>(type: "uuid", nullable: false),
                    SchemeId = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    PeriodNumber = table.Column<int>(type: "integer", nullable: false),
                    Number = table.Column<int>(type: "integer", nullable: false),
                    StartsOn = table.Column<DateOnly>(type: "date", nullable: false),
                    LeadId = table.Column<Guid>(type: "uuid", nullable: false),
                    Reason = table.Column<string>(type: "character varying(2000)", maxLength: 2000, nullable: false),
                    DeadlineOn = table.Column<DateOnly>(type: "date", nullable: false),
                    KeptAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Suspensions", x => x.Id);
                    table.CheckConstraint("CK_Suspension_Deadline", "\"DeadlineOn\" >= \"StartsOn\"");
                    table.ForeignKey(
                        name: "FK_Suspensions_Periods_PersonId_SchemeId_PeriodNumber",
                        columns: x => new { x.PersonId, x.SchemeId, x.PeriodNumber },
                        principalTable: "Periods",
                        principalColumns: new[] { "PersonId", "SchemeId", "Number" },
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Suspensions_Persons_LeadId",
                        column: x => x.LeadId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Withdrawals",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    PersonId = table.Column<Guid>(type: "uuid", nullable: false),
                    SchemeId = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    PeriodNumber = table.Column<int>(type: "integer", nullable: false),
                    WithdrawnOn = table.Column<DateOnly>(type: "date", nullable: false),
                    LeadId = table.Column<Guid>(type: "uuid", nullable: false),
                    ConfirmedById = table.Column<Guid>(type: "uuid", nullable: false),
                    Reason = table.Column<string>(type: "character varying(2000)", maxLength: 2000, nullable: false),
                    KeptAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Withdrawals", x => x.Id);
                    table.CheckConstraint("CK_Withdrawal_TwoLeads", "\"LeadId\" <> \"ConfirmedById\"");
                    table.ForeignKey(
                        name: "FK_Withdrawals_Periods_PersonId_SchemeId_PeriodNumber",
                        columns: x => new { x.PersonId, x.SchemeId, x.PeriodNumber },
                        principalTable: "Periods",
                        principalColumns: new[] { "PersonId", "SchemeId", "Number" },
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Withdrawals_Persons_ConfirmedById",
                        column: x => x.ConfirmedById,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Withdrawals_Persons_LeadId",
                        column: x => x.LeadId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Answers",
                columns: table => new
                {
                    SittingId = table.Column<Guid>(type: "uuid", nullable: false),
                    QuestionId = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    OptionIds = table.Column<string>(type: "text", nullable: false),
                    Number = table.Column<string>(type: "character varying(60)", maxLength: 60, nullable: true),
                    Language = table.Column<string>(type: "character varying(30)", maxLength: 30, nullable: false),
                    SavedAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Answers", x => new { x.SittingId, x.QuestionId });
                    table.ForeignKey(
                        name: "FK_Answers_DrawnQuestions_SittingId_QuestionId",
                        columns: x => new { x.SittingId, x.QuestionId },
                        principalTable: "DrawnQuestions",
                        principalColumns: new[] { "SittingId", "QuestionId" },
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Answers_Sittings_SittingId",
                        column: x => x.SittingId,
                        principalTable: "Sittings",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "QuestionResults",
                columns: table => new
                {
                    ResultId = table.Column<Guid>(type: "uuid", nullable: false),
                    Position = table.Column<int>(type: "integer", nullable: false),
                    QuestionId = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    QuestionVersion = table.Column<string>(type: "character varying(64)", maxLength: 64, nullable: false),
                    Mark = table.Column<string>(type: "character varying(30)", maxLength: 30, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_QuestionResults", x => new { x.ResultId, x.Position });
                    table.ForeignKey(
                        name: "FK_QuestionResults_SittingResults_ResultId",
                        column: x => x.ResultId,
                        principalTable: "SittingResults",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "TopicResults",
                columns: table => new
                {
                    ResultId = table.Column<Guid>(type: "uuid", nullable: false),
                    Position = table.Column<int>(type: "integer", nullable: false),
                    Topic = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    Points = table.Column<int>(type: "integer", nullable: false),
                    MaxPoints = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_TopicResults", x => new { x.ResultId, x.Position });
                    table.ForeignKey(
                        name: "FK_TopicResults_SittingResults_ResultId",
                        column: x => x.ResultId,
                        principalTable: "SittingResults",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "LiveConditions",
                columns: table => new
                {
                    ScoresheetId = table.Column<Guid>(type: "uuid", nullable: false),
                    PermitNumber = table.Column<string>(type: "character varying(60)", maxLength: 60, nullable: false),
                    BitePlanCheckedOn = table.Column<DateOnly>(type: "date", nullable: false),
                    CommunicationsTestedAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false),
                    WatcherId = table.Column<Guid>(type: "uuid", nullable: false),
                    ModelPassId = table.Column<Guid>(type: "uuid", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_LiveConditions", x => x.ScoresheetId);
                    table.ForeignKey(
                        name: "FK_LiveConditions_Persons_WatcherId",
                        column: x => x.WatcherId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_LiveConditions_Scoresheets_ModelPassId",
                        column: x => x.ModelPassId,
                        principalTable: "Scoresheets",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_LiveConditions_Scoresheets_ScoresheetId",
                        column: x => x.ScoresheetId,
                        principalTable: "Scoresheets",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "ScoresheetResults",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    ScoresheetId = table.Column<Guid>(type: "uuid", nullable: false),
                    Number = table.Column<int>(type: "integer", nullable: false),
                    ChecklistVersion = table.Column<string>(type: "character varying(64)", maxLength: 64, nullable: false),
                    Outcome = table.Column<string>(type: "character varying(30)", maxLength: 30, nullable: false),
                    Points = table.Column<int>(type: "integer", nullable: false),
                    MaxPoints = table.Column<int>(type: "integer", nullable: false),
                    Reasons = table.Column<string>(type: "text", nullable: false),
                    GradedAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ScoresheetResults", x => x.Id);
                    table.ForeignKey(
                        name: "FK_ScoresheetResults_Scoresheets_ScoresheetId",
                        column: x => x.ScoresheetId,
                        principalTable: "Scoresheets",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "SeparationReasons",
                columns: table => new
                {
                    ScoresheetId = table.Column<Guid>(type: "uuid", nullable: false),
                    LeadId = table.Column<Guid>(type: "uuid", nullable: false),
                    Reason = table.Column<string>(type: "character varying(2000)", maxLength: 2000, nullable: false),
                    WrittenAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_SeparationReasons", x => x.ScoresheetId);
                    table.ForeignKey(
                        name: "FK_SeparationReasons_Persons_LeadId",
                        column: x => x.LeadId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_SeparationReasons_Scoresheets_ScoresheetId",
                        column: x => x.ScoresheetId,
                        principalTable: "Scoresheets",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "StepObservations",
                columns: table => new
                {
                    ScoresheetId = table.Column<Guid>(type: "uuid", nullable: false),
                    StepId = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    Position = table.Column<int>(type: "integer", nullable: false),
                    Observation = table.Column<string>(type: "character varying(30)", maxLength: 30, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_StepObservations", x => new { x.ScoresheetId, x.StepId });
                    table.ForeignKey(
                        name: "FK_StepObservations_Scoresheets_ScoresheetId",
                        column: x => x.ScoresheetId,
                        principalTable: "Scoresheets",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Renderings",
                columns: table => new
                {
                    PaperId = table.Column<Guid>(type: "uuid", nullable: false),
                    Language = table.Column<string>(type: "character varying(30)", maxLength: 30, nullable: false),
                    Format = table.Column<string>(type: "character varying(30)", maxLength: 30, nullable: false),
                    Bytes = table.Column<byte[]>(type: "bytea", nullable: false),
                    Sha256 = table.Column<string>(type: "character varying(64)", maxLength: 64, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Renderings", x => new { x.PaperId, x.Language, x.Format });
                    table.ForeignKey(
                        name: "FK_Renderings_Papers_PaperId",
                        column: x => x.PaperId,
                        principalTable: "Papers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Reinstatements",
                columns: table => new
                {
                    SuspensionId = table.Column<Guid>(type: "uuid", nullable: false),
                    ReinstatedOn = table.Column<DateOnly>(type: "date", nullable: false),
                    LeadId = table.Column<Guid>(type: "uuid", nullable: false),
                    Reason = table.Column<string>(type: "character varying(2000)", maxLength: 2000, nullable: false),
                    KeptAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Reinstatements", x => x.SuspensionId);
                    table.ForeignKey(
                        name: "FK_Reinstatements_Persons_LeadId",
                        column: x => x.LeadId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Reinstatements_Suspensions_SuspensionId",
                        column: x => x.SuspensionId,
                        principalTable: "Suspensions",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "DecisionEvidence",
                columns: table => new
                {
                    DecisionId = table.Column<Guid>(type: "uuid", nullable: false),
                    Position = table.Column<int>(type: "integer", nullable: false),
                    SittingResultId = table.Column<Guid>(type: "uuid", nullable: true),
                    ScoresheetResultId = table.Column<Guid>(type: "uuid", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_DecisionEvidence", x => new { x.DecisionId, x.Position });
                    table.CheckConstraint("CK_DecisionEvidence_OneResult", "(\"SittingResultId\" IS NULL AND \"ScoresheetResultId\" IS NOT NULL) OR (\"SittingResultId\" IS NOT NULL AND \"ScoresheetResultId\" IS NULL)");
                    table.ForeignKey(
                        name: "FK_DecisionEvidence_Decisions_DecisionId",
                        column: x => x.DecisionId,
                        principalTable: "Decisions",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_DecisionEvidence_ScoresheetResults_ScoresheetResultId",
                        column: x => x.ScoresheetResultId,
                        principalTable: "ScoresheetResults",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_DecisionEvidence_SittingResults_SittingResultId",
                        column: x => x.SittingResultId,
                        principalTable: "SittingResults",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "DecisionExceptions",
                columns: table => new
                {
                    DecisionId = table.Column<Guid>(type: "uuid", nullable: false),
                    ScoresheetResultId = table.Column<Guid>(type: "uuid", nullable: false),
                    ScorerId = table.Column<Guid>(type: "uuid", nullable: false),
                    Reason = table.Column<string>(type: "character varying(2000)", maxLength: 2000, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_DecisionExceptions", x => new { x.DecisionId, x.ScoresheetResultId });
                    table.ForeignKey(
                        name: "FK_DecisionExceptions_Decisions_DecisionId",
                        column: x => x.DecisionId,
                        principalTable: "Decisions",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_DecisionExceptions_Persons_ScorerId",
                        column: x => x.ScorerId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_DecisionExceptions_ScoresheetResults_ScoresheetResultId",
                        column: x => x.ScoresheetResultId,
                        principalTable: "ScoresheetResults",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_Appointments_PersonId_Role_StartsOn",
                table: "Appointments",
                columns: new[] { "PersonId", "Role", "StartsOn" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Badges_EmployerId_NumberKey",
                table: "Badges",
                columns: new[] { "EmployerId", "NumberKey" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Badges_PersonId_EmployerId_StartsOn",
                table: "Badges",
                columns: new[] { "PersonId", "EmployerId", "StartsOn" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_ClassAttendances_PersonId",
                table: "ClassAttendances",
                column: "PersonId");

            migrationBuilder.CreateIndex(
                name: "IX_Classes_HeldOn",
                table: "Classes",
                column: "HeldOn");

            migrationBuilder.CreateIndex(
                name: "IX_Classes_SiteId",
                table: "Classes",
                column: "SiteId");

            migrationBuilder.CreateIndex(
                name: "IX_ClassTeachings_InstructorId",
                table: "ClassTeachings",
                column: "InstructorId");

            migrationBuilder.CreateIndex(
                name: "IX_CoursesInForce_Hash",
                table: "CoursesInForce",
                column: "Hash");

            migrationBuilder.CreateIndex(
                name: "IX_CourseSnapshots_CourseId",
                table: "CourseSnapshots",
                column: "CourseId");

            migrationBuilder.CreateIndex(
                name: "IX_CrewAssignments_CrewId",
                table: "CrewAssignments",
                column: "CrewId");

            migrationBuilder.CreateIndex(
                name: "IX_CrewAssignments_PersonId_StartsOn",
                table: "CrewAssignments",
                columns: new[] { "PersonId", "StartsOn" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Crews_SiteId_NameKey",
                table: "Crews",
                columns: new[] { "SiteId", "NameKey" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_DecisionEvidence_ScoresheetResultId",
                table: "DecisionEvidence",
                column: "ScoresheetResultId");

            migrationBuilder.CreateIndex(
                name: "IX_DecisionEvidence_SittingResultId",
                table: "DecisionEvidence",
                column: "SittingResultId");

            migrationBuilder.CreateIndex(
                name: "IX_DecisionExceptions_ScorerId",
                table: "DecisionExceptions",
                column: "ScorerId");

            migrationBuilder.CreateIndex(
                name: "IX_DecisionExceptions_ScoresheetResultId",
                table: "DecisionExceptions",
                column: "ScoresheetResultId");

            migrationBuilder.CreateIndex(
                name: "IX_Decisions_CourseHash",
                table: "Decisions",
                column: "CourseHash");

            migrationBuilder.CreateIndex(
                name: "IX_Decisions_LeadId",
                table: "Decisions",
                column: "LeadId");

            migrationBuilder.CreateIndex(
                name: "IX_Decisions_PersonId_SchemeId_DecidedOn",
                table: "Decisions",
                columns: new[] { "PersonId", "SchemeId", "DecidedOn" });

            migrationBuilder.CreateIndex(
                name: "IX_DrawnQuestions_SittingId_Position",
                table: "DrawnQuestions",
                columns: new[] { "SittingId", "Position" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Employers_NameKey",
                table: "Employers",
                column: "NameKey",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Employments_EmployerId",
                table: "Employments",
                column: "EmployerId");

            migrationBuilder.CreateIndex(
                name: "IX_Employments_PersonId_EmployerId_StartsOn",
                table: "Employments",
                columns: new[] { "PersonId", "EmployerId", "StartsOn" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_LiveConditions_ModelPassId",
                table: "LiveConditions",
                column: "ModelPassId");

            migrationBuilder.CreateIndex(
                name: "IX_LiveConditions_WatcherId",
                table: "LiveConditions",
                column: "WatcherId");

            migrationBuilder.CreateIndex(
                name: "IX_Papers_DecisionId_Revision",
                table: "Papers",
                columns: new[] { "DecisionId", "Revision" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Papers_PersonNameId",
                table: "Papers",
                column: "PersonNameId");

            migrationBuilder.CreateIndex(
                name: "IX_Papers_Serial",
                table: "Papers",
                column: "Serial",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Periods_ExpiresOn",
                table: "Periods",
                column: "ExpiresOn");

            migrationBuilder.CreateIndex(
                name: "IX_PersonNames_PersonId_StartsOn",
                table: "PersonNames",
                columns: new[] { "PersonId", "StartsOn" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_QuestionResults_QuestionId_QuestionVersion",
                table: "QuestionResults",
                columns: new[] { "QuestionId", "QuestionVersion" });

            migrationBuilder.CreateIndex(
                name: "IX_Reinstatements_LeadId",
                table: "Reinstatements",
                column: "LeadId");

            migrationBuilder.CreateIndex(
                name: "IX_Renderings_Sha256",
                table: "Renderings",
                column: "Sha256");

            migrationBuilder.CreateIndex(
                name: "IX_ScoresheetResults_ScoresheetId_Number",
                table: "ScoresheetResults",
                columns: new[] { "ScoresheetId", "Number" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Scoresheets_CandidateId_ScoredOn",
                table: "Scoresheets",
                columns: new[] { "CandidateId", "ScoredOn" });

            migrationBuilder.CreateIndex(
                name: "IX_Scoresheets_ClassId_CandidateId_ChecklistId_Subject_Try_Ins~",
                table: "Scoresheets",
                columns: new[] { "ClassId", "CandidateId", "ChecklistId", "Subject", "Try", "InstructorId", "Copy" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Scoresheets_CourseHash",
                table: "Scoresheets",
                column: "CourseHash");

            migrationBuilder.CreateIndex(
                name: "IX_Scoresheets_FormId_ContentHash",
                table: "Scoresheets",
                columns: new[] { "FormId", "ContentHash" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Scoresheets_FormId_Copy",
                table: "Scoresheets",
                columns: new[] { "FormId", "Copy" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Scoresheets_InstructorId",
                table: "Scoresheets",
                column: "InstructorId");

            migrationBuilder.CreateIndex(
                name: "IX_SeparationReasons_LeadId",
                table: "SeparationReasons",
                column: "LeadId");

            migrationBuilder.CreateIndex(
                name: "IX_SiteAssignments_PersonId_StartsOn",
                table: "SiteAssignments",
                columns: new[] { "PersonId", "StartsOn" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_SiteAssignments_SiteId",
                table: "SiteAssignments",
                column: "SiteId");

            migrationBuilder.CreateIndex(
                name: "IX_Sites_EmployerId_NameKey",
                table: "Sites",
                columns: new[] { "EmployerId", "NameKey" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_SittingResults_CourseHash",
                table: "SittingResults",
                column: "CourseHash");

            migrationBuilder.CreateIndex(
                name: "IX_SittingResults_SittingId_Number",
                table: "SittingResults",
                columns: new[] { "SittingId", "Number" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Sittings_CourseHash",
                table: "Sittings",
                column: "CourseHash");

            migrationBuilder.CreateIndex(
                name: "IX_Sittings_FormId_ContentHash",
                table: "Sittings",
                columns: new[] { "FormId", "ContentHash" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Sittings_FormId_Copy",
                table: "Sittings",
                columns: new[] { "FormId", "Copy" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Sittings_PersonId_TakenOn",
                table: "Sittings",
                columns: new[] { "PersonId", "TakenOn" });

            migrationBuilder.CreateIndex(
                name: "IX_StepObservations_ScoresheetId_Position",
                table: "StepObservations",
                columns: new[] { "ScoresheetId", "Position" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Suspensions_LeadId",
                table: "Suspensions",
                column: "LeadId");

            migrationBuilder.CreateIndex(
                name: "IX_Suspensions_PersonId_SchemeId_Number",
                table: "Suspensions",
                columns: new[] { "PersonId", "SchemeId", "Number" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Suspensions_PersonId_SchemeId_PeriodNumber",
                table: "Suspensions",
                columns: new[] { "PersonId", "SchemeId", "PeriodNumber" });

            migrationBuilder.CreateIndex(
                name: "IX_Withdrawals_ConfirmedById",
                table: "Withdrawals",
                column: "ConfirmedById");

            migrationBuilder.CreateIndex(
                name: "IX_Withdrawals_LeadId",
                table: "Withdrawals",
                column: "LeadId");

            migrationBuilder.CreateIndex(
                name: "IX_Withdrawals_PersonId_SchemeId_PeriodNumber",
                table: "Withdrawals",
                columns: new[] { "PersonId", "SchemeId", "PeriodNumber" },
                unique: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "Answers");

            migrationBuilder.DropTable(
                name: "Appointments");

            migrationBuilder.DropTable(
                name: "Badges");

            migrationBuilder.DropTable(
                name: "ClassAttendances");

            migrationBuilder.DropTable(
                name: "ClassTeachings");

            migrationBuilder.DropTable(
                name: "CoursesInForce");

            migrationBuilder.DropTable(
                name: "CrewAssignments");

            migrationBuilder.DropTable(
                name: "DecisionEvidence");

            migrationBuilder.DropTable(
                name: "DecisionExceptions");

            migrationBuilder.DropTable(
                name: "Employments");

            migrationBuilder.DropTable(
                name: "LiveConditions");

            migrationBuilder.DropTable(
                name: "QuestionResults");

            migrationBuilder.DropTable(
                name: "Reinstatements");

            migrationBuilder.DropTable(
                name: "Renderings");

            migrationBuilder.DropTable(
                name: "SeparationReasons");

            migrationBuilder.DropTable(
                name: "SiteAssignments");

            migrationBuilder.DropTable(
                name: "StepObservations");

            migrationBuilder.DropTable(
                name: "TopicResults");

            migrationBuilder.DropTable(
                name: "Withdrawals");

            migrationBuilder.DropTable(
                name: "DrawnQuestions");

            migrationBuilder.DropTable(
                name: "Crews");

            migrationBuilder.DropTable(
                name: "ScoresheetResults");

            migrationBuilder.DropTable(
                name: "Suspensions");

            migrationBuilder.DropTable(
                name: "Papers");

            migrationBuilder.DropTable(
                name: "SittingResults");

            migrationBuilder.DropTable(
                name: "Scoresheets");

            migrationBuilder.DropTable(
                name: "Periods");

            migrationBuilder.DropTable(
                name: "PersonNames");

            migrationBuilder.DropTable(
                name: "Sittings");

            migrationBuilder.DropTable(
                name: "Classes");

            migrationBuilder.DropTable(
                name: "Decisions");

            migrationBuilder.DropTable(
                name: "Sites");

            migrationBuilder.DropTable(
                name: "CourseSnapshots");

            migrationBuilder.DropTable(
                name: "Persons");

            migrationBuilder.DropTable(
                name: "Employers");
        }
    }
}

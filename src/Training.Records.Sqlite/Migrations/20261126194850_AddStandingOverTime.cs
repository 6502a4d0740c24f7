using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Training.Records.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class AddStandingOverTime : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropIndex(
                name: "IX_Periods_ExpiresOn",
                table: "Periods");

            migrationBuilder.DropPrimaryKey(
                name: "PK_ClassAttendances",
                table: "ClassAttendances");

            migrationBuilder.AddColumn<string>(
                name: "TextOrder",
                table: "PersonNames",
                type: "TEXT",
                maxLength: 200,
                nullable: true);

            migrationBuilder.AddColumn<DateOnly>(
                name: "GraceEndsOn",
                table: "Periods",
                type: "TEXT",
                nullable: false,
                defaultValue: new DateOnly(1, 1, 1));

            migrationBuilder.AddColumn<DateOnly>(
                name: "WindowOpensOn",
                table: "Periods",
                type: "TEXT",
                nullable: false,
                defaultValue: new DateOnly(1, 1, 1));

            migrationBuilder.AddColumn<string>(
                name: "Calendar",
                table: "OutgoingMails",
                type: "TEXT",
                maxLength: 8000,
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "LengthMinutes",
                table: "Classes",
                type: "INTEGER",
                nullable: false,
                defaultValue: 480);

            migrationBuilder.AddColumn<TimeOnly>(
                name: "StartsAt",
                table: "Classes",
                type: "TEXT",
                nullable: false,
                defaultValue: new TimeOnly(8, 0, 0));

            migrationBuilder.AddColumn<int>(
                name: "Turn",
                table: "ClassAttendances",
                type: "INTEGER",
                nullable: false,
                defaultValue: 1);

            migrationBuilder.AddPrimaryKey(
                name: "PK_ClassAttendances",
                table: "ClassAttendances",
                columns: new[] { "ClassId", "PersonId", "Turn" });

            migrationBuilder.CreateTable(
                name: "AuditFolders",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    MadeById = table.Column<Guid>(type: "TEXT", nullable: false),
                    MadeAt = table.Column<DateTime>(type: "TEXT", precision: 3, nullable: false),
                    IsFull = table.Column<bool>(type: "INTEGER", nullable: false),
                    EmployerId = table.Column<Guid>(type: "TEXT", nullable: true),
                    SiteId = table.Column<Guid>(type: "TEXT", nullable: true),
                    PersonId = table.Column<Guid>(type: "TEXT", nullable: true),
                    StartsOn = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    EndsOn = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    Language = table.Column<string>(type: "TEXT", maxLength: 30, nullable: false),
                    People = table.Column<int>(type: "INTEGER", nullable: false),
                    Files = table.Column<int>(type: "INTEGER", nullable: false),
                    Bytes = table.Column<long>(type: "INTEGER", nullable: false),
                    IndexSha256 = table.Column<string>(type: "TEXT", maxLength: 64, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_AuditFolders", x => x.Id);
                    table.ForeignKey(
                        name: "FK_AuditFolders_Employers_EmployerId",
                        column: x => x.EmployerId,
                        principalTable: "Employers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_AuditFolders_Persons_MadeById",
                        column: x => x.MadeById,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_AuditFolders_Persons_PersonId",
                        column: x => x.PersonId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_AuditFolders_Sites_SiteId",
                        column: x => x.SiteId,
                        principalTable: "Sites",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "CalendarFeeds",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    SecretHash = table.Column<string>(type: "TEXT", maxLength: 64, nullable: false),
                    PersonId = table.Column<Guid>(type: "TEXT", nullable: false),
                    EmployerId = table.Column<Guid>(type: "TEXT", nullable: true),
                    Language = table.Column<string>(type: "TEXT", maxLength: 30, nullable: false),
                    MadeAt = table.Column<DateTime>(type: "TEXT", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_CalendarFeeds", x => x.Id);
                    table.ForeignKey(
                        name: "FK_CalendarFeeds_Employers_EmployerId",
                        column: x => x.EmployerId,
                        principalTable: "Employers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_CalendarFeeds_Persons_PersonId",
                        column: x => x.PersonId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "CapabilityReports",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    PersonId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Matter = table.Column<string>(type: "TEXT", maxLength: 30, nullable: false),
                    Words = table.Column<string>(type: "TEXT", maxLength: 2000, nullable: false),
                    ReportedOn = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    KeptAt = table.Column<DateTime>(type: "TEXT", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_CapabilityReports", x => x.Id);
                    table.ForeignKey(
                        name: "FK_CapabilityReports_Persons_PersonId",
                        column: x => x.PersonId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "ClassBriefings",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ClassId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Number = table.Column<int>(type: "INTEGER", nullable: false),
                    MeetingPlace = table.Column<string>(type: "TEXT", maxLength: 300, nullable: false),
                    Kit = table.Column<string>(type: "TEXT", maxLength: 2000, nullable: false),
                    Weather = table.Column<string>(type: "TEXT", maxLength: 2000, nullable: false),
                    WrittenAt = table.Column<DateTime>(type: "TEXT", precision: 3, nullable: false),
                    WrittenById = table.Column<Guid>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ClassBriefings", x => x.Id);
                    table.ForeignKey(
                        name: "FK_ClassBriefings_Classes_ClassId",
                        column: x => x.ClassId,
                        principalTable: "Classes",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_ClassBriefings_Persons_WrittenById",
                        column: x => x.WrittenById,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "ClassCancellations",
                columns: table => new
                {
                    ClassId = table.Column<Guid>(type: "TEXT", nullable: false),
                    CancelledAt = table.Column<DateTime>(type: "TEXT", precision: 3, nullable: false),
                    CancelledById = table.Column<Guid>(type: "TEXT", nullable: false),
                    Reason = table.Column<string>(type: "TEXT", maxLength: 500, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ClassCancellations", x => x.ClassId);
                    table.ForeignKey(
                        name: "FK_ClassCancellations_Classes_ClassId",
                        column: x => x.ClassId,
                        principalTable: "Classes",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_ClassCancellations_Persons_CancelledById",
                        column: x => x.CancelledById,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "ClassChanges",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ClassId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Number = table.Column<int>(type: "INTEGER", nullable: false),
                    FromOn = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    FromStartsAt = table.Column<TimeOnly>(type: "TEXT", nullable: false),
                    FromMinutes = table.Column<int>(type: "INTEGER", nullable: false),
                    FromSeats = table.Column<int>(type: "INTEGER", nullable: false),
                    ToOn = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    ToStartsAt = table.Column<TimeOnly>(type: "TEXT", nullable: false),
                    ToMinutes = table.Column<int>(type: "INTEGER", nullable: false),
                    ToSeats = table.Column<int>(type: "INTEGER", nullable: false),
                    ChangedAt = table.Column<DateTime>(type: "TEXT", precision: 3, nullable: false),
                    ChangedById = table.Column<Guid>(type: "TEXT", nullable: false),
                    Reason = table.Column<string>(type: "TEXT", maxLength: 500, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ClassChanges", x => x.Id);
                    table.ForeignKey(
                        name: "FK_ClassChanges_Classes_ClassId",
                        column: x => x.ClassId,
                        principalTable: "Classes",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_ClassChanges_Persons_ChangedById",
                        column: x => x.ChangedById,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "ClassInvitations",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ClassId = table.Column<Guid>(type: "TEXT", nullable: false),
                    PersonId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Sequence = table.Column<int>(type: "INTEGER", nullable: false),
                    IsCancellation = table.Column<bool>(type: "INTEGER", nullable: false),
                    HeldOn = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    StartsAt = table.Column<TimeOnly>(type: "TEXT", nullable: false),
                    LengthMinutes = table.Column<int>(type: "INTEGER", nullable: false),
                    MeetingPlace = table.Column<string>(type: "TEXT", maxLength: 300, nullable: false),
                    MadeAt = table.Column<DateTime>(type: "TEXT", precision: 3, nullable: false),
                    MailId = table.Column<Guid>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ClassInvitations", x => x.Id);
                    table.ForeignKey(
                        name: "FK_ClassInvitations_Classes_ClassId",
                        column: x => x.ClassId,
                        principalTable: "Classes",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_ClassInvitations_OutgoingMails_MailId",
                        column: x => x.MailId,
                        principalTable: "OutgoingMails",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_ClassInvitations_Persons_PersonId",
                        column: x => x.PersonId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "ClassPlans",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    EmployerId = table.Column<Guid>(type: "TEXT", nullable: false),
                    SchemeId = table.Column<string>(type: "TEXT", maxLength: 100, nullable: false),
                    CourseId = table.Column<string>(type: "TEXT", maxLength: 100, nullable: false),
                    StartsOn = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    EndsOn = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    Weekdays = table.Column<int>(type: "INTEGER", nullable: false),
                    Seats = table.Column<int>(type: "INTEGER", nullable: false),
                    MostClassesADay = table.Column<int>(type: "INTEGER", nullable: false),
                    MostClassesEach = table.Column<int>(type: "INTEGER", nullable: false),
                    MostTravelMinutes = table.Column<int>(type: "INTEGER", nullable: false),
                    MarginDays = table.Column<int>(type: "INTEGER", nullable: false),
                    People = table.Column<int>(type: "INTEGER", nullable: false),
                    LeastClasses = table.Column<int>(type: "INTEGER", nullable: false),
                    LeastUnmet = table.Column<int>(type: "INTEGER", nullable: false),
                    IsSearchCut = table.Column<bool>(type: "INTEGER", nullable: false),
                    LeadId = table.Column<Guid>(type: "TEXT", nullable: false),
                    KeptAt = table.Column<DateTime>(type: "TEXT", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ClassPlans", x => x.Id);
                    table.ForeignKey(
                        name: "FK_ClassPlans_Employers_EmployerId",
                        column: x => x.EmployerId,
                        principalTable: "Employers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_ClassPlans_Persons_LeadId",
                        column: x => x.LeadId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "ClassPresences",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ClassId = table.Column<Guid>(type: "TEXT", nullable: false),
                    PersonId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Number = table.Column<int>(type: "INTEGER", nullable: false),
                    Presence = table.Column<string>(type: "TEXT", maxLength: 30, nullable: false),
                    Reason = table.Column<string>(type: "TEXT", maxLength: 500, nullable: true),
                    MarkedAt = table.Column<DateTime>(type: "TEXT", precision: 3, nullable: false),
                    MarkedById = table.Column<Guid>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ClassPresences", x => x.Id);
                    table.ForeignKey(
                        name: "FK_ClassPresences_Classes_ClassId",
                        column: x => x.ClassId,
                        principalTable: "Classes",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_ClassPresences_Persons_MarkedById",
                        column: x => x.MarkedById,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_ClassPresences_Persons_PersonId",
                        column: x => x.PersonId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "ClassReminders",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ClassId = table.Column<Guid>(type: "TEXT", nullable: false),
                    PersonId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Sequence = table.Column<int>(type: "INTEGER", nullable: false),
                    MadeAt = table.Column<DateTime>(type: "TEXT", precision: 3, nullable: false),
                    MailId = table.Column<Guid>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ClassReminders", x => x.Id);
                    table.ForeignKey(
                        name: "FK_ClassReminders_Classes_ClassId",
                        column: x => x.ClassId,
                        principalTable: "Classes",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_ClassReminders_OutgoingMails_MailId",
                        column: x => x.MailId,
                        principalTable: "OutgoingMails",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_ClassReminders_Persons_PersonId",
                        column: x => x.PersonId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "ClassWaitings",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ClassId = table.Column<Guid>(type: "TEXT", nullable: false),
                    PersonId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Turn = table.Column<int>(type: "INTEGER", nullable: false),
                    AskedAt = table.Column<DateTime>(type: "TEXT", precision: 3, nullable: false),
                    AskedById = table.Column<Guid>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ClassWaitings", x => x.Id);
                    table.ForeignKey(
                        name: "FK_ClassWaitings_Classes_ClassId",
                        column: x => x.ClassId,
                        principalTable: "Classes",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_ClassWaitings_Persons_AskedById",
                        column: x => x.AskedById,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_ClassWaitings_Persons_PersonId",
                        column: x => x.PersonId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "CoverNeeds",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    SiteId = table.Column<Guid>(type: "TEXT", nullable: false),
                    CrewId = table.Column<Guid>(type: "TEXT", nullable: true),
                    SchemeId = table.Column<string>(type: "TEXT", maxLength: 100, nullable: false),
                    Handlers = table.Column<int>(type: "INTEGER", nullable: false),
                    StartsOn = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    SetById = table.Column<Guid>(type: "TEXT", nullable: false),
                    KeptAt = table.Column<DateTime>(type: "TEXT", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_CoverNeeds", x => x.Id);
                    table.CheckConstraint("CK_CoverNeed_Handlers", "\"Handlers\" >= 0 AND \"Handlers\" <= 500");
                    table.ForeignKey(
                        name: "FK_CoverNeeds_Crews_CrewId",
                        column: x => x.CrewId,
                        principalTable: "Crews",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_CoverNeeds_Persons_SetById",
                        column: x => x.SetById,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_CoverNeeds_Sites_SiteId",
                        column: x => x.SiteId,
                        principalTable: "Sites",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Encounters",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    SiteId = table.Column<Guid>(type: "TEXT", nullable: false),
                    ReporterId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Kind = table.Column<string>(type: "TEXT", maxLength: 30, nullable: false),
                    MetOn = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    MetAt = table.Column<TimeOnly>(type: "TEXT", nullable: true),
                    Place = table.Column<string>(type: "TEXT", maxLength: 500, nullable: false),
                    Latitude = table.Column<decimal>(type: "TEXT", precision: 8, scale: 5, nullable: true),
                    Longitude = table.Column<decimal>(type: "TEXT", precision: 8, scale: 5, nullable: true),
                    SpeciesId = table.Column<string>(type: "TEXT", maxLength: 100, nullable: true),
                    Done = table.Column<string>(type: "TEXT", maxLength: 2000, nullable: false),
                    Handling = table.Column<string>(type: "TEXT", maxLength: 30, nullable: false),
                    HandlerId = table.Column<Guid>(type: "TEXT", nullable: true),
                    FollowUp = table.Column<string>(type: "TEXT", maxLength: 2000, nullable: false),
                    CourseId = table.Column<string>(type: "TEXT", maxLength: 100, nullable: true),
                    ReportedOn = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    KeptAt = table.Column<DateTime>(type: "TEXT", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Encounters", x => x.Id);
                    table.CheckConstraint("CK_Encounter_Handler", "(\"Handling\" = 'Named' AND \"HandlerId\" IS NOT NULL) OR (\"Handling\" <> 'Named' AND \"HandlerId\" IS NULL)");
                    table.ForeignKey(
                        name: "FK_Encounters_Persons_HandlerId",
                        column: x => x.HandlerId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Encounters_Persons_ReporterId",
                        column: x => x.ReporterId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Encounters_Sites_SiteId",
                        column: x => x.SiteId,
                        principalTable: "Sites",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "EnteredEvents",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Cause = table.Column<string>(type: "TEXT", maxLength: 30, nullable: false),
                    SiteId = table.Column<Guid>(type: "TEXT", nullable: true),
                    PersonId = table.Column<Guid>(type: "TEXT", nullable: true),
                    Words = table.Column<string>(type: "TEXT", maxLength: 2000, nullable: false),
                    LeadId = table.Column<Guid>(type: "TEXT", nullable: false),
                    EnteredOn = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    KeptAt = table.Column<DateTime>(type: "TEXT", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_EnteredEvents", x => x.Id);
                    table.CheckConstraint("CK_EnteredEvent_Subject", "\"SiteId\" IS NOT NULL OR \"PersonId\" IS NOT NULL");
                    table.ForeignKey(
                        name: "FK_EnteredEvents_Persons_LeadId",
                        column: x => x.LeadId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_EnteredEvents_Persons_PersonId",
                        column: x => x.PersonId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_EnteredEvents_Sites_SiteId",
                        column: x => x.SiteId,
                        principalTable: "Sites",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "GuidanceNotices",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    PersonId = table.Column<Guid>(type: "TEXT", nullable: false),
                    ChangedOn = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    MadeAt = table.Column<DateTime>(type: "TEXT", precision: 3, nullable: false),
                    MailId = table.Column<Guid>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_GuidanceNotices", x => x.Id);
                    table.ForeignKey(
                        name: "FK_GuidanceNotices_OutgoingMails_MailId",
                        column: x => x.MailId,
                        principalTable: "OutgoingMails",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_GuidanceNotices_Persons_PersonId",
                        column: x => x.PersonId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "InstructorDays",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    InstructorId = table.Column<Guid>(type: "TEXT", nullable: false),
                    StartsOn = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    EndsOn = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    Weekdays = table.Column<int>(type: "INTEGER", nullable: false),
                    IsFree = table.Column<bool>(type: "INTEGER", nullable: false),
                    EnteredById = table.Column<Guid>(type: "TEXT", nullable: false),
                    KeptAt = table.Column<DateTime>(type: "TEXT", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_InstructorDays", x => x.Id);
                    table.CheckConstraint("CK_InstructorDays_Dates", "\"EndsOn\" >= \"StartsOn\"");
                    table.ForeignKey(
                        name: "FK_InstructorDays_Persons_EnteredById",
                        column: x => x.EnteredById,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_InstructorDays_Persons_InstructorId",
                        column: x => x.InstructorId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "ReviewNotices",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ReviewId = table.Column<Guid>(type: "TEXT", nullable: false),
                    PersonId = table.Column<Guid>(type: "TEXT", nullable: false),
                    News = table.Column<string>(type: "TEXT", maxLength: 30, nullable: false),
                    MadeAt = table.Column<DateTime>(type: "TEXT", precision: 3, nullable: false),
                    MailId = table.Column<Guid>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ReviewNotices", x => x.Id);
                    table.ForeignKey(
                        name: "FK_ReviewNotices_OutgoingMails_MailId",
                        column: x => x.MailId,
                        principalTable: "OutgoingMails",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_ReviewNotices_Persons_PersonId",
                        column: x => x.PersonId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_ReviewNotices_Reviews_ReviewId",
                        column: x => x.ReviewId,
                        principalTable: "Reviews",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "SeatReturns",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ClassId = table.Column<Guid>(type: "TEXT", nullable: false),
                    PersonId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Turn = table.Column<int>(type: "INTEGER", nullable: false),
                    ReturnedAt = table.Column<DateTime>(type: "TEXT", precision: 3, nullable: false),
                    ReturnedById = table.Column<Guid>(type: "TEXT", nullable: false),
                    Reason = table.Column<string>(type: "TEXT", maxLength: 500, nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_SeatReturns", x => x.Id);
                    table.ForeignKey(
                        name: "FK_SeatReturns_ClassAttendances_ClassId_PersonId_Turn",
                        columns: x => new { x.ClassId, x.PersonId, x.Turn },
                        principalTable: "ClassAttendances",
                        principalColumns: new[] { "ClassId", "PersonId", "Turn" },
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_SeatReturns_Persons_ReturnedById",
                        column: x => x.ReturnedById,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "SiteTravels",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    SiteId = table.Column<Guid>(type: "TEXT", nullable: false),
                    OtherSiteId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Minutes = table.Column<int>(type: "INTEGER", nullable: false),
                    SetById = table.Column<Guid>(type: "TEXT", nullable: false),
                    KeptAt = table.Column<DateTime>(type: "TEXT", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_SiteTravels", x => x.Id);
                    table.CheckConstraint("CK_SiteTravel_Minutes", "\"Minutes\" >= 0 AND \"Minutes\" <= 1440");
                    table.ForeignKey(
                        name: "FK_SiteTravels_Persons_SetById",
                        column: x => x.SetById,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_SiteTravels_Sites_OtherSiteId",
                        column: x => x.OtherSiteId,
                        principalTable: "Sites",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_SiteTravels_Sites_SiteId",
                        column: x => x.SiteId,
                        principalTable: "Sites",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "CalendarFeedEnds",
                columns: table => new
                {
                    FeedId = table.Column<Guid>(type: "TEXT", nullable: false),
                    EndedAt = table.Column<DateTime>(type: "TEXT", precision: 3, nullable: false),
                    EndedById = table.Column<Guid>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_CalendarFeedEnds", x => x.FeedId);
                    table.ForeignKey(
                        name: "FK_CalendarFeedEnds_CalendarFeeds_FeedId",
                        column: x => x.FeedId,
                        principalTable: "CalendarFeeds",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_CalendarFeedEnds_Persons_EndedById",
                        column: x => x.EndedById,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "ClassPlanVersions",
                columns: table => new
                {
                    PlanId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Number = table.Column<int>(type: "INTEGER", nullable: false),
                    FormId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Classes = table.Column<string>(type: "TEXT", nullable: false),
                    ById = table.Column<Guid>(type: "TEXT", nullable: false),
                    KeptAt = table.Column<DateTime>(type: "TEXT", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ClassPlanVersions", x => new { x.PlanId, x.Number });
                    table.ForeignKey(
                        name: "FK_ClassPlanVersions_ClassPlans_PlanId",
                        column: x => x.PlanId,
                        principalTable: "ClassPlans",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_ClassPlanVersions_Persons_ById",
                        column: x => x.ById,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "ClassWaitingEnds",
                columns: table => new
                {
                    WaitingId = table.Column<Guid>(type: "TEXT", nullable: false),
                    EndedAt = table.Column<DateTime>(type: "TEXT", precision: 3, nullable: true),
                    EndedById = table.Column<Guid>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ClassWaitingEnds", x => x.WaitingId);
                    table.ForeignKey(
                        name: "FK_ClassWaitingEnds_ClassWaitings_WaitingId",
                        column: x => x.WaitingId,
                        principalTable: "ClassWaitings",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_ClassWaitingEnds_Persons_EndedById",
                        column: x => x.EndedById,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "EncounterAdditions",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    EncounterId = table.Column<Guid>(type: "TEXT", nullable: false),
                    PersonId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Words = table.Column<string>(type: "TEXT", maxLength: 2000, nullable: false),
                    KeptAt = table.Column<DateTime>(type: "TEXT", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_EncounterAdditions", x => x.Id);
                    table.ForeignKey(
                        name: "FK_EncounterAdditions_Encounters_EncounterId",
                        column: x => x.EncounterId,
                        principalTable: "Encounters",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_EncounterAdditions_Persons_PersonId",
                        column: x => x.PersonId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "EncounterLooks",
                columns: table => new
                {
                    EncounterId = table.Column<Guid>(type: "TEXT", nullable: false),
                    LeadId = table.Column<Guid>(type: "TEXT", nullable: false),
                    LookedOn = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    Words = table.Column<string>(type: "TEXT", maxLength: 2000, nullable: false),
                    KeptAt = table.Column<DateTime>(type: "TEXT", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_EncounterLooks", x => x.EncounterId);
                    table.ForeignKey(
                        name: "FK_EncounterLooks_Encounters_EncounterId",
                        column: x => x.EncounterId,
                        principalTable: "Encounters",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_EncounterLooks_Persons_LeadId",
                        column: x => x.LeadId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Relocations",
                columns: table => new
                {
                    EncounterId = table.Column<Guid>(type: "TEXT", nullable: false),
                    DistanceMetres = table.Column<int>(type: "INTEGER", nullable: true),
                    Tools = table.Column<string>(type: "TEXT", maxLength: 500, nullable: false),
                    Container = table.Column<string>(type: "TEXT", maxLength: 60, nullable: false),
                    MinutesHeld = table.Column<int>(type: "INTEGER", nullable: true),
                    AirTemperature = table.Column<int>(type: "INTEGER", nullable: true),
                    ReleaseCover = table.Column<string>(type: "TEXT", maxLength: 500, nullable: false),
                    PermitNumber = table.Column<string>(type: "TEXT", maxLength: 60, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Relocations", x => x.EncounterId);
                    table.ForeignKey(
                        name: "FK_Relocations_Encounters_EncounterId",
                        column: x => x.EncounterId,
                        principalTable: "Encounters",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "ClassPlanAcceptances",
                columns: table => new
                {
                    PlanId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Number = table.Column<int>(type: "INTEGER", nullable: false),
                    LeadId = table.Column<Guid>(type: "TEXT", nullable: false),
                    AcceptedAt = table.Column<DateTime>(type: "TEXT", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ClassPlanAcceptances", x => x.PlanId);
                    table.ForeignKey(
                        name: "FK_ClassPlanAcceptances_ClassPlanVersions_PlanId_Number",
                        columns: x => new { x.PlanId, x.Number },
                        principalTable: "ClassPlanVersions",
                        principalColumns: new[] { "PlanId", "Number" },
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_ClassPlanAcceptances_Persons_LeadId",
                        column: x => x.LeadId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "AcceptedClasses",
                columns: table => new
                {
                    ClassId = table.Column<Guid>(type: "TEXT", nullable: false),
                    PlanId = table.Column<Guid>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_AcceptedClasses", x => x.ClassId);
                    table.ForeignKey(
                        name: "FK_AcceptedClasses_ClassPlanAcceptances_PlanId",
                        column: x => x.PlanId,
                        principalTable: "ClassPlanAcceptances",
                        principalColumn: "PlanId",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_AcceptedClasses_Classes_ClassId",
                        column: x => x.ClassId,
                        principalTable: "Classes",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_Periods_SchemeId_ExpiresOn_PersonId_Number",
                table: "Periods",
                columns: new[] { "SchemeId", "ExpiresOn", "PersonId", "Number" });

            migrationBuilder.AddCheckConstraint(
                name: "CK_Class_Length",
                table: "Classes",
                sql: "\"LengthMinutes\" >= 1");

            migrationBuilder.CreateIndex(
                name: "IX_AcceptedClasses_PlanId",
                table: "AcceptedClasses",
                column: "PlanId");

            migrationBuilder.CreateIndex(
                name: "IX_AuditFolders_EmployerId",
                table: "AuditFolders",
                column: "EmployerId");

            migrationBuilder.CreateIndex(
                name: "IX_AuditFolders_MadeAt",
                table: "AuditFolders",
                column: "MadeAt");

            migrationBuilder.CreateIndex(
                name: "IX_AuditFolders_MadeById",
                table: "AuditFolders",
                column: "MadeById");

            migrationBuilder.CreateIndex(
                name: "IX_AuditFolders_PersonId",
                table: "AuditFolders",
                column: "PersonId");

            migrationBuilder.CreateIndex(
                name: "IX_AuditFolders_SiteId",
                table: "AuditFolders",
                column: "SiteId");

            migrationBuilder.CreateIndex(
                name: "IX_CalendarFeedEnds_EndedById",
                table: "CalendarFeedEnds",
                column: "EndedById");

            migrationBuilder.CreateIndex(
                name: "IX_CalendarFeeds_EmployerId",
                table: "CalendarFeeds",
                column: "EmployerId");

            migrationBuilder.CreateIndex(
                name: "IX_CalendarFeeds_PersonId",
                table: "CalendarFeeds",
                column: "PersonId");

            migrationBuilder.CreateIndex(
                name: "IX_CalendarFeeds_SecretHash",
                table: "CalendarFeeds",
                column: "SecretHash",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_CapabilityReports_PersonId_KeptAt",
                table: "CapabilityReports",
                columns: new[] { "PersonId", "KeptAt" });

            migrationBuilder.CreateIndex(
                name: "IX_ClassBriefings_ClassId_Number",
                table: "ClassBriefings",
                columns: new[] { "ClassId", "Number" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_ClassBriefings_WrittenById",
                table: "ClassBriefings",
                column: "WrittenById");

            migrationBuilder.CreateIndex(
                name: "IX_ClassCancellations_CancelledById",
                table: "ClassCancellations",
                column: "CancelledById");

            migrationBuilder.CreateIndex(
                name: "IX_ClassChanges_ChangedById",
                table: "ClassChanges",
                column: "ChangedById");

            migrationBuilder.CreateIndex(
                name: "IX_ClassChanges_ClassId_Number",
                table: "ClassChanges",
                columns: new[] { "ClassId", "Number" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_ClassInvitations_ClassId_PersonId_Sequence",
                table: "ClassInvitations",
                columns: new[] { "ClassId", "PersonId", "Sequence" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_ClassInvitations_HeldOn",
                table: "ClassInvitations",
                column: "HeldOn");

            migrationBuilder.CreateIndex(
                name: "IX_ClassInvitations_MailId",
                table: "ClassInvitations",
                column: "MailId");

            migrationBuilder.CreateIndex(
                name: "IX_ClassInvitations_PersonId",
                table: "ClassInvitations",
                column: "PersonId");

            migrationBuilder.CreateIndex(
                name: "IX_ClassPlanAcceptances_LeadId",
                table: "ClassPlanAcceptances",
                column: "LeadId");

            migrationBuilder.CreateIndex(
                name: "IX_ClassPlanAcceptances_PlanId_Number",
                table: "ClassPlanAcceptances",
                columns: new[] { "PlanId", "Number" });

            migrationBuilder.CreateIndex(
                name: "IX_ClassPlans_EmployerId_KeptAt",
                table: "ClassPlans",
                columns: new[] { "EmployerId", "KeptAt" });

            migrationBuilder.CreateIndex(
                name: "IX_ClassPlans_LeadId",
                table: "ClassPlans",
                column: "LeadId");

            migrationBuilder.CreateIndex(
                name: "IX_ClassPlanVersions_ById",
                table: "ClassPlanVersions",
                column: "ById");

            migrationBuilder.CreateIndex(
                name: "IX_ClassPlanVersions_FormId",
                table: "ClassPlanVersions",
                column: "FormId",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_ClassPresences_ClassId_PersonId_Number",
                table: "ClassPresences",
                columns: new[] { "ClassId", "PersonId", "Number" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_ClassPresences_MarkedById",
                table: "ClassPresences",
                column: "MarkedById");

            migrationBuilder.CreateIndex(
                name: "IX_ClassPresences_PersonId",
                table: "ClassPresences",
                column: "PersonId");

            migrationBuilder.CreateIndex(
                name: "IX_ClassReminders_ClassId_PersonId_Sequence",
                table: "ClassReminders",
                columns: new[] { "ClassId", "PersonId", "Sequence" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_ClassReminders_MailId",
                table: "ClassReminders",
                column: "MailId");

            migrationBuilder.CreateIndex(
                name: "IX_ClassReminders_PersonId",
                table: "ClassReminders",
                column: "PersonId");

            migrationBuilder.CreateIndex(
                name: "IX_ClassWaitingEnds_EndedById",
                table: "ClassWaitingEnds",
                column: "EndedById");

            migrationBuilder.CreateIndex(
                name: "IX_ClassWaitings_AskedById",
                table: "ClassWaitings",
                column: "AskedById");

            migrationBuilder.CreateIndex(
                name: "IX_ClassWaitings_ClassId_PersonId_Turn",
                table: "ClassWaitings",
                columns: new[] { "ClassId", "PersonId", "Turn" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_ClassWaitings_PersonId",
                table: "ClassWaitings",
                column: "PersonId");

            migrationBuilder.CreateIndex(
                name: "IX_CoverNeeds_CrewId",
                table: "CoverNeeds",
                column: "CrewId");

            migrationBuilder.CreateIndex(
                name: "IX_CoverNeeds_SetById",
                table: "CoverNeeds",
                column: "SetById");

            migrationBuilder.CreateIndex(
                name: "IX_CoverNeeds_SiteId_StartsOn",
                table: "CoverNeeds",
                columns: new[] { "SiteId", "StartsOn" });

            migrationBuilder.CreateIndex(
                name: "IX_EncounterAdditions_EncounterId",
                table: "EncounterAdditions",
                column: "EncounterId");

            migrationBuilder.CreateIndex(
                name: "IX_EncounterAdditions_PersonId",
                table: "EncounterAdditions",
                column: "PersonId");

            migrationBuilder.CreateIndex(
                name: "IX_EncounterLooks_LeadId",
                table: "EncounterLooks",
                column: "LeadId");

            migrationBuilder.CreateIndex(
                name: "IX_Encounters_HandlerId",
                table: "Encounters",
                column: "HandlerId");

            migrationBuilder.CreateIndex(
                name: "IX_Encounters_MetOn",
                table: "Encounters",
                column: "MetOn");

            migrationBuilder.CreateIndex(
                name: "IX_Encounters_ReporterId",
                table: "Encounters",
                column: "ReporterId");

            migrationBuilder.CreateIndex(
                name: "IX_Encounters_SiteId_MetOn",
                table: "Encounters",
                columns: new[] { "SiteId", "MetOn" });

            migrationBuilder.CreateIndex(
                name: "IX_EnteredEvents_LeadId",
                table: "EnteredEvents",
                column: "LeadId");

            migrationBuilder.CreateIndex(
                name: "IX_EnteredEvents_PersonId",
                table: "EnteredEvents",
                column: "PersonId");

            migrationBuilder.CreateIndex(
                name: "IX_EnteredEvents_SiteId",
                table: "EnteredEvents",
                column: "SiteId");

            migrationBuilder.CreateIndex(
                name: "IX_GuidanceNotices_MailId",
                table: "GuidanceNotices",
                column: "MailId");

            migrationBuilder.CreateIndex(
                name: "IX_GuidanceNotices_PersonId_ChangedOn",
                table: "GuidanceNotices",
                columns: new[] { "PersonId", "ChangedOn" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_InstructorDays_EnteredById",
                table: "InstructorDays",
                column: "EnteredById");

            migrationBuilder.CreateIndex(
                name: "IX_InstructorDays_InstructorId_EndsOn",
                table: "InstructorDays",
                columns: new[] { "InstructorId", "EndsOn" });

            migrationBuilder.CreateIndex(
                name: "IX_ReviewNotices_MailId",
                table: "ReviewNotices",
                column: "MailId");

            migrationBuilder.CreateIndex(
                name: "IX_ReviewNotices_PersonId",
                table: "ReviewNotices",
                column: "PersonId");

            migrationBuilder.CreateIndex(
                name: "IX_ReviewNotices_ReviewId_PersonId_News",
                table: "ReviewNotices",
                columns: new[] { "ReviewId", "PersonId", "News" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_SeatReturns_ClassId_PersonId_Turn",
                table: "SeatReturns",
                columns: new[] { "ClassId", "PersonId", "Turn" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_SeatReturns_ReturnedById",
                table: "SeatReturns",
                column: "ReturnedById");

            migrationBuilder.CreateIndex(
                name: "IX_SiteTravels_OtherSiteId",
                table: "SiteTravels",
                column: "OtherSiteId");

            migrationBuilder.CreateIndex(
                name: "IX_SiteTravels_SetById",
                table: "SiteTravels",
                column: "SetById");

            migrationBuilder.CreateIndex(
                name: "IX_SiteTravels_SiteId",
                table: "SiteTravels",
                column: "SiteId");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "AcceptedClasses");

            migrationBuilder.DropTable(
                name: "AuditFolders");

            migrationBuilder.DropTable(
                name: "CalendarFeedEnds");

            migrationBuilder.DropTable(
                name: "CapabilityReports");

            migrationBuilder.DropTable(
                name: "ClassBriefings");

            migrationBuilder.DropTable(
                name: "ClassCancellations");

            migrationBuilder.DropTable(
                name: "ClassChanges");

            migrationBuilder.DropTable(
                name: "ClassInvitations");

            migrationBuilder.DropTable(
                name: "ClassPresences");

            migrationBuilder.DropTable(
                name: "ClassReminders");

            migrationBuilder.DropTable(
                name: "ClassWaitingEnds");

            migrationBuilder.DropTable(
                name: "CoverNeeds");

            migrationBuilder.DropTable(
                name: "EncounterAdditions");

            migrationBuilder.DropTable(
                name: "EncounterLooks");

            migrationBuilder.DropTable(
                name: "EnteredEvents");

            migrationBuilder.DropTable(
                name: "GuidanceNotices");

            migrationBuilder.DropTable(
                name: "InstructorDays");

            migrationBuilder.DropTable(
                name: "Relocations");

            migrationBuilder.DropTable(
                name: "ReviewNotices");

            migrationBuilder.DropTable(
                name: "SeatReturns");

            migrationBuilder.DropTable(
                name: "SiteTravels");

            migrationBuilder.DropTable(
                name: "ClassPlanAcceptances");

            migrationBuilder.DropTable(
                name: "CalendarFeeds");

            migrationBuilder.DropTable(
                name: "ClassWaitings");

            migrationBuilder.DropTable(
                name: "Encounters");

            migrationBuilder.DropTable(
                name: "ClassPlanVersions");

            migrationBuilder.DropTable(
                name: "ClassPlans");

            migrationBuilder.DropIndex(
                name: "IX_Periods_SchemeId_ExpiresOn_PersonId_Number",
                table: "Periods");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Class_Length",
                table: "Classes");

            migrationBuilder.DropPrimaryKey(
                name: "PK_ClassAttendances",
                table: "ClassAttendances");

            migrationBuilder.DropColumn(
                name: "TextOrder",
                table: "PersonNames");

            migrationBuilder.DropColumn(
                name: "GraceEndsOn",
                table: "Periods");

            migrationBuilder.DropColumn(
                name: "WindowOpensOn",
                table: "Periods");

            migrationBuilder.DropColumn(
                name: "Calendar",
                table: "OutgoingMails");

            migrationBuilder.DropColumn(
                name: "LengthMinutes",
                table: "Classes");

            migrationBuilder.DropColumn(
                name: "StartsAt",
                table: "Classes");

            migrationBuilder.DropColumn(
                name: "Turn",
                table: "ClassAttendances");

            migrationBuilder.AddPrimaryKey(
                name: "PK_ClassAttendances",
                table: "ClassAttendances",
                columns: new[] { "ClassId", "PersonId" });

            migrationBuilder.CreateIndex(
                name: "IX_Periods_ExpiresOn",
                table: "Periods",
                column: "ExpiresOn");
        }
    }
}

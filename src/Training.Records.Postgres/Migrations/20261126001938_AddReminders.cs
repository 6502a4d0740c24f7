using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Training.Records.Postgres.Migrations
{
    /// <inheritdoc />
    public partial class AddReminders : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "OutgoingMails",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    PersonId = table.Column<Guid>(type: "uuid", nullable: false),
                    Address = table.Column<string>(type: "character varying(254)", maxLength: 254, nullable: false),
                    Language = table.Column<string>(type: "character varying(30)", maxLength: 30, nullable: false),
                    Subject = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    Text = table.Column<string>(type: "character varying(60000)", maxLength: 60000, nullable: false),
                    MadeAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false),
                    NextTryAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false),
                    LeaseEndsAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: true),
                    FailedTries = table.Column<int>(type: "integer", nullable: false),
                    SentAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: true),
                    GivenUpAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: true),
                    LastAnswer = table.Column<string>(type: "character varying(500)", maxLength: 500, nullable: true),
                    Version = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_OutgoingMails", x => x.Id);
                    table.ForeignKey(
                        name: "FK_OutgoingMails_Persons_PersonId",
                        column: x => x.PersonId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "UnreachableAddresses",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    PersonId = table.Column<Guid>(type: "uuid", nullable: false),
                    Address = table.Column<string>(type: "character varying(254)", maxLength: 254, nullable: false),
                    FoundAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false),
                    Answer = table.Column<string>(type: "character varying(500)", maxLength: 500, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_UnreachableAddresses", x => x.Id);
                    table.ForeignKey(
                        name: "FK_UnreachableAddresses_Persons_PersonId",
                        column: x => x.PersonId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Digests",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    EmployerId = table.Column<Guid>(type: "uuid", nullable: false),
                    WeekStartsOn = table.Column<DateOnly>(type: "date", nullable: false),
                    PersonId = table.Column<Guid>(type: "uuid", nullable: false),
                    MadeAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false),
                    MailId = table.Column<Guid>(type: "uuid", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Digests", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Digests_Employers_EmployerId",
                        column: x => x.EmployerId,
                        principalTable: "Employers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Digests_OutgoingMails_MailId",
                        column: x => x.MailId,
                        principalTable: "OutgoingMails",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Digests_Persons_PersonId",
                        column: x => x.PersonId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Reminders",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    PersonId = table.Column<Guid>(type: "uuid", nullable: false),
                    SchemeId = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    PeriodNumber = table.Column<int>(type: "integer", nullable: false),
                    Milestone = table.Column<string>(type: "character varying(10)", maxLength: 10, nullable: false),
                    DueOn = table.Column<DateOnly>(type: "date", nullable: false),
                    ExpiresOn = table.Column<DateOnly>(type: "date", nullable: false),
                    MadeAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false),
                    MailId = table.Column<Guid>(type: "uuid", nullable: true),
                    SiteId = table.Column<Guid>(type: "uuid", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Reminders", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Reminders_OutgoingMails_MailId",
                        column: x => x.MailId,
                        principalTable: "OutgoingMails",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Reminders_Periods_PersonId_SchemeId_PeriodNumber",
                        columns: x => new { x.PersonId, x.SchemeId, x.PeriodNumber },
                        principalTable: "Periods",
                        principalColumns: new[] { "PersonId", "SchemeId", "Number" },
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Reminders_Sites_SiteId",
                        column: x => x.SiteId,
                        principalTable: "Sites",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_Digests_EmployerId_WeekStartsOn_PersonId",
                table: "Digests",
                columns: new[] { "EmployerId", "WeekStartsOn", "PersonId" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Digests_MailId",
                table: "Digests",
                column: "MailId");

            migrationBuilder.CreateIndex(
                name: "IX_Digests_PersonId",
                table: "Digests",
                column: "PersonId");

            migrationBuilder.CreateIndex(
                name: "IX_OutgoingMails_NextTryAt",
                table: "OutgoingMails",
                column: "NextTryAt");

            migrationBuilder.CreateIndex(
                name: "IX_OutgoingMails_PersonId",
                table: "OutgoingMails",
                column: "PersonId");

            migrationBuilder.CreateIndex(
                name: "IX_Reminders_MadeAt",
                table: "Reminders",
                column: "MadeAt");

            migrationBuilder.CreateIndex(
                name: "IX_Reminders_MailId",
                table: "Reminders",
                column: "MailId");

            migrationBuilder.CreateIndex(
                name: "IX_Reminders_PersonId_SchemeId_PeriodNumber_Milestone",
                table: "Reminders",
                columns: new[] { "PersonId", "SchemeId", "PeriodNumber", "Milestone" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Reminders_SiteId",
                table: "Reminders",
                column: "SiteId");

            migrationBuilder.CreateIndex(
                name: "IX_UnreachableAddresses_PersonId_Address",
                table: "UnreachableAddresses",
                columns: new[] { "PersonId", "Address" },
                unique: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "Digests");

            migrationBuilder.DropTable(
                name: "Reminders");

            migrationBuilder.DropTable(
                name: "UnreachableAddresses");

            migrationBuilder.DropTable(
                name: "OutgoingMails");
        }
    }
}

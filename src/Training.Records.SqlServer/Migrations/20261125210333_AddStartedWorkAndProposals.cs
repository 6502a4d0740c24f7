using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Training.Records.SqlServer.Migrations
{
    /// <inheritdoc />
    public partial class AddStartedWorkAndProposals : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropForeignKey(
                name: "FK_SeparationReasons_Persons_LeadId",
                table: "SeparationReasons");

            migrationBuilder.RenameColumn(
                name: "LeadId",
                table: "SeparationReasons",
                newName: "WriterId");

            migrationBuilder.RenameIndex(
                name: "IX_SeparationReasons_LeadId",
                table: "SeparationReasons",
                newName: "IX_SeparationReasons_WriterId");

            migrationBuilder.AddColumn<int>(
                name: "AirTemperature",
                table: "Scoresheets",
                type: "int",
                nullable: true);

            migrationBuilder.AddColumn<bool>(
                name: "IsKitInspected",
                table: "Scoresheets",
                type: "bit",
                nullable: false,
                defaultValue: false);

            migrationBuilder.AddColumn<string>(
                name: "Kit",
                table: "Scoresheets",
                type: "nvarchar(500)",
                maxLength: 500,
                nullable: false,
                defaultValue: "");

            migrationBuilder.AddColumn<string>(
                name: "SignedName",
                table: "Scoresheets",
                type: "nvarchar(200)",
                maxLength: 200,
                nullable: false,
                defaultValue: "");

            migrationBuilder.AddColumn<string>(
                name: "Surroundings",
                table: "Scoresheets",
                type: "nvarchar(500)",
                maxLength: 500,
                nullable: false,
                defaultValue: "");

            migrationBuilder.CreateTable(
                name: "ClassScorers",
                columns: table => new
                {
                    ClassId = table.Column<Guid>(type: "uniqueidentifier", nullable: false),
                    InstructorId = table.Column<Guid>(type: "uniqueidentifier", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ClassScorers", x => new { x.ClassId, x.InstructorId });
                    table.ForeignKey(
                        name: "FK_ClassScorers_Classes_ClassId",
                        column: x => x.ClassId,
                        principalTable: "Classes",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_ClassScorers_Persons_InstructorId",
                        column: x => x.InstructorId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "ModuleReadings",
                columns: table => new
                {
                    PersonId = table.Column<Guid>(type: "uniqueidentifier", nullable: false),
                    CourseHash = table.Column<string>(type: "nvarchar(64)", maxLength: 64, nullable: false),
                    ModuleId = table.Column<string>(type: "nvarchar(100)", maxLength: 100, nullable: false),
                    CourseId = table.Column<string>(type: "nvarchar(100)", maxLength: 100, nullable: false),
                    Language = table.Column<string>(type: "nvarchar(30)", maxLength: 30, nullable: false),
                    ReadAt = table.Column<DateTime>(type: "datetime2(3)", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ModuleReadings", x => new { x.PersonId, x.CourseHash, x.ModuleId });
                    table.ForeignKey(
                        name: "FK_ModuleReadings_CourseSnapshots_CourseHash",
                        column: x => x.CourseHash,
                        principalTable: "CourseSnapshots",
                        principalColumn: "Hash",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_ModuleReadings_Persons_PersonId",
                        column: x => x.PersonId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "StartedScoresheets",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uniqueidentifier", nullable: false),
                    ClassId = table.Column<Guid>(type: "uniqueidentifier", nullable: false),
                    CandidateId = table.Column<Guid>(type: "uniqueidentifier", nullable: false),
                    InstructorId = table.Column<Guid>(type: "uniqueidentifier", nullable: false),
                    CourseHash = table.Column<string>(type: "nvarchar(64)", maxLength: 64, nullable: false),
                    ChecklistId = table.Column<string>(type: "nvarchar(100)", maxLength: 100, nullable: false),
                    ChecklistVersion = table.Column<string>(type: "nvarchar(64)", maxLength: 64, nullable: false),
                    Subject = table.Column<string>(type: "nvarchar(30)", maxLength: 30, nullable: false),
                    Try = table.Column<int>(type: "int", nullable: false),
                    Language = table.Column<string>(type: "nvarchar(30)", maxLength: 30, nullable: false),
                    StartedAt = table.Column<DateTime>(type: "datetime2(3)", precision: 3, nullable: false),
                    IsIdentityConfirmed = table.Column<bool>(type: "bit", nullable: false),
                    Surroundings = table.Column<string>(type: "nvarchar(500)", maxLength: 500, nullable: false),
                    AirTemperature = table.Column<int>(type: "int", nullable: true),
                    Kit = table.Column<string>(type: "nvarchar(500)", maxLength: 500, nullable: false),
                    IsKitInspected = table.Column<bool>(type: "bit", nullable: false),
                    PermitNumber = table.Column<string>(type: "nvarchar(60)", maxLength: 60, nullable: true),
                    BitePlanCheckedOn = table.Column<DateOnly>(type: "date", nullable: true),
                    CommunicationsTestedAt = table.Column<DateTime>(type: "datetime2(3)", precision: 3, nullable: true),
                    WatcherId = table.Column<Guid>(type: "uniqueidentifier", nullable: true),
                    ModelPassId = table.Column<Guid>(type: "uniqueidentifier", nullable: true),
                    SeparationReason = table.Column<string>(type: "nvarchar(2000)", maxLength: 2000, nullable: true),
                    StoppedAtStep = table.Column<string>(type: "nvarchar(100)", maxLength: 100, nullable: true),
                    Version = table.Column<int>(type: "int", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_StartedScoresheets", x => x.Id);
                    table.CheckConstraint("CK_StartedScoresheet_NeverOneself", "\"InstructorId\" <> \"CandidateId\"");
                    table.ForeignKey(
                        name: "FK_StartedScoresheets_Classes_ClassId",
                        column: x => x.ClassId,
                        principalTable: "Classes",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_StartedScoresheets_CourseSnapshots_CourseHash",
                        column: x => x.CourseHash,
                        principalTable: "CourseSnapshots",
                        principalColumn: "Hash",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_StartedScoresheets_Persons_CandidateId",
                        column: x => x.CandidateId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_StartedScoresheets_Persons_InstructorId",
                        column: x => x.InstructorId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_StartedScoresheets_Persons_WatcherId",
                        column: x => x.WatcherId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "StartedSittings",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uniqueidentifier", nullable: false),
                    PersonId = table.Column<Guid>(type: "uniqueidentifier", nullable: false),
                    CourseHash = table.Column<string>(type: "nvarchar(64)", maxLength: 64, nullable: false),
                    QuizId = table.Column<string>(type: "nvarchar(100)", maxLength: 100, nullable: false),
                    Number = table.Column<int>(type: "int", nullable: false),
                    Draw = table.Column<string>(type: "nvarchar(max)", nullable: false),
                    StartedAt = table.Column<DateTime>(type: "datetime2(3)", precision: 3, nullable: false),
                    Zone = table.Column<string>(type: "nvarchar(64)", maxLength: 64, nullable: false),
                    TakenOn = table.Column<DateOnly>(type: "date", nullable: false),
                    Writes = table.Column<int>(type: "int", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_StartedSittings", x => x.Id);
                    table.ForeignKey(
                        name: "FK_StartedSittings_CourseSnapshots_CourseHash",
                        column: x => x.CourseHash,
                        principalTable: "CourseSnapshots",
                        principalColumn: "Hash",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_StartedSittings_Persons_PersonId",
                        column: x => x.PersonId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "WithdrawalProposals",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uniqueidentifier", nullable: false),
                    PersonId = table.Column<Guid>(type: "uniqueidentifier", nullable: false),
                    SchemeId = table.Column<string>(type: "nvarchar(100)", maxLength: 100, nullable: false),
                    PeriodNumber = table.Column<int>(type: "int", nullable: false),
                    Number = table.Column<int>(type: "int", nullable: false),
                    ProposedOn = table.Column<DateOnly>(type: "date", nullable: false),
                    LeadId = table.Column<Guid>(type: "uniqueidentifier", nullable: false),
                    Reason = table.Column<string>(type: "nvarchar(2000)", maxLength: 2000, nullable: false),
                    KeptAt = table.Column<DateTime>(type: "datetime2(3)", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_WithdrawalProposals", x => x.Id);
                    table.CheckConstraint("CK_WithdrawalProposal_NeverOneself", "\"LeadId\" <> \"PersonId\"");
                    table.ForeignKey(
                        name: "FK_WithdrawalProposals_Periods_PersonId_SchemeId_PeriodNumber",
                        columns: x => new { x.PersonId, x.SchemeId, x.PeriodNumber },
                        principalTable: "Periods",
                        principalColumns: new[] { "PersonId", "SchemeId", "Number" },
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_WithdrawalProposals_Persons_LeadId",
                        column: x => x.LeadId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "StartedObservations",
                columns: table => new
                {
                    ScoresheetId = table.Column<Guid>(type: "uniqueidentifier", nullable: false),
                    StepId = table.Column<string>(type: "nvarchar(100)", maxLength: 100, nullable: false),
                    Position = table.Column<int>(type: "int", nullable: false),
                    Observation = table.Column<string>(type: "nvarchar(30)", maxLength: 30, nullable: false),
                    SavedAt = table.Column<DateTime>(type: "datetime2(3)", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_StartedObservations", x => new { x.ScoresheetId, x.StepId });
                    table.ForeignKey(
                        name: "FK_StartedObservations_StartedScoresheets_ScoresheetId",
                        column: x => x.ScoresheetId,
                        principalTable: "StartedScoresheets",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "StartedAnswers",
                columns: table => new
                {
                    SittingId = table.Column<Guid>(type: "uniqueidentifier", nullable: false),
                    QuestionId = table.Column<string>(type: "nvarchar(100)", maxLength: 100, nullable: false),
                    IsLate = table.Column<bool>(type: "bit", nullable: false),
                    OptionIds = table.Column<string>(type: "nvarchar(max)", nullable: false),
                    Number = table.Column<string>(type: "nvarchar(60)", maxLength: 60, nullable: true),
                    Language = table.Column<string>(type: "nvarchar(30)", maxLength: 30, nullable: false),
                    SavedAt = table.Column<DateTime>(type: "datetime2(3)", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_StartedAnswers", x => new { x.SittingId, x.QuestionId, x.IsLate });
                    table.ForeignKey(
                        name: "FK_StartedAnswers_StartedSittings_SittingId",
                        column: x => x.SittingId,
                        principalTable: "StartedSittings",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "WithdrawalProposalEnds",
                columns: table => new
                {
                    ProposalId = table.Column<Guid>(type: "uniqueidentifier", nullable: false),
                    End = table.Column<string>(type: "nvarchar(30)", maxLength: 30, nullable: false),
                    EndedOn = table.Column<DateOnly>(type: "date", nullable: false),
                    LeadId = table.Column<Guid>(type: "uniqueidentifier", nullable: false),
                    KeptAt = table.Column<DateTime>(type: "datetime2(3)", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_WithdrawalProposalEnds", x => x.ProposalId);
                    table.ForeignKey(
                        name: "FK_WithdrawalProposalEnds_Persons_LeadId",
                        column: x => x.LeadId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_WithdrawalProposalEnds_WithdrawalProposals_ProposalId",
                        column: x => x.ProposalId,
                        principalTable: "WithdrawalProposals",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_ClassScorers_InstructorId",
                table: "ClassScorers",
                column: "InstructorId");

            migrationBuilder.CreateIndex(
                name: "IX_ModuleReadings_CourseHash",
                table: "ModuleReadings",
                column: "CourseHash");

            migrationBuilder.CreateIndex(
                name: "IX_ModuleReadings_PersonId_CourseId",
                table: "ModuleReadings",
                columns: new[] { "PersonId", "CourseId" });

            migrationBuilder.CreateIndex(
                name: "IX_StartedScoresheets_CandidateId",
                table: "StartedScoresheets",
                column: "CandidateId");

            migrationBuilder.CreateIndex(
                name: "IX_StartedScoresheets_ClassId",
                table: "StartedScoresheets",
                column: "ClassId");

            migrationBuilder.CreateIndex(
                name: "IX_StartedScoresheets_CourseHash",
                table: "StartedScoresheets",
                column: "CourseHash");

            migrationBuilder.CreateIndex(
                name: "IX_StartedScoresheets_InstructorId_StartedAt",
                table: "StartedScoresheets",
                columns: new[] { "InstructorId", "StartedAt" });

            migrationBuilder.CreateIndex(
                name: "IX_StartedScoresheets_WatcherId",
                table: "StartedScoresheets",
                column: "WatcherId");

            migrationBuilder.CreateIndex(
                name: "IX_StartedSittings_CourseHash",
                table: "StartedSittings",
                column: "CourseHash");

            migrationBuilder.CreateIndex(
                name: "IX_StartedSittings_PersonId_QuizId_Number",
                table: "StartedSittings",
                columns: new[] { "PersonId", "QuizId", "Number" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_WithdrawalProposalEnds_LeadId",
                table: "WithdrawalProposalEnds",
                column: "LeadId");

            migrationBuilder.CreateIndex(
                name: "IX_WithdrawalProposals_LeadId",
                table: "WithdrawalProposals",
                column: "LeadId");

            migrationBuilder.CreateIndex(
                name: "IX_WithdrawalProposals_PersonId_SchemeId_PeriodNumber_Number",
                table: "WithdrawalProposals",
                columns: new[] { "PersonId", "SchemeId", "PeriodNumber", "Number" },
                unique: true);

            migrationBuilder.AddForeignKey(
                name: "FK_SeparationReasons_Persons_WriterId",
                table: "SeparationReasons",
                column: "WriterId",
                principalTable: "Persons",
                principalColumn: "Id",
                onDelete: ReferentialAction.Restrict);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropForeignKey(
                name: "FK_SeparationReasons_Persons_WriterId",
                table: "SeparationReasons");

            migrationBuilder.DropTable(
                name: "ClassScorers");

            migrationBuilder.DropTable(
                name: "ModuleReadings");

            migrationBuilder.DropTable(
                name: "StartedAnswers");

            migrationBuilder.DropTable(
                name: "StartedObservations");

            migrationBuilder.DropTable(
                name: "WithdrawalProposalEnds");

            migrationBuilder.DropTable(
                name: "StartedSittings");

            migrationBuilder.DropTable(
                name: "StartedScoresheets");

            migrationBuilder.DropTable(
                name: "WithdrawalProposals");

            migrationBuilder.DropColumn(
                name: "AirTemperature",
                table: "Scoresheets");

            migrationBuilder.DropColumn(
                name: "IsKitInspected",
                table: "Scoresheets");

            migrationBuilder.DropColumn(
                name: "Kit",
                table: "Scoresheets");

            migrationBuilder.DropColumn(
                name: "SignedName",
                table: "Scoresheets");

            migrationBuilder.DropColumn(
                name: "Surroundings",
                table: "Scoresheets");

            migrationBuilder.RenameColumn(
                name: "WriterId",
                table: "SeparationReasons",
                newName: "LeadId");

            migrationBuilder.RenameIndex(
                name: "IX_SeparationReasons_WriterId",
                table: "SeparationReasons",
                newName: "IX_SeparationReasons_LeadId");

            migrationBuilder.AddForeignKey(
                name: "FK_SeparationReasons_Persons_LeadId",
                table: "SeparationReasons",
                column: "LeadId",
                principalTable: "Persons",
                principalColumn: "Id",
                onDelete: ReferentialAction.Restrict);
        }
    }
}

using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Training.Records.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class AddCorrectionsAndCalibrations : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "CalibrationRounds",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    CourseId = table.Column<string>(type: "TEXT", maxLength: 100, nullable: false),
                    CourseHash = table.Column<string>(type: "TEXT", maxLength: 64, nullable: false),
                    ChecklistId = table.Column<string>(type: "TEXT", maxLength: 100, nullable: false),
                    Title = table.Column<string>(type: "TEXT", maxLength: 200, nullable: false),
                    Recording = table.Column<string>(type: "TEXT", maxLength: 500, nullable: false),
                    LeadId = table.Column<Guid>(type: "TEXT", nullable: false),
                    OpenedAt = table.Column<DateTime>(type: "TEXT", precision: 3, nullable: false)
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
                name: "KeyCorrections",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    CourseId = table.Column<string>(type: "TEXT", maxLength: 100, nullable: false),
                    QuizId = table.Column<string>(type: "TEXT", maxLength: 100, nullable: false),
                    QuestionId = table.Column<string>(type: "TEXT", maxLength: 100, nullable: false),
                    QuestionVersion = table.Column<string>(type: "TEXT", maxLength: 64, nullable: false),
                    Remedy = table.Column<string>(type: "TEXT", maxLength: 30, nullable: false),
                    ByHash = table.Column<string>(type: "TEXT", maxLength: 64, nullable: true),
                    ByVersion = table.Column<string>(type: "TEXT", maxLength: 64, nullable: true),
                    Reason = table.Column<string>(type: "TEXT", maxLength: 2000, nullable: false),
                    LeadId = table.Column<Guid>(type: "TEXT", nullable: false),
                    MadeAt = table.Column<DateTime>(type: "TEXT", precision: 3, nullable: false)
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
                name: "CalibrationEnds",
                columns: table => new
                {
                    RoundId = table.Column<Guid>(type: "TEXT", nullable: false),
                    LeadId = table.Column<Guid>(type: "TEXT", nullable: false),
                    ClosedAt = table.Column<DateTime>(type: "TEXT", precision: 3, nullable: false)
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
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    RoundId = table.Column<Guid>(type: "TEXT", nullable: false),
                    InstructorId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Outcome = table.Column<string>(type: "TEXT", maxLength: 30, nullable: false),
                    SentAt = table.Column<DateTime>(type: "TEXT", precision: 3, nullable: false)
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
                name: "CorrectionCases",
                columns: table => new
                {
                    CorrectionId = table.Column<Guid>(type: "TEXT", nullable: false),
                    DecisionId = table.Column<Guid>(type: "TEXT", nullable: false),
                    LeadId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Conclusion = table.Column<string>(type: "TEXT", maxLength: 2000, nullable: false),
                    ConcludedAt = table.Column<DateTime>(type: "TEXT", precision: 3, nullable: false)
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
                    ResultId = table.Column<Guid>(type: "TEXT", nullable: false),
                    CorrectionId = table.Column<Guid>(type: "TEXT", nullable: false)
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
                name: "CalibrationMarks",
                columns: table => new
                {
                    SheetId = table.Column<Guid>(type: "TEXT", nullable: false),
                    StepId = table.Column<string>(type: "TEXT", maxLength: 100, nullable: false),
                    Observation = table.Column<string>(type: "TEXT", maxLength: 30, nullable: false)
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
                name: "IX_CorrectionCases_DecisionId",
                table: "CorrectionCases",
                column: "DecisionId");

            migrationBuilder.CreateIndex(
                name: "IX_CorrectionCases_LeadId",
                table: "CorrectionCases",
                column: "LeadId");

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
                name: "IX_Regradings_CorrectionId",
                table: "Regradings",
                column: "CorrectionId");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "CalibrationEnds");

            migrationBuilder.DropTable(
                name: "CalibrationMarks");

            migrationBuilder.DropTable(
                name: "CorrectionCases");

            migrationBuilder.DropTable(
                name: "Regradings");

            migrationBuilder.DropTable(
                name: "CalibrationSheets");

            migrationBuilder.DropTable(
                name: "KeyCorrections");

            migrationBuilder.DropTable(
                name: "CalibrationRounds");
        }
    }
}

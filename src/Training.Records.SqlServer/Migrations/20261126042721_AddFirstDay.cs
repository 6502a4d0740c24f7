using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Training.Records.SqlServer.Migrations
{
    /// <inheritdoc />
    public partial class AddFirstDay : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "AddressConfirmations",
                columns: table => new
                {
                    Address = table.Column<string>(type: "nvarchar(400)", maxLength: 400, nullable: false),
                    LeadId = table.Column<Guid>(type: "uniqueidentifier", nullable: false),
                    ConfirmedAt = table.Column<DateTime>(type: "datetime2(3)", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_AddressConfirmations", x => x.Address);
                    table.ForeignKey(
                        name: "FK_AddressConfirmations_Persons_LeadId",
                        column: x => x.LeadId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "CourseChoices",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uniqueidentifier", nullable: false),
                    LeadId = table.Column<Guid>(type: "uniqueidentifier", nullable: false),
                    SinceAt = table.Column<DateTime>(type: "datetime2(3)", precision: 3, nullable: false),
                    CourseIds = table.Column<string>(type: "nvarchar(max)", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_CourseChoices", x => x.Id);
                    table.ForeignKey(
                        name: "FK_CourseChoices_Persons_LeadId",
                        column: x => x.LeadId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "EmergencyNumbers",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uniqueidentifier", nullable: false),
                    SiteId = table.Column<Guid>(type: "uniqueidentifier", nullable: false),
                    EmergencyServices = table.Column<string>(type: "nvarchar(60)", maxLength: 60, nullable: false),
                    PoisonControl = table.Column<string>(type: "nvarchar(60)", maxLength: 60, nullable: false),
                    OnSite = table.Column<string>(type: "nvarchar(200)", maxLength: 200, nullable: false),
                    WithoutSignal = table.Column<string>(type: "nvarchar(500)", maxLength: 500, nullable: false),
                    CheckedOn = table.Column<DateOnly>(type: "date", nullable: false),
                    LeadId = table.Column<Guid>(type: "uniqueidentifier", nullable: false),
                    KeptAt = table.Column<DateTime>(type: "datetime2(3)", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_EmergencyNumbers", x => x.Id);
                    table.ForeignKey(
                        name: "FK_EmergencyNumbers_Persons_LeadId",
                        column: x => x.LeadId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_EmergencyNumbers_Sites_SiteId",
                        column: x => x.SiteId,
                        principalTable: "Sites",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "FirstLeadCodes",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uniqueidentifier", nullable: false),
                    CodeHash = table.Column<string>(type: "nvarchar(64)", maxLength: 64, nullable: false),
                    MadeAt = table.Column<DateTime>(type: "datetime2(3)", precision: 3, nullable: false),
                    EndsAt = table.Column<DateTime>(type: "datetime2(3)", precision: 3, nullable: false),
                    SpentAt = table.Column<DateTime>(type: "datetime2(3)", precision: 3, nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_FirstLeadCodes", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "ProviderDetails",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uniqueidentifier", nullable: false),
                    LeadId = table.Column<Guid>(type: "uniqueidentifier", nullable: false),
                    SinceAt = table.Column<DateTime>(type: "datetime2(3)", precision: 3, nullable: false),
                    Name = table.Column<string>(type: "nvarchar(120)", maxLength: 120, nullable: false),
                    Address = table.Column<string>(type: "nvarchar(300)", maxLength: 300, nullable: false),
                    Zone = table.Column<string>(type: "nvarchar(64)", maxLength: 64, nullable: false),
                    Region = table.Column<string>(type: "nvarchar(64)", maxLength: 64, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ProviderDetails", x => x.Id);
                    table.ForeignKey(
                        name: "FK_ProviderDetails_Persons_LeadId",
                        column: x => x.LeadId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "QuestionReviews",
                columns: table => new
                {
                    FormId = table.Column<Guid>(type: "uniqueidentifier", nullable: false),
                    CourseId = table.Column<string>(type: "nvarchar(100)", maxLength: 100, nullable: false),
                    QuestionId = table.Column<string>(type: "nvarchar(100)", maxLength: 100, nullable: false),
                    QuestionVersion = table.Column<string>(type: "nvarchar(64)", maxLength: 64, nullable: false),
                    Outcome = table.Column<string>(type: "nvarchar(30)", maxLength: 30, nullable: false),
                    ReviewerId = table.Column<Guid>(type: "uniqueidentifier", nullable: false),
                    ReviewedAt = table.Column<DateTime>(type: "datetime2(3)", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_QuestionReviews", x => new { x.FormId, x.CourseId, x.QuestionId });
                    table.ForeignKey(
                        name: "FK_QuestionReviews_Persons_ReviewerId",
                        column: x => x.ReviewerId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_AddressConfirmations_LeadId",
                table: "AddressConfirmations",
                column: "LeadId");

            migrationBuilder.CreateIndex(
                name: "IX_CourseChoices_LeadId",
                table: "CourseChoices",
                column: "LeadId");

            migrationBuilder.CreateIndex(
                name: "IX_CourseChoices_SinceAt",
                table: "CourseChoices",
                column: "SinceAt");

            migrationBuilder.CreateIndex(
                name: "IX_EmergencyNumbers_LeadId",
                table: "EmergencyNumbers",
                column: "LeadId");

            migrationBuilder.CreateIndex(
                name: "IX_EmergencyNumbers_SiteId_KeptAt",
                table: "EmergencyNumbers",
                columns: new[] { "SiteId", "KeptAt" });

            migrationBuilder.CreateIndex(
                name: "IX_FirstLeadCodes_CodeHash",
                table: "FirstLeadCodes",
                column: "CodeHash",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_ProviderDetails_LeadId",
                table: "ProviderDetails",
                column: "LeadId");

            migrationBuilder.CreateIndex(
                name: "IX_ProviderDetails_SinceAt",
                table: "ProviderDetails",
                column: "SinceAt");

            migrationBuilder.CreateIndex(
                name: "IX_QuestionReviews_CourseId_ReviewedAt",
                table: "QuestionReviews",
                columns: new[] { "CourseId", "ReviewedAt" });

            migrationBuilder.CreateIndex(
                name: "IX_QuestionReviews_ReviewerId",
                table: "QuestionReviews",
                column: "ReviewerId");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "AddressConfirmations");

            migrationBuilder.DropTable(
                name: "CourseChoices");

            migrationBuilder.DropTable(
                name: "EmergencyNumbers");

            migrationBuilder.DropTable(
                name: "FirstLeadCodes");

            migrationBuilder.DropTable(
                name: "ProviderDetails");

            migrationBuilder.DropTable(
                name: "QuestionReviews");
        }
    }
}

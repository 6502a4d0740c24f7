using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Training.Records.Postgres.Migrations
{
    /// <inheritdoc />
    public partial class AddSiteSpecies : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            // Sittings of before were read alone, as far as anybody said.
            migrationBuilder.AddColumn<string>(
                name: "Aid",
                table: "StartedSittings",
                type: "character varying(30)",
                maxLength: 30,
                nullable: false,
                defaultValue: "None");

            migrationBuilder.AddColumn<string>(
                name: "ReadBy",
                table: "StartedSittings",
                type: "character varying(200)",
                maxLength: 200,
                nullable: true);

            migrationBuilder.CreateTable(
                name: "SiteReadings",
                columns: table => new
                {
                    PersonId = table.Column<Guid>(type: "uuid", nullable: false),
                    SiteId = table.Column<Guid>(type: "uuid", nullable: false),
                    CourseHash = table.Column<string>(type: "character varying(64)", maxLength: 64, nullable: false),
                    ModuleId = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    CourseId = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    Language = table.Column<string>(type: "character varying(30)", maxLength: 30, nullable: false),
                    ReadAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_SiteReadings", x => new { x.PersonId, x.SiteId, x.CourseHash, x.ModuleId });
                    table.ForeignKey(
                        name: "FK_SiteReadings_CourseSnapshots_CourseHash",
                        column: x => x.CourseHash,
                        principalTable: "CourseSnapshots",
                        principalColumn: "Hash",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_SiteReadings_Persons_PersonId",
                        column: x => x.PersonId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_SiteReadings_Sites_SiteId",
                        column: x => x.SiteId,
                        principalTable: "Sites",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "SiteSpecies",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    SiteId = table.Column<Guid>(type: "uuid", nullable: false),
                    SpeciesIds = table.Column<string>(type: "text", nullable: false),
                    LeadId = table.Column<Guid>(type: "uuid", nullable: false),
                    KeptAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_SiteSpecies", x => x.Id);
                    table.ForeignKey(
                        name: "FK_SiteSpecies_Persons_LeadId",
                        column: x => x.LeadId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_SiteSpecies_Sites_SiteId",
                        column: x => x.SiteId,
                        principalTable: "Sites",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_SiteReadings_CourseHash",
                table: "SiteReadings",
                column: "CourseHash");

            migrationBuilder.CreateIndex(
                name: "IX_SiteReadings_SiteId",
                table: "SiteReadings",
                column: "SiteId");

            migrationBuilder.CreateIndex(
                name: "IX_SiteSpecies_LeadId",
                table: "SiteSpecies",
                column: "LeadId");

            migrationBuilder.CreateIndex(
                name: "IX_SiteSpecies_SiteId_KeptAt",
                table: "SiteSpecies",
                columns: new[] { "SiteId", "KeptAt" });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "SiteReadings");

            migrationBuilder.DropTable(
                name: "SiteSpecies");

            migrationBuilder.DropColumn(
                name: "Aid",
                table: "StartedSittings");

            migrationBuilder.DropColumn(
                name: "ReadBy",
                table: "StartedSittings");
        }
    }
}

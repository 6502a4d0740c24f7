using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Training.Records.SqlServer.Migrations
{
    /// <inheritdoc />
    public partial class AddSiteSpecies : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "Aid",
                table: "StartedSittings",
                type: "nvarchar(30)",
                maxLength: 30,
                nullable: false,
                defaultValue: "None");

            migrationBuilder.AddColumn<string>(
                name: "ReadBy",
                table: "StartedSittings",
                type: "nvarchar(200)",
                maxLength: 200,
                nullable: true);

            migrationBuilder.CreateTable(
                name: "SiteSpecies",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uniqueidentifier", nullable: false),
                    SiteId = table.Column<Guid>(type: "uniqueidentifier", nullable: false),
                    SpeciesIds = table.Column<string>(type: "nvarchar(max)", nullable: false),
                    LeadId = table.Column<Guid>(type: "uniqueidentifier", nullable: false),
                    KeptAt = table.Column<DateTime>(type: "datetime2(3)", precision: 3, nullable: false)
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

using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Training.Records.Postgres.Migrations
{
    /// <inheritdoc />
    public partial class AddBitePlans : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "BitePlanAddresses",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    SecretHash = table.Column<string>(type: "character varying(64)", maxLength: 64, nullable: false),
                    SiteId = table.Column<Guid>(type: "uuid", nullable: false),
                    MadeFor = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    LeadId = table.Column<Guid>(type: "uuid", nullable: false),
                    MadeAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_BitePlanAddresses", x => x.Id);
                    table.ForeignKey(
                        name: "FK_BitePlanAddresses_Persons_LeadId",
                        column: x => x.LeadId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_BitePlanAddresses_Sites_SiteId",
                        column: x => x.SiteId,
                        principalTable: "Sites",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "BitePlans",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    SiteId = table.Column<Guid>(type: "uuid", nullable: false),
                    Latitude = table.Column<string>(type: "character varying(60)", maxLength: 60, nullable: false),
                    Longitude = table.Column<string>(type: "character varying(60)", maxLength: 60, nullable: false),
                    AccessWords = table.Column<string>(type: "character varying(500)", maxLength: 500, nullable: false),
                    Hospitals = table.Column<string>(type: "text", nullable: false),
                    CheckedOn = table.Column<DateOnly>(type: "date", nullable: false),
                    ReviewOn = table.Column<DateOnly>(type: "date", nullable: false),
                    LeadId = table.Column<Guid>(type: "uuid", nullable: false),
                    KeptAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_BitePlans", x => x.Id);
                    table.ForeignKey(
                        name: "FK_BitePlans_Persons_LeadId",
                        column: x => x.LeadId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_BitePlans_Sites_SiteId",
                        column: x => x.SiteId,
                        principalTable: "Sites",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "BitePlanAddressEnds",
                columns: table => new
                {
                    AddressId = table.Column<Guid>(type: "uuid", nullable: false),
                    EndedAt = table.Column<DateTime>(type: "timestamp(3) with time zone", precision: 3, nullable: false),
                    EndedById = table.Column<Guid>(type: "uuid", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_BitePlanAddressEnds", x => x.AddressId);
                    table.ForeignKey(
                        name: "FK_BitePlanAddressEnds_BitePlanAddresses_AddressId",
                        column: x => x.AddressId,
                        principalTable: "BitePlanAddresses",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_BitePlanAddressEnds_Persons_EndedById",
                        column: x => x.EndedById,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_BitePlanAddressEnds_EndedById",
                table: "BitePlanAddressEnds",
                column: "EndedById");

            migrationBuilder.CreateIndex(
                name: "IX_BitePlanAddresses_LeadId",
                table: "BitePlanAddresses",
                column: "LeadId");

            migrationBuilder.CreateIndex(
                name: "IX_BitePlanAddresses_SecretHash",
                table: "BitePlanAddresses",
                column: "SecretHash",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_BitePlanAddresses_SiteId",
                table: "BitePlanAddresses",
                column: "SiteId");

            migrationBuilder.CreateIndex(
                name: "IX_BitePlans_LeadId",
                table: "BitePlans",
                column: "LeadId");

            migrationBuilder.CreateIndex(
                name: "IX_BitePlans_SiteId_KeptAt",
                table: "BitePlans",
                columns: new[] { "SiteId", "KeptAt" });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "BitePlanAddressEnds");

            migrationBuilder.DropTable(
                name: "BitePlans");

            migrationBuilder.DropTable(
                name: "BitePlanAddresses");
        }
    }
}

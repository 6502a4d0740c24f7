using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Training.Records.SqlServer.Migrations
{
    /// <inheritdoc />
    public partial class AddPapersForStrangers : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "LogLeaves",
                columns: table => new
                {
                    Index = table.Column<long>(type: "bigint", nullable: false),
                    Leaf = table.Column<byte[]>(type: "varbinary(33)", maxLength: 33, nullable: false),
                    Hashes = table.Column<byte[]>(type: "varbinary(1312)", maxLength: 1312, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_LogLeaves", x => x.Index);
                    table.CheckConstraint("CK_LogLeaf_Index", "\"Index\" >= 0");
                });

            migrationBuilder.CreateTable(
                name: "PaperCredentials",
                columns: table => new
                {
                    PaperId = table.Column<Guid>(type: "uniqueidentifier", nullable: false),
                    StatusIndex = table.Column<int>(type: "int", nullable: false),
                    SubjectId = table.Column<Guid>(type: "uniqueidentifier", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PaperCredentials", x => x.PaperId);
                    table.CheckConstraint("CK_PaperCredential_StatusIndex", "\"StatusIndex\" >= 0");
                    table.ForeignKey(
                        name: "FK_PaperCredentials_Papers_PaperId",
                        column: x => x.PaperId,
                        principalTable: "Papers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "PaperRuns",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uniqueidentifier", nullable: false),
                    Kind = table.Column<string>(type: "nvarchar(30)", maxLength: 30, nullable: false),
                    EmployerId = table.Column<Guid>(type: "uniqueidentifier", nullable: true),
                    SchemeId = table.Column<string>(type: "nvarchar(100)", maxLength: 100, nullable: true),
                    Reason = table.Column<string>(type: "nvarchar(2000)", maxLength: 2000, nullable: false),
                    LeadId = table.Column<Guid>(type: "uniqueidentifier", nullable: false),
                    StartedAt = table.Column<DateTime>(type: "datetime2(3)", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PaperRuns", x => x.Id);
                    table.ForeignKey(
                        name: "FK_PaperRuns_Employers_EmployerId",
                        column: x => x.EmployerId,
                        principalTable: "Employers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_PaperRuns_Persons_LeadId",
                        column: x => x.LeadId,
                        principalTable: "Persons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "TreeHeads",
                columns: table => new
                {
                    Size = table.Column<long>(type: "bigint", nullable: false),
                    At = table.Column<DateTime>(type: "datetime2(3)", precision: 3, nullable: false),
                    Root = table.Column<byte[]>(type: "varbinary(32)", maxLength: 32, nullable: false),
                    Signature = table.Column<byte[]>(type: "varbinary(64)", maxLength: 64, nullable: false),
                    KeyId = table.Column<string>(type: "nvarchar(64)", maxLength: 64, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_TreeHeads", x => new { x.Size, x.At });
                });

            migrationBuilder.CreateTable(
                name: "LogOpenings",
                columns: table => new
                {
                    LeafIndex = table.Column<long>(type: "bigint", nullable: false),
                    PaperId = table.Column<Guid>(type: "uniqueidentifier", nullable: false),
                    Event = table.Column<string>(type: "nvarchar(30)", maxLength: 30, nullable: false),
                    HappenedAt = table.Column<DateTime>(type: "datetime2(3)", precision: 3, nullable: false),
                    Salt = table.Column<byte[]>(type: "varbinary(16)", maxLength: 16, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_LogOpenings", x => x.LeafIndex);
                    table.ForeignKey(
                        name: "FK_LogOpenings_LogLeaves_LeafIndex",
                        column: x => x.LeafIndex,
                        principalTable: "LogLeaves",
                        principalColumn: "Index",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_LogOpenings_Papers_PaperId",
                        column: x => x.PaperId,
                        principalTable: "Papers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "PaperRunItems",
                columns: table => new
                {
                    RunId = table.Column<Guid>(type: "uniqueidentifier", nullable: false),
                    Position = table.Column<int>(type: "int", nullable: false),
                    DecisionId = table.Column<Guid>(type: "uniqueidentifier", nullable: false),
                    Revision = table.Column<int>(type: "int", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PaperRunItems", x => new { x.RunId, x.Position });
                    table.ForeignKey(
                        name: "FK_PaperRunItems_PaperRuns_RunId",
                        column: x => x.RunId,
                        principalTable: "PaperRuns",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_PaperRunItems_Periods_DecisionId",
                        column: x => x.DecisionId,
                        principalTable: "Periods",
                        principalColumn: "DecisionId",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "PaperRunFailures",
                columns: table => new
                {
                    RunId = table.Column<Guid>(type: "uniqueidentifier", nullable: false),
                    Position = table.Column<int>(type: "int", nullable: false),
                    Code = table.Column<string>(type: "nvarchar(100)", maxLength: 100, nullable: false),
                    Field = table.Column<string>(type: "nvarchar(100)", maxLength: 100, nullable: false),
                    Arguments = table.Column<string>(type: "nvarchar(max)", nullable: false),
                    At = table.Column<DateTime>(type: "datetime2(3)", precision: 3, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PaperRunFailures", x => new { x.RunId, x.Position });
                    table.ForeignKey(
                        name: "FK_PaperRunFailures_PaperRunItems_RunId_Position",
                        columns: x => new { x.RunId, x.Position },
                        principalTable: "PaperRunItems",
                        principalColumns: new[] { "RunId", "Position" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_LogOpenings_PaperId",
                table: "LogOpenings",
                column: "PaperId");

            migrationBuilder.CreateIndex(
                name: "IX_PaperCredentials_StatusIndex",
                table: "PaperCredentials",
                column: "StatusIndex",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_PaperRunItems_DecisionId",
                table: "PaperRunItems",
                column: "DecisionId");

            migrationBuilder.CreateIndex(
                name: "IX_PaperRunItems_RunId_DecisionId",
                table: "PaperRunItems",
                columns: new[] { "RunId", "DecisionId" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_PaperRuns_EmployerId",
                table: "PaperRuns",
                column: "EmployerId");

            migrationBuilder.CreateIndex(
                name: "IX_PaperRuns_LeadId",
                table: "PaperRuns",
                column: "LeadId");

            migrationBuilder.CreateIndex(
                name: "IX_PaperRuns_StartedAt",
                table: "PaperRuns",
                column: "StartedAt");

            migrationBuilder.CreateIndex(
                name: "IX_TreeHeads_At",
                table: "TreeHeads",
                column: "At");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "LogOpenings");

            migrationBuilder.DropTable(
                name: "PaperCredentials");

            migrationBuilder.DropTable(
                name: "PaperRunFailures");

            migrationBuilder.DropTable(
                name: "TreeHeads");

            migrationBuilder.DropTable(
                name: "LogLeaves");

            migrationBuilder.DropTable(
                name: "PaperRunItems");

            migrationBuilder.DropTable(
                name: "PaperRuns");
        }
    }
}

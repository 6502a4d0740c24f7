using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Training.Records.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class AddMailAddresses : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "MailAddress",
                table: "Persons",
                type: "TEXT",
                maxLength: 254,
                nullable: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(
                name: "MailAddress",
                table: "Persons");
        }
    }
}

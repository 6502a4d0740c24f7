using Training.Courses;
using Training.Records;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.SignInSheets;

/// <summary>The paper of a class as PDF; the page of it is tried with the class days.</summary>
public sealed class SignInSheetsControllerTests(SharedSite shared)
{
    [Theory]
    [InlineData("en", "25 November 2026", "Ileana Prado-Whitt", "Teaches: nobody named yet", "Scores: Winifred Oakley")]
    [InlineData("es", "25 de noviembre de 2026", "Ileana Prado-Whitt", "Da la clase: nadie todavía", "Evalúa: Winifred Oakley")]
    public async Task It_says_what_its_page_says(string language, params string[] facts)
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        using var browser = await room.SignInAsync();
        var page = $"/{language}/class-days/{room.ClassId}/sign-in-sheet";

        var text = Pdf.Read(await browser.GetAsync($"{page}.pdf"), "sign-in-sheet-2026-11-25.pdf");

        Assert.Contains($"href=\"{page}.pdf\"", (await browser.GetAsync(page)).Html, StringComparison.Ordinal);
        Assert.All([.. facts, "Quillback Field Safety", room.ClassId.ToString()], fact => Assert.Contains(fact, text, StringComparison.Ordinal));
        // A long address goes on in the next line.
        Assert.Contains($"https://training.example.org/{language}/class-days/{room.ClassId}", text.Replace(" ", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_lead_prints_that_of_any_class_and_an_instructor_of_another_none()
    {
        var (room, other) = (await ClassRoom.OpenAsync(shared.Site), await ClassRoom.OpenAsync(shared.Site));
        using var lead = await shared.Site.SignInAsync(await shared.Site.AppointedAsync(AppointedRole.ProgrammeLead));
        using var instructor = await other.SignInAsync();

        Assert.Contains("Ileana Prado-Whitt", Pdf.Text((await lead.GetAsync($"/en/programme/classes/{room.ClassId}/sign-in-sheet.pdf")).Bytes), StringComparison.Ordinal);
        Assert.Equal(404, (await lead.GetAsync($"/en/programme/classes/{Guid.CreateVersion7()}/sign-in-sheet.pdf")).Status);
        Assert.Equal(404, (await instructor.GetAsync($"/en/class-days/{room.ClassId}/sign-in-sheet.pdf")).Status);
        Assert.Equal(404, (await instructor.GetAsync($"/en/programme/classes/{room.ClassId}/sign-in-sheet.pdf")).Status);
    }

    [Fact]
    public async Task A_name_that_cannot_be_printed_is_told_with_its_row()
    {
        var room = await ClassRoom.OpenAsync(shared.Site, "Rey 🐍 Salazar");
        using var browser = await room.SignInAsync();

        var answer = await browser.GetAsync($"/en/class-days/{room.ClassId}/sign-in-sheet.pdf");

        Assert.Equal(422, answer.Status);
        Assert.Contains("seated 1: name", answer.Html, StringComparison.Ordinal);
        Assert.Contains("The faces have no glyph for 🐍.", answer.Html, StringComparison.Ordinal);
    }
}

using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Training.Certification;
using Training.Courses;
using Training.Documents.Credentials;
using Training.Records;
using Training.Web.Features.Certificates;
using Training.Web.Keys;

namespace Training.Web.Tests.House;

/// <summary>A paper as somebody outside has it.</summary>
/// <param name="Serial">Its number.</param>
/// <param name="PersonId">Whose.</param>
/// <param name="Credential">What the forms for machines say.</param>
/// <param name="Token">What stands behind the <c>#</c> of its code.</param>
/// <param name="Pdf">Its file in English.</param>
internal sealed record IssuedPaper(Serial Serial, Guid PersonId, IssuedCredential Credential, string Token, byte[] Pdf);

/// <summary>Issues papers of invented people through the real code, with signed files, credential and leaf; each call makes a person of its own.</summary>
internal static class IssuedPapers
{
    public static async Task<IssuedPaper> IssueSignedAsync(
        this RunningSite site, DateOnly startsOn, DateOnly expiresOn, string name = "María José Peña-Núñez", string schemeId = "handler")
    {
        var personId = await site.PersonAsync(name);
        var decisionId = await site.GrantAsync(personId, schemeId, startsOn, expiresOn, leadId: await site.PersonAsync("Joaquín Peñuelas Ríos"));
        IssuedPaper? paper = null;
        await site.RecordAsync(async records =>
        {
            var order = await records.FindOrderAsync(decisionId, 1, CancellationToken.None);
            var problems = new List<Problem>();
            var serial = await site.Services.GetRequiredService<CertificateIssue>().IssueAsync(
                records, order!, site.Shelf.Find(schemeId)!, site.Clock.GetUtcNow(), problems, CancellationToken.None); // not null: just granted
            Xunit.Assert.Empty(problems);
            paper = await records.ReadAsync(site, serial!, name); // not null: no problem
        });
        return paper!; // not null: read above
    }

    private static async Task<IssuedPaper> ReadAsync(this RecordsContext records, RunningSite site, Serial serial, string name)
    {
        var found = await records.FindPaperAsync(serial.Value, CancellationToken.None) ?? throw new InvalidOperationException("It was just issued.");
        var drawn = await records.PaperCredentials.SingleAsync(row => row.PaperId == found.Id);
        var file = await records.FindRenderingAsync(found.Id, Language.English, RenderingFormat.CertificatePdf, CancellationToken.None);
        var credential = site.Services.GetRequiredService<PaperCredentials>().Of(
            serial, name, site.Shelf.Find(found.SchemeId)!, found.Period, found.Zone, found.IssuedAt, new(drawn.StatusIndex, drawn.SubjectId));
        var token = CompactToken.Write(credential, site.Services.GetRequiredService<IssuerKeys>().Credentials);
        return new(serial, found.PersonId, credential, token, file!.Bytes.ToArray()); // not null: issued in every language
    }
}

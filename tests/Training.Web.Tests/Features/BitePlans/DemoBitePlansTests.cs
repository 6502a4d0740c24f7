using Microsoft.EntityFrameworkCore;
using Training.Web.Doors;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.BitePlans;

/// <summary>The plans of the demo, which nobody typed into the form.</summary>
[Collection(ServedDemoTests.Name)]
public sealed class DemoBitePlansTests(ServedDemo demo)
{
    [Fact]
    public async Task Every_plan_can_be_printed_in_both_languages()
    {
        List<Guid> sites = [];
        await demo.Site.RecordAsync(async records => sites = await records.BitePlans.Select(plan => plan.SiteId).Distinct().ToListAsync());
        using var lead = await demo.SignInAsync(ServedDemo.Actors[Role.ProgrammeLead]);

        Assert.NotEmpty(sites);
        foreach (var path in from site in sites from language in new[] { "en", "es" } select $"/{language}/sites/{site}/bite-plan.pdf")
        {
            var answer = await lead.GetAsync(path);
            Assert.True(answer.Status == 200, $"{path}: {answer.Status}");
            Assert.Equal(1, Pdf.Pages(answer.Bytes));
        }
    }
}

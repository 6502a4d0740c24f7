using System.Text.RegularExpressions;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Sanctions;

/// <summary>docs/rules.md, "Suspension and withdrawal": the machine never suspends, reinstates or withdraws. Only a form that a lead sent does.</summary>
public sealed partial class OnlyPeopleTests
{
    /// <summary>The form of leads, and the replay of what invented leads did.</summary>
    private static readonly string[] Callers = ["src/Training.Web/Demo/DemoReplay.cs", "src/Training.Web/Features/Sanctions/SanctionsController.cs"];

    [Fact]
    public void No_job_and_no_other_page_suspends_reinstates_or_withdraws()
    {
        var sources = Directory.EnumerateFiles(Repository.Path("src"), "*.cs", SearchOption.AllDirectories)
            .Select(path => (Path: Path.GetRelativePath(Repository.Root, path).Replace('\\', '/'), Text: File.ReadAllText(path)))
            .Where(file => !file.Path.Contains("/obj/", StringComparison.Ordinal) && !file.Path.Contains("/Migrations/", StringComparison.Ordinal)).ToList();

        Assert.Equal(Callers, sources.Where(file => Call().IsMatch(file.Text)).Select(file => file.Path).Order(StringComparer.Ordinal));
        // The row of a withdrawal is a target-typed new in the same file.
        Assert.Equal(["src/Training.Records/Decisions/SanctionKeeping.cs"], sources.Where(file => Row().IsMatch(file.Text)).Select(file => file.Path));
    }

    [GeneratedRegex(@"\.(?:Suspend|Reinstate|Withdraw|ProposeWithdrawal|ConfirmWithdrawal)Async\(", RegexOptions.None, 1000)]
    private static partial Regex Call();

    [GeneratedRegex(@"new (?:SuspensionRecord|ReinstatementRecord|WithdrawalRecord)\b", RegexOptions.None, 1000)]
    private static partial Regex Row();
}

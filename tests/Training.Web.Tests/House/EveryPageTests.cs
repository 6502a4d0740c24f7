namespace Training.Web.Tests.House;

/// <summary>What holds on every page of every role; the list is made from the addresses of the running site.</summary>
[Collection(ServedDemoTests.Name)]
public sealed class EveryPageTests(ServedDemo demo)
{
    /// <summary>Remarks that are no errors and that we mean.</summary>
    private static readonly string[] OnPurpose =
    [
        "Trailing slash on void elements", // the framework's hidden field of every form
        "role is unnecessary for element", // a list without bullets is no list to some screen readers unless it says so
    ];

    [Fact]
    public async Task The_html_checker_finds_nothing()
    {
        var pages = await demo.PagesAsync();

        Assert.True(pages.Count > 70, $"Only {pages.Count} pages.");
        var findings = HtmlChecker.Check(pages.ToDictionary(page => page.Path, page => page.Html, StringComparer.Ordinal))
            .Where(finding => !OnPurpose.Any(known => finding.Contains(known, StringComparison.Ordinal))).ToList();
        Assert.True(findings.Count == 0, string.Join('\n', findings));
    }

    [Fact]
    public async Task Every_form_that_changes_something_carries_its_token_and_no_page_carries_script_or_style_of_its_own()
    {
        Assert.All(await demo.PagesAsync(), page =>
        {
            var (_, path, html) = page;
            // The check of a file changes nothing and knows nobody: it needs no token, and so no cookie.
            var forms = html.Split("<form ")[1..].Where(form => form[..form.IndexOf('>', StringComparison.Ordinal)] is var head
                && head.Contains("method=\"post\"", StringComparison.Ordinal) && !head.Contains("/verify/file\"", StringComparison.Ordinal));
            Assert.All(forms, form => Assert.True(form.Split("</form>")[0].Contains("__RequestVerificationToken", StringComparison.Ordinal), path));
            // A script is a file of ours, named by its path and loaded as a module; the policy forbids every other.
            Assert.DoesNotMatch(@"<script(?! type=""module"" src=""/\w+\.js\?v=[\w-]+""></script>)|<style|\sstyle=|\son\w+=", html);
            Assert.Single(html.Split("<h1")[1..]);
        });
    }
}

using Microsoft.AspNetCore.Routing;
using Training.Web.Doors;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Doors;

/// <summary>
/// Every address of the running site, tried as nobody and in every role, on own and on foreign records, against the table. An
/// address without a row fails here, and so does one whose row says more or less than its code.
/// </summary>
[Collection(ServedDemoTests.Name)]
public sealed class DoorWalkTests(ServedDemo demo)
{
    private const string SignOut = "/sign-out";

    [Fact]
    public async Task Nobody_is_led_to_the_sign_in_from_every_address_that_is_not_public()
    {
        using var nobody = demo.Site.OpenBrowser();
        var differing = new List<string>();
        foreach (var (endpoint, method) in Addresses.Of(demo.Site))
        {
            var path = Addresses.Path(endpoint, demo.Own);
            var answer = await AskAsync(nobody, method, path, tokenPage: "/en/sign-in");
            var isPublic = DoorKeeper.Rows(endpoint, method).Any(row => row.Whose == Whose.Public);
            var isSentToSignIn = answer.Status == 303 && answer.Location!.StartsWith("/en/sign-in?", StringComparison.Ordinal); // not null: 303
            if (isSentToSignIn == isPublic) differing.Add($"{method} {path}: {answer.Status} {answer.Location}");
        }

        Assert.Empty(differing);
    }

    [Theory]
    [InlineData(Role.Worker)]
    [InlineData(Role.Instructor)]
    [InlineData(Role.Employer)]
    [InlineData(Role.ProgrammeLead)]
    public async Task A_role_gets_where_the_table_says_on_own_and_on_foreign_records(Role role)
    {
        Role[] roles = [Role.Worker, role];
        var browser = await demo.SignInAsync(ServedDemo.Actors[role]);
        var differing = new List<string>();
        // Reading first: what the forms change must not decide what the pages show.
        foreach (var (endpoint, method) in Addresses.Of(demo.Site).Where(address => !IsPublic(address)).OrderBy(address => address.Method, StringComparer.Ordinal))
        {
            foreach (var isForeign in new[] { true, false }.Where(isForeign => !isForeign || Addresses.NamesBelongings(endpoint)))
            {
                var rows = DoorKeeper.Rows(endpoint, method).Where(row => row.Roles.Any(roles.Contains)).ToList();
                // What belongs to a worker belongs to the one who stands for workers, not to the others, who are workers too.
                var mayEnter = rows.Any(row => row.Whose == Whose.Any
                    || (row.Whose == Whose.Own && !isForeign && (row.Roles.Contains(role) || !Addresses.NamesBelongings(endpoint))));
                var path = Addresses.Path(endpoint, isForeign ? demo.Foreign : demo.Own);
                var answer = await AskAsync(browser, method, path, tokenPage: "/en/my/password");
                if (answer.Status >= 500 || mayEnter == (answer.Status == 404))
                    differing.Add($"{role} {(isForeign ? "foreign" : "own")} {method} {path}: {answer.Status} {answer.Location}");
                if (path.EndsWith(SignOut, StringComparison.Ordinal) && answer.Status == 303) browser = await demo.SignInAsync(ServedDemo.Actors[role]);
            }
        }

        browser.Dispose();
        Assert.True(differing.Count == 0, string.Join('\n', differing));
    }

    [Fact]
    public async Task Somebody_of_another_employer_is_not_found_under_ones_own()
    {
        using var browser = await demo.SignInAsync(ServedDemo.Actors[Role.Employer]);
        var mixed = demo.Own with { EmployeeId = demo.Foreign.EmployeeId };
        var endpoint = Addresses.Of(demo.Site).Single(address => address.Endpoint.RoutePattern.RawText!.EndsWith("employers/{employerId:guid}/people/{personId:guid}", StringComparison.Ordinal)).Endpoint;

        Assert.Equal(404, (await browser.GetAsync(Addresses.Path(endpoint, mixed))).Status);
        Assert.Equal(200, (await browser.GetAsync(Addresses.Path(endpoint, demo.Own))).Status);
    }

    private static bool IsPublic((RouteEndpoint Endpoint, string Method) address) =>
        DoorKeeper.Rows(address.Endpoint, address.Method).Any(row => row.Whose == Whose.Public);

    private static Task<Reply> AskAsync(PlainBrowser browser, string method, string path, string tokenPage) =>
        method == "GET" ? browser.GetAsync(path) : browser.PostAsync(path, [], tokenPage);
}

using System.Xml.Linq;

namespace Training.Web.Tests.House;

/// <summary>Which project may name which: courses → scoring → certification → documents; the records keep, the web shows.</summary>
public sealed class ProjectArrowsTests
{
    private static readonly string Root = Repository.Root;

    /// <summary>Every project under src/ and everything that it may reference. A project that is not here fails the test.</summary>
    private static readonly Dictionary<string, string[]> MayName = new(StringComparer.Ordinal)
    {
        ["Training.Courses"] = [],
        ["Training.Scoring"] = ["Training.Courses"],
        ["Training.Certification"] = ["Training.Courses", "Training.Scoring"],
        ["Training.Documents"] = ["Training.Courses", "Training.Scoring", "Training.Certification"],
        ["Training.Records"] = ["Training.Courses", "Training.Scoring", "Training.Certification", "Training.Documents"],
        ["Training.Records.Sqlite"] = ["Training.Records"],
        ["Training.Records.SqlServer"] = ["Training.Records"],
        ["Training.Records.Postgres"] = ["Training.Records"],
        ["Training.Web"] =
        [
            "Training.Courses", "Training.Scoring", "Training.Certification", "Training.Documents", "Training.Records",
            "Training.Records.Sqlite", "Training.Records.SqlServer", "Training.Records.Postgres",
        ],
    };

    /// <summary>Pure libraries know no database, web framework or clock: none of these may be referenced or pulled in.</summary>
    private static readonly string[] Pure = ["Training.Courses", "Training.Scoring", "Training.Certification", "Training.Documents"];

    private static readonly string[] NotPure = ["Microsoft.EntityFrameworkCore", "Microsoft.AspNetCore", "Npgsql", "Microsoft.Data"];

    public static TheoryData<string> Projects => [.. Directory
        .EnumerateFiles(Path.Combine(Root, "src"), "*.csproj", SearchOption.AllDirectories)
        .Select(file => Path.GetFileNameWithoutExtension(file))];

    [Theory, MemberData(nameof(Projects))]
    public void A_project_names_only_what_the_house_allows(string project)
    {
        Assert.True(MayName.TryGetValue(project, out var allowed), $"{project} has no row in the table of this test.");

        Assert.Empty(References(project, "ProjectReference").Select(path => Path.GetFileNameWithoutExtension(path)).Except(allowed));
    }

    [Theory, MemberData(nameof(Projects))]
    public void What_is_compiled_uses_only_what_the_house_allows(string project)
    {
        var used = System.Reflection.Assembly.Load(project).GetReferencedAssemblies()
            .Select(assembly => assembly.Name!)
            .Where(name => name.StartsWith("Training.", StringComparison.Ordinal));

        Assert.Empty(used.Except(MayName[project]));
    }

    [Fact]
    public void A_pure_library_knows_no_database_and_no_web_framework()
    {
        var used = Pure.SelectMany(project => System.Reflection.Assembly.Load(project).GetReferencedAssemblies()
            .Select(assembly => $"{project} -> {assembly.Name}"));

        Assert.DoesNotContain(used, arrow => NotPure.Any(banned => arrow.Contains($"-> {banned}", StringComparison.Ordinal)));
    }

    [Fact]
    public void Every_project_of_the_table_exists() =>
        Assert.Empty(MayName.Keys.Except(Projects.Select(row => row.Data)));

    private static IEnumerable<string> References(string project, string kind) => XDocument
        .Load(Path.Combine(Root, "src", project, $"{project}.csproj"))
        .Descendants(kind)
        .Select(reference => reference.Attribute("Include")!.Value);
}

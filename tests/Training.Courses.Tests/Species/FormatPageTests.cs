using System.Text.RegularExpressions;

namespace Training.Courses.Tests.Species;

/// <summary>The samples of docs/course-format.md are a library: whoever adds a species from that page alone gets one without a finding.</summary>
public sealed partial class FormatPageTests
{
    private static readonly string Page = File.ReadAllText(Path.Combine(Library.ShippedCourses.Folder, "../docs/course-format.md"));

    [Fact]
    public void The_samples_of_the_page_read_without_a_finding()
    {
        var texts = CourseFixture.Texts();
        texts["facts.yaml"] += string.Concat(FactId().Matches(Species()).Select(match => match.Value).Distinct(StringComparer.Ordinal)
            .Select(id => $"- id: {id}\n  says: Something.\n  source: Somebody\n  standing: {(id.EndsWith("LEN", StringComparison.Ordinal) ? "confirmed" : "from-memory")}\n"));
        texts["species.yaml"] = Sample("## species.yaml", "yaml");
        texts["regions.yaml"] = Sample("## regions.yaml", "yaml");
        foreach (var tag in new[] { "en", "es" })
        {
            texts[$"{tag}/species.md"] = Sample("## en/species.md", "markdown");
            texts[$"{tag}/regions.md"] = Sample("## regions.yaml", "markdown");
        }

        var reading = SpeciesFixture.Read(texts);

        Assert.Empty(reading.Problems.Select(problem => $"{problem.Place.File}:{problem.Place.Line} {problem.Code} {string.Join(' ', problem.Arguments)}"));
        Assert.Equal(["hill-rattlesnake", "hill-gopher-snake"], reading.Species.Select(sheet => sheet.Id));
        Assert.Equal("The hills", Assert.Single(reading.Regions).Names[Language.English]);
    }

    private static string Species() => Page[Page.IndexOf("## species.yaml", StringComparison.Ordinal)..Page.IndexOf("## What is kept", StringComparison.Ordinal)];

    private static string Sample(string heading, string language)
    {
        var section = Species()[Species().IndexOf(heading, StringComparison.Ordinal)..];
        var from = section.IndexOf($"```{language}\n", StringComparison.Ordinal) + language.Length + 4;
        return section[from..section.IndexOf("```", from, StringComparison.Ordinal)];
    }

    [GeneratedRegex("F-[A-Z]{2,3}-[0-9]{2}(-LEN)?", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex FactId();
}

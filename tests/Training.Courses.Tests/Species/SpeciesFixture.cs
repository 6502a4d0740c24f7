namespace Training.Courses.Tests.Species;

/// <summary>The two courses of the fixture, with three sheets and two sets that have no finding.</summary>
internal static class SpeciesFixture
{
    private const string Facts = """
        - id: F-SP-91
          says: Red one.
          source: A field guide, from memory
          standing: from-memory
        - id: F-SP-91-LEN
          says: Red one, 60 to 110 cm.
          source: An agency
          standing: confirmed
        - id: F-RGN-91
          says: Our own sets.
          source: our own
          standing: common-practice

        """;

    private const string Sheets = """
        - id: red-one
          group: pit-viper
          scientific: [Crotalus ruber]
          fact: F-SP-91
          where:
            states:
              - US-AZ
              - US-NM
            wider: true
            fact: F-SP-91
          typical:
            - { least: 60, most: 110, unit: cm, standing: confirmed, fact: F-SP-91-LEN }
          greatest:
            - { least: 140, unit: cm, standing: confirmed, fact: F-SP-91-LEN }
            - { least: 5, most: 5, unit: ft, standing: from-memory, fact: F-SP-91 }
          confused-with:
            - plain-one
        - id: ringed-one
          group: coral
          fact: F-SP-91
          where: { states: [US-FL], fact: F-SP-91 }
        - id: plain-one
          group: look-alike
          fact: F-SP-91

        """;

    private const string Regions = """
        - id: west
          states: [US-AZ, US-NM, US-NV]
          fact: F-RGN-91
          species:
            - red-one
        - id: south
          states: [US-FL, US-GA]
          fact: F-RGN-91
          species:
            - ringed-one

        """;

    private const string Words = """
        # Sheets

        ## red-one

        - `name` Red *one*
        - `range` Arizona and the hills. <fact:F-SP-91>
        - `marks` Bands. <fact:F-SP-91-LEN> A tail. <fact:F-SP-91>
        - `sure` Not sure. <fact:F-SP-91>

        ## ringed-one

        - `name` Ringed one
        - `sure` Not sure. <fact:F-SP-91>

        ## plain-one

        - `name` Plain one
        - `sure` Not sure. <fact:F-SP-91>

        """;

    private const string Names = "# Sets\n\n- `west` The west\n- `south` The south\n";

    public static Dictionary<string, string> Texts()
    {
        var texts = CourseFixture.Texts();
        texts["facts.yaml"] += Facts;
        texts["species.yaml"] = Sheets;
        texts["regions.yaml"] = Regions;
        foreach (var tag in new[] { "en", "es" })
        {
            texts[$"{tag}/species.md"] = Words;
            texts[$"{tag}/regions.md"] = Names;
        }

        return texts;
    }

    public static CourseReading Read(Dictionary<string, string>? texts = null) => CourseReader.Read(new CourseFiles(texts ?? Texts()));

    /// <summary>Reads the fixture with one text of one file replaced.</summary>
    public static (CourseReading Reading, Dictionary<string, string> Texts) ReadWith(string file, string old, string @new)
    {
        var texts = Texts();
        Assert.Contains(old, texts[file], StringComparison.Ordinal);
        var at = texts[file].IndexOf(old, StringComparison.Ordinal);
        texts[file] = texts[file][..at] + @new + texts[file][(at + old.Length)..];
        return (Read(texts), texts);
    }
}

using System.Text.Json.Nodes;

namespace Training.Courses;

/// <summary>A course as it was: every file of its folder, with only those facts, guidance entries and words that it uses.</summary>
/// <param name="CourseId">The course.</param>
/// <param name="Hash">SHA-256 of <paramref name="Content"/> in UTF-8, lower-case hexadecimal digits: its address in the records.</param>
/// <param name="Content">Canonical JSON; layout <c>course-snapshot/1</c>: format, course, files, facts, guidance, words.</param>
public sealed record CourseSnapshot(string CourseId, string Hash, string Content)
{
    private const string Format = "course-snapshot/1";

    /// <summary>Gives the course back without its folder; other courses that it names need not exist any more.</summary>
    /// <param name="address">Where the site keeps modules; null: <see cref="ModuleAddresses.Beside"/>.</param>
    /// <exception cref="InvalidDataException">The content does not match the hash, or is no snapshot of a course without findings.</exception>
    public Course Read(ModuleAddress? address = null)
    {
        if (CanonicalJson.HashOf(Content) != Hash) throw new InvalidDataException($"Snapshot {Hash} of course '{CourseId}' was changed.");
        var root = JsonNode.Parse(Content) as JsonObject;
        if (root?["format"]?.GetValue<string>() != Format) throw new InvalidDataException($"Snapshot {Hash} has an unknown layout.");
        var problems = new List<Problem>();
        var files = Unpack(root);
        var read = CourseFolderReader.Read(files, CourseId, SharedSources.Read(files, problems), address ?? ModuleAddresses.Beside, problems);
        return read?.Course ?? throw new InvalidDataException(
            $"Snapshot {Hash} of course '{CourseId}' cannot be read: {string.Join(", ", problems.Select(problem => $"{problem.Code} {problem.Place.File}"))}");
    }

    internal static CourseSnapshot Of(CourseFolder folder)
    {
        var prefix = folder.PathOf("");
        var files = new JsonObject();
        foreach (var path in folder.Files.Paths.Where(path => path.StartsWith(prefix, StringComparison.Ordinal)))
        {
            files[path[prefix.Length..]] = folder.Files.Find(path);
        }

        var entries = folder.Guidance.Select(folder.Shared.Guidance.Find).OfType<GuidanceEntry>().ToList();
        var content = CanonicalJson.Write(new JsonObject
        {
            ["format"] = Format,
            ["course"] = folder.Id,
            ["files"] = files,
            ["facts"] = new JsonArray([.. folder.Facts.Where(folder.Shared.Facts.ContainsKey).Select(id => (JsonNode)SourceJson.Of(folder.Shared.Facts[id]))]),
            ["guidance"] = new JsonArray([.. entries.Select(entry => (JsonNode)SourceJson.Of(entry))]),
            ["words"] = SourceJson.WordsOf(entries, folder.Shared.Words),
        });
        return new(folder.Id, CanonicalJson.HashOf(content), content);
    }

    /// <summary>The folder again: JSON is YAML, so the one reader reads facts and guidance back.</summary>
    private CourseFiles Unpack(JsonObject root)
    {
        var texts = new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["facts.yaml"] = CanonicalJson.Write(Part("facts")),
            ["guidance.yaml"] = CanonicalJson.Write(Part("guidance")),
        };
        foreach (var (path, text) in Part("files").AsObject()) texts[$"{CourseId}/{path}"] = text?.GetValue<string>() ?? "";
        foreach (var (tag, words) in Part("words").AsObject())
        {
            var lines = (words as JsonObject ?? []).Select(word => $"- `{word.Key}` {SourceJson.EscapeMarkdown(word.Value?.GetValue<string>() ?? "")}\n");
            texts[$"{tag}/guidance.md"] = string.Concat(lines);
        }

        return new(texts);

        JsonNode Part(string name) => root[name] ?? throw new InvalidDataException($"Snapshot {Hash} has no '{name}'.");
    }
}

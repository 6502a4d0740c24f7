using System.Globalization;
using System.Text.Json.Nodes;

namespace Training.Courses;

/// <summary>Versions of questions and checklists: hashes of their structure, key, words as typed and guidance resolved into them.</summary>
internal static class Versions
{
    public static string Of(NamedQuestion question, CourseFolder folder, IReadOnlyDictionary<Language, string> sources, IEnumerable<string> guidance)
    {
        var json = new JsonObject
        {
            ["id"] = question.Id,
            ["type"] = question.Type,
            ["topic"] = question.Topic,
            ["objective"] = question.Objective,
            ["difficulty"] = question.Difficulty.ToString(),
            ["critical"] = question.IsCritical ? "true" : "false",
            ["passage"] = question.Passage.ToString(),
            ["fact"] = question.FactId,
            ["options"] = CanonicalJson.Texts(question.OptionIds),
            ["right"] = KeyOf(question.Key),
        };
        // Only where a question has them: the versions of all others stay what they are.
        if (question.Snakes.Count > 0) json["species"] = CanonicalJson.Texts(question.Snakes);
        if (question.Key is QuestionKey.Match match) json["matches"] = CanonicalJson.Texts(match.MatchIds);
        if (question.Key is QuestionKey.Spot spot)
        {
            json["figure"] = CanonicalJson.HashOf(folder.Files.Find(folder.PathOf(spot.Figure)) ?? "");
            json["regions"] = CanonicalJson.Texts(spot.Regions.Select(TextOf));
        }

        return Hash(json, folder, sources, guidance.Concat(question.GuidanceIds));
    }

    public static string Of(NamedChecklist checklist, CourseFolder folder, IReadOnlyDictionary<Language, string> sources, IEnumerable<string> guidance)
    {
        var json = new JsonObject
        {
            ["id"] = checklist.Id,
            ["pass"] = checklist.PassPercent.ToString(CultureInfo.InvariantCulture),
            ["on"] = CanonicalJson.Texts(checklist.Subjects.Select(subject => subject.ToString())),
            ["steps"] = new JsonArray([.. checklist.Steps.Select(step => (JsonNode)new JsonObject
            {
                ["id"] = step.Step.Id,
                ["objective"] = step.Step.Objective,
                ["critical"] = step.Step.IsCritical ? "true" : "false",
                ["prompt"] = step.Step.MayBePrompted ? "true" : "false",
                ["fact"] = step.Step.FactId,
            })]),
        };
        // Only where a checklist has them: the versions of all others stay what they are.
        if (checklist.Kind == ChecklistKind.Drill) json["kind"] = checklist.Kind.ToString();
        if (checklist.TimeLimitMinutes is { } minutes) json["time-limit"] = minutes.ToString(CultureInfo.InvariantCulture);
        return Hash(json, folder, sources, guidance);
    }

    private static string Hash(JsonObject json, CourseFolder folder, IReadOnlyDictionary<Language, string> sources, IEnumerable<string> guidance)
    {
        foreach (var (language, source) in sources) json[$"words-{language.Tag()}"] = source.Trim();
        var entries = guidance.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)
            .Select(folder.Shared.Guidance.Find).OfType<GuidanceEntry>().ToList();
        json["guidance"] = new JsonArray([.. entries.Select(entry => (JsonNode)SourceJson.Of(entry))]);
        json["guidance-words"] = SourceJson.WordsOf(entries, folder.Shared.Words);
        return CanonicalJson.HashOf(CanonicalJson.Write(json));
    }

    private static JsonArray KeyOf(QuestionKey key) => CanonicalJson.Texts(key switch
    {
        QuestionKey.One one => [one.OptionId],
        QuestionKey.Several several => several.OptionIds.Order(StringComparer.Ordinal),
        QuestionKey.Order order => order.OptionIds,
        QuestionKey.Number number =>
            [number.Value.ToString(CultureInfo.InvariantCulture), number.Tolerance.ToString(CultureInfo.InvariantCulture), number.Unit],
        QuestionKey.Match match => match.Pairs.Select(pair => pair.ToString()),
        QuestionKey.Spot spot => [spot.RegionId],
        _ => throw new System.Diagnostics.UnreachableException(),
    });

    private static string TextOf(SpotRegion region)
    {
        var (name, numbers) = region.Shape switch
        {
            SpotShape.Circle circle => ("circle", [circle.Centre.X, circle.Centre.Y, circle.Radius]),
            SpotShape.Rectangle rectangle => ("rect", [rectangle.Corner.X, rectangle.Corner.Y, rectangle.Width, rectangle.Height]),
            SpotShape.Polygon polygon => ("polygon", polygon.Corners.SelectMany(corner => new[] { corner.X, corner.Y })),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
        return string.Join(' ', [region.Id, name, .. Plain(numbers), "number", .. Plain([region.Number.X, region.Number.Y])]);
    }

    private static IEnumerable<string> Plain(IEnumerable<decimal> numbers) => numbers.Select(number => number.ToString(CultureInfo.InvariantCulture));
}

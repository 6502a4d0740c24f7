using System.Text.RegularExpressions;

namespace Training.Courses;

/// <summary>
/// Syllables of an English word by its spelling: groups of vowels, less the silent ones, more those that a group hides. Spelling tells
/// sound only nearly; over a page the errors cancel, which a test shows against a pronouncing dictionary.
/// </summary>
internal static partial class EnglishSyllables
{
    public static int Count(string word)
    {
        var lower = word.ToLowerInvariant();
        if (!lower.Any(char.IsLetter)) return 1;
        return VowelGroup().Count(lower) - Silent().Count(lower) + Hidden().Count(lower);
    }

    [GeneratedRegex("[aeiouy]+", RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 1_000)]
    private static partial Regex VowelGroup();

    /// <summary>The e of "take", "moved", "snake's", "safely" and "somebody", the ue of "vague"; not that of "handles", "metre", "added", "boxes".</summary>
    [GeneratedRegex(
        "(?<=[aeiouy][^aeiouy]+)(?<![^aeiouylr][lr])(e(?!.)|(?<![cgsxz]|sh|ch)(es(?!.)|e(?=['’]s))|(?<![td])ed(?!.)"
        + "|e(?=(ly|ty|body|thing|where|man|hand|lines?)(?!.))|e(?=ment|ful|less))|(?<=[aeo]n?g)ue(?=s?(?!.))",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 1_000)]
    private static partial Regex Silent();

    /// <summary>"li-on", "a-re-a", "flu-id", "be-ing", "vid-e-o", "ear-li-er", "play-er", "who-ev-er": two sounds in one group.</summary>
    [GeneratedRegex(
        "i(?=a(?!g))(?<![ctg]i)|i(?=o(?!ur))(?<![ctgsx]i)|(?<=[aeiouy][^aeiouy]+e)a(?=s?(?!.))|u(?=i(?![lts]))(?<![qgbr]u)|u(?=a)(?<![qg]u)"
        + "|(?<=[aeouy])i(?=ng)|e(?=o)(?<!pe)|(?<=(r|qu)i)e(?=t)|i(?=er|est)(?<=[aeiouy][^aeiouy]+i)|(?<=[aeo])y(?=er|o)|o(?=ev)",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 1_000)]
    private static partial Regex Hidden();
}

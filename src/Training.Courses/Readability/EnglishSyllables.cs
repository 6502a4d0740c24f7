using System.Text.RegularExpressions;

namespace Training.Courses;

/// <summary>
/// Syllables of an English word by its spelling: groups of vowels, less the silent ones, more those that a group hides. Spelling tells
/// sound only nearly; over a page the errors cancel, which a test shows against a dictionary-backed library.
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

    /// <summary>The e of "take", "takes", "moved", "safely"; not that of "table", "added", "boxes".</summary>
    [GeneratedRegex("(?<=[aeiouy][^aeiouy]+)(e(?!.)(?<![^aeiouy]le)|(?<![cgsxz]|sh|ch)es(?!.)|(?<![td])ed(?!.)|e(?=ly(?!.))|e(?=ment))", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1_000)]
    private static partial Regex Silent();

    /// <summary>"li-on", "a-re-a", "flu-id", "be-ing", "vid-e-o": two sounds in one group.</summary>
    [GeneratedRegex("i(?=a(?!g))(?<![ctg]i)|i(?=o)(?<![ctgsx]i)|(?<=e)a(?!.)|u(?=i(?![lt]))(?<![qgbr]u)|u(?=a)(?<![qg]u)|(?<=[aeouy])i(?=ng)|e(?=o)(?<!p)|(?<=ri)e(?=t)", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1_000)]
    private static partial Regex Hidden();
}

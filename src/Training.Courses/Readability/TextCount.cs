using System.Text.RegularExpressions;

namespace Training.Courses;

/// <summary>What the reading indices are made from.</summary>
/// <param name="Words">Runs of letters, with the marks inside them; numbers count as words too.</param>
/// <param name="Sentences">At least 1 where there is a word. A paragraph or list item ends one, whatever its last sign is.</param>
/// <param name="Syllables">By the rules of the language; a number counts as one.</param>
public sealed partial record TextCount(int Words, int Sentences, int Syllables)
{
    /// <summary>Counts the paragraphs of a text.</summary>
    public static TextCount Of(IEnumerable<string> paragraphs, Language language)
    {
        var (words, sentences, syllables) = (0, 0, 0);
        foreach (var sentence in paragraphs.SelectMany(paragraph => SentenceEnd().Split(paragraph)))
        {
            var found = Word().Matches(sentence);
            if (found.Count == 0) continue;
            sentences++;
            words += found.Count;
            syllables += found.Sum(word => SyllablesOf(word.Value, language));
        }

        return new(words, sentences, syllables);
    }

    /// <summary>Syllables of one word; at least 1.</summary>
    public static int SyllablesOf(string word, Language language) => Math.Max(1, language switch
    {
        Language.English => EnglishSyllables.Count(word),
        Language.Spanish => SpanishSyllables.Count(word),
    });

    [GeneratedRegex("(?<=[.!?…:;])\\s+", RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 1_000)]
    private static partial Regex SentenceEnd();

    [GeneratedRegex("[\\p{L}\\p{N}]+(['’.,-][\\p{L}\\p{N}]+)*", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1_000)]
    private static partial Regex Word();
}

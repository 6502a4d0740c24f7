namespace Training.Courses;

/// <summary>Syllables of a Spanish word: one a vowel, save where a weak vowel (i, u, ü, y) without an accent joins its neighbour (RAE, Ortografía, 2010, diphthongs and triphthongs).</summary>
internal static class SpanishSyllables
{
    private const string Strong = "aeoáéóíú";
    private const string Weak = "iuü";

    public static int Count(string word)
    {
        // An h between vowels is silent and parts nothing: "prohi-bir", but "a-ho-ra".
        var lower = word.ToLowerInvariant().Replace("h", "", StringComparison.Ordinal);
        var count = 0;
        for (var i = 0; i < lower.Length; i++)
        {
            if (!IsVowel(lower, i) || IsSilentU(lower, i)) continue;
            var before = i > 0 && IsVowel(lower, i - 1) && !IsSilentU(lower, i - 1);
            // Joined: at least one of the two is weak. Two strong ones, an accented weak one, or the same one twice part.
            if (!before || lower[i] == lower[i - 1] || (Strong.Contains(lower[i]) && Strong.Contains(lower[i - 1]))) count++;
        }

        return count;
    }

    private static bool IsVowel(string word, int at) =>
        Strong.Contains(word[at]) || Weak.Contains(word[at])
        // "y" sounds as a vowel where no vowel follows: "soy", "y".
        || (word[at] == 'y' && (at == word.Length - 1 || !(Strong.Contains(word[at + 1]) || Weak.Contains(word[at + 1]))));

    /// <summary>The u of "que", "quien", "guía", "guerra".</summary>
    private static bool IsSilentU(string word, int at) =>
        word[at] == 'u' && at > 0 && word[at - 1] is 'q' or 'g' && at + 1 < word.Length && word[at + 1] is 'e' or 'i' or 'é' or 'í';
}

namespace Training.Documents.Typesetting;

/// <summary>How a text is set: accents joined to their letters (NFC), every run of white space one space, none at the ends.</summary>
internal static class Composed
{
    // Half of a character, and a code that Unicode keeps free: nothing can be composed from them. They come out as the sign for that.
    private const char NoCharacter = '\uFFFE';

    public static string Of(string text)
    {
        var sound = string.Concat(text.Replace(NoCharacter, '\uFFFD').EnumerateRunes());
        return string.Join(' ', sound.Normalize().Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
    }
}

namespace Training.Courses;

/// <summary>The languages that every course, page and paper exists in.</summary>
public enum Language
{
    /// <summary>English; folder and tag <c>en</c>.</summary>
    English,

    /// <summary>Spanish as spoken on US work sites; folder and tag <c>es</c>.</summary>
    Spanish,
}

/// <summary>Names languages by their BCP 47 tag.</summary>
public static class LanguageTags
{
    /// <summary>All languages, English first.</summary>
    public static IReadOnlyList<Language> All { get; } = [Language.English, Language.Spanish];

    /// <summary>The tag: <c>en</c> or <c>es</c>. It is also the name of the folder that holds a course's words.</summary>
    public static string Tag(this Language language) => language switch
    {
        Language.English => "en",
        Language.Spanish => "es",
    };

    /// <summary>The language of a tag, or null where we do not have it.</summary>
    public static Language? Find(string? tag) => tag switch
    {
        "en" => Language.English,
        "es" => Language.Spanish,
        _ => null,
    };
}

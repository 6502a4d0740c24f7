namespace Training.Courses;

/// <summary>How hard a text is to read, by the published index of its language.</summary>
public static class ReadingLevel
{
    /// <summary>US school grade that an English text asks for: 0.39 × words per sentence + 11.8 × syllables per word − 15.59.</summary>
    /// <remarks>Kincaid, Fishburne, Rogers and Chissom, "Derivation of new readability formulas for Navy enlisted personnel", 1975.</remarks>
    /// <returns>Null where there is no word.</returns>
    public static double? Grade(TextCount count) =>
        count.Words == 0 ? null : (0.39 * count.Words / count.Sentences) + (11.8 * count.Syllables / count.Words) - 15.59;

    /// <summary>Ease of a Spanish text from about 0 (hard) to 100 (easy): 206.835 − 62.3 × syllables per word − words per sentence. From 55 on it is "normal" on the INFLESZ scale.</summary>
    /// <remarks>Szigriszt Pazos, "Sistemas predictivos de legilibilidad del mensaje escrito: fórmula de perspicuidad", 1993; scale: Barrio-Cantalejo and others, Anales del Sistema Sanitario de Navarra 31(2):135-152, 2008.</remarks>
    /// <returns>Null where there is no word.</returns>
    public static double? Ease(TextCount count) =>
        count.Words == 0 ? null : 206.835 - (62.3 * count.Syllables / count.Words) - ((double)count.Words / count.Sentences);
}

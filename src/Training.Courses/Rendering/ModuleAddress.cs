namespace Training.Courses;

/// <summary>Says at which address of the site a module stands.</summary>
/// <param name="language">The language of the page that links.</param>
/// <param name="courseId">The course.</param>
/// <param name="moduleId">The module.</param>
/// <param name="section">The heading, or null for the whole module.</param>
/// <returns>An address of the same site: absolute path or relative. Anything else is taken out of the page.</returns>
public delegate string ModuleAddress(Language language, string courseId, string moduleId, string? section);

/// <summary>The address used where nobody gives another.</summary>
public static class ModuleAddresses
{
    /// <summary>
    /// <c>distances#reach</c>: right for every site that keeps the modules of a course beside each other (<c>…/meeting</c>,
    /// <c>…/distances</c>). Questions are shown elsewhere, so a site that links from them gives absolute paths.
    /// </summary>
    public static string Beside(Language language, string courseId, string moduleId, string? section) =>
        section is null ? moduleId : $"{moduleId}#{section}";
}

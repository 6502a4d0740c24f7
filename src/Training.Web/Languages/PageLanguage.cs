using System.Globalization;
using Microsoft.Extensions.Primitives;
using Microsoft.Net.Http.Headers;
using Training.Courses;

namespace Training.Web.Languages;

/// <summary>Which language a request is answered in: the first part of its path, else what the browser asks for, else English.</summary>
public static class PageLanguage
{
    /// <summary>Decides the language once, before everything that may answer, so that refusals speak it too.</summary>
    public static IApplicationBuilder UsePageLanguage(this IApplicationBuilder app) => app.Use((context, next) =>
    {
        var language = OfPath(context.Request.Path);
        if (language is null)
        {
            // What is said depends on the browser here, so no cache may hand one reader's language to the next.
            context.Response.Headers.Append(HeaderNames.Vary, HeaderNames.AcceptLanguage);
        }

        var spoken = language ?? Preferred(context.Request.Headers.AcceptLanguage);
        context.Items[typeof(Language)] = spoken;
        // A refusal is rendered under another path; the switch of languages leads to what was asked for.
        context.Items[typeof(PageAddress)] = new PageAddress(BelowLanguage(context.Request.Path, language), context.Request.QueryString);
        CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = spoken.Culture();
        return next(context);
    });

    /// <summary>The language of the page being answered.</summary>
    public static Language PageLanguageOf(this HttpContext context) => (Language)(context.Items[typeof(Language)] ?? Language.English);

    /// <summary>The address being answered.</summary>
    public static PageAddress PageAddressOf(this HttpContext context) => (PageAddress)(context.Items[typeof(PageAddress)] ?? new PageAddress(""));

    /// <summary>What the language calls itself.</summary>
    public static string OwnName(this Language language) => language switch
    {
        Language.English => "English",
        Language.Spanish => "Español",
    };

    /// <summary>How dates and numbers are written on US work sites.</summary>
    public static CultureInfo Culture(this Language language) => language switch
    {
        Language.English => CultureInfo.GetCultureInfo("en-US"),
        Language.Spanish => CultureInfo.GetCultureInfo("es-US"),
    };

    /// <summary>Writes something in a language where no request says which one is spoken: a letter, a calendar.</summary>
    public static T Speak<T>(this Language language, Func<T> write)
    {
        var (culture, uiCulture) = (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture);
        CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = language.Culture();
        try
        {
            return write();
        }
        finally
        {
            (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = (culture, uiCulture);
        }
    }

    /// <summary>The language that the path begins with, or null.</summary>
    public static Language? OfPath(PathString path)
    {
        var text = path.Value ?? "";
        var end = text.IndexOf('/', Math.Min(1, text.Length));
        return text.Length < 2 ? null : LanguageTags.Find(end < 0 ? text[1..] : text[1..end]);
    }

    private static string BelowLanguage(PathString path, Language? language) =>
        (language is null ? path.Value ?? "" : path.Value![(1 + language.Value.Tag().Length)..]).TrimEnd('/');

    /// <summary>The best match for an <c>Accept-Language</c> header; English where nothing matches.</summary>
    public static Language Preferred(StringValues accepted)
    {
        if (!StringWithQualityHeaderValue.TryParseList(accepted, out var wishes)) return Language.English;
        return wishes
            .Where(wish => wish.Quality is null or > 0)
            .OrderByDescending(wish => wish.Quality ?? 1)
            .Select(wish => LanguageTags.Find(wish.Value.ToString().Split('-')[0].ToLowerInvariant()))
            .FirstOrDefault(language => language is not null) ?? Language.English;
    }
}

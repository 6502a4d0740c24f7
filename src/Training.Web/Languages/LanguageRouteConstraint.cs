using Training.Courses;

namespace Training.Web.Languages;

/// <summary>Lets a route begin with <c>{language:language}</c>: <c>en</c> or <c>es</c>, nothing else.</summary>
public sealed class LanguageRouteConstraint : IRouteConstraint
{
    /// <inheritdoc/>
    public bool Match(HttpContext? httpContext, IRouter? route, string routeKey, RouteValueDictionary values, RouteDirection routeDirection) =>
        LanguageTags.Find(values[routeKey] as string) is not null;
}

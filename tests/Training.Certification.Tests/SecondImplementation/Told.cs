namespace Training.Certification.Tests;

/// <summary>A decision as one line of text: records with lists inside do not compare by their items.</summary>
internal static class Told
{
    public static string Of(Decision decision) => decision switch
    {
        Decision.Granted granted => Granted(granted.Route, granted.Period, granted.RestsOn, granted.Exceptions),
        Decision.NotYet notYet => NotYet(notYet.Route, notYet.Reasons),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    public static string Granted(Route route, Period period, IEnumerable<Guid> restsOn, IEnumerable<SeparationException> exceptions) =>
        $"{route} {period} on {string.Join(',', restsOn)} with {string.Join(',', exceptions)}";

    public static string NotYet(Route route, IEnumerable<DecisionReason> reasons) =>
        $"not yet {route}: {string.Join('\n', reasons)}";
}

namespace Training.Certification;

/// <summary>From a day on, a place needs so many current handlers.</summary>
/// <param name="From">First day, included; it holds until the next such row of the place begins.</param>
/// <param name="Handlers">How many; 0 ends the need.</param>
public sealed record HandlerNeed(DateOnly From, int Handlers);

/// <summary>Days in a row on which neither the count nor the need changes.</summary>
/// <param name="From">The first, included.</param>
/// <param name="Through">The last, included.</param>
/// <param name="Handlers">How many count.</param>
/// <param name="Needed">How many are needed; 0 where nothing is.</param>
/// <param name="Leaving">Whose last day counted is the day before <paramref name="From"/>, by person; empty in the first run.</param>
public sealed record CoverRun(DateOnly From, DateOnly Through, int Handlers, int Needed, IReadOnlyList<HandlerSpan> Leaving)
{
    /// <summary>Fewer count than are needed.</summary>
    public bool IsBelow => Handlers < Needed;
}

/// <summary>The cover of a place ahead.</summary>
/// <param name="Runs">Without gaps from the first day asked for through the last; at least one.</param>
public sealed record CoverForecast(IReadOnlyList<CoverRun> Runs)
{
    /// <summary>The run that begins with the first day below; null where no day is. In the first run, cover is below already.</summary>
    public CoverRun? FirstBelow => Runs.FirstOrDefault(run => run.IsBelow);

    /// <summary>The run of a day; null outside of what was asked for.</summary>
    public CoverRun? On(DateOnly day) => Runs.FirstOrDefault(run => run.From <= day && day <= run.Through);

    /// <summary>Counts who is there, in one sweep over the changes.</summary>
    /// <param name="handlers">Everybody's spans, as <see cref="HandlerDays.Of"/> gives them for the same days; of one person none overlap.</param>
    /// <param name="needs">The rows of the place, in any order, at most one for a first day.</param>
    /// <param name="from">First day, included.</param>
    /// <param name="through">Last day, included; not before <paramref name="from"/>.</param>
    /// <remarks>Rule: docs/rules.md, "Cover".</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The last day lies before the first.</exception>
    public static CoverForecast Of(IReadOnlyCollection<HandlerSpan> handlers, IReadOnlyCollection<HandlerNeed> needs, DateOnly from, DateOnly through)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(through, from);
        var joining = handlers.ToLookup(span => span.From);
        var leaving = handlers.Where(span => span.Through < through).ToLookup(span => span.Through.AddDays(1));
        var rises = needs.ToDictionary(need => need.From, need => need.Handlers);

        var needed = needs.Where(need => need.From <= from).MaxBy(need => need.From)?.Handlers ?? 0;
        SortedSet<DateOnly> changes =
            [from, .. handlers.Select(span => span.From), .. leaving.Select(day => day.Key), .. rises.Keys.Where(day => day > from && day <= through)];

        var runs = new List<CoverRun>();
        var count = 0;
        foreach (var day in changes)
        {
            count += joining[day].Count() - leaving[day].Count();
            if (day > from && rises.TryGetValue(day, out var rise)) needed = rise;
            IReadOnlyList<HandlerSpan> left = [.. leaving[day].OrderBy(span => span.PersonId)];
            if (runs.Count > 0) runs[^1] = runs[^1] with { Through = day.AddDays(-1) };
            runs.Add(new CoverRun(day, through, count, needed, left));
        }

        return new CoverForecast(runs);
    }
}

namespace Training.Web.Features.ClassDays;

/// <summary>A class day of the visitor.</summary>
/// <param name="Id">Which class.</param>
/// <param name="CourseId">Of which course.</param>
/// <param name="HeldOn">The day, in <paramref name="Zone"/>.</param>
/// <param name="SiteId">Where.</param>
/// <param name="Site">Its name.</param>
/// <param name="Zone">IANA time zone of the site.</param>
/// <param name="Candidates">How many attend, the visitor not counted.</param>
/// <param name="Scores">The visitor may score there; otherwise they only teach.</param>
public sealed record ClassDay(Guid Id, string CourseId, DateOnly HeldOn, Guid SiteId, string Site, string Zone, int Candidates, bool Scores);

/// <summary>What the list of class days is given.</summary>
/// <param name="Today">The visitor's day.</param>
/// <param name="Ahead">Today's and later ones, soonest first.</param>
/// <param name="Gone">The last ones, newest first.</param>
/// <param name="Open">Sheets that were started and not signed.</param>
public sealed record ClassDaysPage(DateOnly Today, IReadOnlyList<ClassDay> Ahead, IReadOnlyList<ClassDay> Gone, IReadOnlyList<UnsignedSheet> Open)
{
    /// <summary>What the first line speaks of: the scored days of the soonest date on which the visitor scores, else the taught ones; empty where nothing is ahead.</summary>
    public IReadOnlyList<ClassDay> Next
    {
        get
        {
            var first = Ahead.FirstOrDefault(day => day.Scores) ?? (Ahead.Count > 0 ? Ahead[0] : null);
            return first is null ? [] : [.. Ahead.Where(day => day.HeldOn == first.HeldOn && day.Scores == first.Scores)];
        }
    }
}

/// <summary>A sheet that waits for its signature.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Candidate">Whose.</param>
/// <param name="StartedOn">The day, in the visitor's zone.</param>
public sealed record UnsignedSheet(Guid Id, string Candidate, DateOnly StartedOn);

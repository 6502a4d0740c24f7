namespace Training.Web.Features.Panels;

/// <summary>The form of a new panel.</summary>
public sealed class PanelForm
{
    /// <summary>Made when the form was: the same twice is one panel.</summary>
    public Guid Id { get; set; }

    /// <summary>Course and quiz or checklist: <c>course/target</c>.</summary>
    public string? Target { get; set; }

    /// <summary>1 to 2,000 characters.</summary>
    public string? Purpose { get; set; }

    /// <summary>Who is only just competent; 1 to 2,000 characters.</summary>
    public string? JustCompetent { get; set; }

    /// <summary>How the judges stand for those who know the work; 1 to 2,000 characters.</summary>
    public string? Balance { get; set; }
}

/// <summary>The form of a new judge: a person or an outsider.</summary>
public sealed class JudgeForm
{
    /// <summary>Made when the form was: the same twice is one judge.</summary>
    public Guid Id { get; set; }

    /// <summary>Somebody who is appointed, or null.</summary>
    public Guid? PersonId { get; set; }

    /// <summary>An outsider, or null.</summary>
    public string? OutsiderName { get; set; }

    /// <summary>Why they can judge; 1 to 2,000 characters.</summary>
    public string? Qualification { get; set; }
}

/// <summary>What one judge says in the open round.</summary>
public sealed class RatingsForm
{
    /// <summary>Made when the form was: the same twice rates once.</summary>
    public Guid Id { get; set; }

    /// <summary>The round that the page was about.</summary>
    public int Round { get; set; }

    /// <summary>As typed, by question or step; empty where nothing is said yet.</summary>
    public Dictionary<string, string?> Percent { get; set; } = [];
}

/// <summary>What one judge would accept.</summary>
public sealed class BoundsForm
{
    /// <summary>Made when the form was: the same twice is one row.</summary>
    public Guid Id { get; set; }

    /// <summary>Lowest cut, as typed.</summary>
    public string? LeastCut { get; set; }

    /// <summary>Highest cut, as typed.</summary>
    public string? GreatestCut { get; set; }

    /// <summary>Lowest share that may fail, as typed.</summary>
    public string? LeastFail { get; set; }

    /// <summary>Highest share that may fail, as typed.</summary>
    public string? GreatestFail { get; set; }
}

/// <summary>Ratings in a file.</summary>
public sealed class RatingsFileForm
{
    /// <summary>Made when the form was: the same twice rates once.</summary>
    public Guid Id { get; set; }

    /// <summary>CSV: judge, question, round, percent.</summary>
    public IFormFile? RatingsFile { get; set; }
}

/// <summary>The end of a round.</summary>
public sealed class RoundEndForm
{
    /// <summary>The round that the page was about: 1 or 2.</summary>
    public int Round { get; set; }
}

/// <summary>The adoption of a cut.</summary>
public sealed class AdoptionForm
{
    /// <summary>Made when the form was: the same twice is one adoption.</summary>
    public Guid Id { get; set; }

    /// <summary>Whose cut: <c>Angoff</c> or <c>Hofstee</c>.</summary>
    public string? Method { get; set; }

    /// <summary>The pass mark that the page showed for it: another by now is not adopted unseen.</summary>
    public int? PassPercent { get; set; }

    /// <summary>Why, and by what evidence; 1 to 2,000 characters.</summary>
    public string? Reason { get; set; }
}

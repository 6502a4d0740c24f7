namespace Training.Web.Features.Scoresheets;

/// <summary>Codes of what the start form cannot take, besides what grading refuses.</summary>
public static class ScoresheetFormProblems
{
    /// <summary>The temperature is no whole number. Argument: what was typed.</summary>
    public const string TemperatureUnreadable = "scoresheet-form.temperature-unreadable";

    /// <summary>The day on which the bite plan was checked is missing or no date.</summary>
    public const string BitePlanDayUnreadable = "scoresheet-form.bite-plan-day-unreadable";

    /// <summary>The time of the test call is missing or no time.</summary>
    public const string CallTimeUnreadable = "scoresheet-form.call-time-unreadable";

    /// <summary>A live snake comes only after a pass on the model.</summary>
    public const string ModelFirst = "scoresheet-form.model-first";

    /// <summary>The candidate may not try again yet. Argument: the first day, written out.</summary>
    public const string TooSoon = "scoresheet-form.too-soon";

    /// <summary>The candidate attends another class first. Argument: the day of the last failure, written out.</summary>
    public const string ClassAgain = "scoresheet-form.class-again";

    /// <summary>Another instructor scored the last try, and this one may not know yet what it came to.</summary>
    public const string ScoredByAnother = "scoresheet-form.scored-by-another";

    /// <summary>Another instructor began to score while the form was open: which try it is was not chosen.</summary>
    public const string ScoredMeanwhile = "scoresheet-form.scored-meanwhile";

    /// <summary>The try to score a second time is not there on that subject, or is open to the instructor.</summary>
    public const string NoSuchTry = "scoresheet-form.no-such-try";

    /// <summary>The instructor taught the candidate within two years and gave no reason. Argument: the day, written out.</summary>
    public const string ReasonMissing = "scoresheet-form.reason-missing";

    /// <summary>The reason is too long. Arguments: its length, the greatest length.</summary>
    public const string ReasonTooLong = "scoresheet-form.reason-too-long";

    /// <summary>The instructor's own sheet was set aside on appeal: another scorer repeats it.</summary>
    public const string SetAsideOfTheirs = "scoresheet-form.set-aside-of-theirs";

    /// <summary>The class is not held today. Argument: its day, written out.</summary>
    public const string NotToday = "scoresheet-form.not-today";
}

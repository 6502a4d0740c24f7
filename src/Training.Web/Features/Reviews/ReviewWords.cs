using Microsoft.Extensions.Localization;
using Training.Certification;

namespace Training.Web.Features.Reviews;

/// <summary>Puts causes of reviews in words.</summary>
public static class ReviewWords
{
    /// <summary>What kind of event it was, as the start of a line.</summary>
    public static string Of(this IStringLocalizer<ReviewText> text, ReviewCause cause) => cause switch
    {
        ReviewCause.Bite => text["Bite"],
        ReviewCause.NearMiss => text["NearMiss"],
        ReviewCause.MovedWithoutHandler => text["MovedWithoutHandler"],
        ReviewCause.NewTool => text["NewTool"],
        ReviewCause.NewSpecies => text["NewSpecies"],
        ReviewCause.NewSite => text["NewSite"],
        ReviewCause.GuidanceChanged => text["GuidanceChanged"],
        ReviewCause.ReportedCapability => text["ReportedCapability"],
        ReviewCause.Other => text["OtherCause"],
    };
}

using Microsoft.Extensions.Localization;
using Training.Web.Features.Decisions;
using Training.Web.Features.Scoring;

namespace Training.Web.Features.AuditFolders;

/// <summary>Words of the site's own pages, so that a folder says reasons and marks as they do.</summary>
/// <param name="decisions">Of the pages of decisions.</param>
/// <param name="scoring">Of the pages of scoring.</param>
public sealed class PageWords(IStringLocalizer<DecisionText> decisions, IStringLocalizer<ScoringText> scoring)
{
    /// <summary>Of marks, impressions and outcomes.</summary>
    public IStringLocalizer<ScoringText> Scoring => scoring;

    /// <summary>Of requirements and reasons.</summary>
    /// <param name="titles">Of schemes, quizzes and checklists.</param>
    /// <param name="names">Of people.</param>
    public DecisionWords Decisions(IReadOnlyDictionary<string, string> titles, IReadOnlyDictionary<Guid, string> names) => new(decisions, titles, names);
}

using Microsoft.EntityFrameworkCore;
using Training.Records;

namespace Training.Web.Features.Sittings;

/// <summary>What the page of a result asks the records.</summary>
public static class ResultQueries
{
    /// <summary>The serial of the latest paper whose decision rests on that result, or null where there is none.</summary>
    public static Task<string?> FindSerialRestingOnAsync(this RecordsContext records, Guid resultId, CancellationToken cancellation) =>
        (from evidence in records.Set<DecisionEvidenceRecord>()
         where evidence.SittingResultId == resultId
         join paper in records.Papers on evidence.DecisionId equals paper.DecisionId
         orderby paper.IssuedAt descending
         select paper.Serial).FirstOrDefaultAsync(cancellation);
}

using Training.Courses;
using Training.Records;

namespace Training.Web.Features;

/// <summary>Reads what the records answered as problems for people.</summary>
public static class KeptOutcome
{
    /// <summary>True where it is stored, now or before; otherwise <paramref name="problems"/> receives why not.</summary>
    public static bool IsKept(this Kept kept, ICollection<Problem> problems)
    {
        switch (kept)
        {
            case Kept.Disputed disputed:
                problems.Add(disputed.Problem);
                return false;
            case Kept.Refused refused:
                foreach (var problem in refused.Problems) problems.Add(problem);
                return false;
            default:
                return true;
        }
    }
}

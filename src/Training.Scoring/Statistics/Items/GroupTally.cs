using System.Runtime.InteropServices;

namespace Training.Scoring;

/// <summary>The two groups of a comparison.</summary>
public enum ComparedGroup
{
    /// <summary>The one that is compared with, usually the larger.</summary>
    Reference,

    /// <summary>The one that is asked about.</summary>
    Focal,
}

/// <summary>
/// Takes sittings of two groups, for example in two languages, one at a time, and tells for each question whether those who know as much answer
/// alike. Memory grows with the pool, never with the sittings.
/// </summary>
/// <param name="bands">Into how many bands of equal width the share right of the other questions is cut, at least 1; 1 is in the highest.</param>
/// <remarks>
/// People are matched by the other questions of their sitting, as in <see cref="DrawnTally"/>: by the band of the share right. Narrow bands
/// match better and leave more of them with one group only. A sitting with a single question has nothing to match by and counts for nothing.
/// </remarks>
public sealed class GroupTally(int bands)
{
    private readonly Dictionary<string, Stratum[]> _questions = new(StringComparer.Ordinal);

    /// <summary>Questions that were asked so far, in order.</summary>
    public IReadOnlyList<string> QuestionIds => [.. _questions.Keys.Order(StringComparer.Ordinal)];

    /// <summary>Adds one sitting.</summary>
    /// <param name="group">Whose.</param>
    /// <param name="asked">Every question that was asked, each once.</param>
    public void Add(ComparedGroup group, ReadOnlySpan<DrawnScore> asked)
    {
        if (asked.Length < 2) return;
        var right = 0;
        foreach (var question in asked)
        {
            right += question.IsRight ? 1 : 0;
        }

        foreach (var (id, isRight) in asked)
        {
            ref var strata = ref CollectionsMarshal.GetValueRefOrAddDefault(_questions, id, out _);
            strata ??= new Stratum[bands];
            // In whole numbers: a share just below a border must not be rounded onto it.
            var others = right - (isRight ? 1 : 0);
            var band = Math.Min(bands - 1, (int)((long)others * bands / (asked.Length - 1)));
            strata[band] = Counted(strata[band], group, isRight);
        }
    }

    /// <summary>The strata of one question, the weakest band first; none where it was never asked beside another.</summary>
    public IReadOnlyList<Stratum> Strata(string questionId) => [.. _questions.GetValueOrDefault(questionId) ?? []];

    private static Stratum Counted(Stratum stratum, ComparedGroup group, bool isRight) => (group, isRight) switch
    {
        (ComparedGroup.Reference, true) => stratum with { ReferenceRight = stratum.ReferenceRight + 1 },
        (ComparedGroup.Reference, false) => stratum with { ReferenceWrong = stratum.ReferenceWrong + 1 },
        (ComparedGroup.Focal, true) => stratum with { FocalRight = stratum.FocalRight + 1 },
        (ComparedGroup.Focal, false) => stratum with { FocalWrong = stratum.FocalWrong + 1 },
    };
}

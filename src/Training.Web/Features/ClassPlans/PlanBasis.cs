using Training.Certification;
using Training.Records;

namespace Training.Web.Features.ClassPlans;

/// <summary>What a plan rests on as things stand now, with the names that its words need.</summary>
/// <param name="Problem">What is to be solved.</param>
/// <param name="Names">Of workers and instructors, by id; who was erased is missing.</param>
/// <param name="Sites">The employer's, by name.</param>
/// <param name="Places">Places with a need, by the id that the problem calls them.</param>
public sealed record PlanBasis(
    PlanProblem Problem, IReadOnlyDictionary<Guid, string> Names, IReadOnlyList<Records.Site> Sites, IReadOnlyDictionary<Guid, CoverPlace> Places);

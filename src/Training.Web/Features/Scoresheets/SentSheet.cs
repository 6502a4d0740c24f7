using Training.Courses;
using Training.Scoring;

namespace Training.Web.Features.Scoresheets;

/// <summary>One line of what an instructor sent.</summary>
/// <param name="Id">The sheet's form id.</param>
/// <param name="Candidate">By name.</param>
/// <param name="Subject">On what.</param>
/// <param name="Try">Of the day.</param>
/// <param name="ScoredOn">On the site's calendar.</param>
/// <param name="Outcome">What it came to; null where it does not count until somebody looked.</param>
public sealed record SentSheet(
    Guid Id, string Candidate, Subject Subject, int Try, DateOnly ScoredOn, PracticalOutcome? Outcome);

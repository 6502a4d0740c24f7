using CsCheck;
using Training.Courses;

namespace Training.Certification.Tests.Assignments;

/// <summary>docs/rules.md, "Instructors".</summary>
public sealed class AssignmentsTests
{
    private static readonly DateOnly Day = Cast.On("2026-03-10");
    private static readonly Guid Employer = Cast.Id(500);

    private static readonly InstructorFile Fit = new(
        [Scores(Subject.Model), Scores(Subject.Live), new("handler", Duty.Teach, Subject.Model, Cast.On("2025-01-01"), Cast.On("2026-12-31"))],
        [Language.English], [], [Cast.On("2025-06-01")]);

    private static readonly Assignment.Sheet OnModel = new("handler", Subject.Model, Language.English, Cast.Worker, [Employer]);

    [Fact]
    public void Who_is_competent_stated_so_and_is_free_may_teach_and_score()
    {
        Assert.Empty(Certification.Assignments.Check(Fit, new Assignment.Teaching("handler"), Day));
        Assert.Empty(Certification.Assignments.Check(Fit, new Assignment.Scoring("handler", Employer), Day));
        Assert.Empty(Certification.Assignments.Check(Fit, OnModel, Day));
        Assert.Empty(Certification.Assignments.Check(Fit, OnModel with { Subject = Subject.Live }, Day));
    }

    [Fact]
    public void Without_a_file_nothing_is_allowed_and_nothing_else_is_said() =>
        Assert.Equal([new AssignmentReason.NoFile()], Certification.Assignments.Check(new([], [], [], []), OnModel, Day));

    // The table of docs/rules.md: competence from 1 January 2025 through 31 December 2026.
    [Theory]
    [InlineData("2024-12-31", "not yet")]
    [InlineData("2025-01-01", "")]
    [InlineData("2026-12-31", "")]
    [InlineData("2027-01-01", "over")]
    public void Competence_holds_from_its_first_day_through_its_last(string on, string reason)
    {
        var file = Fit with { StatedOn = [Cast.On(on)] };

        Assert.Equal(
            reason switch
            {
                "not yet" => [new AssignmentReason.NotCompetent(Duty.Score, Subject.Model)],
                "over" => [new AssignmentReason.CompetenceOver(Duty.Score, Subject.Model, Cast.On("2026-12-31"))],
                _ => [],
            },
            Certification.Assignments.Check(file, OnModel, Cast.On(on)));
    }

    [Fact]
    public void Live_needs_competence_live_and_the_reverse()
    {
        var onlyModel = Fit with { Competences = [Scores(Subject.Model)] };
        var onlyLive = Fit with { Competences = [Scores(Subject.Live)] };

        Assert.Equal([new AssignmentReason.NotCompetent(Duty.Score, Subject.Live)], Certification.Assignments.Check(onlyModel, OnModel with { Subject = Subject.Live }, Day));
        Assert.Equal([new AssignmentReason.NotCompetent(Duty.Score, Subject.Model)], Certification.Assignments.Check(onlyLive, OnModel, Day));
        Assert.Empty(Certification.Assignments.Check(onlyLive, new Assignment.Scoring("handler", Employer), Day));
    }

    [Fact]
    public void Teaching_is_not_scoring_and_one_course_is_not_another()
    {
        var onlyTeaches = Fit with { Competences = [Fit.Competences[2]] };

        Assert.Equal([new AssignmentReason.NotCompetent(Duty.Score, null)], Certification.Assignments.Check(onlyTeaches, new Assignment.Scoring("handler", Employer), Day));
        Assert.Equal([new AssignmentReason.NotCompetent(Duty.Teach, null)], Certification.Assignments.Check(Fit, new Assignment.Teaching("handler-refresher"), Day));
    }

    // Stated on 1 June 2025: it counts through 1 June 2026.
    [Theory]
    [InlineData("2025-05-31", "missing")]
    [InlineData("2025-06-01", "")]
    [InlineData("2026-06-01", "")]
    [InlineData("2026-06-02", "over")]
    public void The_statement_is_asked_for_yearly(string on, string reason) =>
        Assert.Equal(
            reason switch
            {
                "missing" => [new AssignmentReason.StatementMissing()],
                "over" => [new AssignmentReason.StatementOver(Cast.On("2026-06-01"))],
                _ => [],
            },
            Certification.Assignments.Check(Fit, OnModel, Cast.On(on)));

    [Theory]
    [InlineData("2026-03-11", null, false)]
    [InlineData("2026-03-10", null, true)]
    [InlineData("2026-01-01", "2026-03-10", true)]
    [InlineData("2026-01-01", "2026-03-09", false)]
    public void A_conflict_stands_from_its_first_day_through_its_last(string from, string? through, bool stands)
    {
        var conflict = new ConflictOfInterest(Cast.Worker, null, Cast.On(from), through is null ? null : Cast.On(through));

        Assert.Equal(
            stands ? [new AssignmentReason.WithCandidate(Cast.On(from))] : [],
            Certification.Assignments.Check(Fit with { Conflicts = [conflict] }, OnModel, Day));
    }

    [Fact]
    public void A_conflict_with_the_employer_binds_the_scorer_and_not_the_teacher()
    {
        var file = Fit with { Conflicts = [new(null, Employer, Cast.On("2026-01-01"), null)] };

        Assert.Equal([new AssignmentReason.WithEmployer(Cast.On("2026-01-01"))], Certification.Assignments.Check(file, OnModel, Day));
        Assert.Equal([new AssignmentReason.WithEmployer(Cast.On("2026-01-01"))], Certification.Assignments.Check(file, new Assignment.Scoring("handler", Employer), Day));
        Assert.Empty(Certification.Assignments.Check(file, OnModel with { EmployerIds = [Cast.Id(501)] }, Day));
        Assert.Empty(Certification.Assignments.Check(file, new Assignment.Teaching("handler"), Day));
    }

    [Fact]
    public void All_reasons_are_given()
    {
        var file = new InstructorFile(
            [Scores(Subject.Live)], [Language.English], [new(Cast.Worker, null, Day, null), new(null, Employer, Day, null)], []);

        Assert.Equal(
            [
                new AssignmentReason.NotCompetent(Duty.Score, Subject.Model), new AssignmentReason.LanguageMissing(Language.Spanish),
                new AssignmentReason.StatementMissing(), new AssignmentReason.WithCandidate(Day), new AssignmentReason.WithEmployer(Day),
            ],
            Certification.Assignments.Check(file, OnModel with { Language = Language.Spanish }, Day));
    }

    [Theory]
    [InlineData("2026-03-09", 0)]
    [InlineData("2026-03-10", 1)]
    [InlineData("2026-05-09", 1)]
    [InlineData("2026-05-10", 0)]
    public void What_ends_within_60_days_is_listed(string through, int listed) =>
        Assert.Equal(listed, Certification.Assignments.EndingSoon(Fit with { Competences = [Scores(Subject.Model) with { Through = Cast.On(through) }] }, Day).Count);

    [Fact]
    public void What_another_row_carries_further_is_not_listed()
    {
        var ending = Scores(Subject.Model) with { Through = Day.AddDays(5) };
        var further = Scores(Subject.Model) with { From = Day, Through = Day.AddDays(400) };

        Assert.Empty(Certification.Assignments.EndingSoon(Fit with { Competences = [ending, further] }, Day));
        Assert.Equal([ending], Certification.Assignments.EndingSoon(Fit with { Competences = [ending, further with { Subject = Subject.Live }] }, Day));
    }

    [Fact]
    public void More_competence_never_makes_a_reason()
    {
        var day = Gen.Int[0, 800].Select(offset => Cast.On("2025-01-01").AddDays(offset));
        var competence = Gen.Select(Gen.Enum<Duty>(), Gen.Enum<Subject>(), day, Gen.Int[0, 400], (duty, subject, from, days) =>
            new Competence("handler", duty, subject, from, from.AddDays(days)));

        Gen.Select(competence.List[1, 5], competence, day).Sample((all, more, on) =>
        {
            var before = Certification.Assignments.Check(Fit with { Competences = all }, OnModel, on);
            var after = Certification.Assignments.Check(Fit with { Competences = [.. all, more] }, OnModel, on);

            Assert.True(after.Count <= before.Count);
        });
    }

    private static Competence Scores(Subject subject) => new("handler", Duty.Score, subject, Cast.On("2025-01-01"), Cast.On("2026-12-31"));
}

using CsCheck;
using Training.Courses;

namespace Training.Scoring.Tests;

public sealed class AskedPoolTests
{
    private static readonly Course Course = TestCourse.Mixed;

    private static SpeciesSheet Sheet(string id, SpeciesGroup group) => new(
        id, group, [], new Fact("F-SP-01", "x", "y", FactStanding.FromMemory), null, [], [], [], new Dictionary<Language, SpeciesWords>());

    private static HashSet<string> Ids(IEnumerable<Question> questions) => questions.Select(question => question.Id).ToHashSet(StringComparer.Ordinal);

    [Fact]
    public void A_checked_course_lacks_nothing() => Assert.Empty(Course.Gaps());

    [Fact]
    public void Without_a_question_everything_that_the_blueprint_asks_is_missing() => Assert.Equal(
        [
            new("meeting", IsCritical: true, 1), new("meeting", IsCritical: false, 3), new("distances", IsCritical: false, 3),
            new("bite", IsCritical: true, 2), new PoolGap("bite", IsCritical: false, 1),
        ],
        Course.Asking(new HashSet<string>()).Gaps());

    [Fact]
    public void Critical_questions_do_not_stand_in_for_others() => Assert.Equal(
        [new PoolGap("bite", IsCritical: false, 1)],
        Course.Asking(Ids(Course.Questions.Where(question => question.Topic != "bite" || question.IsCritical))).Gaps());

    [Fact]
    public void An_id_that_the_course_does_not_have_means_nothing() =>
        Assert.Equal(["bite-7"], Course.Asking(new HashSet<string> { "bite-7", "gone" }).Questions.Select(question => question.Id));

    [Fact]
    public void A_question_about_a_snake_is_asked_only_where_it_lives()
    {
        var coral = Course.Questions[0] with { Snakes = ["coral"] };
        var course = Course with { Questions = [coral, .. Course.Questions.Skip(1)] };

        Assert.DoesNotContain(coral, course.AskedAt(SnakesOfPlace.Of([Sheet("sidewinder", SpeciesGroup.PitViper)])).Questions);
        Assert.Contains(coral, course.AskedAt(SnakesOfPlace.Of([Sheet("sidewinder", SpeciesGroup.PitViper), Sheet("texas-coral", SpeciesGroup.Coral)])).Questions);
        // Silence is no promise that a snake is absent, and a look-alike alone names no venomous snake.
        Assert.Equal(course.Questions, course.AskedAt(SnakesOfPlace.Unknown).Questions);
        Assert.Equal(course.Questions, course.AskedAt(SnakesOfPlace.Of([Sheet("gopher", SpeciesGroup.LookAlike)])).Questions);
    }

    [Fact]
    public void Whatever_was_accepted_and_wherever_snakes_live_a_pool_without_a_gap_can_be_drawn_there() =>
        Gen.Select(Gen.ULong, Gen.Bool.Array[Course.Questions.Count], Gen.Bool.Array[Course.Questions.Count]).Sample((seed, isAsked, isOfCoral) =>
        {
            var course = Course with { Questions = [.. Course.Questions.Select((question, index) => isOfCoral[index] ? question with { Snakes = ["coral"] } : question)] };
            var asked = course.Asking(Ids(course.Questions.Where((_, index) => isAsked[index])));
            if (asked.Gaps().Count > 0) return;

            Assert.NotEmpty(QuizDraw.From(asked.AskedAt(SnakesOfPlace.Of([Sheet("sidewinder", SpeciesGroup.PitViper)])), seed).Questions);
        });

    [Fact]
    public void A_question_about_a_snake_fills_no_gap() => Assert.Equal(
        Course.Asking(new HashSet<string>()).Gaps(),
        (Course with { Questions = [.. Course.Questions.Select(question => question with { Snakes = ["coral"] })] }).Gaps());

    [Fact]
    public void Asking_all_questions_changes_no_draw() => Gen.ULong.Sample(seed => Assert.Equal(
        QuizDraw.From(Course, seed).Questions.Select(drawn => drawn.QuestionId),
        QuizDraw.From(Course.Asking(Ids(Course.Questions)), seed).Questions.Select(drawn => drawn.QuestionId)));

    [Fact]
    public void A_pool_without_a_gap_can_be_drawn_and_draws_only_from_itself_and_one_with_a_gap_cannot() =>
        Gen.Select(Gen.ULong, Gen.Bool.Array[Course.Questions.Count]).Sample((seed, isAsked) =>
        {
            var asked = Course.Asking(Ids(Course.Questions.Where((_, index) => isAsked[index])));

            if (asked.Gaps().Count > 0) Assert.Throws<ArgumentException>(() => QuizDraw.From(asked, seed));
            else Assert.Subset(Ids(asked.Questions).ToHashSet(), QuizDraw.From(asked, seed).Questions.Select(drawn => drawn.QuestionId).ToHashSet());
        });
}

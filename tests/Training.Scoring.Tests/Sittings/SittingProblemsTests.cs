using Training.Courses;

namespace Training.Scoring.Tests;

public sealed class SittingProblemsTests
{
    private static readonly Course Course = TestCourse.Mixed;
    private static readonly Sitting Good = TestSitting.AllRight(Course, seed: 1234567);   // bite-9, meeting-1, distances-5, meeting-3 …

    [Fact]
    public void Another_snapshot_and_another_quiz_are_told_without_the_noise_they_cause()
    {
        var sitting = Good with { Draw = Good.Draw with { CourseHash = "old", QuizId = "other", Questions = [] } };

        Assert.Equal(["sitting.course-mismatch @ ", "sitting.quiz-mismatch @ "], TestSitting.Refusals(Course, sitting));
    }

    [Fact]
    public void Submitted_before_the_start_is_refused()
    {
        var sitting = Good with { SubmittedAt = Good.StartedAt.AddMilliseconds(-1), Answers = [] };

        Assert.Equal(["sitting.submitted-before-start @ SubmittedAt"], TestSitting.Refusals(Course, sitting));
    }

    [Fact]
    public void Submitted_at_the_start_is_possible() =>
        Assert.False(TestSitting.Grade(Course, Good with { SubmittedAt = Good.StartedAt, Answers = [] }).IsPassed);

    [Fact]
    public void A_question_outside_the_pool_is_refused() => Assert.Equal(
        ["sitting.question-unknown @ question nowhere", "sitting.topic-count-mismatch @ topic bite", "sitting.critical-count-mismatch @ topic bite", "sitting.answer-not-drawn @ question bite-9"],
        TestSitting.Refusals(Course, Redrawn(drawn => drawn with { QuestionId = "nowhere" })));

    [Fact]
    public void Another_version_of_a_question_is_refused() => Assert.Equal(
        ["sitting.question-version-mismatch @ question bite-9"],
        TestSitting.Refusals(Course, Redrawn(drawn => drawn with { QuestionVersion = "older" })));

    [Theory]
    [InlineData("a b c")]
    [InlineData("a b c d d")]
    [InlineData("a b c e")]
    [InlineData("")]
    public void Options_other_than_the_questions_own_are_refused(string options) => Assert.Equal(
        ["sitting.options-mismatch @ question bite-9"],
        TestSitting.Refusals(Course, Redrawn(drawn => drawn with { OptionIds = options.Split(' ', StringSplitOptions.RemoveEmptyEntries) })));

    [Fact]
    public void A_question_drawn_twice_is_refused()
    {
        var sitting = Good with { Draw = Good.Draw with { Questions = [.. Good.Draw.Questions, Good.Draw.Questions[0]] } };

        Assert.Equal(
            ["sitting.question-drawn-twice @ question bite-9", "sitting.topic-count-mismatch @ topic bite", "sitting.critical-count-mismatch @ topic bite"],
            TestSitting.Refusals(Course, sitting));
    }

    [Fact]
    public void Too_few_questions_of_a_topic_are_refused()
    {
        var sitting = Good with { Draw = Good.Draw with { Questions = [.. Good.Draw.Questions.Where(drawn => drawn.QuestionId != "distances-5")] } };

        Assert.Equal(
            ["sitting.topic-count-mismatch @ topic distances", "sitting.answer-not-drawn @ question distances-5"],
            TestSitting.Refusals(Course, sitting));
    }

    [Fact]
    public void A_plain_question_in_the_place_of_a_critical_one_is_refused()
    {
        var sitting = Redrawn(_ => new("bite-1", "version-of-bite-1", ["a", "b", "c", "d"]));

        Assert.Equal(
            ["sitting.critical-count-mismatch @ topic bite", "sitting.answer-not-drawn @ question bite-9"],
            TestSitting.Refusals(Course, sitting));
    }

    [Fact]
    public void A_question_of_a_topic_that_the_blueprint_leaves_out_is_refused()
    {
        var course = Course with { Quiz = Course.Quiz with { Blueprint = [.. Course.Quiz.Blueprint.Where(row => row.Topic != "distances")] } };

        Assert.Equal(["sitting.topic-count-mismatch @ topic distances"], TestSitting.Refusals(course, Good));
    }

    [Fact]
    public void An_answer_to_a_question_that_was_not_drawn_is_refused() => Assert.Equal(
        ["sitting.answer-not-drawn @ question bite-1"],
        TestSitting.Refusals(Course, With(Good.Answers[0] with { QuestionId = "bite-1" })));

    [Fact]
    public void Two_answers_to_one_question_are_refused_even_where_they_agree() => Assert.Equal(
        ["sitting.answered-twice @ question bite-9"],
        TestSitting.Refusals(Course, Good with { Answers = [.. Good.Answers, Good.Answers[0]] }));

    [Theory]
    [InlineData(-1, true)]
    [InlineData(0, false)]
    [InlineData(3_600_000, false)]
    [InlineData(3_600_001, true)]
    public void An_answer_lies_between_start_and_submission_both_included(int milliseconds, bool isRefused)
    {
        var sitting = With(Good.Answers[0] with { SavedAt = Good.StartedAt.AddMilliseconds(milliseconds) });

        if (isRefused) Assert.Equal(["sitting.answer-outside-sitting @ question bite-9"], TestSitting.Refusals(Course, sitting));
        else Assert.True(TestSitting.Grade(Course, sitting).IsPassed);
    }

    public static TheoryData<string, string, string?, string> Question_options_number_and_codes => new()
    {
        { "bite-9", "", null, "answer-shape" },                 // one answer: exactly one option
        { "bite-9", "a b", null, "answer-shape" },
        { "bite-9", "", "130", "answer-shape" },
        { "bite-9", "b", "130", "answer-shape" },
        { "bite-9", "z", null, "option-unknown" },
        { "bite-9", "b b", null, "answer-shape option-repeated" },
        { "meeting-6", "a c", "2", "answer-shape" },            // several answers: options only
        { "meeting-6", "a z", null, "option-unknown" },
        { "meeting-6", "a c a", null, "option-repeated" },
        { "meeting-3", "a b", null, "answer-shape" },           // order: all options, each once
        { "meeting-3", "", null, "answer-shape" },
        { "meeting-3", "a b b", null, "option-repeated" },
        { "meeting-3", "a b z", null, "option-unknown" },
        { "meeting-3", "c a b", "1", "answer-shape" },
        { "bite-8", "", null, "answer-shape" },                 // a number: a number only
        { "bite-8", "a", "130", "answer-shape" },
        { "bite-8", "a", null, "answer-shape" },
        { "bite-9", "B", null, "option-unknown" },              // ids are compared exactly
    };

    [Theory, MemberData(nameof(Question_options_number_and_codes))]
    public void An_answer_that_the_question_cannot_have_is_refused(string questionId, string options, string? number, string codes)
    {
        var answer = new Answer(
            questionId,
            options.Split(' ', StringSplitOptions.RemoveEmptyEntries),
            number is null ? null : decimal.Parse(number),
            Language.Spanish,
            TestSitting.Start.AddMinutes(1));

        var expected = codes.Split(' ').Select(code => $"sitting.{code} @ question {questionId}");
        Assert.Equal(expected, TestSitting.Refusals(Course, With(answer)), StringComparer.Ordinal);
    }

    public static TheoryData<string, string, string?, string> Answers_to_pairs_and_spots_and_codes => new()
    {
        { "match-6", "a=q b=p", null, "answer-shape" },                     // pairs: one for each option
        { "match-6", "", null, "answer-shape" },
        { "match-6", "a=q b=p c=s c=r", null, "answer-shape option-repeated" },
        { "match-6", "a=q b=q c=s", null, "option-repeated" },              // no match twice
        { "match-6", "a=q a=p c=s", null, "option-repeated" },
        { "match-6", "a=q b=p c=z", null, "option-unknown" },
        { "match-6", "a=q b=p d=s", null, "option-unknown" },
        { "match-6", "a=q b=p s=c", null, "option-unknown" },               // from the left to the right, not back
        { "match-6", "a=q b=p c=a", null, "option-unknown option-repeated" },
        { "match-6", "a b c", null, "option-unknown option-unknown option-unknown" },
        { "match-6", "q p s", null, "option-unknown option-unknown option-unknown" },
        { "match-6", "a=q b=p c=s", "1", "answer-shape" },
        { "spot-3", "", null, "answer-shape" },                             // a spot: one region
        { "spot-3", "a b", null, "answer-shape" },
        { "spot-3", "z", null, "option-unknown" },
        { "spot-3", "b", "1", "answer-shape" },
    };

    [Theory, MemberData(nameof(Answers_to_pairs_and_spots_and_codes))]
    public void An_answer_that_pairs_or_a_spot_cannot_have_is_refused(string questionId, string options, string? number, string codes)
    {
        var sitting = TestSitting.AllRight(TestCourse.Marked, seed: 1234567);   // spot-3, match-6 …
        var answer = new Answer(
            questionId,
            options.Split(' ', StringSplitOptions.RemoveEmptyEntries),
            number is null ? null : decimal.Parse(number),
            Language.English,
            TestSitting.Start.AddMinutes(1));

        var refusals = TestSitting.Refusals(
            TestCourse.Marked, sitting with { Answers = [.. sitting.Answers.Select(own => own.QuestionId == questionId ? answer : own)] });

        Assert.Equal(codes.Split(' ').Select(code => $"sitting.{code} @ question {questionId}"), refusals, StringComparer.Ordinal);
    }

    [Theory]
    [InlineData("a b c p q r")]
    [InlineData("a b p q r s c")]
    [InlineData("p q r s a b c")]
    [InlineData("a b c p q r z")]
    [InlineData("a b c")]
    public void Pairs_shown_with_other_matches_or_mixed_with_them_are_refused(string options)
    {
        var sitting = TestSitting.AllRight(TestCourse.Marked, seed: 1234567);
        var redrawn = sitting.Draw.Questions.Select(drawn => drawn.QuestionId == "match-6" ? drawn with { OptionIds = options.Split(' ') } : drawn);

        Assert.Equal(
            ["sitting.options-mismatch @ question match-6"],
            TestSitting.Refusals(TestCourse.Marked, sitting with { Draw = sitting.Draw with { Questions = [.. redrawn] } }));
    }

    [Fact]
    public void Everything_is_told_at_once()
    {
        var sitting = Redrawn(drawn => drawn with { QuestionVersion = "older" });
        sitting = sitting with { Answers = [.. sitting.Answers, Good.Answers[1] with { QuestionId = "bite-1" }, Good.Answers[1]] };

        Assert.Equal(
            [
                "sitting.question-version-mismatch @ question bite-9",
                "sitting.answered-twice @ question meeting-1",
                "sitting.answer-not-drawn @ question bite-1",
            ],
            TestSitting.Refusals(Course, sitting));
    }

    [Fact]
    public void Earlier_problems_of_the_caller_neither_refuse_nor_vanish()
    {
        var problems = new List<Problem> { new("other.thing", new Place()) };

        Assert.NotNull(SittingGrader.Grade(Course, Good, problems));
        Assert.Single(problems);
    }

    [Fact]
    public void Arguments_name_what_was_found_and_what_was_asked()
    {
        var problems = new List<Problem>();
        SittingGrader.Grade(Course, Good with { Draw = Good.Draw with { Questions = [.. Good.Draw.Questions.Skip(1)] }, Answers = [] }, problems);

        Assert.Equal(["bite", "2", "3"], problems[0].Arguments);
        Assert.Equal(["bite", "1", "2"], problems[1].Arguments);
    }

    private static Sitting Redrawn(Func<DrawnQuestion, DrawnQuestion> change) =>
        Good with { Draw = Good.Draw with { Questions = [change(Good.Draw.Questions[0]), .. Good.Draw.Questions.Skip(1)] } };

    /// <summary>The good sitting with this answer instead of its own to the question, or instead of its first.</summary>
    private static Sitting With(Answer answer)
    {
        var replaced = Good.Answers.FirstOrDefault(own => own.QuestionId == answer.QuestionId) ?? Good.Answers[0];
        return Good with { Answers = [.. Good.Answers.Select(own => own == replaced ? answer : own)] };
    }
}

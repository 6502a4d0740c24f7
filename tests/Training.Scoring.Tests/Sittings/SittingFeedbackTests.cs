using Training.Courses;

namespace Training.Scoring.Tests;

public sealed class SittingFeedbackTests
{
    private static readonly Course Course = TestCourse.Timed;

    [Fact]
    public void Nothing_is_told_where_all_was_right() =>
        Assert.Empty(SittingFeedback.For(Course, TestSitting.Grade(Course, TestSitting.AllRight(Course))));

    [Fact]
    public void Each_missed_question_names_topic_and_passage_in_the_order_shown()
    {
        var sitting = TestSitting.Of(Course, 1234567, question => question.Id switch
        {
            "bite-9" => Behaviour.Wrong,
            "meeting-3" => Behaviour.Blank,
            "distances-2" => Behaviour.Late,
            _ => Behaviour.Right,
        });

        Assert.Equal(
            [
                new("bite-9", "bite", new("bite", "about-bite-9"), Mark.Wrong, IsCritical: true),
                new("meeting-3", "meeting", new("meeting", "about-meeting-3"), Mark.Blank, IsCritical: false),
                new("distances-2", "distances", new("distances", "about-distances-2"), Mark.Late, IsCritical: false),
            ],
            SittingFeedback.For(Course, TestSitting.Grade(Course, sitting)));
    }

    [Fact]
    public void No_key_can_be_reached_from_it()
    {
        var reachable = typeof(SittingFeedback).GetProperties().Select(property => property.PropertyType);

        Assert.Equal([typeof(string), typeof(string), typeof(Passage), typeof(Mark), typeof(bool)], reachable);
    }

    [Fact]
    public void A_result_of_another_snapshot_is_a_broken_promise()
    {
        var result = TestSitting.Grade(Course, TestSitting.AllRight(Course));

        Assert.Throws<ArgumentException>(() => SittingFeedback.For(Course with { Hash = "newer" }, result));
    }
}

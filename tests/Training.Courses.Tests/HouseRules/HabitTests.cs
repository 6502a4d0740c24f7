namespace Training.Courses.Tests.HouseRules;

/// <summary>A candidate who knows nothing and ticks the longest answer must not pass by it.</summary>
public sealed class HabitTests
{
    [Theory, InlineData(6, true), InlineData(7, false)]
    public void The_longest_answer_is_right_in_at_most_half_of_twelve_questions(int longest, bool isFine)
    {
        // The fixture has one such question of its own, whose longest answer is wrong.
        var reading = ReadWith(own: 11, longest);

        Assert.Equal(isFine ? [] : [CourseProblems.LongestRight, CourseProblems.LongestRight], reading.Problems.Select(problem => problem.Code));
    }

    [Fact]
    public void In_eleven_questions_a_habit_cannot_be_told_from_chance() => Assert.Empty(ReadWith(own: 10, longest: 10).Problems);

    [Fact]
    public void The_same_question_twice_is_found_in_each_language()
    {
        var texts = CourseFixture.Texts();
        texts["alpha/questions.yaml"] += Structure("twin", "back");
        foreach (var tag in new[] { "en", "es" })
        {
            texts[$"alpha/{tag}/questions.md"] += "\n## twin\n\nA snake makes **no** sound, <guidance:stand-off-us-2024> away.\n\n- `back` Step back\n- `wait` Wait\n- `prod` Touch it with a stick\n\n> Again.\n";
        }

        var problems = CourseReader.Read(new CourseFiles(texts)).Problems;

        Assert.Equal([CourseProblems.QuestionSame, CourseProblems.QuestionSame], problems.Select(problem => problem.Code));
        Assert.All(problems, problem => Assert.Equal(("question twin", "silent"), (problem.Place.Part, problem.Arguments[0])));
    }

    private static CourseReading ReadWith(int own, int longest)
    {
        var texts = CourseFixture.Texts();
        for (var i = 0; i < own; i++)
        {
            var isLongest = i < longest;
            texts["alpha/questions.yaml"] += Structure($"more-{i}", "back");
            foreach (var tag in new[] { "en", "es" })
            {
                texts[$"alpha/{tag}/questions.md"] +=
                    $"\n## more-{i}\n\nQuestion {i}?\n\n- `back` {(isLongest ? "A long step back" : "Back")}\n- `wait` Wait here\n- `prod` Touch\n\n> So.\n";
            }
        }

        return CourseReader.Read(new CourseFiles(texts));
    }

    private static string Structure(string id, string right) =>
        $"- id: {id}\n  type: one\n  topic: near\n  objective: stop\n  difficulty: easy\n  passage: first#stop\n  fact: F-AID-02\n  options: [back, wait, prod]\n  right: {right}\n";
}

namespace Training.Scoring;

/// <summary>Why a sitting is refused. Nothing of a refused sitting is graded.</summary>
public static class SittingProblems
{
    /// <summary>Drawn from another snapshot than the course it is graded with. Arguments: hash of the draw, hash of the course.</summary>
    public const string CourseDiffers = "sitting.course-differs";

    /// <summary>Drawn for another quiz. Arguments: quiz of the draw, quiz of the course.</summary>
    public const string QuizDiffers = "sitting.quiz-differs";

    /// <summary>A drawn question is not in the course's pool.</summary>
    public const string DrawnQuestionUnknown = "sitting.drawn-question-unknown";

    /// <summary>A drawn question has another version in the course.</summary>
    public const string QuestionVersionDiffers = "sitting.question-version-differs";

    /// <summary>A drawn question does not show the question's options, each once.</summary>
    public const string DrawnOptionsDiffer = "sitting.drawn-options-differ";

    /// <summary>The draw does not have what the blueprint asks of a topic. Arguments: topic.</summary>
    public const string DrawOffBlueprint = "sitting.draw-off-blueprint";

    /// <summary>An answer to a question that was not drawn.</summary>
    public const string AnswerNotDrawn = "sitting.answer-not-drawn";

    /// <summary>Two answers to one question.</summary>
    public const string AnswerTwice = "sitting.answer-twice";

    /// <summary>An option that the question does not have. Arguments: option.</summary>
    public const string OptionUnknown = "sitting.option-unknown";

    /// <summary>The same option twice in one answer. Arguments: option.</summary>
    public const string OptionTwice = "sitting.option-twice";

    /// <summary>An answer of a form that the question's type does not take.</summary>
    public const string AnswerShape = "sitting.answer-shape";

    /// <summary>Submitted before it was started.</summary>
    public const string SubmittedBeforeStart = "sitting.submitted-before-start";
}

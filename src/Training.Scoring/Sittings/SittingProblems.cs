namespace Training.Scoring;

/// <summary>Why a sitting is refused: it is not what this course could have shown. A wrong answer is no problem, it is wrong.</summary>
public static class SittingProblems
{
    /// <summary>The draw comes from another snapshot. Arguments: the draw's hash, the course's hash.</summary>
    public const string CourseMismatch = "sitting.course-mismatch";

    /// <summary>The draw is of another quiz. Arguments: the draw's quiz, the course's quiz.</summary>
    public const string QuizMismatch = "sitting.quiz-mismatch";

    /// <summary>The sitting was submitted before it was started.</summary>
    public const string SubmittedBeforeStart = "sitting.submitted-before-start";

    /// <summary>A drawn question is not in the pool. Argument: its id.</summary>
    public const string QuestionUnknown = "sitting.question-unknown";

    /// <summary>A question was drawn in another version. Arguments: its id, the drawn version, the course's version.</summary>
    public const string QuestionVersionMismatch = "sitting.question-version-mismatch";

    /// <summary>A question was drawn more than once. Argument: its id.</summary>
    public const string QuestionDrawnTwice = "sitting.question-drawn-twice";

    /// <summary>The options shown, and the matches after them, are not the question's, each once. Argument: the question's id.</summary>
    public const string OptionsMismatch = "sitting.options-mismatch";

    /// <summary>The draw has another number of a topic's questions than the blueprint. Arguments: topic, drawn, asked.</summary>
    public const string TopicCountMismatch = "sitting.topic-count-mismatch";

    /// <summary>The draw has another number of a topic's critical questions than the blueprint. Arguments: topic, drawn, asked.</summary>
    public const string CriticalCountMismatch = "sitting.critical-count-mismatch";

    /// <summary>A question that was not drawn was answered. Argument: its id.</summary>
    public const string AnswerNotDrawn = "sitting.answer-not-drawn";

    /// <summary>A question was answered more than once. Argument: its id.</summary>
    public const string AnsweredTwice = "sitting.answered-twice";

    /// <summary>An answer was saved before the start or after the submission. Argument: the question's id.</summary>
    public const string AnswerOutsideSitting = "sitting.answer-outside-sitting";

    /// <summary>An answer is not of the question's type: a number to options, options to a number, not one to one answer or a spot, not all to order or pairs. Argument: the question's id.</summary>
    public const string AnswerShape = "sitting.answer-shape";

    /// <summary>An answer chooses an option that the question does not have. Arguments: the question's id, the option.</summary>
    public const string OptionUnknown = "sitting.option-unknown";

    /// <summary>An answer names an option or a match more than once. Arguments: the question's id, the option.</summary>
    public const string OptionRepeated = "sitting.option-repeated";
}

namespace Training.Courses;

/// <summary>Codes of everything that reading courses can find. The arguments of each stand in its comment, in their order.</summary>
public static class CourseProblems
{
    /// <summary>A file that the course needs is not there.</summary>
    public const string FileMissing = "course.file-missing";

    /// <summary>A file whose structure is not there: words without a course, a module that course.yaml does not name.</summary>
    public const string FileUnexpected = "course.file-unexpected";

    /// <summary>A file is too large. Arguments: most characters, where known.</summary>
    public const string FileTooLarge = "course.file-too-large";

    /// <summary>Too many files. Arguments: most files.</summary>
    public const string FilesTooMany = "course.files-too-many";

    /// <summary>A file is not UTF-8 text.</summary>
    public const string FileNotText = "course.file-not-text";

    /// <summary>A file could not be read from the disk.</summary>
    public const string FileUnreadable = "course.file-unreadable";

    /// <summary>The YAML cannot be parsed. Arguments: column.</summary>
    public const string YamlSyntax = "course.yaml-syntax";

    /// <summary>YAML that this format does not use: anchors, aliases, tags, several documents, deep nesting.</summary>
    public const string YamlFeature = "course.yaml-feature";

    /// <summary>The YAML has another shape here. Arguments: field or nothing, the shape expected (text, list, map).</summary>
    public const string YamlShape = "course.yaml-shape";

    /// <summary>A field that the format does not have. Arguments: field.</summary>
    public const string FieldUnknown = "course.field-unknown";

    /// <summary>A field is missing or empty. Arguments: field.</summary>
    public const string FieldMissing = "course.field-missing";

    /// <summary>A field stands twice. Arguments: field.</summary>
    public const string FieldTwice = "course.field-twice";

    /// <summary>A value is none of those that the field can have. Arguments: field, value, possible values.</summary>
    public const string FieldValue = "course.field-value";

    /// <summary>A number is missing its form or lies outside its range. Arguments: field, value, least, most.</summary>
    public const string NumberRange = "course.number-range";

    /// <summary>A duration is not PnD, PnM or PnY. Arguments: field, value.</summary>
    public const string DurationForm = "course.duration-form";

    /// <summary>A date is not yyyy-MM-dd. Arguments: field, value.</summary>
    public const string DateForm = "course.date-form";

    /// <summary>A date does not lie after another. Arguments: later field, earlier field.</summary>
    public const string DateOrder = "course.date-order";

    /// <summary>An id has another form than letters, digits and hyphens. Arguments: id.</summary>
    public const string IdForm = "course.id-form";

    /// <summary>An id stands twice. Arguments: id.</summary>
    public const string IdTwice = "course.id-twice";

    /// <summary>Another course uses the id of this quiz or checklist. Arguments: id, the other file.</summary>
    public const string IdElsewhere = "course.id-elsewhere";

    /// <summary>No such topic in the course. Arguments: topic.</summary>
    public const string TopicUnknown = "course.topic-unknown";

    /// <summary>No such objective in the course. Arguments: objective.</summary>
    public const string ObjectiveUnknown = "course.objective-unknown";

    /// <summary>No question and no step asks for this objective. Arguments: objective.</summary>
    public const string ObjectiveUnassessed = "course.objective-unassessed";

    /// <summary>No module has this section. Arguments: passage.</summary>
    public const string PassageUnknown = "course.passage-unknown";

    /// <summary>No such fact. Arguments: fact.</summary>
    public const string FactUnknown = "course.fact-unknown";

    /// <summary>No such guidance entry. Arguments: entry.</summary>
    public const string GuidanceUnknown = "course.guidance-unknown";

    /// <summary>A guidance entry that a newer one replaced is still named. Arguments: entry, successor.</summary>
    public const string GuidanceSuperseded = "course.guidance-superseded";

    /// <summary>The successor of a guidance entry does not lead to one in force. Arguments: entry, successor.</summary>
    public const string GuidanceSuccessor = "course.guidance-successor";

    /// <summary>A guidance value that is not a number has no words. Arguments: value, language tag.</summary>
    public const string GuidanceWordsMissing = "course.guidance-words-missing";

    /// <summary>No such option in the question. Arguments: option.</summary>
    public const string OptionUnknown = "course.option-unknown";

    /// <summary>Too few or too many options. Arguments: least (0: there must be none).</summary>
    public const string OptionCount = "course.option-count";

    /// <summary>No such quiz in any course. Arguments: quiz.</summary>
    public const string QuizUnknown = "course.quiz-unknown";

    /// <summary>No such checklist in any course. Arguments: checklist.</summary>
    public const string ChecklistUnknown = "course.checklist-unknown";

    /// <summary>No such scheme in any course. Arguments: scheme.</summary>
    public const string SchemeUnknown = "course.scheme-unknown";

    /// <summary>A scheme asks for itself. Arguments: scheme.</summary>
    public const string HoldsItself = "course.holds-itself";

    /// <summary>A requirement names none or several of quiz, checklist and holds, or practised in a grant.</summary>
    public const string RequirementForm = "course.requirement-form";

    /// <summary>Practice says on what it is counted: it is always the model.</summary>
    public const string PracticeOnModelOnly = "course.practice-on-model-only";

    /// <summary>A checklist is asked for on something that it is not made for. Arguments: checklist, subject.</summary>
    public const string SubjectNotOffered = "course.subject-not-offered";

    /// <summary>A live practical is required without the same checklist on the model. Arguments: checklist.</summary>
    public const string LiveWithoutModel = "course.live-without-model";

    /// <summary>A certification does not keep teaching, scoring and deciding apart.</summary>
    public const string SeparationMissing = "course.separation-missing";

    /// <summary>What a transition takes over from is no mark of rules. Arguments: what was written.</summary>
    public const string TransitionMark = "course.transition-mark";

    /// <summary>The cut of a panel does not lead to the pass mark. Arguments: mean, the whole percent that it leads to, pass.</summary>
    public const string CutPass = "course.cut-pass";

    /// <summary>A cut does not name a panel. Arguments: what was written.</summary>
    public const string CutPanel = "course.cut-panel";

    /// <summary>A question has no key.</summary>
    public const string KeyMissing = "course.key-missing";

    /// <summary>A question with one answer has several keys. Arguments: how many.</summary>
    public const string KeyNotOne = "course.key-not-one";

    /// <summary>The key of an order does not hold every option exactly once.</summary>
    public const string KeyNotOrder = "course.key-not-order";

    /// <summary>Fewer matches than options. Arguments: matches, options.</summary>
    public const string MatchCount = "course.match-count";

    /// <summary>A match is right for two options. Arguments: match.</summary>
    public const string MatchTwice = "course.match-twice";

    /// <summary>The words of pairs are not two lists, first the options and then the matches.</summary>
    public const string MatchLists = "course.match-lists";

    /// <summary>The words of a match are too long for a list to choose from. Arguments: match, characters, most.</summary>
    public const string MatchTooLong = "course.match-too-long";

    /// <summary>A region has no shape, several, or one that cannot be drawn. Arguments: region.</summary>
    public const string RegionForm = "course.region-form";

    /// <summary>A region lies outside the drawing. Arguments: region, view box.</summary>
    public const string RegionOutside = "course.region-outside";

    /// <summary>The boxes round two regions overlap. Arguments: region, other region.</summary>
    public const string RegionOverlap = "course.region-overlap";

    /// <summary>A number lies outside its region, at the edge of the drawing or on another number. Arguments: region.</summary>
    public const string RegionNumber = "course.region-number";

    /// <summary>A figure to mark a spot on has letters or numbers of its own, or no view box. Arguments: the path.</summary>
    public const string SpotFigure = "course.spot-figure";

    /// <summary>The words of a question do not show the figure to mark a spot on exactly once. Arguments: the path.</summary>
    public const string SpotFigureShown = "course.spot-figure-shown";

    /// <summary>The blueprint asks for more questions than the topic has. Arguments: topic, asked, there.</summary>
    public const string BlueprintTotal = "course.blueprint-total";

    /// <summary>The blueprint asks for more critical questions than the topic has. Arguments: topic, asked, there.</summary>
    public const string BlueprintCritical = "course.blueprint-critical";

    /// <summary>The blueprint asks for more questions that are not critical than the topic has. Arguments: topic, asked, there.</summary>
    public const string BlueprintOther = "course.blueprint-other";

    /// <summary>Structure without words in this language. Arguments: id.</summary>
    public const string WordsMissing = "course.words-missing";

    /// <summary>Words without structure. Arguments: id.</summary>
    public const string WordsUnexpected = "course.words-unexpected";

    /// <summary>Words for the same id stand twice. Arguments: id.</summary>
    public const string WordsTwice = "course.words-twice";

    /// <summary>Something stands where the layout of the file has no place for it.</summary>
    public const string WordsLayout = "course.words-layout";

    /// <summary>A title is missing.</summary>
    public const string TitleMissing = "course.title-missing";

    /// <summary>A question has no explanation.</summary>
    public const string ExplanationMissing = "course.explanation-missing";

    /// <summary>A module has no caution, or an empty one.</summary>
    public const string CautionMissing = "course.caution-missing";

    /// <summary>The caution is not the last section of a module.</summary>
    public const string CautionNotLast = "course.caution-not-last";

    /// <summary>A critical step has no reason.</summary>
    public const string ReasonMissing = "course.reason-missing";

    /// <summary>A step that is not critical has a reason.</summary>
    public const string ReasonUnexpected = "course.reason-unexpected";

    /// <summary>A checklist of handling has a time limit.</summary>
    public const string HandlingTimed = "course.handling-timed";

    /// <summary>A drill has a time limit and no reason why time is the skill.</summary>
    public const string TimeReasonMissing = "course.time-reason-missing";

    /// <summary>A checklist without a time limit has a reason for one.</summary>
    public const string TimeReasonUnexpected = "course.time-reason-unexpected";

    /// <summary>What was shown is too long for the paper. Arguments: characters, most.</summary>
    public const string ShownTooLong = "course.shown-too-long";

    /// <summary>A link leads nowhere. Arguments: the link.</summary>
    public const string LinkBroken = "course.link-broken";

    /// <summary>A link of a kind that no course may carry. Arguments: the link.</summary>
    public const string LinkUnsafe = "course.link-unsafe";

    /// <summary>No such figure. Arguments: the path.</summary>
    public const string FigureMissing = "course.figure-missing";

    /// <summary>A figure is not well-formed SVG. Arguments: column.</summary>
    public const string FigureSyntax = "course.figure-syntax";

    /// <summary>A figure holds something that is not on the list of safe elements and attributes. Arguments: what.</summary>
    public const string FigureUnsafe = "course.figure-unsafe";

    /// <summary>A figure shares its paragraph with text.</summary>
    public const string FigureNotAlone = "course.figure-not-alone";

    /// <summary>A figure has no name or no description for somebody who cannot see it.</summary>
    public const string FigureWordsMissing = "course.figure-words-missing";

    /// <summary>No page shows this figure.</summary>
    public const string FigureUnused = "course.figure-unused";

    /// <summary>A fact is cited where a page has no foot. Arguments: fact.</summary>
    public const string NoteOutsideModule = "course.note-outside-module";

    /// <summary>One language has a section, figure, fact or value that the other has not. Arguments: what, language tag that lacks it.</summary>
    public const string LanguagesDiffer = "course.languages-differ";

    /// <summary>Markdown is nested too deeply.</summary>
    public const string MarkdownTooDeep = "course.markdown-too-deep";

    /// <summary>A passage between colons does not say "only" and for which snakes, does not end, or does not stand at the top of a module.</summary>
    public const string PassageForm = "course.passage-form";

    /// <summary>No such block. Arguments: block, possible names.</summary>
    public const string BlockUnknown = "course.block-unknown";

    /// <summary>A block does not stand in a paragraph of its own at the top of a module. Arguments: block.</summary>
    public const string BlockPlace = "course.block-place";

    /// <summary>No such snake group and no such species sheet. Arguments: what was named.</summary>
    public const string SnakeUnknown = "course.snake-unknown";

    /// <summary>A module does not say which objectives it teaches.</summary>
    public const string ModuleWithoutObjective = "course.module-without-objective";

    /// <summary>No module teaches an objective. Arguments: objective.</summary>
    public const string ObjectiveUntaught = "course.objective-untaught";

    /// <summary>The module that a question sends back to does not teach its objective. Arguments: module, objective.</summary>
    public const string PassageOtherObjective = "course.passage-other-objective";

    /// <summary>An option stands for all or none of the others. Arguments: option, language tag.</summary>
    public const string OptionCatchAll = "course.option-catch-all";

    /// <summary>A question asks for the one answer that is not so. Arguments: language tag.</summary>
    public const string StemNegative = "course.stem-negative";

    /// <summary>The right answer gives itself away by its length. Arguments: option, language tag.</summary>
    public const string OptionLength = "course.option-length";

    /// <summary>Two questions ask the same. Arguments: the other question, language tag.</summary>
    public const string QuestionSame = "course.question-same";

    /// <summary>In too many questions the longest answer is the right one. Arguments: how many, of how many, language tag.</summary>
    public const string LongestRight = "course.longest-right";

    /// <summary>The original changed since its translation was last compared with it. Arguments: mark of the original now, language tag of the translation.</summary>
    public const string TranslationOlder = "course.translation-older";

    /// <summary>Nobody said that a part was compared with its original. Arguments: mark of the original now, language tag of the translation.</summary>
    public const string TranslationUnmarked = "course.translation-unmarked";

    /// <summary>Both languages call themselves the translation.</summary>
    public const string TranslationBoth = "course.translation-both";
}

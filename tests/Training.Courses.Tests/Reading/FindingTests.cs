namespace Training.Courses.Tests.Reading;

/// <summary>Each finding on its own: one change to a good folder, one finding with its code, file, line and part.</summary>
public sealed class FindingTests
{
    private const string NoLine = "";

    /// <summary>File, text replaced, its replacement; code; file of the finding; text on its line (none: the whole file); part.</summary>
    public static TheoryData<string, string, string, string, string, string, string?> Findings => new()
    {
        // The YAML itself.
        { "alpha/course.yaml", "  grace: P30D", "  grace: P30D\n  colour: red", CourseProblems.FieldUnknown, "alpha/course.yaml", "colour", "scheme" },
        { "alpha/course.yaml", "  grace: P30D\n", "", CourseProblems.FieldMissing, "alpha/course.yaml", "  kind:", "scheme" },
        { "alpha/course.yaml", "  grace: P30D", "  grace:", CourseProblems.FieldMissing, "alpha/course.yaml", "grace:", "scheme" },
        { "alpha/course.yaml", "  grace: P30D", "  grace: P30D\n  grace: P31D", CourseProblems.FieldTwice, "alpha/course.yaml", "P31D", "scheme" },
        { "alpha/course.yaml", "topics: [near, far]", "topics: [near, far", CourseProblems.YamlSyntax, "alpha/course.yaml", "topics:", null },
        { "alpha/course.yaml", "topics: [near, far]", "topics: &all [near, far]", CourseProblems.YamlFeature, "alpha/course.yaml", "&all", null },
        { "alpha/questions.yaml", "", "one: two\n", CourseProblems.YamlShape, "alpha/questions.yaml", "one:", null },
        { "alpha/questions.yaml", "options: [back, wait, prod]", "options: [back, wait, prod, back]", CourseProblems.IdTwice, "alpha/questions.yaml", "prod, back]", "question silent" },
        { "alpha/questions.yaml", "difficulty: easy", "difficulty: fiendish", CourseProblems.FieldValue, "alpha/questions.yaml", "fiendish", "question silent" },
        { "alpha/questions.yaml", "critical: true", "critical: perhaps", CourseProblems.FieldValue, "alpha/questions.yaml", "perhaps", "question silent" },

        // Numbers, durations, dates, ids.
        { "alpha/course.yaml", "pass: 80", "pass: 101", CourseProblems.NumberRange, "alpha/course.yaml", "pass: 101", "quiz" },
        { "alpha/course.yaml", "pass: 80", "pass: 0", CourseProblems.NumberRange, "alpha/course.yaml", "pass: 0", "quiz" },
        { "alpha/course.yaml", "pass: 50", "pass: 50.5", CourseProblems.NumberRange, "alpha/course.yaml", "50.5", "quiz topic near" },
        { "alpha/course.yaml", "minutes: 6", "minutes: six", CourseProblems.NumberRange, "alpha/course.yaml", "six", "module first" },
        { "alpha/questions.yaml", "tolerance: 2.5", "tolerance: -1", CourseProblems.NumberRange, "alpha/questions.yaml", "tolerance", "question how-long" },
        { "alpha/course.yaml", "validity: P24M", "validity: P0M", CourseProblems.NumberRange, "alpha/course.yaml", "P0M", "scheme" },
        { "alpha/course.yaml", "validity: P24M", "validity: P1Y6M", CourseProblems.DurationForm, "alpha/course.yaml", "P1Y6M", "scheme" },
        { "alpha/course.yaml", "window: P90D", "window: P12W", CourseProblems.DurationForm, "alpha/course.yaml", "P12W", "scheme" },
        { "alpha/course.yaml", "window: P90D", "window: P90D\n  remind: [P90D, P0D]", CourseProblems.DurationForm, "alpha/course.yaml", "P0D", "scheme" },
        { "alpha/course.yaml", "window: P90D", "window: P90D\n  remind: [P90D, soon]", CourseProblems.DurationForm, "alpha/course.yaml", "soon", "scheme" },
        { "alpha/course.yaml", "window: P90D", "window: P90D\n  remind: P90D", CourseProblems.YamlShape, "alpha/course.yaml", "remind: P90D", "scheme" },
        { "alpha/course.yaml", "greatest-age: P6M", "greatest-age: 6 months", CourseProblems.DurationForm, "alpha/course.yaml", "6 months", "grant" },
        { "alpha/course.yaml", "2026-01-01", "2026-02-30", CourseProblems.DateForm, "alpha/course.yaml", "2026-02-30", "scheme" },
        { "alpha/course.yaml", "review-by: 2027-12-31", "review-by: 2026-01-01", CourseProblems.DateOrder, "alpha/course.yaml", "review-by", "scheme" },
        { "alpha/questions.yaml", "options: [back, wait, prod]", "options: [back, wait, prod, Run_now]", CourseProblems.IdForm, "alpha/questions.yaml", "Run_now", "question silent" },
        { "alpha/en/modules/first.md", "## Stop {#stop}", "## Stop {#stop}\n\n### More {#More_1}", CourseProblems.IdForm, "alpha/en/modules/first.md", "More_1", null },

        // Ids that stand twice.
        { "alpha/course.yaml", "topics: [near, far]", "topics: [near, far, near]", CourseProblems.IdTwice, "alpha/course.yaml", "topics", null },
        { "alpha/course.yaml", "  - measure", "  - measure\n  - stop", CourseProblems.IdTwice, "alpha/course.yaml", "  - stop\nmodules", null },
        { "beta/checklists.yaml", "    - id: label", "    - id: inspect\n      objective: check\n      fact: F-CP-01\n    - id: label", CourseProblems.IdTwice, "beta/checklists.yaml", "- id: inspect\n      objective: check\n      fact: F-CP-01\n    -", "step inspect" },
        { "beta/course.yaml", "  id: beta-quiz", "  id: alpha-quiz", CourseProblems.IdElsewhere, "beta/course.yaml", "id: alpha-quiz", "quiz" },
        { "facts.yaml", "- id: F-CP-01", "- id: F-AID-02\n  says: Again.\n  source: Somebody\n  standing: from-memory\n- id: F-CP-01", CourseProblems.IdTwice, "facts.yaml", "F-AID-02\n  says: Again", "fact F-AID-02" },

        // What does not exist.
        { "alpha/course.yaml", "topic: near\n    minutes", "topic: nowhere\n    minutes", CourseProblems.TopicUnknown, "alpha/course.yaml", "nowhere", "module first" },
        { "alpha/questions.yaml", "objective: measure", "objective: fly", CourseProblems.ObjectiveUnknown, "alpha/questions.yaml", "fly", "question how-long" },
        { "beta/checklists.yaml", "objective: check", "objective: fly", CourseProblems.ObjectiveUnknown, "beta/checklists.yaml", "fly", "step inspect" },
        { "alpha/questions.yaml", "passage: first#stop", "passage: first#start", CourseProblems.PassageUnknown, "alpha/questions.yaml", "first#start", "question silent" },
        { "alpha/questions.yaml", "fact: F-AID-02", "fact: F-AID-99", CourseProblems.FactUnknown, "alpha/questions.yaml", "F-AID-99", "question silent" },
        { "beta/checklists.yaml", "fact: F-CP-01", "fact: F-CP-99", CourseProblems.FactUnknown, "beta/checklists.yaml", "F-CP-99", "step inspect" },
        { "alpha/questions.yaml", "[stand-off-us-2024]", "[stand-off-mars]", CourseProblems.GuidanceUnknown, "alpha/questions.yaml", "stand-off-mars", "question silent" },
        { "alpha/questions.yaml", "[stand-off-us-2024]", "[stand-off-us-2012]", CourseProblems.GuidanceSuperseded, "alpha/questions.yaml", "stand-off-us-2012", "question silent" },
        { "alpha/en/questions.md", "<guidance:stand-off-us-2024>", "<guidance:stand-off-us-2012>", CourseProblems.GuidanceSuperseded, "alpha/en/questions.md", "stand-off-us-2012", "question silent" },
        { "alpha/questions.yaml", "right: back", "right: forth", CourseProblems.OptionUnknown, "alpha/questions.yaml", "forth", "question silent" },
        { "beta/course.yaml", "    - quiz: beta-quiz\n      greatest-age: P60D", "    - quiz: gamma-quiz\n      greatest-age: P60D", CourseProblems.QuizUnknown, "beta/course.yaml", "gamma-quiz", "renewal" },
        { "beta/course.yaml", "- holds: alpha", "- holds: gamma", CourseProblems.SchemeUnknown, "beta/course.yaml", "gamma", "grant" },
        { "beta/course.yaml", "- holds: alpha", "- holds: beta", CourseProblems.HoldsItself, "beta/course.yaml", "holds: beta", "grant" },
        { "beta/course.yaml", "- holds: alpha", "- checklist: juggle\n      on: model\n      greatest-age: P6M", CourseProblems.ChecklistUnknown, "beta/course.yaml", "juggle", "grant" },

        // Rules of a scheme.
        { "beta/course.yaml", "- holds: alpha", "- wishes: well", CourseProblems.RequirementForm, "beta/course.yaml", "wishes", "grant" },
        { "beta/course.yaml", "    - checklist: move\n      on: model\n      greatest-age: P6M\n", "", CourseProblems.LiveWithoutModel, "beta/course.yaml", "- checklist: move", "grant" },
        { "beta/course.yaml", "    - quiz: beta-quiz\n      greatest-age: P60D", "    - practised: juggle\n      times: 2\n      within: P6M", CourseProblems.ChecklistUnknown, "beta/course.yaml", "- practised", "renewal" },
        { "beta/course.yaml", "    - quiz: beta-quiz\n      greatest-age: P60D", "    - practised: move\n      on: live\n      times: 2\n      within: P6M", CourseProblems.PracticeOnModelOnly, "beta/course.yaml", "on: live\n      times", "renewal" },
        { "beta/course.yaml", "    - quiz: beta-quiz\n      greatest-age: P60D", "    - practised: move\n      on: model\n      times: 2\n      within: P6M", CourseProblems.PracticeOnModelOnly, "beta/course.yaml", "on: model\n      times", "renewal" },
        { "beta/course.yaml", "    - quiz: beta-quiz\n      greatest-age: P60D", "    - practised: move\n      times: 0\n      within: P6M", CourseProblems.NumberRange, "beta/course.yaml", "times: 0", "renewal" },
        { "beta/course.yaml", "    - quiz: beta-quiz\n      greatest-age: P60D", "    - practised: move\n      times: 13\n      within: P6M", CourseProblems.NumberRange, "beta/course.yaml", "times: 13", "renewal" },
        { "beta/course.yaml", "- holds: alpha", "- practised: move", CourseProblems.RequirementForm, "beta/course.yaml", "- practised", "grant" },
        { "beta/course.yaml", "separation: teach-score-decide", "separation: none", CourseProblems.SeparationMissing, "beta/course.yaml", "separation", "scheme" },
        { "beta/checklists.yaml", "on: [model, live]", "on: [model]", CourseProblems.SubjectNotOffered, "beta/course.yaml", "- checklist: move\n      on: live", "grant" },
        { "alpha/course.yaml", "  - measure\n", "  - measure\n  - juggle\n", CourseProblems.ObjectiveUnassessed, "alpha/course.yaml", "- juggle", "objective juggle" },

        // Questions.
        { "alpha/questions.yaml", "  right: back\n", "", CourseProblems.KeyMissing, "alpha/questions.yaml", "- id: silent", "question silent" },
        { "alpha/questions.yaml", "right: back", "right: [back, wait]", CourseProblems.KeyNotOne, "alpha/questions.yaml", "[back, wait]", "question silent" },
        { "alpha/questions.yaml", "right: [aa, cc]", "right: []", CourseProblems.KeyMissing, "alpha/questions.yaml", "right: []", "question many" },
        { "alpha/questions.yaml", "right: [two-step, one-step, three-step]", "right: [two-step, one-step]", CourseProblems.KeyNotOrder, "alpha/questions.yaml", "right: [two-step", "question steps" },
        { "alpha/questions.yaml", "  right: { value", "  options: [aa, bb]\n  right: { value", CourseProblems.OptionCount, "alpha/questions.yaml", "options: [aa, bb]\n", "question how-long" },

        // Pairs: each of these changes has only its own finding.
        { "alpha/questions.yaml", "[hold, lift, lock, weigh]", "[hold, lift, lock, lift]", CourseProblems.IdTwice, "alpha/questions.yaml", "lock, lift]", "question pairs" },
        { "alpha/questions.yaml", "[hold, lift, lock, weigh]", "[hold, lift, lock, hook]", CourseProblems.IdTwice, "alpha/questions.yaml", "lock, hook]", "question pairs" },
        { "alpha/questions.yaml", "[hold, lift, lock, weigh]", "[hold, lift]", CourseProblems.MatchCount, "alpha/questions.yaml", "[hold, lift]", "question pairs" },
        { "alpha/questions.yaml", "[hook, bucket, box]", "[hook, bucket]", CourseProblems.OptionCount, "alpha/questions.yaml", "[hook, bucket]", "question pairs" },
        { "alpha/questions.yaml", "hook: lift", "hook: hold", CourseProblems.MatchTwice, "alpha/questions.yaml", "bucket: hold", "question pairs" },
        { "alpha/questions.yaml", "hook: lift", "hook: tow", CourseProblems.OptionUnknown, "alpha/questions.yaml", "hook: tow", "question pairs" },
        { "alpha/questions.yaml", "    hook: lift\n", "", CourseProblems.FieldMissing, "alpha/questions.yaml", "bucket: hold", "question pairs" },
        { "alpha/questions.yaml", "    hook: lift\n", "    hook: lift\n    tongs: weigh\n", CourseProblems.FieldUnknown, "alpha/questions.yaml", "tongs: weigh", "question pairs" },
        { "alpha/questions.yaml", "  right:\n    hook: lift\n    bucket: hold\n    box: lock\n", "", CourseProblems.KeyMissing, "alpha/questions.yaml", "- id: pairs", "question pairs" },
        { "alpha/questions.yaml", "  right:\n    hook: lift\n    bucket: hold\n    box: lock\n", "  right: [lift, hold]\n", CourseProblems.YamlShape, "alpha/questions.yaml", "right: [lift", "question pairs" },
        { "alpha/en/questions.md", "* `hold` Holding & carrying\n* `lift` Lifting, <guidance:limb>\n* `lock` Locking away\n* `weigh`", "- `hold` Holding & carrying\n- `lift` Lifting\n- `lock` Locking away\n- `weigh`", CourseProblems.MatchLists, "alpha/en/questions.md", "- `hook`", "question pairs" },
        { "alpha/en/questions.md", "* `weigh` Weighing\n", "", CourseProblems.WordsMissing, "alpha/en/questions.md", "* `hold`", "question pairs" },
        { "alpha/en/questions.md", "* `weigh` Weighing\n", "* `weigh` Weighing\n* `hook` Hooking\n", CourseProblems.WordsUnexpected, "alpha/en/questions.md", "* `hook`", "question pairs" },
        { "alpha/en/questions.md", "Holding & carrying", "Holding and carrying it for a long while again", CourseProblems.MatchTooLong, "alpha/en/questions.md", "* `hold`", "question pairs" },

        // Spots: each of these changes has only its own finding.
        { "alpha/questions.yaml", "right: away", "right: far-away", CourseProblems.OptionUnknown, "alpha/questions.yaml", "far-away", "question place" },
        { "alpha/questions.yaml", "circle: [30, 50, 20]", "circle: [30, 50]", CourseProblems.RegionForm, "alpha/questions.yaml", "- id: beside", "question place" },
        { "alpha/questions.yaml", "circle: [30, 50, 20]", "circle: [x, 30, 50, 20]", CourseProblems.RegionForm, "alpha/questions.yaml", "- id: beside", "question place" },
        { "alpha/questions.yaml", "circle: [30, 50, 20]", "circle: [30, 50, 0]", CourseProblems.RegionForm, "alpha/questions.yaml", "- id: beside", "question place" },
        { "alpha/questions.yaml", "      circle: [30, 50, 20]\n", "", CourseProblems.RegionForm, "alpha/questions.yaml", "- id: beside", "question place" },
        { "alpha/questions.yaml", "circle: [30, 50, 20]", "circle: [30, 50, 20]\n      rect: [10, 30, 40, 40]", CourseProblems.RegionForm, "alpha/questions.yaml", "- id: beside", "question place" },
        { "alpha/questions.yaml", "[200, 80, 230, 20, 260, 80]", "[200, 80, 230, 60, 260, 80, 230, 20]", CourseProblems.RegionForm, "alpha/questions.yaml", "- id: away", "question place" },
        { "alpha/questions.yaml", "number: [80, 40]", "number: [80]", CourseProblems.RegionForm, "alpha/questions.yaml", "- id: between", "question place" },
        { "alpha/questions.yaml", "circle: [30, 50, 20]", "circle: [19, 50, 20]", CourseProblems.RegionOutside, "alpha/questions.yaml", "- id: beside", "question place" },
        { "alpha/questions.yaml", "rect: [60, 20, 100, 60]", "rect: [49, 20, 111, 60]", CourseProblems.RegionOverlap, "alpha/questions.yaml", "- id: between", "question place" },
        { "alpha/questions.yaml", "number: [80, 40]", "number: [59, 40]", CourseProblems.RegionNumber, "alpha/questions.yaml", "- id: between", "question place" },
        { "alpha/questions.yaml", "right: away", "right: away\n  options: [beside, away]", CourseProblems.FieldUnknown, "alpha/questions.yaml", "options: [beside", "question place" },
        { "alpha/en/questions.md", "![A path](../figures/place.svg \"A path and three places\")\n", "", CourseProblems.SpotFigureShown, "alpha/en/questions.md", "## place", "question place" },

        // Blueprint: the pool of 'near' holds one critical question and two others.
        { "alpha/course.yaml", "questions: 2", "questions: 4", CourseProblems.BlueprintTotal, "alpha/course.yaml", "id: alpha-quiz", "quiz topic near" },
        { "alpha/course.yaml", "critical: 1", "critical: 2", CourseProblems.BlueprintCritical, "alpha/course.yaml", "id: alpha-quiz", "quiz topic near" },
        { "alpha/course.yaml", "questions: 2\n      critical: 1", "questions: 3\n      critical: 0", CourseProblems.BlueprintOther, "alpha/course.yaml", "id: alpha-quiz", "quiz topic near" },
        { "alpha/course.yaml", "critical: 1", "critical: 3", CourseProblems.NumberRange, "alpha/course.yaml", "critical: 3", "quiz topic near" },

        // Words and structure, per language.
        { "alpha/es/questions.md", "## how-long\n\nHow long, in cm?\n\n> Reach plus margin.\n", "", CourseProblems.WordsMissing, "alpha/es/questions.md", NoLine, "question how-long" },
        { "alpha/en/questions.md", "## how-long", "## extra\n\nWhat?\n\n> So.\n\n## how-long", CourseProblems.WordsUnexpected, "alpha/en/questions.md", "## extra", "question extra" },
        { "alpha/en/questions.md", "- `prod` Touch it with a stick\n", "", CourseProblems.WordsMissing, "alpha/en/questions.md", "- `back`", "question silent" },
        { "alpha/en/questions.md", "- `wait` Wait\n", "- `wait` Wait\n- `jump` Jump\n", CourseProblems.WordsUnexpected, "alpha/en/questions.md", "`jump`", "question silent" },
        { "alpha/en/questions.md", "- `wait` Wait\n", "- `wait`\n", CourseProblems.WordsMissing, "alpha/en/questions.md", "`wait`", "question silent" },
        { "alpha/en/questions.md", "> Silence is not safety.\n", "", CourseProblems.ExplanationMissing, "alpha/en/questions.md", "## silent", "question silent" },
        { "alpha/en/questions.md", "Which?\n", "", CourseProblems.WordsMissing, "alpha/en/questions.md", "## many", "question many" },
        { "alpha/en/questions.md", "# Questions\n", "Hello.\n", CourseProblems.WordsLayout, "alpha/en/questions.md", "Hello.", null },
        { "beta/es/checklists.md", "- `label` Labels the bucket\n", "", CourseProblems.WordsMissing, "beta/es/checklists.md", "- `inspect`", "checklist move" },
        { "beta/es/checklists.md", "Título:", "Title:", CourseProblems.TitleMissing, "beta/es/checklists.md", "## move", "checklist move" },
        { "beta/checklists.yaml", "  on: [model, live]", "  time-limit: 5\n  on: [model, live]", CourseProblems.HandlingTimed, "beta/checklists.yaml", "time-limit: 5", "checklist move" },
        { "beta/checklists.yaml", "  on: [model, live]", "  kind: drill\n  time-limit: 5\n  on: [model, live]", CourseProblems.TimeReasonMissing, "beta/en/checklists.md", "## move", "checklist move" },
        { "beta/checklists.yaml", "  on: [model, live]", "  kind: drill\n  time-limit: 61\n  on: [model, live]", CourseProblems.NumberRange, "beta/checklists.yaml", "time-limit: 61", "checklist move" },
        { "beta/en/checklists.md", "Title: Move it\n", "Title: Move it\n\nTime: It is short.\n", CourseProblems.TimeReasonUnexpected, "beta/en/checklists.md", "## move", "checklist move" },
        { "beta/checklists.yaml", "  on: [model, live]", "  retest:\n    wait: P1D\n    most: 0\n    within: P30D\n  on: [model, live]", CourseProblems.NumberRange, "beta/checklists.yaml", "most: 0", "checklist move retest" },
        { "alpha/course.yaml", "  id: alpha-quiz\n", "  id: alpha-quiz\n  retest:\n    wait: P1W\n    most: 3\n    within: P30D\n", CourseProblems.DurationForm, "alpha/course.yaml", "wait: P1W", "quiz retest" },
        { "alpha/course.yaml", "  id: alpha-quiz\n", "  id: alpha-quiz\n  retest:\n    wait: P1D\n    most: 3\n", CourseProblems.FieldMissing, "alpha/course.yaml", "wait: P1D", "quiz retest" },
        { "beta/en/checklists.md", "  > Tongs that fail leave a hand inside reach.\n", "", CourseProblems.ReasonMissing, "beta/en/checklists.md", "- `inspect`", "step inspect" },
        { "beta/en/checklists.md", "- `label` Labels the bucket\n", "- `label` Labels the bucket\n\n  > Why not.\n", CourseProblems.ReasonUnexpected, "beta/en/checklists.md", "- `label`", "step label" },
        { "alpha/en/course.md", "## Conduct {#conduct}\n\nBe honest.\n", "", CourseProblems.WordsMissing, "alpha/en/course.md", NoLine, "section conduct" },
        { "alpha/en/course.md", "## Conduct {#conduct}", "## Fees {#fees}\n\nNone.\n\n## Conduct {#conduct}", CourseProblems.WordsUnexpected, "alpha/en/course.md", "{#fees}", "section fees" },
        { "alpha/en/course.md", "- `far` Being far", "- `far` Being far\n- `away` Away", CourseProblems.WordsUnexpected, "alpha/en/course.md", "`away`", "section topics" },
        { "alpha/en/course.md", "\n- `measure` Measure", "", CourseProblems.WordsMissing, "alpha/en/course.md", "{#objectives}", "section objectives" },
        { "alpha/en/course.md", "Knows to stop.", "- Knows to stop.", CourseProblems.WordsLayout, "alpha/en/course.md", "{#shown}", "section shown" },
        { "alpha/en/course.md", "# The course\n", "", CourseProblems.TitleMissing, "alpha/en/course.md", "", null },
        { "en/guidance.md", "- `neutral` neutral & comfortable\n", "", CourseProblems.GuidanceWordsMissing, "en/guidance.md", NoLine, null },
        { "es/guidance.md", "- `stand-off` distancia\n", "", CourseProblems.GuidanceWordsMissing, "es/guidance.md", NoLine, null },
        { "en/guidance.md", "- `below-heart` below the heart\n", "- `below-heart` below the heart\n\n  And more.\n", CourseProblems.WordsMissing, "en/guidance.md", "- `below-heart`", null },
        { "en/guidance.md", "- `neutral`", "- `sideways` sideways\n- `neutral`", CourseProblems.WordsUnexpected, "en/guidance.md", "sideways", null },

        // Modules.
        { "alpha/en/modules/second.md", "\n## Caution {#caution}\n\nSite rules come first.\n", "", CourseProblems.CautionMissing, "alpha/en/modules/second.md", "# Second", "module second" },
        { "alpha/en/modules/second.md", "Site rules come first.\n", "", CourseProblems.CautionMissing, "alpha/en/modules/second.md", "{#caution}", "module second" },
        { "alpha/en/modules/second.md", "Site rules come first.\n", "Site rules come first.\n\n## More\n\nText.\n", CourseProblems.CautionNotLast, "alpha/en/modules/second.md", "{#caution}", "module second" },
        { "alpha/en/modules/second.md", "Some text.", "Some text.\n\n### Extra {#extra}\n\nText.", CourseProblems.LanguagesDiffer, "alpha/es/modules/second.md", NoLine, "module second" },
        { "alpha/es/modules/second.md", "Some text.", "Some text. <fact:F-CP-01>", CourseProblems.LanguagesDiffer, "alpha/en/modules/second.md", NoLine, "module second" },
        { "alpha/en/modules/second.md", "# Second\n", "", CourseProblems.TitleMissing, "alpha/en/modules/second.md", "", "module second" },
        { "alpha/en/modules/first.md", "second.md#reach", "third.md", CourseProblems.LinkBroken, "alpha/en/modules/first.md", "third.md", "module first" },
        { "alpha/en/modules/first.md", "second.md#reach", "second.md#nothing", CourseProblems.LinkBroken, "alpha/en/modules/first.md", "#nothing", "module first" },
        { "alpha/en/modules/first.md", "second.md#reach", "../../es/modules/second.md#reach", CourseProblems.LinkBroken, "alpha/en/modules/first.md", "../../es", "module first" },
        { "alpha/en/modules/first.md", "second.md#reach", "javascript:alert(1)", CourseProblems.LinkUnsafe, "alpha/en/modules/first.md", "javascript", "module first" },
        { "alpha/en/modules/first.md", "second.md#reach", "//elsewhere.example/x", CourseProblems.LinkUnsafe, "alpha/en/modules/first.md", "elsewhere", "module first" },
        { "alpha/en/questions.md", "Which?", "Which? <fact:F-AID-02>", CourseProblems.NoteOutsideModule, "alpha/en/questions.md", "Which?", "question many" },

        // Figures.
        { "alpha/en/modules/first.md", " \"A stick lies between hand and snake\"", "", CourseProblems.FigureWordsMissing, "alpha/en/modules/first.md", "![", "module first" },
        { "alpha/figures/stick.svg", "</svg>", "</sv>", CourseProblems.FigureSyntax, "alpha/figures/stick.svg", "</sv>", null },
        { "alpha/figures/stick.svg", "<svg", "<!DOCTYPE svg [<!ENTITY x \"y\">]>\n<svg", CourseProblems.FigureSyntax, "alpha/figures/stick.svg", "DOCTYPE", null },
        { "alpha/figures/stick.svg", "<text", "<script>x()</script><text", CourseProblems.FigureUnsafe, "alpha/figures/stick.svg", "<script", null },
        { "alpha/figures/stick.svg", "<text", "<style>*{}</style><text", CourseProblems.FigureUnsafe, "alpha/figures/stick.svg", "<style", null },
        { "alpha/figures/stick.svg", "<text", "<foreignObject/><text", CourseProblems.FigureUnsafe, "alpha/figures/stick.svg", "<foreign", null },
        { "alpha/figures/stick.svg", "<text x=\"1\"", "<text onclick=\"x()\" x=\"1\"", CourseProblems.FigureUnsafe, "alpha/figures/stick.svg", "onclick", null },
        { "alpha/figures/stick.svg", "<text x=\"1\"", "<text style=\"fill:red\" x=\"1\"", CourseProblems.FigureUnsafe, "alpha/figures/stick.svg", "style", null },
        { "alpha/figures/stick.svg", "url(#tip)", "url(https://elsewhere.example/a.svg#tip)", CourseProblems.FigureUnsafe, "alpha/figures/stick.svg", "elsewhere", null },
        { "alpha/figures/stick.svg", "class=\"l thin\"", "class=\"l alarm\"", CourseProblems.FigureUnsafe, "alpha/figures/stick.svg", "alarm", null },
        { "alpha/figures/stick.svg", "<text", "<image href=\"https://elsewhere.example/a.png\"/><text", CourseProblems.FigureUnsafe, "alpha/figures/stick.svg", "<image", null },

        // Files.
        { "alpha/en/modules/third.md", "", "# Third\n", CourseProblems.FileUnexpected, "alpha/en/modules/third.md", NoLine, null },
        { "alpha/en/checklists.md", "", "## x\n", CourseProblems.FileUnexpected, "alpha/en/checklists.md", NoLine, null },
        { "notes.md", "", "Notes\n", CourseProblems.FileUnexpected, "notes.md", NoLine, null },
        { "alpha/figures/spare.svg", "", "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 1 1\"/>", CourseProblems.FigureUnused, "alpha/figures/spare.svg", NoLine, null },

        // What is asked was taught.
        { "alpha/course.yaml", "    objectives: [stop]\n", "", CourseProblems.ModuleWithoutObjective, "alpha/course.yaml", "- id: first", "module first" },
        { "alpha/course.yaml", "objectives: [measure, stop]", "objectives: [stop]", CourseProblems.ObjectiveUntaught, "alpha/course.yaml", "- measure", "objective measure" },
        { "alpha/course.yaml", "objectives: [stop]", "objectives: [fly]", CourseProblems.ObjectiveUnknown, "alpha/course.yaml", "[fly]", "module first" },
        { "alpha/questions.yaml", "objective: stop\n  difficulty: medium", "objective: measure\n  difficulty: medium", CourseProblems.PassageOtherObjective, "alpha/questions.yaml", "- id: many", "question many" },

        // For which snakes.
        { "alpha/questions.yaml", "  right: [aa, cc]", "  right: [aa, cc]\n  species: [dragon]", CourseProblems.SnakeUnknown, "alpha/questions.yaml", "dragon", "question many" },
        { "alpha/questions.yaml", "  right: back", "  right: back\n  species: [coral]", CourseProblems.BlueprintCritical, "alpha/course.yaml", NoLine, "quiz topic near" },
        { "alpha/en/modules/second.md", "Some text.", "::: only\n\nSome text.\n\n:::", CourseProblems.PassageForm, "alpha/en/modules/second.md", "::: only", "module second" },
        { "alpha/en/modules/second.md", "Some text.", "::: never coral\n\nSome text.\n\n:::", CourseProblems.PassageForm, "alpha/en/modules/second.md", "::: never", "module second" },
        { "alpha/en/modules/second.md", "Some text.", "::: only coral\n\nSome text.\n\n:::", CourseProblems.LanguagesDiffer, "alpha/es/modules/second.md", NoLine, "module second" },
        { "alpha/en/modules/second.md", "Some text.", "- One\n\n  ::: only coral\n  Rings.\n  :::", CourseProblems.PassageForm, "alpha/en/modules/second.md", "::: only", "module second" },
        { "alpha/en/modules/second.md", "Some text.", "> ::: only coral\n> Rings.\n> :::", CourseProblems.PassageForm, "alpha/en/modules/second.md", "::: only", "module second" },
        { "alpha/en/modules/second.md", "Some text.", ":::: only coral\n\nRings.\n\n::: only pit-viper\n\nA pit.\n\n:::\n\n::::", CourseProblems.PassageForm, "alpha/en/modules/second.md", "::: only pit", "module second" },
        { "alpha/en/modules/second.md", "Some text.", "::: only coral\n\nSome text.", CourseProblems.PassageForm, "alpha/en/modules/second.md", "::: only", "module second" },
        { "alpha/en/modules/second.md", "Site rules come first.", "Site rules come first.\n\n::: only coral\n\nRings.", CourseProblems.PassageForm, "alpha/en/modules/second.md", "::: only", "module second" },
        { "alpha/en/modules/second.md", "Site rules come first.", "::: only coral\n\nSite rules come first.\n\n:::", CourseProblems.CautionMissing, "alpha/en/modules/second.md", "{#caution}", "module second" },
        { "alpha/en/modules/second.md", "Some text.", "::: only coral\n\n<block:site-plan>\n\n:::", CourseProblems.BlockPlace, "alpha/en/modules/second.md", "<block:", "module second" },
        { "alpha/en/questions.md", "Which?", "::: only coral\n\nWhich?\n\n:::", CourseProblems.PassageForm, "alpha/en/questions.md", "::: only", "question many" },
        { "alpha/en/questions.md", "> Because.", "> ::: only coral\n> Because.\n> :::", CourseProblems.PassageForm, "alpha/en/questions.md", "::: only", "question many" },
        { "alpha/en/course.md", "Be honest.", "::: only coral\n\nBe honest.\n\n:::", CourseProblems.PassageForm, "alpha/en/course.md", "::: only", "section conduct" },
        { "beta/en/checklists.md", "Read this first. Site rules come first.", "::: only coral\n\nRead this first.\n\n:::", CourseProblems.PassageForm, "beta/en/checklists.md", "::: only", "checklist move" },
        { "alpha/en/questions.md", "Which?", "Which?\n\n<block:site-plan>", CourseProblems.BlockPlace, "alpha/en/questions.md", "<block:", "question many" },
        { "alpha/en/modules/second.md", "Some text.", "<block:weather>", CourseProblems.BlockUnknown, "alpha/en/modules/second.md", "<block:", "module second" },
        { "alpha/en/modules/second.md", "Some text.", "Some <block:site-plan> text.", CourseProblems.BlockPlace, "alpha/en/modules/second.md", "<block:", "module second" },
        { "alpha/en/modules/second.md", "Some text.", "<block:site-plan>", CourseProblems.LanguagesDiffer, "alpha/es/modules/second.md", NoLine, "module second" },
        { "alpha/questions.yaml", "  right: [aa, cc]", "  right: [aa, cc]\n  machine: [fr]", CourseProblems.FieldValue, "alpha/questions.yaml", "machine", "question many" },

        // How questions are written.
        { "alpha/es/questions.md", "- `bb` B", "- `bb` Ninguna de las anteriores", CourseProblems.OptionCatchAll, "alpha/questions.yaml", "- id: many", "question many" },
        { "alpha/en/questions.md", "A snake makes **no** sound,", "Which of these is not right,", CourseProblems.StemNegative, "alpha/questions.yaml", "- id: silent", "question silent" },
        { "alpha/en/questions.md", "- `back` Step back", "- `back` Step back slowly, the way you came, with your eyes on the snake the whole time", CourseProblems.OptionLength, "alpha/questions.yaml", "- id: silent", "question silent" },

        // Which state of the original a translation was compared with.
        { "alpha/es/translation.yaml", "", "course: 000000000000\n", CourseProblems.TranslationOlder, "alpha/es/translation.yaml", "course:", "course" },
        { "alpha/es/translation.yaml", "", "poem x: 000000000000\n", CourseProblems.FieldUnknown, "alpha/es/translation.yaml", "poem", null },

        // Guidance.
        { "guidance.yaml", "  superseded-by: stand-off-us-2024", "  superseded-by: stand-off-us-2099", CourseProblems.GuidanceSuccessor, "guidance.yaml", "2099", "guidance stand-off-us-2012" },
        { "guidance.yaml", "  superseded-by: limb", "  superseded-by: reach", CourseProblems.GuidanceSuccessor, "guidance.yaml", "superseded-by: reach", "guidance old-limb" },
    };

    [Theory, MemberData(nameof(Findings))]
    public void One_change_gives_one_finding_in_its_place(string file, string old, string @new, string code, string foundIn, string onLine, string? part)
    {
        var (reading, texts) = CourseFixture.ReadWith((file, old, @new));

        var finding = Assert.Single(reading.Problems, problem => problem.Code == code && problem.Place.File == foundIn);
        Assert.Equal(part, finding.Place.Part);
        if (onLine.Length > 0) Assert.Equal(LineOf(texts[foundIn], onLine), finding.Place.Line);
    }

    [Fact]
    public void Superseded_guidance_names_its_successor_at_every_place()
    {
        var (reading, _) = CourseFixture.ReadWith(
            ("alpha/questions.yaml", "[stand-off-us-2024]", "[stand-off-us-2012]"),
            ("alpha/en/modules/first.md", "<guidance:stand-off-us-2024>", "<guidance:stand-off-us-2012>"),
            ("alpha/es/modules/first.md", "<guidance:stand-off-us-2024>", "<guidance:stand-off-us-2012>"));

        var findings = reading.Problems.Where(problem => problem.Code == CourseProblems.GuidanceSuperseded).ToList();

        Assert.Equal(["alpha/en/modules/first.md", "alpha/es/modules/first.md", "alpha/questions.yaml"], findings.Select(problem => problem.Place.File));
        Assert.All(findings, problem => Assert.Equal(["stand-off-us-2012", "stand-off-us-2024"], problem.Arguments));
    }

    [Theory, InlineData(300, true), InlineData(301, false)]
    public void What_was_shown_has_at_most_300_characters(int length, bool isFine)
    {
        var (reading, _) = CourseFixture.ReadWith(("alpha/en/course.md", "Knows to stop.", new string('x', length)));

        Assert.Equal(isFine, reading.Problems.Count == 0);
        if (!isFine) Assert.Equal(CourseProblems.ShownTooLong, Assert.Single(reading.Problems).Code);
    }

    [Fact]
    public void Every_missing_file_is_named()
    {
        foreach (var path in CourseFixture.Texts().Keys.Where(path => path.EndsWith(".md", StringComparison.Ordinal)))
        {
            var texts = CourseFixture.Texts();
            texts.Remove(path);

            Assert.Contains(CourseReader.Read(new CourseFiles(texts)).Problems, problem => problem.Code == CourseProblems.FileMissing && problem.Place.File == path);
        }
    }

    [Fact]
    public void A_missing_figure_is_found_where_it_is_shown()
    {
        var texts = CourseFixture.Texts();
        texts.Remove("alpha/figures/stick.svg");

        var findings = CourseReader.Read(new CourseFiles(texts)).Problems;

        Assert.Equal(2, findings.Count);
        Assert.All(findings, problem => Assert.Equal((CourseProblems.FigureMissing, 7), (problem.Code, problem.Place.Line)));
    }

    [Fact]
    public void A_missing_figure_to_mark_a_spot_on_is_found_in_the_structure_and_where_it_is_shown()
    {
        var texts = CourseFixture.Texts();
        texts.Remove("alpha/figures/place.svg");

        var findings = CourseReader.Read(new CourseFiles(texts)).Problems;

        Assert.All(findings, problem => Assert.Equal((CourseProblems.FigureMissing, "question place"), (problem.Code, problem.Place.Part)));
        Assert.Equal(["alpha/en/questions.md", "alpha/es/questions.md", "alpha/questions.yaml"], findings.Select(problem => problem.Place.File));
    }

    public static TheoryData<string, string> Drawings_on_which_no_spot_can_be_marked => new()
    {
        { "<path", "<text x=\"1\" y=\"9\">3</text><path" },         // two kinds of numbers would be one too many
        { " viewBox=\"0 0 280 100\"", "" },
        { "0 0 280 100", "0 0 280 0" },
    };

    [Theory, MemberData(nameof(Drawings_on_which_no_spot_can_be_marked))]
    public void A_drawing_to_mark_a_spot_on_has_a_view_box_and_no_text(string old, string @new)
    {
        var (reading, _) = CourseFixture.ReadWith(("alpha/figures/place.svg", old, @new));

        var finding = Assert.Single(reading.Problems);
        Assert.Equal((CourseProblems.SpotFigure, "question place"), (finding.Code, finding.Place.Part));
    }

    // The numbers of this drawing are 20 units across.
    public static TheoryData<string, string, bool> Where_two_numbers_stand => new()
    {
        { "[49, 50]", "[69, 50]", true },               // they touch
        { "[49, 50]", "[68.99, 50]", false },
        { "[30, 50]", "[60, 50]", true },               // on the outline is inside
        { "[30, 50]", "[59.99, 50]", false },
        { "[10, 50]", "[80, 40]", true },               // it reaches to the edge of the drawing …
        { "[30, 70.01]", "[80, 40]", false },
    };

    [Theory, MemberData(nameof(Where_two_numbers_stand))]
    public void A_number_stands_in_its_region_and_apart_from_others(string one, string other, bool isFine)
    {
        var (reading, _) = CourseFixture.ReadWith(
            ("alpha/questions.yaml", "circle: [30, 50, 20]", $"circle: [30, 50, 20]\n      number: {one}"),
            ("alpha/questions.yaml", "number: [80, 40]", $"number: {other}"));

        Assert.Equal(isFine ? [] : [CourseProblems.RegionNumber], reading.Problems.Select(problem => problem.Code));
    }

    [Fact]
    public void A_number_lies_on_the_drawing_with_all_of_it()
    {
        var (reading, _) = CourseFixture.ReadWith(("alpha/questions.yaml", "circle: [30, 50, 20]", "circle: [20, 50, 20]\n      number: [9.99, 50]"));

        Assert.Equal(CourseProblems.RegionNumber, Assert.Single(reading.Problems).Code);
    }

    [Fact]
    public void Boxes_of_regions_may_touch()
    {
        var (reading, _) = CourseFixture.ReadWith(("alpha/questions.yaml", "rect: [60, 20, 100, 60]", "rect: [50, 20, 150, 60]"));

        Assert.Empty(reading.Problems);
    }

    [Theory]
    [InlineData(36, true)]
    [InlineData(37, false)]
    public void A_match_has_at_most_36_characters(int length, bool isFine)
    {
        var (reading, _) = CourseFixture.ReadWith(("alpha/es/questions.md", "Weighing", new string('m', length)));

        Assert.Equal(isFine ? [] : [CourseProblems.MatchTooLong], reading.Problems.Select(problem => problem.Code));
    }

    [Fact]
    public void One_region_is_no_choice()
    {
        var (reading, texts) = CourseFixture.ReadWith(
            ("alpha/questions.yaml", "    - id: beside\n      circle: [30, 50, 20]\n    - id: between\n      rect: [60, 20, 100, 60]\n      number: [80, 40]\n", ""));

        var finding = Assert.Single(reading.Problems, problem => problem.Code == CourseProblems.OptionCount);
        Assert.Equal(LineOf(texts["alpha/questions.yaml"], "regions:"), finding.Place.Line);
    }

    [Fact]
    public void A_figure_stands_alone_in_its_paragraph()
    {
        var (reading, _) = CourseFixture.ReadWith(("alpha/en/modules/first.md", "![A stick]", "Look: ![A stick]"));

        Assert.Contains(reading.Problems, problem => problem is { Code: CourseProblems.FigureNotAlone, Place: { File: "alpha/en/modules/first.md", Line: 7 } });
    }

    [Fact]
    public void Deep_nesting_is_a_finding_and_no_crash()
    {
        var (reading, _) = CourseFixture.ReadWith(
            ("alpha/en/modules/second.md", "Some text.", new string('>', 5_000)),
            ("beta/questions.yaml", "", new string('[', 5_000)));

        Assert.Contains(reading.Problems, problem => problem is { Code: CourseProblems.MarkdownTooDeep, Place.File: "alpha/en/modules/second.md" });
        Assert.Contains(reading.Problems, problem => problem is { Code: CourseProblems.YamlFeature, Place.File: "beta/questions.yaml" });
    }

    [Fact]
    public void A_file_that_is_too_large_or_no_text_is_a_finding()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllBytes(Path.Combine(folder.Path, "facts.yaml"), [0xFF, 0xFE, 0xFD]);
        File.WriteAllText(Path.Combine(folder.Path, "guidance.yaml"), new string('#', CourseFiles.MaxFileLength + 1));

        var files = CourseFiles.FromFolder(folder.Path);

        Assert.Equal([CourseProblems.FileNotText, CourseProblems.FileTooLarge], files.Problems.Select(problem => problem.Code));
    }

    [Fact]
    public void A_folder_on_disk_is_read_like_its_texts()
    {
        using var folder = new TemporaryFolder();
        foreach (var (path, text) in CourseFixture.Texts())
        {
            var full = Path.Combine(folder.Path, path);
            Directory.CreateDirectory(Path.GetDirectoryName(full) ?? "");
            File.WriteAllText(full, text);
        }

        File.WriteAllText(Path.Combine(folder.Path, "alpha", "course.yaml~"), "an editor's own copy");

        Assert.Equal(CourseFixture.Read().Courses.Select(course => course.Hash), CourseReader.Read(CourseFiles.FromFolder(folder.Path)).Courses.Select(course => course.Hash));
    }

    [Fact]
    public void No_change_of_one_character_makes_the_reader_throw()
    {
        // Robustness, not meaning: whatever a slip of the keyboard leaves behind is a course or a finding.
        CsCheck.Check.Sample(
            CsCheck.Gen.Select(CsCheck.Gen.Int[0, 1_000_000], CsCheck.Gen.Int[0, 1_000_000], CsCheck.Gen.Char["\0{}[]:-#`><\"\nx&*!|"]),
            (which, where, letter) =>
            {
                var texts = CourseFixture.Texts();
                var path = texts.Keys.Order(StringComparer.Ordinal).ElementAt(which % texts.Count);
                var text = texts[path];
                texts[path] = text[..(where % text.Length)] + letter + text[(where % text.Length + 1)..];
                Assert.NotNull(CourseReader.Read(new CourseFiles(texts)));
            },
            iter: 100);
    }

    [Fact]
    public void No_slip_in_yaml_makes_the_reader_throw() => CsCheck.Check.Sample(
        CsCheck.Gen.Select(CsCheck.Gen.Int[0, 1_000_000], CsCheck.Gen.String[CsCheck.Gen.Char["\0{}[]:-#`><\"'\n\tx&*!|%@,? "], 0, 4], CsCheck.Gen.Int[0, 3]),
        (where, typed, gone) =>
        {
            var facts = CourseFixture.Texts()["facts.yaml"];
            var at = where % facts.Length;
            var changed = facts[..at] + typed + facts[Math.Min(facts.Length, at + gone)..];
            Assert.NotNull(CourseReader.Read(new CourseFiles([new("facts.yaml", changed), new("guidance.yaml", "[]")])));
        },
        iter: 3_000);

    private static int LineOf(string text, string marker)
    {
        var at = text.IndexOf(marker, StringComparison.Ordinal);
        Assert.True(at >= 0, marker);
        return text[..at].Count(c => c == '\n') + 1;
    }

    private sealed class TemporaryFolder : IDisposable
    {
        public string Path { get; } = Directory.CreateTempSubdirectory("courses-").FullName;

        public void Dispose() => Directory.Delete(Path, recursive: true);
    }
}

namespace Training.Courses.Tests;

/// <summary>Two small courses that have no finding: <c>alpha</c>, a certificate of training, and <c>beta</c>, a certification with a practical.</summary>
internal static class CourseFixture
{
    public static Dictionary<string, string> Texts()
    {
        var texts = new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["facts.yaml"] = Facts,
            ["guidance.yaml"] = Guidance,
            ["en/guidance.md"] = "# Words\n\n- `below-heart` below the heart\n- `neutral` neutral & comfortable\n- `stand-off` stand-off\n- `strike-reach` strike reach\n- `limb-position` limb position\n",
            ["es/guidance.md"] = "# Palabras\n\n- `below-heart` por debajo del corazón\n- `neutral` neutral y cómoda\n- `stand-off` distancia\n- `strike-reach` alcance\n- `limb-position` posición\n",
            ["alpha/course.yaml"] = AlphaCourse,
            ["alpha/questions.yaml"] = AlphaQuestions,
            ["alpha/figures/stick.svg"] = Figure,
            ["alpha/figures/place.svg"] = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 280 100\">\n  <path class=\"l\" d=\"M0 90H280\"/>\n</svg>\n",
            ["beta/course.yaml"] = BetaCourse,
            ["beta/questions.yaml"] = BetaQuestions,
            ["beta/checklists.yaml"] = BetaChecklists,
            ["beta/en/checklists.md"] = ChecklistWords.Replace("TITLE", "Title", StringComparison.Ordinal),
            ["beta/es/checklists.md"] = ChecklistWords.Replace("TITLE", "Título", StringComparison.Ordinal),
        };
        foreach (var tag in new[] { "en", "es" })
        {
            texts[$"alpha/{tag}/course.md"] = CourseWords("- `near` Being near\n- `far` Being far", "- `stop` Stop\n- `measure` Measure");
            texts[$"alpha/{tag}/questions.md"] = AlphaQuestionWords;
            texts[$"alpha/{tag}/modules/first.md"] = FirstModule;
            texts[$"alpha/{tag}/modules/second.md"] = "# Second\n\n## Reach {#reach}\n\nSome text.\n\n## Caution {#caution}\n\nSite rules come first.\n";
            texts[$"beta/{tag}/course.md"] = CourseWords("- `work` Work", "- `check` Check the kit");
            texts[$"beta/{tag}/questions.md"] = "## only-one\n\nWhat first?\n\n- `kit` The kit\n- `snake` The snake\n\n> Kit first.\n";
            texts[$"beta/{tag}/modules/kit.md"] = "# Kit\n\n## Jaws {#jaws}\n\nLook at the jaws.\n\n## Caution {#caution}\n\nSite rules come first.\n";
        }

        return texts;
    }

    public static CourseReading Read() => CourseReader.Read(new CourseFiles(Texts()));

    /// <summary>Reads the fixture with one text of one file replaced; an empty old text replaces the whole file.</summary>
    public static (CourseReading Reading, Dictionary<string, string> Texts) ReadWith(params IEnumerable<(string File, string Old, string New)> changes)
    {
        var texts = Texts();
        foreach (var (file, old, @new) in changes)
        {
            if (old.Length == 0) texts[file] = @new;
            else
            {
                Assert.Contains(old, texts[file], StringComparison.Ordinal);
                var at = texts[file].IndexOf(old, StringComparison.Ordinal);
                texts[file] = texts[file][..at] + @new + texts[file][(at + old.Length)..];
            }
        }

        return (CourseReader.Read(new CourseFiles(texts)), texts);
    }

    private static string CourseWords(string topics, string objectives) => $$"""
        # The course

        ## Scope {#scope}

        What it covers.

        ## Tasks {#tasks}

        The work.

        ## Competence {#competence}

        - Do this.

        ## Prerequisites {#prerequisites}

        None.

        ## Completion {#completion}

        Pass the quiz.

        ## Conduct {#conduct}

        Be honest.

        ## Suspension {#suspension}

        When it is unsafe.

        ## Validity {#validity}

        Two years.

        ## Shown {#shown}

        Knows to stop.

        ## Topics {#topics}

        {{topics}}

        ## Objectives {#objectives}

        {{objectives}}

        """;

    private const string Facts = """
        - id: F-AID-02
          says: Call at once.
          source: A health agency (2016)
          standing: confirmed
        - id: F-CP-01
          says: A tool stays between hand and snake.
          source: common practice, no source
          standing: common-practice
        - id: F-DST-21
          says: Ten feet.
          source: A wildlife agency (2024)
          standing: confirmed

        """;

    private const string Guidance = """
        - id: stand-off-us-2012
          subject: stand-off
          value: 5
          unit: ft
          region: US
          snakes: any
          effective-from: 2012-01-01
          superseded-by: stand-off-us-2024
          fact: F-DST-21
          source: A wildlife agency (2012)
          standing: confirmed
        - id: stand-off-us-2024
          subject: stand-off
          value: 10
          unit: ft
          region: US
          snakes: any
          effective-from: 2024-01-01
          fact: F-DST-21
          source: A wildlife agency (2024)
          standing: confirmed
        - id: reach
          subject: strike-reach
          value: 2/3
          unit: fraction
          region: US
          snakes: any
          effective-from: 2020-01-01
          fact: F-DST-21
          source: A youth network
          standing: confirmed
        - id: limb
          subject: limb-position
          value: neutral
          region: US
          snakes: any
          effective-from: 2023-05-24
          fact: F-AID-02
          source: A health agency (2023)
          standing: confirmed
        - id: old-limb
          subject: limb-position
          value: below-heart
          region: US
          snakes: any
          effective-from: 2016-07-01
          superseded-by: limb
          fact: F-AID-02
          source: A health agency (2016)
          standing: confirmed

        """;

    private const string AlphaCourse = """
        scheme:
          kind: certificate-of-training
          effective-from: 2026-01-01
          review-by: 2027-12-31
          separation: none
          validity: P24M
          window: P90D
          grace: P30D
          grant:
            - quiz: alpha-quiz
              greatest-age: P6M
          renewal:
            - quiz: alpha-quiz
              greatest-age: P90D
        topics: [near, far]
        objectives:
          - stop
          - measure
        modules:
          - id: first
            topic: near
            minutes: 6
            objectives: [stop]
          - id: second
            topic: far
            minutes: 4
            objectives: [measure, stop]
        quiz:
          id: alpha-quiz
          pass: 80
          draw:
            - topic: near
              questions: 2
              critical: 1
              pass: 50
            - topic: far
              questions: 1

        """;

    private const string AlphaQuestions = """
        - id: silent
          type: one
          topic: near
          objective: stop
          difficulty: easy
          critical: true
          passage: first#stop
          fact: F-AID-02
          guidance: [stand-off-us-2024]
          options: [back, wait, prod]
          right: back
        - id: many
          type: several
          topic: near
          objective: stop
          difficulty: medium
          passage: first#stop
          fact: F-AID-02
          options: [aa, bb, cc]
          right: [aa, cc]
        - id: steps
          type: order
          topic: near
          objective: stop
          difficulty: hard
          passage: second#reach
          fact: F-CP-01
          options: [one-step, two-step, three-step]
          right: [two-step, one-step, three-step]
        - id: how-long
          type: number
          topic: far
          objective: measure
          difficulty: hard
          passage: second#reach
          fact: F-DST-21
          right: { value: 130, tolerance: 2.5, unit: cm }
        - id: pairs
          type: match
          topic: far
          objective: measure
          difficulty: medium
          passage: second#reach
          fact: F-DST-21
          options: [hook, bucket, box]
          matches: [hold, lift, lock, weigh]
          right:
            hook: lift
            bucket: hold
            box: lock
        - id: place
          type: spot
          topic: far
          objective: measure
          difficulty: easy
          passage: second#reach
          fact: F-DST-21
          figure: figures/place.svg
          regions:
            - id: beside
              circle: [30, 50, 20]
            - id: between
              rect: [60, 20, 100, 60]
              number: [80, 40]
            - id: away
              polygon: [200, 80, 230, 20, 260, 80]
          right: away

        """;

    private const string AlphaQuestionWords = """
        # Questions

        ## silent

        A snake makes **no** sound, <guidance:stand-off-us-2024> away.

        - `back` Step back
        - `wait` Wait
        - `prod` Touch it with a stick

        > Silence is not safety.

        ## many

        Which?

        - `aa` A
        - `bb` B
        - `cc` C

        > Because.

        ## steps

        In which order?

        - `one-step` One
        - `two-step` Two
        - `three-step` Three

        > So.

        ## how-long

        How long, in cm?

        > Reach plus margin.

        ## pairs

        What is it for?

        - `hook` The **hook**
        - `bucket` The bucket
        - `box` The box

        * `hold` Holding & carrying
        * `lift` Lifting, <guidance:limb>
        * `lock` Locking away
        * `weigh` Weighing

        > Each has its use.

        ## place

        Where do you stand?

        ![A path](../figures/place.svg "A path and three places")

        - `beside` Beside it
        - `between` Between
        - `away` Away from it

        > Away.

        """;

    private const string FirstModule = """
        # First

        ## Stop {#stop}

        Call. <fact:F-AID-02> Stay <guidance:stand-off-us-2024> away, limb <guidance:limb>. Again <fact:F-AID-02>.

        ![A stick](../../figures/stick.svg "A stick lies between hand and snake")

        See [reach](second.md#reach) and [the top](#stop).

        ## Caution {#caution}

        Site rules come first.

        """;

    private const string Figure = """
        <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10">
          <title>dropped</title>
          <defs><marker id="tip"><path d="M0 0L1 1"/></marker></defs>
          <path class="l thin" d="M0 0L9 9" marker-end="url(#tip)"/>
          <text x="1" y="2">120</text>
        </svg>
        """;

    private const string BetaCourse = """
        scheme:
          kind: certification
          effective-from: 2026-01-01
          review-by: 2027-12-31
          separation: teach-score-decide
          validity: P12M
          window: P60D
          grace: P30D
          grant:
            - quiz: beta-quiz
              greatest-age: P6M
            - checklist: move
              on: model
              greatest-age: P6M
            - checklist: move
              on: live
              greatest-age: P6M
            - holds: alpha
          renewal:
            - quiz: beta-quiz
              greatest-age: P60D
        topics: [work]
        objectives: [check]
        modules:
          - id: kit
            topic: work
            minutes: 5
            objectives: [check]
        quiz:
          id: beta-quiz
          pass: 80
          draw:
            - topic: work
              questions: 1

        """;

    private const string BetaQuestions = """
        - id: only-one
          type: one
          topic: work
          objective: check
          difficulty: easy
          passage: kit#jaws
          fact: F-CP-01
          options: [kit, snake]
          right: kit

        """;

    private const string BetaChecklists = """
        - id: move
          pass: 80
          on: [model, live]
          steps:
            - id: inspect
              objective: check
              fact: F-CP-01
              critical: true
              prompt: allowed
            - id: label
              objective: check
              fact: F-CP-01

        """;

    private const string ChecklistWords = """
        ## move

        TITLE: Move it

        Read this first. Site rules come first.

        - `inspect` Works the jaws

          > Tongs that fail leave a hand inside reach.

        - `label` Labels the bucket

        """;
}

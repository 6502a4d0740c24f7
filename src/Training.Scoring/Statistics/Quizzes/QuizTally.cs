using Training.Courses;

namespace Training.Scoring;

/// <summary>Takes the sittings of one quiz, one at a time; memory grows with the pool, never with the sittings.</summary>
/// <param name="quiz">Its blueprint and cut.</param>
/// <param name="pool">Every text of a question that may have been asked; of one that is not here nothing is said about its options.</param>
/// <remarks>
/// Which statistics hold under which design, and why: docs/scoring.md. Sittings of one person must not come twice: answers of the second
/// go depend on those of the first.
/// </remarks>
public sealed class QuizTally(Quiz quiz, IEnumerable<Question> pool)
{
    // Fine enough to match people, coarse enough to find both languages in each.
    private const int Bands = 5;

    private readonly int _items = quiz.Blueprint.Sum(row => row.Questions);
    private readonly Dictionary<(string Id, string Version), Question> _pool =
        pool.DistinctBy(question => (question.Id, question.Version)).ToDictionary(question => (question.Id, question.Version));

    private readonly Dictionary<(string Id, string Version), QuestionTally> _questions = [];
    private readonly DrawnTally _drawn = new();
    private readonly GroupTally _groups = new(Bands);
    private readonly NestedTally _nested = new();
    private readonly ScoreDistribution _scores = new(quiz.Blueprint.Sum(row => row.Questions));
    private readonly ScoreTally _table = new(quiz.Blueprint.Sum(row => row.Questions));
    private readonly SortedDictionary<Language, (long All, long Passed)> _languages = [];
    private (string Id, string Version)[]? _form;
    private bool _isSameForm = true;
    private long _passed;
    private long _reachedCut;
    private long _unfinished;

    /// <summary>Points that the cut asks of a form with all its questions.</summary>
    public int PassMark => PassMarks.OfPercent(quiz.PassPercent, _items);

    /// <summary>Adds one sitting; one without questions counts for nothing.</summary>
    public void Add(AnsweredSitting sitting)
    {
        var (asked, right, spoken) = (sitting.Questions.Count, sitting.Right, sitting.Language);
        if (asked == 0) return;
        AddQuestions(sitting, asked, right, spoken);
        AddToTable(sitting);
        _nested.Add(asked, right);
        if (asked == _items) _scores.Add(right);
        if (sitting.IsPassed) _passed++;
        if (right >= PassMarks.OfPercent(quiz.PassPercent, asked)) _reachedCut++;
        if (sitting.Questions.Any(question => question.Mark is Mark.Blank or Mark.Late)) _unfinished++;
        if (spoken is not { } language) return;
        var (all, passed) = _languages.GetValueOrDefault(language);
        _languages[language] = (all + 1, passed + (sitting.IsPassed ? 1 : 0));
    }

    /// <summary>What all sittings so far say.</summary>
    public QuizAnalysis Analyse() => new(
        _drawn.Sittings,
        _passed,
        _reachedCut,
        _unfinished,
        _scores,
        PassMark,
        Precision(),
        [.. _languages.Select(one => new LanguageShare(one.Key, one.Value.All, one.Value.Passed))],
        [
            .. _questions.OrderBy(one => one.Key.Id, StringComparer.Ordinal).ThenBy(one => one.Key.Version, StringComparer.Ordinal)
                .Select(one => one.Value.Analyse(_drawn.Result(one.Value.Key), _groups.Strata(one.Value.Key))),
        ]);

    private void AddQuestions(AnsweredSitting sitting, int asked, int right, Language? spoken)
    {
        var tallies = new QuestionTally[asked];
        var scores = new DrawnScore[asked];
        for (var place = 0; place < asked; place++)
        {
            var question = sitting.Questions[place];
            var key = (question.QuestionId, question.Version);
            if (!_questions.TryGetValue(key, out var tally))
                _questions[key] = tally = new(question.QuestionId, question.Version, _pool.GetValueOrDefault(key));
            tallies[place] = tally;
            scores[place] = new(tally.Key, question.Mark is Mark.Right);
        }

        _drawn.Add(scores);
        if (spoken is { } language) _groups.Add(language is Language.English ? ComparedGroup.Reference : ComparedGroup.Focal, scores);
        if (asked < 2) return; // nothing else tells how strong the person is
        var times = sitting.Times();
        for (var place = 0; place < asked; place++)
        {
            var question = sitting.Questions[place];
            var rest = (right - (question.Mark is Mark.Right ? 1 : 0)) / (asked - 1.0);
            tallies[place].Add(question, rest, times[place]);
        }
    }

    private void AddToTable(AnsweredSitting sitting)
    {
        if (!_isSameForm) return;
        var ordered = sitting.Questions.OrderBy(question => question.QuestionId, StringComparer.Ordinal).ToList();
        _form ??= [.. ordered.Select(question => (question.QuestionId, question.Version))];
        _isSameForm = ordered.Count == _items && ordered.Select(question => (question.QuestionId, question.Version)).SequenceEqual(_form);
        if (_isSameForm) _table.Add([.. ordered.Select(question => question.Mark is Mark.Right ? 1.0 : 0.0)]);
    }

    private QuizPrecision Precision()
    {
        var (cut, mark) = (quiz.PassPercent / 100.0, PassMark);
        if (_isSameForm && _table.People > 1)
        {
            var crossed = _table.Components;
            return new(
                FormDesign.Same,
                _table.Kr20,
                crossed.Then(components => components.PhiAt(cut)),
                crossed.Then<double>(components => components.StandardError * _items),
                _table.Kr20.Then(reliability => LivingstonLewis.Classify(_scores, reliability, mark)));
        }

        var nested = _nested.Components;
        var reliable = nested.Then(components => components.Generalisability(_items));
        return new(
            FormDesign.Drawn,
            reliable,
            nested.Then(components => components.PhiAt(_items, cut)),
            nested.Then<double>(components => components.StandardError(_items) * _items),
            reliable.Then(reliability => LivingstonLewis.Classify(_scores, reliability, mark)));
    }
}

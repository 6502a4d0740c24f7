using CsCheck;
using Training.Courses;
using Training.Scoring;
using static Training.Certification.Tests.Cast;

namespace Training.Certification.Tests;

/// <summary>A case that could have happened, with its days near the boundaries of the rules.</summary>
internal sealed record RandomCase(CaseFile File, Decider Decider, DateOnly On)
{
    public static readonly Gen<RandomCase> Any = Gen.Int[0, 999_999].Array[256].Select(numbers => new Maker(numbers).Make());

    public override string ToString() =>
        $"""
        decided by {Decider} on {On}, {File.Scheme.Kind}, {File.Scheme.Separation}, from {File.Scheme.EffectiveFrom}, {File.Scheme.Terms}
        grant {string.Join(", ", File.Scheme.Grant)}
        renewal {string.Join(", ", File.Scheme.Renewal)}
        {string.Join('\n', File.Evidence)}
        {string.Join('\n', File.TaughtBy)}
        {string.Join('\n', File.Held.Select(h => $"{h.SchemeId}: {string.Join(", ", h.Periods)}; {string.Join(", ", h.Suspensions)}; {string.Join(", ", h.Withdrawals)}"))}
        """;

    private sealed class Maker(int[] numbers)
    {
        private static readonly string[] Starts = ["2024-02-29", "2024-01-31", "2023-12-31", "2024-08-31", "2024-02-28", "2025-02-28", "2023-11-30"];
        private static readonly string[] Validities = ["P1M", "P2M", "P3M", "P6M", "P12M", "P1Y", "P90D"];
        private static readonly string[] Windows = ["P0D", "P10D", "P1M", "P30D", "P4M"];
        private static readonly string[] Graces = ["P0D", "P15D", "P1M"];
        private static readonly string[] Ages = ["P0D", "P10D", "P1M", "P2M", "P6M", "P1Y"];

        private int _next;

        public RandomCase Make()
        {
            var own = Chance(70) ? MakeHeld(Handler) : null;
            var other = Chance(70) ? MakeHeld(Awareness) : null;
            var on = own is null ? MakeDay(Cast.On(Of(Starts)).AddDays(200)) : MakeDecisionDay(own);
            var scheme = MakeScheme(on);
            var teachings = new List<Teaching>();
            var evidence = MakeEvidence(scheme, own?.Periods[^1], on, teachings);
            HeldCertification[] held = [.. new[] { other, own }.OfType<HeldCertification>()];
            Decider decider = Chance(25) ? new Decider.Rule() : new Decider.Lead(Chance(2) ? Worker : Id(1 + Below(6)));
            return new(new(Worker, scheme, evidence, teachings, held), decider, on);
        }

        private int Below(int count) => numbers[_next++ % numbers.Length] % count;

        private bool Chance(int percent) => Below(100) < percent;

        private T Of<T>(params IReadOnlyList<T> items) => items[Below(items.Count)];

        /// <summary>Often the day itself, or a neighbour.</summary>
        private DateOnly MakeDay(DateOnly near) => near.AddDays(Of(0, 0, 0, 1, -1, 2, Below(200) - 100));

        private Terms MakeTerms() => new(D(Of(Validities)), D(Of(Windows)), D(Of(Graces)));

        private HeldCertification MakeHeld(string schemeId)
        {
            var periods = new List<Period>();
            var start = Chance(60) ? Cast.On(Of(Starts)) : new DateOnly(2023, 6, 1).AddDays(Below(700));
            for (var count = 1 + Below(4); periods.Count < count;)
            {
                var terms = MakeTerms();
                var countFrom = periods.Count > 0 && periods[^1].ExpiresOn > start && Chance(80) ? periods[^1].ExpiresOn : start;
                periods.Add(new(periods.Count + 1, start, start, SlowRules.Shift(countFrom, terms.Validity, 1), terms));
                start = Later(start, MakeDay(Edge(periods[^1])));
            }

            return new(Worker, schemeId, periods, MakeSuspensions(periods), MakeWithdrawals(periods));
        }

        private DateOnly Edge(Period period) => Of(
            period.StartsOn,
            SlowRules.Shift(period.ExpiresOn, period.Terms.Window, -1),
            period.ExpiresOn,
            SlowRules.Shift(period.ExpiresOn, period.Terms.Grace, 1));

        private static DateOnly Later(DateOnly one, DateOnly other) => one > other ? one : other;

        private List<Suspension> MakeSuspensions(List<Period> periods)
        {
            var suspensions = new List<Suspension>();
            for (var count = Of(0, 0, 0, 1, 1, 2); suspensions.Count < count;)
            {
                var from = MakeDay(Edge(Of(periods)));
                var reinstatement = Chance(75) ? new Reinstatement(from.AddDays(Of(0, 1, Below(60))), Lead, "settled") : null;
                suspensions.Add(new(from, Lead, "asked for", from.AddDays(30), reinstatement));
            }

            return [.. suspensions.OrderBy(suspension => suspension.From)];
        }

        private List<Withdrawal> MakeWithdrawals(List<Period> periods)
        {
            var withdrawals = new List<Withdrawal>();
            for (var count = Of(0, 0, 0, 0, 1, 2); withdrawals.Count < count;)
                withdrawals.Add(new(MakeDay(Edge(Of(periods))), Lead, Id(201), "asked for"));
            return [.. withdrawals.OrderBy(withdrawal => withdrawal.On)];
        }

        private DateOnly MakeDecisionDay(HeldCertification own)
        {
            var last = own.Periods[^1];
            var near = Chance(75)
                ? Edge(last)
                : Of([last.ExpiresOn, .. own.Withdrawals.Select(w => w.On), .. own.Suspensions.Select(s => s.Reinstatement?.On ?? s.From)]);
            return Later(last.StartsOn, MakeDay(near));
        }

        private Scheme MakeScheme(DateOnly on)
        {
            var isCertification = Chance(50);
            return TrainingScheme() with
            {
                Kind = isCertification ? SchemeKind.Certification : SchemeKind.CertificateOfTraining,
                Separation = isCertification || Chance(30) ? Separation.TeachScoreDecide : Separation.None,
                EffectiveFrom = on.AddDays(Of(-100, -100, -100, -1, 0, 0, Below(20) == 0 ? 1 : 0)),
                Terms = MakeTerms(),
                Grant = MakeRequirements(),
                Renewal = MakeRequirements(),
            };
        }

        private List<Requirement> MakeRequirements()
        {
            var requirements = new List<Requirement>();
            if (Chance(60)) requirements.Add(OnQuiz with { GreatestAge = D(Of(Ages)) });
            if (Chance(60)) requirements.Add(OnModel with { GreatestAge = D(Of(Ages)) });
            if (Chance(25)) requirements.Add(OnLive with { GreatestAge = D(Of(Ages)) });
            if (Chance(25)) requirements.Add(HoldsAwareness);
            if (Chance(25)) requirements.Add(OnModelAgain with { Times = 1 + Below(2), Within = D(Of(Ages)) });
            if (Chance(30)) requirements.Reverse();
            return requirements;
        }

        private List<Evidence> MakeEvidence(Scheme scheme, Period? old, DateOnly on, List<Teaching> teachings)
        {
            var evidence = new List<Evidence>();
            foreach (var requirement in scheme.Grant.Concat(scheme.Renewal))
            {
                for (var count = Of(0, 1, 1, 2, 3); count > 0; count--)
                {
                    var id = Id(1000 + Below(9) * 100 + evidence.Count);
                    if (requirement is Requirement.PassedQuiz quiz)
                        evidence.Add(Sitting(id, MakeEvidenceDay(quiz.GreatestAge, old, on)));
                    if (requirement is Requirement.Practised practised)
                        evidence.Add(MakeSheet(id, Subject.Model, MakeEvidenceDay(practised.Within, old, on), teachings));
                    if (requirement is Requirement.PassedPractical practical)
                        evidence.Add(MakeSheet(id, practical.Subject, MakeEvidenceDay(practical.GreatestAge, old, on), teachings));
                }
            }

            if (Chance(30)) teachings.Add(new(Id(900), Worker, Id(1 + Below(6)), MakeDay(on)));
            return evidence;
        }

        private DateOnly MakeEvidenceDay(Duration age, Period? old, DateOnly on)
        {
            var opensOn = old is null ? on : SlowRules.Shift(old.ExpiresOn, old.Terms.Window, -1);
            return Chance(40) ? on : MakeDay(Of(on, SlowRules.Shift(on, age, -1), opensOn));
        }

        private Evidence.OfQuiz Sitting(Guid id, DateOnly on) =>
            new() { ResultId = id, PersonId = Worker, On = on, QuizId = Chance(95) ? "tool-quiz" : "other", IsPassed = Chance(85) };

        private Evidence.OfPractical MakeSheet(Guid id, Subject subject, DateOnly on, List<Teaching> teachings)
        {
            var scorer = Chance(2) ? Worker : Id(1 + Below(6));
            if (Chance(30)) teachings.Add(new(Id(900), Worker, scorer, MakeDay(on.AddYears(Of(-2, -2, -1, 0)))));
            return new()
            {
                ResultId = id,
                PersonId = Worker,
                On = on,
                ClassId = Id(500 + Below(2)),
                Try = 1 + Below(3),
                ChecklistId = Chance(95) ? "move-to-bucket" : "other",
                Subject = subject,
                Outcome = Chance(85) ? PracticalOutcome.Passed : Of(PracticalOutcome.Failed, PracticalOutcome.Incomplete),
                ScorerId = scorer,
                SeparationReason = Of(null, null, "written", " "),
            };
        }
    }
}

using Training.Certification;
using Training.Courses;

namespace Training.Records.Tests;

/// <summary>How a certification stood at the end of one day.</summary>
/// <param name="Standing">Null before the first period.</param>
/// <param name="Period">Number of the period that counted; 0 before the first.</param>
/// <param name="Suspension">Number of the suspension that had lasted longest, where that is the standing; else 0.</param>
/// <param name="WithdrawalDay">Of the first withdrawal of that period, where that is the standing; else 0.</param>
internal readonly record struct SlowState(Standing? Standing, int Period, int Suspension, int WithdrawalDay);

/// <summary>
/// docs/rules.md a second time, slow and obvious: it lives through the days one after the other and does what was done on each. It knows neither
/// the product's types of a held certification nor its arithmetic.
/// </summary>
internal static class SlowHistory
{
    /// <summary>How it stood at the end of a day, in the eyes of somebody who knows what was written down by the end of another.</summary>
    /// <param name="acts">By day; of one day periods first, then suspensions, reinstatements and withdrawals.</param>
    /// <param name="day">The day.</param>
    /// <param name="knownBy">The other day.</param>
    public static SlowState Live(List<Act> acts, int day, int knownBy)
    {
        // Of periods, only those are known before which none is missing.
        var knownPeriods = 0;
        while (acts.Exists(act => act.Deed == Deed.Period && act.Number == knownPeriods + 1 && act.KnownDay <= knownBy)) knownPeriods++;

        var (period, lastDay, windowDay, withdrawalDay) = (0, 0, 0, 0);
        List<int> open = [];
        var next = 0;
        for (var today = acts[0].Day; today <= day; today++)
        {
            var isWithdrawnToday = false;
            List<int> endsTonight = [];
            for (; next < acts.Count && acts[next].Day == today; next++)
            {
                var act = acts[next];
                if (act.KnownDay > knownBy) continue;
                switch (act.Deed)
                {
                    case Deed.Period when act.Number <= knownPeriods:
                        (period, lastDay, withdrawalDay) = (act.Number, act.LastDay, 0);
                        windowDay = SlowCalendar.Shift(DateOnly.FromDayNumber(lastDay), act.Window, -1).DayNumber;
                        break;
                    case Deed.Suspension:
                        open.Add(act.Number);
                        break;
                    case Deed.Reinstatement:
                        endsTonight.Add(act.Number);
                        break;
                    case Deed.Withdrawal:
                        isWithdrawnToday = true;
                        if (withdrawalDay == 0) withdrawalDay = today;
                        break;
                }
            }

            if (today == day) return Judge(today, period, lastDay, windowDay, open, withdrawalDay);
            foreach (var number in endsTonight) open.Remove(number);
            if (isWithdrawnToday) open.Clear();
        }

        return default;
    }

    private static SlowState Judge(int today, int period, int lastDay, int windowDay, List<int> open, int withdrawalDay)
    {
        if (period == 0) return default;
        if (withdrawalDay != 0) return new(Standing.Withdrawn, period, 0, withdrawalDay);
        if (open.Count > 0) return new(Standing.Suspended, period, open[0], 0);
        if (today > lastDay) return new(Standing.Lapsed, period, 0, 0);
        return new(today < windowDay ? Standing.Current : Standing.RenewalDue, period, 0, 0);
    }
}

/// <summary>Months counted by hand.</summary>
internal static class SlowCalendar
{
    public static DateOnly Shift(DateOnly from, Duration duration, int sign)
    {
        if (duration.Unit == DurationUnit.Days) return DateOnly.FromDayNumber(from.DayNumber + (sign * duration.Count));
        var months = (from.Year * 12) + from.Month - 1 + (sign * duration.Count * (duration.Unit == DurationUnit.Years ? 12 : 1));
        var (year, month) = (months / 12, (months % 12) + 1);
        var isLeap = year % 400 == 0 || (year % 4 == 0 && year % 100 != 0);
        int[] lengths = [31, isLeap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
        return new(year, month, Math.Min(from.Day, lengths[month - 1]));
    }
}

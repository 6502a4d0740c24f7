namespace Training.Web.Features.Statistics;

/// <summary>Values along one side of a picture, in the units of its drawing.</summary>
/// <param name="From">The value at <paramref name="Start"/>.</param>
/// <param name="Through">The value at <paramref name="End"/>; not equal to <paramref name="From"/>.</param>
/// <param name="Start">Where it begins.</param>
/// <param name="End">Where it ends; smaller than the start where values grow upwards.</param>
public sealed record ChartAxis(double From, double Through, double Start, double End)
{
    /// <summary>Where a value lies, to a tenth of a unit; one beyond the axis lies at its end.</summary>
    public double At(double value) =>
        Math.Round(Start + ((Math.Clamp(value, Math.Min(From, Through), Math.Max(From, Through)) - From) / (Through - From) * (End - Start)), 1);

    /// <summary>Values to write beside it: from the first on, in steps.</summary>
    public IReadOnlyList<ChartTick> Ticks(double step, Func<double, string> words)
    {
        var ticks = new List<ChartTick>();
        for (var count = 0; From + (count * step) <= Through + (step / 1000); count++)
        {
            var value = From + (count * step);
            ticks.Add(new(At(value), words(value)));
        }

        return ticks;
    }
}

/// <summary>A value written beside an axis.</summary>
/// <param name="At">Where.</param>
/// <param name="Words">The value.</param>
public sealed record ChartTick(double At, string Words);

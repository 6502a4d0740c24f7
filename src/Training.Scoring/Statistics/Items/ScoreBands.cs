namespace Training.Scoring;

/// <summary>People sorted by a score, those with the same one together; per score the number of people and sums of what is counted.</summary>
/// <param name="counted">How many things are summed.</param>
internal sealed class ScoreBands(int counted)
{
    private readonly SortedDictionary<double, Band> _bands = [];

    public long People { get; private set; }

    public bool Varies => _bands.Count > 1;

    /// <summary>Adds a person, and answers the sums of their score so that what is counted can be added to them.</summary>
    public Span<double> Add(double score)
    {
        if (!_bands.TryGetValue(score, out var band)) _bands[score] = band = new(counted);
        band.People++;
        People++;
        return band.Sums;
    }

    public double[] UpperSums(long seats) => SumsOf(_bands.Values.Reverse(), seats);

    public double[] LowerSums(long seats) => SumsOf(_bands.Values, seats);

    public double[] AllSums() => SumsOf(_bands.Values, People);

    // People tied at the border share the seats that are left equally, so that the order of rows cannot matter.
    private double[] SumsOf(IEnumerable<Band> bestFirst, long seats)
    {
        var sums = new double[counted];
        foreach (var band in bestFirst)
        {
            if (seats == 0) break;
            var taken = Math.Min(band.People, seats);
            for (var index = 0; index < counted; index++)
            {
                sums[index] += band.Sums[index] * taken / band.People;
            }

            seats -= taken;
        }

        return sums;
    }

    private sealed class Band(int counted)
    {
        public long People { get; set; }

        public double[] Sums { get; } = new double[counted];
    }
}

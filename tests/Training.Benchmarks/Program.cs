using System.Globalization;
using Training.Benchmarks;
using Training.Records;

const long FewestAnswers = 1_000;
const long MostAnswers = 1_000_000_000;

return args switch
{
    ["statistics"] => AgainstR.Run(people: 20_000),
    ["statistics", var people] when Number(people, 1_000, 200_000) is { } count => AgainstR.Run((int)count),
    ["stream"] => AnswerStream.Run([1_000_000, 10_000_000, 100_000_000]),
    ["stream", .. var steps] when steps.All(step => Number(step, FewestAnswers, MostAnswers) is not null) =>
        AnswerStream.Run([.. steps.Select(step => long.Parse(step, CultureInfo.InvariantCulture))]),
    ["records"] => await FromRecords.RunAsync([2_000, 20_000]),
    ["records", .. var steps] when steps.All(step => Number(step, 10, 200_000) is not null) =>
        await FromRecords.RunAsync([.. steps.Select(step => int.Parse(step, CultureInfo.InvariantCulture))]),
    ["standing"] => await StandingAtSize.RunAsync([10_000, 100_000, 1_000_000]),
    ["standing", .. var steps] when steps.All(step => Number(step, 10_000, 10_000_000) is not null) =>
        await StandingAtSize.RunAsync([.. steps.Select(step => int.Parse(step, CultureInfo.InvariantCulture))]),
    ["certificates"] => AgainstPython.Run(10_000),
    ["certificates", var pages] when Number(pages, 100, 1_000_000) is { } count => AgainstPython.Run((int)count),
    ["papers"] => await ManyPapers.RunAsync(10_000),
    ["papers", var papers] when Number(papers, 100, PaperRunKeeping.MostItems) is { } count => await ManyPapers.RunAsync((int)count),
    _ => Usage(),
};

static long? Number(string text, long least, long most) =>
    long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= least && number <= most ? number : null;

static int Usage()
{
    Console.Error.WriteLine($"""
        statistics [people]   statistics of people × 50 answers here and in R (1000 to 200000 people; left out: 20000)
        stream [answers …]    so many answers through the tallies, one run each ({FewestAnswers} to {MostAnswers}; left out: 1, 10, 100 million)
        records [sittings …]  so many sittings of 50 answers in an embedded database, analysed one run each (10 to 200000; left out: 2000, 20000)
        standing [certifications …] an employer's pages and the daily rounds beside so many certifications (10000 to 10000000; left out: 10 thousand, 100 thousand, 1 million)
        certificates [pages]  so many certificates, unsigned and signed, beside ReportLab and WeasyPrint (100 to 1000000; left out: 10000)
        papers [papers]       a run of so many papers as the server makes and prints them (100 to {PaperRunKeeping.MostItems}; left out: 10000)
        """);
    return 2;
}

using Training.Courses;

namespace Training.Documents.Typesetting;

/// <summary>Fits texts into places whose type may not shrink for ever: what does not fit is a problem of its field.</summary>
internal sealed class Fitting(Ruler ruler, ICollection<Problem> problems)
{
    public Ruler Ruler => ruler;

    /// <summary>The text in its place; without lines, and with a problem, where it does not fit.</summary>
    public FittedText Fit(string field, string text, TextStyle style, double width, double height = double.MaxValue)
    {
        if (ruler.Find(text, style, width, height) is { } fitted) return fitted;
        Refuse(field);
        return new([], style, style.LeastSize);
    }

    /// <summary>The code of a text; with a problem where it has more modules than a side has room for.</summary>
    public QrCode Code(string field, string text, double side)
    {
        var code = new QrCode(text);
        if (!code.Fits(side)) Refuse(field);
        return code;
    }

    /// <summary>Says that something does not fit.</summary>
    public void Refuse(string field) => problems.Add(new(PaperProblems.DoesNotFit, Place.Of(field)));
}

using System.Resources;
using Training.Certification;
using Training.Courses;

namespace Training.Documents.Typesetting;

/// <summary>What several papers say in the same words.</summary>
internal sealed class PaperWords(Language language)
{
    private static readonly ResourceManager Texts = Wording.TextsBeside(typeof(PaperWords), "PaperText");

    private readonly Wording _words = new(Texts, language);

    public string Demo => _words.Text("Demo");

    public string DemoDetail => _words.Text("DemoDetail");

    public string CautionLabel => _words.Text("Caution");

    public string NameErased => _words.Text("NameErased");

    public string PageOf(int number, int count) => _words.Text("PageOf", number, count);

    public string Standing(Standing standing) => _words.Text(standing switch
    {
        Certification.Standing.Current => "Current",
        Certification.Standing.RenewalDue => "RenewalDue",
        Certification.Standing.Lapsed => "Lapsed",
        Certification.Standing.Suspended => "Suspended",
        Certification.Standing.Withdrawn => "Withdrawn",
    });
}

using System.Resources;
using Training.Courses;
using Training.Documents.Typesetting;

namespace Training.Documents.PocketCards;

/// <summary>Every sentence of a card in its language.</summary>
internal sealed class PocketCardWords(PocketCardPage page)
{
    private static readonly ResourceManager Texts = Wording.TextsBeside(typeof(PocketCardWords), "PocketCardText");

    private readonly Wording _words = new(Texts, page.Language);

    public string Title => _words.Text(page.Kind switch
    {
        SchemeKind.CertificateOfTraining => "TitleTraining",
        SchemeKind.Certification => "TitleCertification",
    });

    public string ExpiryLabel => _words.Text("ExpiresOn");

    public string Expiry => _words.Date(page.ExpiresOn);

    public string SerialLabel => _words.Text("Serial");

    public string Serial => Wording.Grouped(page.Serial);

    public string CodeAlternative => _words.Text("CodeAlternative", page.CheckAddress);

    public string What => _words.Text("What");

    public string WhatItIs => _words.Text("WhatItIs", Serial, page.Revision, _words.Date(page.PrintedOn));

    public string Check => _words.Text("Check");

    public string HowToCheck => _words.Text("HowToCheck");

    public string Limits => _words.Text("Limits");

    public string Bite => _words.Text("Bite");

    public string BiteFirst => _words.Text("BiteFirst");

    public string Found => _words.Text("Found", page.ProviderName);

    public string DocumentTitle => _words.Text("DocumentTitle", page.SchemeTitle, page.WorkerName);

    public string SheetTitle => _words.Text("SheetTitle");

    public string SheetFronts => _words.Text("SheetFronts");

    public string SheetBacks => _words.Text("SheetBacks");
}

using System.Globalization;
using System.Text;
using PdfSharp.Pdf;

namespace Training.Documents.Signatures;

/// <summary>Puts an invisible signature into a document that is about to be saved, and fills it in once its bytes are there.</summary>
/// <remarks>
/// ISO 32000-2 §12.8, ETSI EN 319 142-1 §6.3. The PDF package has a signer of its own; it names another kind of signature (adbe.pkcs7.detached) and
/// takes the machine's clock, and it cannot be told otherwise. <see cref="SignatureEntry"/> reads what is written here.
/// </remarks>
internal sealed class PdfSignature
{
    /// <summary>Every signature in a PDF has this entry.</summary>
    public const string RangeKey = "/ByteRange";

    /// <summary>Stands before the ranges: the kind of signature that PAdES asks for, then the key. Nowhere else in a file of ours.</summary>
    public const string EntryKey = "/SubFilter" + Kind + RangeKey;

    /// <summary>Stands between the ranges and the signature.</summary>
    public const string ContentsKey = "/Contents";

    /// <summary>Of the claimed time, in PDF's own spelling (ISO 32000-2 §7.9.4).</summary>
    public const string TimeFormat = "'D:'yyyyMMddHHmmss'Z'";

    /// <summary>Three numbers of ten digits at most, the zero, the brackets.</summary>
    public const int RangeLength = 36;

    private const string Kind = "/ETSI.CAdES.detached";

    private static readonly string RangeRoom = Range(0, 0, 0);

    // An RSA value of 4096 bits has 512 bytes, the rest of the envelope about 300 and the issuer's name.
    private const int RoomBesideCertificate = 2048;

    // Tokens with the authority's certificates have 2 to 8 KB.
    private const int RoomOfTimestamp = 12288;

    private readonly PdfSigner _signer;
    private readonly int _room;
    private readonly string _contentsRoom;

    private PdfSignature(PdfSigner signer)
    {
        _signer = signer;
        _room = signer.Certificate.RawData.Length + RoomBesideCertificate + (signer.Timestamp is null ? 0 : RoomOfTimestamp);
        _contentsRoom = $"<{new string('0', 2 * _room)}>";
    }

    /// <summary>Adds the signature's field to the page, with room for its value.</summary>
    public static PdfSignature AddTo(PdfDocument document, PdfPage page, PdfSigner signer)
    {
        var signature = new PdfSignature(signer);
        signature.AddField(document, page);
        return signature;
    }

    /// <summary>The ranges as they stand in the file: all before the signature, and so many bytes behind it.</summary>
    public static string Range(int start, int end, int length) =>
        string.Create(CultureInfo.InvariantCulture, $"[0 {start} {end} {length}]").PadRight(RangeLength);

    /// <summary>Signs the saved file in place.</summary>
    /// <exception cref="InvalidOperationException">The own check would refuse it: the page's words imitate the entry, or a timestamp is longer than any known.</exception>
    public void Sign(Span<byte> file)
    {
        var range = file.IndexOf(Encoding.ASCII.GetBytes(EntryKey + RangeRoom)) + EntryKey.Length;
        var start = range + RangeLength + ContentsKey.Length;
        var end = start + _contentsRoom.Length;
        Encoding.ASCII.GetBytes(Range(start, end, file.Length - end), file[range..]);

        var cms = new CmsSignature(_signer.Certificate, SignedPdf.Digest(file, start, end));
        var value = SignatureValue.Sign(_signer.Certificate, cms.SignedAttributes());
        var signature = cms.Encode(value, _signer.Timestamp?.Stamp(value));
        if (signature.Length > _room) throw new InvalidOperationException($"A signature of {signature.Length} bytes does not fit.");
        Encoding.ASCII.GetBytes(Convert.ToHexString(signature), file[(start + 1)..]);
        // A paper that the check page would call a forgery must not leave the house.
        var verdict = SignedPdf.Check(file, [_signer.Certificate]);
        if (verdict is not PdfVerdict.Genuine) throw new InvalidOperationException($"The signed paper would be judged {verdict}.");
    }

    private void AddField(PdfDocument document, PdfPage page)
    {
        var value = new PdfDictionary(document);
        document.Internals.AddObject(value);
        value.Elements["/Type"] = new PdfName("/Sig");
        value.Elements["/Filter"] = new PdfName("/Adobe.PPKLite");
        value.Elements["/SubFilter"] = new PdfName(Kind);
        value.Elements[RangeKey] = new PdfLiteral(RangeRoom);
        value.Elements[ContentsKey] = new PdfLiteral(_contentsRoom);
        // PAdES keeps the claimed time here and not in the CMS.
        value.Elements["/M"] = new PdfString(_signer.SignedAt.UtcDateTime.ToString(TimeFormat, CultureInfo.InvariantCulture));

        // A field without extent is not shown; the flags are Print and Locked.
        var field = new PdfDictionary(document);
        document.Internals.AddObject(field);
        field.Elements["/Type"] = new PdfName("/Annot");
        field.Elements["/Subtype"] = new PdfName("/Widget");
        field.Elements["/FT"] = new PdfName("/Sig");
        field.Elements["/T"] = new PdfString("Signature");
        field.Elements["/F"] = new PdfInteger(132);
        field.Elements["/Rect"] = new PdfLiteral("[0 0 0 0]");
        field.Elements["/P"] = page.Reference;
        field.Elements["/V"] = value.Reference;
        page.Elements["/Annots"] = new PdfArray(document, field.Reference!);

        var form = new PdfDictionary(document);
        form.Elements["/Fields"] = new PdfArray(document, field.Reference!);
        // Signatures exist; append only.
        form.Elements["/SigFlags"] = new PdfInteger(3);
        document.Internals.Catalog.Elements["/AcroForm"] = form;
    }
}

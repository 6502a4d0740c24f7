namespace Training.Web.Tests.House;

/// <summary>What poppler's pdftotext reads on a paper.</summary>
internal static class PdfText
{
    /// <summary>As laid out, white space collapsed.</summary>
    public static async Task<string> OfAsync(byte[] pdf)
    {
        var file = Path.GetTempFileName();
        try
        {
            await File.WriteAllBytesAsync(file, pdf);
            var (code, said) = await Script.RunAsync("pdftotext", "-layout", file, "-");
            Assert.True(code == 0, said);
            return string.Join(' ', said.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        }
        finally
        {
            File.Delete(file);
        }
    }
}

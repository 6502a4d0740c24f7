using Training.Scoring;
using ZXing;
using ZXing.Common;

namespace Training.Documents.Tests;

/// <summary>A first page as poppler draws it in grey, made worse as copiers do, and read by ZXing: another code base than the scanner of the other tests.</summary>
/// <param name="Width">In dots.</param>
/// <param name="Height">In dots.</param>
/// <param name="Dots">A byte each, row by row; 0 is black.</param>
internal sealed record Photocopy(int Width, int Height, byte[] Dots)
{
    public static Photocopy Of(byte[] pdf, int dotsPerInch)
    {
        var folder = Directory.CreateTempSubdirectory("photocopy-");
        try
        {
            var (file, image) = (Path.Combine(folder.FullName, "page.pdf"), Path.Combine(folder.FullName, "page"));
            File.WriteAllBytes(file, pdf);
            DebianTool.Run("pdftoppm", "poppler-utils", ["-r", $"{dotsPerInch}", "-gray", "-singlefile", file, image]);
            return Read(File.ReadAllBytes(image + ".pgm"));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    /// <summary>Copied: each dot is the mean of its neighbours, greyer, moved by noise, and one in a thousand is dirt.</summary>
    public Photocopy Worse(ulong seed)
    {
        var chance = new SplitMix64(seed);
        var copy = new byte[Dots.Length];
        for (var row = 0; row < Height; row++)
        {
            for (var column = 0; column < Width; column++)
            {
                var noise = (int)chance.NextBelow(41) - 20;
                var toner = 40 + (Mean(row, column) * 175 / 255);
                copy[(row * Width) + column] = chance.NextBelow(1000) == 0 ? (byte)chance.NextBelow(256) : (byte)Math.Clamp(toner + noise, 0, 255);
            }
        }

        return this with { Dots = copy };
    }

    /// <summary>Every dot moved by up to so many shades, lighter or darker.</summary>
    public Photocopy Noisy(ulong seed, int shades)
    {
        var chance = new SplitMix64(seed);
        return this with { Dots = [.. Dots.Select(dot => (byte)Math.Clamp(dot + (int)chance.NextBelow((ulong)((2 * shades) + 1)) - shades, 0, 255))] };
    }

    /// <summary>The part that a camera is held over: from so many percent of width and height to the lower right corner.</summary>
    public Photocopy HeldOver(int leftPercent, int topPercent)
    {
        var (left, top) = (Width * leftPercent / 100, Height * topPercent / 100);
        var rows = Enumerable.Range(top, Height - top).SelectMany(row => Dots.AsSpan((row * Width) + left, Width - left).ToArray());
        return new(Width - left, Height - top, [.. rows]);
    }

    /// <summary>What ZXing reads, or null.</summary>
    public string? Decode() => new BarcodeReaderGeneric { Options = new DecodingOptions { TryHarder = true, PossibleFormats = [BarcodeFormat.QR_CODE] } }
        .Decode(new RGBLuminanceSource(Dots, Width, Height, RGBLuminanceSource.BitmapFormat.Gray8))?.Text;

    /// <summary>What Debian's scanner reads.</summary>
    public string Scan()
    {
        var file = Path.GetTempFileName();
        try
        {
            File.WriteAllBytes(file, [.. System.Text.Encoding.ASCII.GetBytes($"P5\n{Width} {Height}\n255\n"), .. Dots]);
            return DebianTool.Run("zbarimg", "zbar-tools", ["-q", "--raw", $"pgm:{file}"]).TrimEnd('\n');
        }
        finally
        {
            File.Delete(file);
        }
    }

    private int Mean(int row, int column)
    {
        var (sum, count) = (0, 0);
        for (var y = Math.Max(0, row - 1); y <= Math.Min(Height - 1, row + 1); y++)
        {
            for (var x = Math.Max(0, column - 1); x <= Math.Min(Width - 1, column + 1); x++)
            {
                sum += Dots[(y * Width) + x];
                count++;
            }
        }

        return sum / count;
    }

    // P5, width and height, 255, each on a line; then a byte a dot (netpbm's pgm).
    private static Photocopy Read(byte[] file)
    {
        var end = 0;
        var lines = new string[3];
        for (var line = 0; line < lines.Length; line++)
        {
            var start = end;
            end = Array.IndexOf(file, (byte)'\n', start) + 1;
            lines[line] = System.Text.Encoding.ASCII.GetString(file, start, end - start - 1);
        }

        var size = lines[1].Split(' ');
        return new(int.Parse(size[0], System.Globalization.CultureInfo.InvariantCulture), int.Parse(size[1], System.Globalization.CultureInfo.InvariantCulture), file[end..]);
    }
}

using System.Collections;
using PdfSharp.Drawing;
using QRCoder;

namespace Training.Documents.Typesetting;

/// <summary>A QR code as vector rectangles, one for each run of dark modules in a row; error level M.</summary>
internal sealed class QrCode
{
    /// <summary>Modules of white on every side; ISO/IEC 18004 asks four.</summary>
    public const int QuietModules = 4;

    private readonly List<BitArray> _rows;

    public QrCode(string text)
    {
        using var generator = new QRCodeGenerator();
        using var code = generator.CreateQrCode(text, QRCodeGenerator.ECCLevel.M);
        // The package's matrix comes with the quiet zone around it.
        _rows = code.ModuleMatrix;
    }

    /// <summary>Modules along one side, quiet zone included.</summary>
    public int Side => _rows.Count;

    /// <summary>Width of the quiet zone where the whole code is so wide.</summary>
    public double QuietWidth(double side) => side / Side * QuietModules;

    /// <summary>A module would be no smaller than <see cref="Look.LeastModule"/> where the whole code is so wide.</summary>
    public bool Fits(double side) => side / Side >= Look.LeastModule;

    /// <summary>Fills a square, quiet zone included.</summary>
    /// <exception cref="InvalidOperationException">A module would be smaller than <see cref="Look.LeastModule"/>.</exception>
    public void Draw(XGraphics graphics, XRect box)
    {
        var module = box.Width / Side;
        if (!Fits(box.Width)) throw new InvalidOperationException($"Modules of {module:0.00} points are too small to scan.");

        var path = new XGraphicsPath { FillMode = XFillMode.Winding };
        for (var row = 0; row < Side; row++)
        {
            foreach (var (start, length) in Runs(_rows[row]))
            {
                // A hair taller than a module: some viewers otherwise leave a white line between rows.
                path.AddRectangle(box.X + (start * module), box.Y + (row * module), length * module, module * 1.01);
            }
        }

        graphics.DrawPath(new XSolidBrush(XColors.Black), path);
    }

    private static IEnumerable<(int Start, int Length)> Runs(BitArray row)
    {
        var start = -1;
        for (var column = 0; column <= row.Length; column++)
        {
            var isDark = column < row.Length && row[column];
            if (isDark && start < 0) start = column;
            if (isDark || start < 0) continue;
            yield return (start, column - start);
            start = -1;
        }
    }
}

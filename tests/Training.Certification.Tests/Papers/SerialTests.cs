using System.Diagnostics;
using CsCheck;

namespace Training.Certification.Tests;

public sealed class SerialTests
{
    private static readonly Gen<Serial> Serials = Gen.Int[0, int.MaxValue].Array[600].Select(numbers =>
    {
        var next = 0;
        return Serial.Draw(below => numbers[next++] % below);
    });

    [Fact]
    public void A_serial_reads_as_it_was_drawn() => Serials.Sample(serial =>
    {
        Assert.True(Serial.TryParse(serial.ToString(), out var printed));
        Assert.True(Serial.TryParse(serial.Value, out var stored));
        Assert.Equal(serial, printed);
        Assert.Equal(serial, stored);
        Assert.Matches("^[0-9A-Z]{4}-[0-9A-Z]{4}-[0-9A-Z]{4}$", serial.ToString());
        Assert.Equal(serial.ToString().Replace("-", "", StringComparison.Ordinal), serial.Value);
    });

    [Fact]
    public void No_character_of_a_serial_can_be_misread() =>
        Serials.Sample(serial => Assert.DoesNotContain(serial.Value, character => "0OQ1IL2Z5S6G8BUVAE".Contains(character)));

    [Fact]
    public void One_wrong_character_is_always_found() => Serials.Sample(serial =>
    {
        for (var i = 0; i < Serial.Length; i++)
        {
            foreach (var wrong in Iso7064.Characters)
            {
                var typed = serial.Value[..i] + wrong + serial.Value[(i + 1)..];
                Assert.Equal(wrong == serial.Value[i], Serial.TryParse(typed, out _));
            }
        }
    });

    [Fact]
    public void Two_swapped_neighbours_are_always_found() => Serials.Sample(
        serial =>
        {
            var value = serial.Value;
            for (var i = 0; i < Serial.Length - 1; i++)
            {
                var typed = value[..i] + value[i + 1] + value[i] + value[(i + 2)..];
                Assert.Equal(typed == value, Serial.TryParse(typed, out _));
            }
        },
        iter: 20_000);

    [Theory]
    [InlineData("3479-cdfh-jkm{0}")]
    [InlineData("3479 CDFH JKM{0}")]
    [InlineData(" 3479cdfhJKM{0} ")]
    [InlineData("--3-4-7-9-C-D-F-H-J-K-M-{0}")]
    public void Lower_case_spaces_and_hyphens_are_forgiven(string typed)
    {
        var check = Iso7064.CheckCharacter("3479CDFHJKM");

        Assert.True(Serial.TryParse(string.Format(typed, check), out var serial));
        Assert.Equal("3479CDFHJKM" + check, serial.Value);
    }

    [Theory]
    [InlineData("{0}.")]
    [InlineData("{0}\t")]
    [InlineData("{0}\n")]
    [InlineData("{0}3")]
    [InlineData("_{0}")]
    public void Nothing_else_is_forgiven(string around)
    {
        var right = "3479CDFHJKM" + Iso7064.CheckCharacter("3479CDFHJKM");

        Assert.True(Serial.TryParse(right, out _));
        Assert.False(Serial.TryParse(string.Format(around, right), out var serial));
        Assert.Null(serial);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData(" - ")]
    [InlineData("3479CDFHJKM")]
    [InlineData("3479CDFHJKſ3")] // a letter that becomes S in upper case
    [InlineData("３479CDFHJKM3")] // a digit of another width
    public void What_is_not_twelve_digits_and_letters_is_no_serial(string? typed) => Assert.False(Serial.TryParse(typed, out _));

    [Fact]
    public void Shorter_and_longer_texts_are_no_serial_although_they_are_checked()
    {
        foreach (var text in new[] { "3479CDFHJK", "3479CDFHJKMN" })
            Assert.False(Serial.TryParse(text + Iso7064.CheckCharacter(text), out _));
    }

    [Fact]
    public void A_source_that_is_not_random_is_found_out() => Assert.Throws<InvalidOperationException>(() =>
    {
        // Whichever constant is drawn, one of them leads to a check character that can be misread.
        for (var constant = 0; constant < Serial.ClearCharacters.Length; constant++) Serial.Draw(_ => constant);
    });

    [Fact]
    public void Python_stdnum_agrees_on_10000_serials()
    {
        var serials = new List<string>();
        Serials.Sample(serial => { lock (serials) serials.Add(serial.Value); }, iter: 10_000, threads: 1);

        const string Script = """
            import sys
            try:
                from stdnum.iso7064 import mod_37_36
            except ImportError:
                sys.exit("python3-stdnum is missing: apt-get install python3-stdnum")
            lines = sys.stdin.read().split()
            print(len(lines), sum(mod_37_36.is_valid(line) for line in lines), sum(mod_37_36.calc_check_digit(line[:-1]) == line[-1] for line in lines))
            """;
        var (exitCode, output, error) = RunPython(Script, string.Join('\n', serials));

        Assert.True(exitCode == 0, error);
        Assert.Equal($"{serials.Count} {serials.Count} {serials.Count}", output.Trim());
        Assert.InRange(serials.Distinct(StringComparer.Ordinal).Count(), 10_000, serials.Count);
    }

    /// <summary>Debian's own interpreter: python3-stdnum is a package of Debian, another interpreter would not see it.</summary>
    private static (int ExitCode, string Output, string Error) RunPython(string script, string input)
    {
        using var python = new Process
        {
            StartInfo = new("/usr/bin/python3", ["-c", script])
            {
                UseShellExecute = false,
                RedirectStandardInput = true,
                RedirectStandardOutput = true,
                RedirectStandardError = true,
            },
        };
        python.Start();
        python.StandardInput.Write(input);
        python.StandardInput.Close();
        var output = python.StandardOutput.ReadToEnd();
        var error = python.StandardError.ReadToEnd();
        python.WaitForExit();
        return (python.ExitCode, output, error);
    }
}

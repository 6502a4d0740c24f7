using Training.Web.Features.PaperFiles;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.PaperFiles;

/// <summary>The program in a process of its own, and the most memory that it ever held, as the kernel counts it.</summary>
public sealed class FileMemoryTests
{
    private const int Senders = 24;

    [Fact]
    public async Task Many_large_files_at_once_take_no_more_memory_than_a_few()
    {
        var folder = Directory.CreateTempSubdirectory("training-memory-").FullName;
        try
        {
            using var server = new ServerProcess(folder, "--Training:Verify:ChecksPerMinute=10000");
            await server.StartAsync();
            using var client = new HttpClient { BaseAddress = server.Address };
            await client.GetStringAsync("/en/verify");
            var before = server.PeakMegabytes();

            var answers = await Task.WhenAll(Enumerable.Range(0, Senders).Select(async _ =>
            {
                using var content = new MultipartFormDataContent { { new ByteArrayContent(new byte[FileReading.MostBytes]), FileReading.Field, "a.pdf" } };
                return (int)(await client.PostAsync("/en/verify/file", content)).StatusCode;
            }));

            Assert.All(answers, status => Assert.Equal(200, status));
            // Four at a time, and what the collector leaves lying: all of them would be 480 and more.
            Assert.InRange(server.PeakMegabytes() - before, 0, 400);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}

using System.Net;
using System.Net.Sockets;

namespace Training.Web.Tests.House;

/// <summary>A whole timestamp authority after RFC 3161 of OpenSSL's, over HTTP on loopback.</summary>
internal sealed class TimeServer : IDisposable
{
    private const string Configuration = """
        [tsa]
        default_tsa = authority
        [authority]
        serial = FOLDER/serial
        signer_cert = FOLDER/tsa.pem
        signer_key = FOLDER/tsa.key
        signer_digest = sha256
        default_policy = 1.2.3.4.1
        digests = sha256
        accuracy = secs:1
        ordering = no
        tsa_name = no
        ess_cert_id_alg = sha256
        """;

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("training-time-");
    private readonly HttpListener listener = new();

    public TimeServer()
    {
        File.WriteAllText(In("tsa.cnf"), Configuration.Replace("FOLDER", folder.FullName, StringComparison.Ordinal));
        File.WriteAllText(In("serial"), "01");
        OpenSsl.Run("req", "-x509", "-newkey", "rsa:2048", "-nodes", "-days", "3650", "-subj", "/CN=Invented Time", "-keyout", In("tsa.key"), "-out", In("tsa.pem"),
            "-addext", "extendedKeyUsage=critical,timeStamping", "-addext", "keyUsage=critical,digitalSignature");
        Address = new($"http://127.0.0.1:{FreePort()}/");
        listener.Prefixes.Add(Address.AbsoluteUri);
        listener.Start();
        _ = AnswerAllAsync();
    }

    public Uri Address { get; }

    /// <summary>How often it was asked.</summary>
    public int Asked { get; private set; }

    /// <summary>What it answers in place of the truth; null: the truth.</summary>
    public Func<byte[], byte[]>? Falsify { get; set; }

    public void Dispose()
    {
        listener.Close();
        folder.Delete(recursive: true);
    }

    private async Task AnswerAllAsync()
    {
        while (listener.IsListening)
        {
            try
            {
                var asked = await listener.GetContextAsync();
                Asked++;
                await using var query = File.Create(In("query"));
                await asked.Request.InputStream.CopyToAsync(query);
                query.Close();
                OpenSsl.Run("ts", "-reply", "-config", In("tsa.cnf"), "-queryfile", In("query"), "-out", In("reply"));
                var reply = await File.ReadAllBytesAsync(In("reply"));
                asked.Response.ContentType = "application/timestamp-reply";
                await asked.Response.OutputStream.WriteAsync(Falsify?.Invoke(reply) ?? reply);
                asked.Response.Close();
            }
            catch (Exception ended) when (ended is HttpListenerException or ObjectDisposedException or IOException)
            {
                return;
            }
        }
    }

    private string In(string file) => Path.Combine(folder.FullName, file);

    private static int FreePort()
    {
        using var free = new TcpListener(IPAddress.Loopback, 0);
        free.Start();
        return ((IPEndPoint)free.LocalEndpoint).Port;
    }
}

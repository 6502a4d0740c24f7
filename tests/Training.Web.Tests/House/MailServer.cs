using System.Buffers;
using System.Collections.Concurrent;
using System.Net;
using System.Net.Sockets;
using System.Security.Cryptography.X509Certificates;
using MimeKit;
using SmtpServer;
using SmtpServer.ComponentModel;
using SmtpServer.Mail;
using SmtpServer.Protocol;
using SmtpServer.Storage;

namespace Training.Web.Tests.House;

/// <summary>A mail server that is not ours (the SmtpServer package), on loopback; it keeps what it accepted and refuses one kind of address.</summary>
internal sealed class MailServer : IAsyncDisposable
{
    private readonly CancellationTokenSource stop = new();
    private readonly Task running;

    /// <param name="certificate">With one it offers STARTTLS; without, it takes mail in the clear.</param>
    public MailServer(X509Certificate2? certificate = null)
    {
        using (var listener = new TcpListener(IPAddress.Loopback, 0))
        {
            listener.Start();
            Port = ((IPEndPoint)listener.LocalEndpoint).Port;
        }

        var services = new ServiceProvider();
        services.Add(new Store(this));
        services.Add(new Filter());
        var options = new SmtpServerOptionsBuilder().ServerName("localhost")
            .Endpoint(endpoint =>
            {
                endpoint.Endpoint(new IPEndPoint(IPAddress.Loopback, Port));
                if (certificate is not null) endpoint.Certificate(certificate);
            }).Build();
        running = new SmtpServer.SmtpServer(options, services).StartAsync(stop.Token);
    }

    public int Port { get; }

    /// <summary>Every mail that was accepted, in order, repeats and all.</summary>
    public ConcurrentQueue<MimeMessage> Accepted { get; } = new();

    /// <summary>The same as their bytes came in.</summary>
    public ConcurrentQueue<byte[]> Received { get; } = new();

    /// <summary>Whether each mail came over an encrypted connection.</summary>
    public ConcurrentQueue<bool> Encrypted { get; } = new();

    /// <summary>Called when a mail is in our hands and its sender does not know it yet.</summary>
    public Action OnAccepted { get; set; } = () => { };

    public KeyValuePair<string, string>[] Settings =>
    [
        new("Training:Mail:Host", "127.0.0.1"), new("Training:Mail:Port", $"{Port}"), new("Training:Mail:Security", "None"),
        new("Training:Mail:From", "training@quillback.example.org"),
    ];

    public async ValueTask DisposeAsync()
    {
        if (stop.IsCancellationRequested) return;
        await stop.CancelAsync();
        try
        {
            await running;
        }
        catch (OperationCanceledException)
        {
            // How it stops.
        }
    }

    private sealed class Store(MailServer server) : MessageStore
    {
        public override async Task<SmtpResponse> SaveAsync(
            ISessionContext context, IMessageTransaction transaction, ReadOnlySequence<byte> buffer, CancellationToken cancellationToken)
        {
            using var bytes = new MemoryStream(buffer.ToArray());
            server.Received.Enqueue(buffer.ToArray());
            server.Encrypted.Enqueue(context.Pipe?.IsSecure == true);
            server.Accepted.Enqueue(await MimeMessage.LoadAsync(bytes, cancellationToken));
            server.OnAccepted();
            return SmtpResponse.Ok;
        }
    }

    private sealed class Filter : MailboxFilter
    {
        public override Task<bool> CanDeliverToAsync(ISessionContext context, IMailbox to, IMailbox from, CancellationToken cancellationToken) =>
            Task.FromResult(!to.User.StartsWith("nobody", StringComparison.Ordinal));
    }
}

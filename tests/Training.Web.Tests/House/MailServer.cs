using System.Buffers;
using System.Collections.Concurrent;
using System.Net;
using System.Net.Sockets;
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

    public MailServer()
    {
        using (var listener = new TcpListener(IPAddress.Loopback, 0))
        {
            listener.Start();
            Port = ((IPEndPoint)listener.LocalEndpoint).Port;
        }

        var services = new ServiceProvider();
        services.Add(new Store(Accepted));
        services.Add(new Filter());
        var options = new SmtpServerOptionsBuilder().ServerName("localhost")
            .Endpoint(endpoint => endpoint.Endpoint(new IPEndPoint(IPAddress.Loopback, Port))).Build();
        running = new SmtpServer.SmtpServer(options, services).StartAsync(stop.Token);
    }

    public int Port { get; }

    /// <summary>Every mail that was accepted, in order, repeats and all.</summary>
    public ConcurrentQueue<MimeMessage> Accepted { get; } = new();

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

    private sealed class Store(ConcurrentQueue<MimeMessage> accepted) : MessageStore
    {
        public override async Task<SmtpResponse> SaveAsync(
            ISessionContext context, IMessageTransaction transaction, ReadOnlySequence<byte> buffer, CancellationToken cancellationToken)
        {
            using var bytes = new MemoryStream(buffer.ToArray());
            accepted.Enqueue(await MimeMessage.LoadAsync(bytes, cancellationToken));
            return SmtpResponse.Ok;
        }
    }

    private sealed class Filter : MailboxFilter
    {
        public override Task<bool> CanDeliverToAsync(ISessionContext context, IMailbox to, IMailbox from, CancellationToken cancellationToken) =>
            Task.FromResult(!to.User.StartsWith("nobody", StringComparison.Ordinal));
    }
}

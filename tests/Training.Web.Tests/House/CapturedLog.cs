using System.Collections.Concurrent;
using Microsoft.Extensions.Logging;

namespace Training.Web.Tests.House;

/// <summary>Keeps every line that a site logs, with the name of its event.</summary>
internal sealed class CapturedLog : ILoggerProvider
{
    private readonly ConcurrentQueue<(string? Event, string Line, IReadOnlyDictionary<string, object?> Values)> lines = new();

    public IReadOnlyCollection<(string? Event, string Line, IReadOnlyDictionary<string, object?> Values)> Lines => lines;

    public ILogger CreateLogger(string categoryName) => new Logger(lines);

    public void Dispose()
    {
        // Nothing is open.
    }

    private sealed class Logger(ConcurrentQueue<(string? Event, string Line, IReadOnlyDictionary<string, object?> Values)> lines) : ILogger
    {
        public IDisposable? BeginScope<TState>(TState state)
            where TState : notnull => null;

        public bool IsEnabled(LogLevel logLevel) => true;

        public void Log<TState>(LogLevel logLevel, EventId eventId, TState state, Exception? exception, Func<TState, Exception?, string> formatter)
        {
            var values = state as IEnumerable<KeyValuePair<string, object?>> ?? [];
            lines.Enqueue((eventId.Name, $"{formatter(state, exception)} {exception}", values.ToDictionary(value => value.Key, value => value.Value, StringComparer.Ordinal)));
        }
    }
}

using System.Text.Json;

namespace Training.Documents.Tests;

/// <summary>An event as a parser from elsewhere reads it; instants in UTC, a day alone as <c>yyyy-MM-dd</c>.</summary>
public sealed record ReadEvent(string Uid, int Sequence, string Start, string End, string Summary, string Location, string Status, string Description);

/// <summary>Two parsers that share no code with what wrote the file, nor with each other: Debian's python3-icalendar and python3-vobject.</summary>
internal static class ForeignCalendar
{
    private const string Script = """
        import sys, json, datetime
        import icalendar, vobject
        text = open(sys.argv[1], 'rb').read()
        def when(value):
            if not isinstance(value, datetime.datetime): return value.isoformat()
            assert value.tzinfo is not None, 'a local time without a zone'
            return value.astimezone(datetime.timezone.utc).strftime('%Y-%m-%dT%H:%MZ')
        first = icalendar.Calendar.from_ical(text)
        one = [dict(Uid=str(e['uid']), Sequence=int(e['sequence']), Start=when(e['dtstart'].dt), End=when(e['dtend'].dt), Summary=str(e['summary']),
                    Location=str(e.get('location', '')), Status=str(e.get('status', '')), Description=str(e.get('description', ''))) for e in first.walk('vevent')]
        second = vobject.readOne(text.decode('utf-8'))
        second.serialize()   # its own check of what a calendar must have
        def of(e, name): return getattr(e, name).value if hasattr(e, name) else ''
        two = [dict(Uid=e.uid.value, Sequence=int(e.sequence.value), Start=when(e.dtstart.value), End=when(e.dtend.value), Summary=e.summary.value,
                    Location=of(e, 'location'), Status=of(e, 'status'), Description=of(e, 'description')) for e in second.contents.get('vevent', [])]
        head = dict(Method=str(first['method']), Producer=str(first['prodid']), Version=str(first['version']), Name=str(first.get('name', '')))
        print(json.dumps(dict(Head=head, Icalendar=one, Vobject=two)))
        """;

    /// <summary>The events, which both parsers must agree about, and what the file says of itself.</summary>
    public static (IReadOnlyList<ReadEvent> Events, IReadOnlyDictionary<string, string> Head) Read(string calendar)
    {
        var file = Path.GetTempFileName();
        try
        {
            File.WriteAllText(file, calendar);
            using var read = JsonDocument.Parse(DebianTool.Run("/usr/bin/python3", "python3-icalendar python3-vobject", ["-c", Script, file]));
            var one = read.RootElement.GetProperty("Icalendar").Deserialize<ReadEvent[]>()!;
            Assert.Equal(one, read.RootElement.GetProperty("Vobject").Deserialize<ReadEvent[]>());
            return (one, read.RootElement.GetProperty("Head").Deserialize<Dictionary<string, string>>()!);
        }
        finally
        {
            File.Delete(file);
        }
    }
}

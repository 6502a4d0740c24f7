using System.Globalization;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Training.Courses;

/// <summary>A piece of YAML that knows its line. A closed family. Anchors, aliases and tags are refused: courses need none.</summary>
internal abstract class SourceNode
{
    private const int MaxDepth = 12;

    private SourceNode(int line) => Line = line;

    public int Line { get; }

    public sealed class Text(int line, string value) : SourceNode(line)
    {
        public string Value { get; } = value;
    }

    public sealed class List(int line, IReadOnlyList<SourceNode> items) : SourceNode(line)
    {
        public IReadOnlyList<SourceNode> Items { get; } = items;
    }

    public sealed class Map(int line, IReadOnlyList<Entry> entries) : SourceNode(line)
    {
        public IReadOnlyList<Entry> Entries { get; } = entries;
    }

    public sealed record Entry(string Key, int Line, SourceNode Value);

    /// <summary>Reads a file's one document; null where it is not there, empty or broken, which is then among the problems.</summary>
    public static SourceNode? Read(CourseFiles files, string path, ICollection<Problem> problems)
    {
        var text = files.Find(path);
        if (text is null)
        {
            problems.Add(new(CourseProblems.FileMissing, new(path)));
            return null;
        }

        var parser = new Parser(new StringReader(text));
        try
        {
            return ReadDocument(parser);
        }
        catch (InvalidOperationException)
        {
            // YamlDotNet 18.1.0 empties a stack of its own on some unclosed brackets; it is the author's slip all the same.
            problems.Add(new(CourseProblems.YamlSyntax, new(path, (int)(parser.Current?.End.Line ?? 1)), "1"));
        }
        catch (UnusedFeatureException e)
        {
            problems.Add(new(CourseProblems.YamlFeature, new(path, e.Line)));
        }
        catch (YamlException e)
        {
            problems.Add(new(CourseProblems.YamlSyntax, new(path, (int)e.Start.Line), [e.Start.Column.ToString(CultureInfo.InvariantCulture)]));
        }

        return null;
    }

    private static SourceNode ReadDocument(Parser parser)
    {
        parser.Consume<StreamStart>();
        if (parser.Accept<StreamEnd>(out _)) return new Text(1, "");
        parser.Consume<DocumentStart>();
        var root = ReadNode(parser, 0);
        parser.Consume<DocumentEnd>();
        if (parser.Accept<DocumentStart>(out var second)) throw new UnusedFeatureException((int)second.Start.Line);
        return root;
    }

    private static SourceNode ReadNode(Parser parser, int depth)
    {
        if (parser.Accept<AnchorAlias>(out var alias)) throw new UnusedFeatureException((int)alias.Start.Line);
        if (parser.Accept<NodeEvent>(out var node) && IsUnused(node, depth)) throw new UnusedFeatureException((int)node.Start.Line);
        if (parser.TryConsume<Scalar>(out var scalar)) return new Text((int)scalar.Start.Line, scalar.Value);
        if (parser.TryConsume<SequenceStart>(out var list))
        {
            var items = new List<SourceNode>();
            while (!parser.TryConsume<SequenceEnd>(out _)) items.Add(ReadNode(parser, depth + 1));
            return new List((int)list.Start.Line, items);
        }

        var map = parser.Consume<MappingStart>();
        var entries = new List<Entry>();
        while (!parser.TryConsume<MappingEnd>(out _))
        {
            var key = parser.Consume<Scalar>();
            entries.Add(new(key.Value, (int)key.Start.Line, ReadNode(parser, depth + 1)));
        }

        return new Map((int)map.Start.Line, entries);
    }

    private static bool IsUnused(NodeEvent node, int depth) =>
        depth > MaxDepth || !node.Anchor.IsEmpty || (!node.Tag.IsEmpty && !node.Tag.IsNonSpecific);

    private sealed class UnusedFeatureException(int line) : Exception
    {
        public int Line { get; } = line;
    }
}

namespace Training.Documents.IssueLog;

/// <summary>Which subtrees a proof asks for, found by letting it ask.</summary>
internal static class NodeList
{
    public static IReadOnlyList<LogNode> Of(Action<Func<LogNode, LogHash>> proof)
    {
        var asked = new List<LogNode>();
        proof(node =>
        {
            asked.Add(node);
            return default;
        });
        return asked;
    }
}

using Markdig;
using Markdig.Extensions.CustomContainers;
using Markdig.Renderers;
using Markdig.Renderers.Html;

namespace Training.Courses;

/// <summary>Passages between lines of three colons (docs/course-format.md, "Modules"), without the inline form that Markdig's own extension adds.</summary>
internal sealed class PassageFences : IMarkdownExtension
{
    public void Setup(MarkdownPipelineBuilder pipeline)
    {
        // Before the paragraph parser, as fenced code is: otherwise a fence would be the text of a paragraph.
        if (!pipeline.BlockParsers.Contains<CustomContainerParser>()) pipeline.BlockParsers.Insert(0, new CustomContainerParser());
    }

    public void Setup(MarkdownPipeline pipeline, IMarkdownRenderer renderer)
    {
        if (renderer is HtmlRenderer html) html.ObjectRenderers.AddIfNotAlready<Contents>();
    }

    /// <summary>What stands between the fences, as if they were not there.</summary>
    internal sealed class Contents : HtmlObjectRenderer<CustomContainer>
    {
        protected override void Write(HtmlRenderer renderer, CustomContainer container) => renderer.WriteChildren(container);
    }
}

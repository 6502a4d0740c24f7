using System.Globalization;
using Training.Courses;
using Training.Records;
using Training.Scoring;

namespace Training.Web.Features.Kit;

/// <summary>What registering a piece of kit posts.</summary>
public sealed class KitForm
{
    /// <summary>Made with the form: the same post again is the same piece.</summary>
    public Guid Id { get; init; }

    /// <summary>As it is marked.</summary>
    public string? Label { get; init; }

    /// <summary>Name of a <see cref="KitKind"/>.</summary>
    public string? Kind { get; init; }

    /// <summary>The piece, or null where something is to be mended.</summary>
    public KitPiece? Read(Guid personId, DateTimeOffset now, ICollection<Problem> problems)
    {
        var (before, label) = (problems.Count, Label?.Trim() ?? "");
        if (label.Length == 0) problems.Add(new(KitFormProblems.LabelMissing, Place.Of(nameof(Label))));
        if (label.Length > Bounds.Number)
        {
            problems.Add(new(
                KitFormProblems.LabelTooLong, Place.Of(nameof(Label)), label.Length.ToString(CultureInfo.InvariantCulture),
                Bounds.Number.ToString(CultureInfo.InvariantCulture)));
        }

        if (!Enum.TryParse<KitKind>(Kind, out var kind) || !Enum.IsDefined(kind)) problems.Add(new(KitFormProblems.KindMissing, Place.Of(nameof(Kind))));
        return problems.Count > before ? null : new KitPiece { Id = Id, Label = label, Kind = kind, RegisteredById = personId, RegisteredAt = now };
    }
}

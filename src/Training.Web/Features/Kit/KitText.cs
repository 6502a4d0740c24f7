using System.Diagnostics;
using Microsoft.Extensions.Localization;
using Training.Scoring;
using Training.Web.Languages;

namespace Training.Web.Features.Kit;

/// <summary>Names the texts of the register of kit: KitText.resx and KitText.es.resx.</summary>
public sealed class KitText;

/// <summary>Puts pieces of kit in words.</summary>
public static class KitWords
{
    /// <summary>What a piece is.</summary>
    public static string Of(this IStringLocalizer<KitText> text, KitKind kind) => kind switch
    {
        KitKind.Hook => text["Hook"],
        KitKind.Tongs => text["Tongs"],
        KitKind.Bucket => text["Bucket"],
        KitKind.Bag => text["Bag"],
        KitKind.LockingBox => text["LockingBox"],
        KitKind.Gaiters => text["Gaiters"],
        KitKind.ModelSnake => text["ModelSnake"],
        KitKind.Radio => text["Radio"],
        KitKind.DrillSet => text["DrillSet"],
    };

    /// <summary>How a piece stands, as a sentence.</summary>
    public static string Of(this IStringLocalizer<KitText> text, KitState state) => state switch
    {
        KitState.Usable(_, var due) => text["Usable", Written.Date(due)],
        KitState.NeverInspected => text["NeverInspected"],
        KitState.NotFit(var on, var reason) => text["NotFit", Written.Date(on), reason],
        KitState.Overdue(var due) => text["Overdue", Written.Date(due)],
        KitState.OutOfUse(var on, var reason) => text["OutOfUse", Written.Date(on), reason],
        _ => throw new UnreachableException(),
    };
}

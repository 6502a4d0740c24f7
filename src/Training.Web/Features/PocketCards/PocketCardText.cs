namespace Training.Web.Features.PocketCards;

/// <summary>Names the texts about pocket cards: PocketCardText.resx and PocketCardText.es.resx.</summary>
public sealed class PocketCardText;

namespace Training.Scoring;

/// <summary>In what surroundings and with what kit a practical was scored; every sheet says it (docs/rules.md, "Practicals").</summary>
/// <param name="Surroundings">Ground, light and weather in a few words, 1 to 500 characters.</param>
/// <param name="AirTemperature">In whole °C, −50 to 60, or null where nobody measured it.</param>
/// <param name="Kit">The labels of the pieces that were used, in words, 1 to 500 characters.</param>
/// <param name="Pieces">The same from the register; none on sheets from before there was one.</param>
public sealed record PracticalConditions(string Surroundings, int? AirTemperature, string Kit, IReadOnlyList<UsedKit> Pieces);

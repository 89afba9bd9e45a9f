namespace ElectroRules.Internal;

/// <summary>A number together with the step that it came from.</summary>
internal readonly record struct Figure(double Value, short Step);

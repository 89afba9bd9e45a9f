namespace ElectroRules.Internal;

/// <summary>A number together with the step that it came from.</summary>
[System.Runtime.InteropServices.StructLayout(System.Runtime.InteropServices.LayoutKind.Auto)]
internal readonly record struct Figure(double Value, short Step);

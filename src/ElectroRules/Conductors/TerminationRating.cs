namespace ElectroRules.Conductors;

/// <summary>The temperature marked for a termination.</summary>
public enum TerminationRating
{
    /// <summary>60 °C.</summary>
    C60 = 1,

    /// <summary>75 °C.</summary>
    C75,

    /// <summary>90 °C; the final ampacity is still held to the 75 °C column.</summary>
    C90,
}

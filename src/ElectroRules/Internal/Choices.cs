using System.Runtime.CompilerServices;

namespace ElectroRules.Internal;

/// <summary>Whether a value of an enumeration is a defined one, without the cost of the general question: ours run from 1 without a gap.</summary>
internal static class Choices<T>
    where T : struct, Enum
{
    private static readonly int Last = DenseLast();

    internal static bool IsDefined(T choice)
    {
        int number = Unsafe.As<T, int>(ref choice);
        return Last > 0 ? number >= 1 && number <= Last : Enum.IsDefined(choice);
    }

    /// <summary>The last number when the enumeration is one of ours; 0 when it has a gap, another start or another size.</summary>
    private static int DenseLast()
    {
        T[] all = Enum.GetValues<T>();
        if (Enum.GetUnderlyingType(typeof(T)) != typeof(int))
        {
            return 0;
        }

        for (int i = 0; i < all.Length; i++)
        {
            if (Unsafe.As<T, int>(ref all[i]) != i + 1)
            {
                return 0;
            }
        }

        return all.Length;
    }
}

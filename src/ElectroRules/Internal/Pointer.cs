using System.Globalization;

namespace ElectroRules.Internal;

/// <summary>A place in the list of a request, written as a JSON pointer only when it is needed.</summary>
internal readonly record struct Pointer(string Prefix, int Index)
{
    internal string To(string member) => string.Create(CultureInfo.InvariantCulture, $"{Prefix}/route/{Index}{member}");
}

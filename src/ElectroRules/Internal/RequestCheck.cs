using System.Globalization;
using ElectroRules.Results;

namespace ElectroRules.Internal;

/// <summary>Something wrong with a request that is the caller's error: a number out of range, an undefined choice.</summary>
/// <param name="Path">The member, as written in C#, for example "Route[1].Length".</param>
/// <param name="Message">What is wrong, with the value and the range.</param>
internal readonly record struct RequestFault(string Path, string Message);

/// <summary>Checks the members of a request. In C# the first fault is thrown; for JSON all faults are collected.</summary>
internal readonly struct RequestCheck(List<RequestFault>? faults, string prefix, string? part = null, int index = RequestCheck.NoIndex)
{
    private const int NoIndex = -1;

    internal static RequestCheck Throwing => new(faults: null, string.Empty);

    // The last part is joined to the prefix when a fault or a part within it needs it: a sound request makes no text.
    internal RequestCheck In(string member) => new(faults, Prefix(), member);

    internal RequestCheck In(string member, int index) => new(faults, Prefix(), member, index);

    internal void MoreThanZero(double? value, string member, QuantityUnit unit)
    {
        if (value is { } number && !(number > 0 && double.IsFinite(number)))
        {
            Fault(member, number, unit, "more than 0");
        }
    }

    internal void ZeroOrMore(double? value, string member, QuantityUnit unit)
    {
        if (value is { } number && !(number >= 0 && double.IsFinite(number)))
        {
            Fault(member, number, unit, "0 or more");
        }
    }

    internal void Within(double? value, double least, double most, string member, QuantityUnit unit)
    {
        if (value is { } number && !(Limit.AtLeast(number, least) && Limit.AtMost(number, most)))
        {
            Fault(member, number, unit, string.Create(CultureInfo.InvariantCulture, $"from {least} to {most}"));
        }
    }

    internal void Share(double? value, string member)
    {
        if (value is { } number && !(number > 0 && Limit.AtMost(number, 1)))
        {
            Fault(member, number, QuantityUnit.One, "more than 0 and at most 1");
        }
    }

    internal void Defined<T>(T? value, string member)
        where T : struct, Enum
    {
        if (value is { } choice && !Choices<T>.IsDefined(choice))
        {
            Add(member, string.Create(CultureInfo.InvariantCulture, $"{choice:D} is not a defined {typeof(T).Name}; use one of {string.Join(", ", Enum.GetNames<T>())}."));
        }
    }

    internal void NotNull(object? value, string member)
    {
        if (value is null)
        {
            Add(member, "must not be null.");
        }
    }

    internal void Require(bool holds, string member, string message)
    {
        if (!holds)
        {
            Add(member, message);
        }
    }

    private void Fault(string member, double value, QuantityUnit unit, string range)
    {
        string code = unit.Code();
        string suffix = string.Equals(code, "1", StringComparison.Ordinal) ? string.Empty : " " + code;
        Add(member, string.Create(CultureInfo.InvariantCulture, $"must be {range}{suffix}; it was {value}{suffix}."));
    }

    private void Add(string member, string message)
    {
        string path = Prefix() + member;
        if (faults is null)
        {
            throw new ArgumentException($"{path} {message}", path);
        }

        faults.Add(new RequestFault(path, message));
    }

    private string Prefix()
    {
        if (part is null)
        {
            return prefix;
        }

        return index == NoIndex
            ? string.Concat(prefix, part, ".")
            : string.Create(CultureInfo.InvariantCulture, $"{prefix}{part}[{index}].");
    }
}

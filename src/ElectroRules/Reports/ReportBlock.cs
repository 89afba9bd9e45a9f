namespace ElectroRules.Reports;

/// <summary>A part of a report, apart from any format.</summary>
internal abstract record ReportBlock;

/// <summary>A heading; level 1 is the title.</summary>
internal sealed record HeadingBlock(int Level, string Text) : ReportBlock;

/// <summary>A paragraph.</summary>
internal sealed record ParagraphBlock(string Text) : ReportBlock;

/// <summary>Labels with their values.</summary>
internal sealed record PairsBlock(IReadOnlyList<LabelledValue> Pairs) : ReportBlock;

/// <summary>A list of points.</summary>
internal sealed record ListBlock(IReadOnlyList<string> Items) : ReportBlock;

/// <summary>Lines that carry their own numbers, such as the steps of a derivation.</summary>
internal sealed record LinesBlock(IReadOnlyList<string> Lines) : ReportBlock;

/// <summary>A table.</summary>
internal sealed record TableBlock(IReadOnlyList<string> Header, IReadOnlyList<IReadOnlyList<string>> Rows) : ReportBlock;

/// <summary>A label with its value.</summary>
[System.Runtime.InteropServices.StructLayout(System.Runtime.InteropServices.LayoutKind.Auto)]
internal readonly record struct LabelledValue(string Label, string Value);

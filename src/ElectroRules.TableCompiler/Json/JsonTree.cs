using System.Text.Json;

namespace ElectroRules.TableCompiler.Json;

/// <summary>Reads JSON into nodes that know their line.</summary>
internal static class JsonTree
{
    /// <summary>The root of a file; null when the file is not JSON, which is then reported.</summary>
    internal static DataNode? Read(byte[] bytes, FileErrors errors)
    {
        var reader = new Utf8JsonReader(bytes);
        var lines = new LineCounter(bytes);
        try
        {
            reader.Read();
            DataNode root = ReadValue(ref reader, lines, errors);
            reader.Read();
            return root;
        }
        catch (JsonException e)
        {
            errors.Add(DataErrorCode.NotJson, (int)(e.LineNumber ?? 0) + 1, "this is not JSON: " + e.Message);
            return null;
        }
        catch (InvalidOperationException)
        {
            errors.Add(DataErrorCode.NotJson, lines.At(reader.TokenStartIndex), "this text is not UTF-8");
            return null;
        }
    }

    private static DataNode ReadValue(ref Utf8JsonReader reader, LineCounter lines, FileErrors errors)
    {
        int line = lines.At(reader.TokenStartIndex);
        switch (reader.TokenType)
        {
            case JsonTokenType.StartObject:
                return ReadObject(ref reader, line, lines, errors);
            case JsonTokenType.StartArray:
                var array = new DataNode(NodeKind.Array, line);
                while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
                {
                    array.Items.Add(ReadValue(ref reader, lines, errors));
                }

                return array;
            case JsonTokenType.String:
                return new DataNode(NodeKind.Text, line) { Text = reader.GetString()! };
            case JsonTokenType.Null:
                return new DataNode(NodeKind.Null, line);
            default:
                return new DataNode(NodeKind.Other, line);
        }
    }

    private static DataNode ReadObject(ref Utf8JsonReader reader, int line, LineCounter lines, FileErrors errors)
    {
        var node = new DataNode(NodeKind.Object, line);
        while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
        {
            string name = reader.GetString()!;
            int nameLine = lines.At(reader.TokenStartIndex);
            reader.Read();
            DataNode value = ReadValue(ref reader, lines, errors);
            if (node.Members.Exists(member => string.Equals(member.Name, name, StringComparison.Ordinal)))
            {
                errors.Add(DataErrorCode.PropertyTwice, nameLine, $"the property '{name}' stands here a second time");
            }
            else
            {
                node.Members.Add(new DataMember(name, nameLine, value));
            }
        }

        return node;
    }

    /// <summary>Counts lines up to a place; the places asked for never go back.</summary>
    private sealed class LineCounter(byte[] bytes)
    {
        private int _place;
        private int _line = 1;

        internal int At(long place)
        {
            for (; _place < place; _place++)
            {
                if (bytes[_place] == (byte)'\n')
                {
                    _line++;
                }
            }

            return _line;
        }
    }
}

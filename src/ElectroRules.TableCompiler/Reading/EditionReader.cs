using ElectroRules.TableCompiler.Json;
using ElectroRules.TableCompiler.Model;

namespace ElectroRules.TableCompiler.Reading;

/// <summary>Reads the maps from an edition to a text, and sees to it that every edition stands in exactly one of them.</summary>
internal sealed class EditionReader(FileErrors errors)
{
    private readonly HashSet<string> _seen = new(StringComparer.Ordinal);

    /// <summary>The editions of a map, oldest first.</summary>
    internal List<EditionText> Read(DataNode map)
    {
        var found = new List<EditionText>();
        foreach (DataMember member in map.Members)
        {
            string? edition = Vocabulary.MemberOf(Vocabulary.Editions, member.Name);
            if (edition is null)
            {
                errors.Add(
                    DataErrorCode.UnknownEdition, member.Line,
                    $"'{member.Name}' is not an edition; there are {Vocabulary.CodesOf(Vocabulary.Editions)}");
                continue;
            }

            if (!_seen.Add(member.Name))
            {
                errors.Add(DataErrorCode.EditionTwice, member.Line, $"the edition {member.Name} stands in two places");
            }

            if (!ObjectReader.Is(member.Value, NodeKind.Text, $"the text of {member.Name}", errors))
            {
                continue;
            }

            if (string.IsNullOrWhiteSpace(member.Value.Text))
            {
                errors.Add(DataErrorCode.EmptyText, member.Line, $"the text of {member.Name} must not be empty");
            }

            found.Add(new EditionText(edition, member.Value.Text));
        }

        found.Sort((a, b) => string.CompareOrdinal(a.Edition, b.Edition));
        return found;
    }

    /// <summary>Reports every edition that stood nowhere.</summary>
    internal void RequireAll(int line)
    {
        foreach ((string code, _) in Vocabulary.Editions)
        {
            if (!_seen.Contains(code))
            {
                errors.Add(
                    DataErrorCode.EditionNowhere, line,
                    $"the edition {code} is missing: give it a section or a reason under 'absent'");
            }
        }
    }
}

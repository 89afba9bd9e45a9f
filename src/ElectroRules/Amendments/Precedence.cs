namespace ElectroRules.Amendments;

/// <summary>Which amendment supersedes which, directly or through others that are present.</summary>
internal sealed class Precedence
{
    private readonly bool[,] _above;
    private readonly int _count;

    internal Precedence(Amendment[] amendments)
    {
        _count = amendments.Length;
        _above = new bool[_count, _count];
        for (int i = 0; i < _count; i++)
        {
            for (int j = 0; j < _count; j++)
            {
                _above[i, j] = i != j && amendments[i].Supersedes.Contains(amendments[j].Id, StringComparer.Ordinal);
            }
        }

        for (int via = 0; via < _count; via++)
        {
            for (int i = 0; i < _count; i++)
            {
                for (int j = 0; j < _count; j++)
                {
                    _above[i, j] |= _above[i, via] && _above[via, j];
                }
            }
        }
    }

    internal bool IsAbove(int amendment, int other) => _above[amendment, other];

    internal IEnumerable<int> InCircle() => Enumerable.Range(0, _count).Where(i => _above[i, i]);
}

using System.Text;
using System.Text.Json;

namespace Slabwright.Core.RuleSets;

/// <summary>Finds the line of each value in a JSON text, so that a finding can point at it.</summary>
internal static class JsonLines
{
    internal static readonly JsonReaderOptions Options = new() { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true };

    /// <summary>Line (from 1) of every property and array item, by path such as <c>treatments[2].when.types[0]</c>.</summary>
    internal static Dictionary<string, long> Of(string json)
    {
        var bytes = Encoding.UTF8.GetBytes(json);
        var reader = new Utf8JsonReader(bytes, Options);
        var lines = new Dictionary<string, long>(StringComparer.Ordinal);
        var levels = new Stack<Level>();
        var (line, counted, pending) = (1L, 0, "");
        while (reader.Read())
        {
            var start = (int)reader.TokenStartIndex;
            line += bytes.AsSpan(counted, start - counted).Count((byte)'\n');
            counted = start;
            if (reader.TokenType is JsonTokenType.EndObject or JsonTokenType.EndArray)
            {
                levels.Pop();
                continue;
            }

            if (reader.TokenType == JsonTokenType.PropertyName)
            {
                pending = Join(levels.Peek().Path, reader.GetString()!);
                lines[pending] = line;
                continue;
            }

            var path = levels.TryPeek(out var level) && level.IsArray ? $"{level.Path}[{level.Next++}]" : pending;
            lines.TryAdd(path, line);
            if (reader.TokenType is JsonTokenType.StartObject or JsonTokenType.StartArray)
                levels.Push(new Level(path, reader.TokenType == JsonTokenType.StartArray));
        }

        return lines;
    }

    internal static string Join(string path, string property) => path.Length == 0 ? property : $"{path}.{property}";

    private sealed class Level(string path, bool isArray)
    {
        public string Path { get; } = path;

        public bool IsArray { get; } = isArray;

        public int Next { get; set; }
    }
}

using System.Text;
using CsCheck;

namespace Recipe.Syntax.Tests;

/// <summary>Random recipes, and what two people may do to one.</summary>
internal static class Drafts
{
    private static readonly string[] Tops = ["mould face", "part lid", "part rib", "shop ours", "mould rim", "part box"];
    private static readonly string[] Blocks = ["plies", "cure", "wet-out", "bag"];
    private static readonly string[] Words = ["title", "trim", "overlap", "mass", "service", "use", "hold", "ramp", "accept", "note", "body", "veil", "back", "inner"];
    private static readonly string[] Remarks = ["# a remark", "# another", "# see the sheet", "# from memory"];

    /// <summary>A line with what is in its block (null when it has none) and whether an empty line stands before it.</summary>
    internal sealed record Draft(string Text, List<Draft>? Inside, bool Space)
    {
        public bool IsRemark => Text.StartsWith('#');

        public Draft Copy() => new(Text, Inside?.ConvertAll(draft => draft.Copy()), Space);
    }

    /// <summary>A base and two versions of it. Words and names come again and again.</summary>
    public static Gen<(string Before, string Ours, string Theirs)> Versions { get; } = VersionsOf(mostValue: 4);

    /// <summary>The same, of lines of which hardly two are alike.</summary>
    public static Gen<(string Before, string Ours, string Theirs)> VersionsOfUniqueLines { get; } = VersionsOf(mostValue: 1_000_000);

    private static Gen<(string Before, string Ours, string Theirs)> VersionsOf(int mostValue) => Gen.Select(File(mostValue), Edits(mostValue), Edits(mostValue), (file, ours, theirs) =>
        (Text(file), Text(Edited(file, ours)), Text(Edited(file, theirs))));

    /// <summary>The text of a draft.</summary>
    private static string Text(List<Draft> file)
    {
        var text = new StringBuilder();
        Write(file, 0);
        return text.ToString();

        void Write(List<Draft> drafts, int depth)
        {
            foreach (var draft in drafts)
            {
                text.Append(draft.Space ? "\n" : "").Append(' ', depth * 2).Append(draft.Text);
                if (draft.Inside is { } inside)
                {
                    text.Append(" {\n");
                    Write(inside, depth + 1);
                    text.Append(' ', depth * 2).Append('}');
                }

                text.Append('\n');
            }
        }
    }

    private static Gen<List<Draft>> File(int most) => List(Gen.Frequency((4, Top(most)), (1, Remark(most)), (1, Leaf(most))), 0, 5);

    private static Gen<Draft> Top(int most) =>
        Block(Tops, most, List(Gen.Frequency((4, Leaf(most)), (2, Block(Blocks, most, List(Gen.Frequency((5, Leaf(most)), (1, Remark(most))), 0, 6))), (1, Remark(most))), 0, 5));

    private static Gen<Draft> Block(string[] words, int most, Gen<List<Draft>> inside) => Gen.Select(Pick(words), Gen.Int[0, most], inside, Gen.Bool, (text, number, lines, space) =>
        new Draft(most < 10 ? text : $"{text}-{number}", lines, space));

    private static Gen<Draft> Leaf(int most) => Gen.Select(Pick(Words), Gen.Int[1, most], Gen.Int[0, 9], (word, value, end) =>
        new Draft($"{word}{(value % 2 == 0 ? "  " : " ")}{value} mm{(end == 0 ? "  # so far" : "")}", null, end == 1));

    private static Gen<Draft> Remark(int most) => Gen.Select(Pick(Remarks), Gen.Int[1, most], (text, number) => new Draft(most < 10 ? text : $"{text} {number}", null, false));

    private static Gen<string> Pick(string[] texts) => Gen.Int[0, texts.Length - 1].Select(i => texts[i]);

    private static Gen<List<Draft>> List(Gen<Draft> item, int least, int most) => item.Array[least, most].Select(items => items.ToList());

    private static Gen<Edit[]> Edits(int most) => Gen.Select(Gen.Int[0, 5], Gen.Double[0, 1], Gen.Double[0, 1], Gen.Double[0, 1], Gen.OneOf(Leaf(most), Remark(most), Top(most), Block(Blocks, most, List(Leaf(most), 0, 3))), (what, list, at, to, draft) =>
        new Edit(what, list, at, to, draft)).Array[0, 4];

    private sealed record Edit(int What, double List, double At, double To, Draft Draft);

    private static List<Draft> Edited(List<Draft> file, Edit[] edits)
    {
        var copy = file.ConvertAll(draft => draft.Copy());
        foreach (var edit in edits)
        {
            var lists = Lists(copy).ToList();
            var list = lists[(int)(edit.List * (lists.Count - 1))];
            var at = (int)(edit.At * Math.Max(list.Count - 1, 0));
            switch (edit.What)
            {
                case 0 or 1:
                    list.Insert((int)(edit.At * list.Count), edit.Draft.Copy());
                    break;
                case 2 when list.Count > 0:
                    list.RemoveAt(at);
                    break;
                case 3 when list.Count > 0:
                    // Moved, inside its block.
                    var moved = list[at];
                    list.RemoveAt(at);
                    list.Insert((int)(edit.To * list.Count), moved);
                    break;
                case 4 when list.Count > 0 && list[at].Inside is null:
                    list[at] = list[at] with { Text = list[at].IsRemark ? list[at].Text + ", changed" : list[at].Text.Replace("mm", "cm", StringComparison.Ordinal) };
                    break;
                case 5 when list.Count > 0:
                    // Another layout.
                    list[at] = list[at] with { Text = list[at].IsRemark ? list[at].Text : list[at].Text.Replace(" ", "   ", StringComparison.Ordinal), Space = !list[at].Space };
                    break;
            }
        }

        return copy;
    }

    private static IEnumerable<List<Draft>> Lists(List<Draft> list) => [list, .. list.Where(draft => draft.Inside is not null).SelectMany(draft => Lists(draft.Inside!))];
}

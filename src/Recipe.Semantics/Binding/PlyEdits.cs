using Recipe.Semantics.Findings;
using Recipe.Semantics.Reading;

namespace Recipe.Semantics.Binding;

/// <summary>A variant's edits of the ply list, in the order they are written.</summary>
internal static class PlyEdits
{
    public static void Apply(List<Ply> plies, Lines edits)
    {
        var removed = new List<(Line Edit, Argument Name)>();
        foreach (var edit in edits.All)
        {
            switch (edit.Word.Word)
            {
                case "remove":
                    foreach (var name in edit.Reading.FindAll("name"))
                    {
                        if (Remove(plies, edit, name))
                        {
                            removed.Add((edit, name));
                        }
                    }

                    break;
                case "replace":
                    Replace(plies, edit);
                    break;
                case "insert":
                    Insert(plies, edit);
                    break;
            }
        }

        ReportLeftLying(plies, removed);
    }

    private static bool Remove(List<Ply> plies, Line edit, Argument name)
    {
        var index = Find(plies, edit, name);
        if (index < 0)
        {
            return false;
        }

        plies.RemoveAt(index);
        return true;
    }

    // Looked at last: what lies on it may be taken out too, or put elsewhere, by a later edit.
    private static void ReportLeftLying(List<Ply> plies, List<(Line Edit, Argument Name)> removed)
    {
        foreach (var (edit, name) in removed.Where(one => !plies.Exists(ply => ply.Name == one.Name.Word)))
        {
            foreach (var ply in plies.Where(ply => ply.Line.Text("after") == name.Word))
            {
                edit.Context.Sink.Report(UnknownPly.Removed(name.Where, ply.Name, name.Word!, ply.Line.Where));
            }
        }
    }

    private static void Replace(List<Ply> plies, Line edit)
    {
        if (edit.Reading.Find("name") is not { } name)
        {
            return;
        }

        var index = Find(plies, edit, name);
        if (index >= 0)
        {
            plies[index] = new Ply(edit, name.Word!, name.Where);
        }
    }

    private static void Insert(List<Ply> plies, Line edit)
    {
        if (edit.Reading.Find("name") is not { Word: { } word } name)
        {
            return;
        }

        edit.Context.Sink.Use(NameKind.Ply, word, name.Where, name.Where);
        if (plies.Find(p => p.Name == word) is { } taken)
        {
            edit.Context.Sink.Report(DuplicateName.Ply(name.Where, word, taken.NameWhere));
        }

        plies.Add(new Ply(edit, word, name.Where));
    }

    private static int Find(List<Ply> plies, Line edit, Argument name)
    {
        var index = plies.FindIndex(p => p.Name == name.Word);
        edit.Context.Sink.Use(NameKind.Ply, name.Word!, name.Where, index < 0 ? null : plies[index].NameWhere);
        if (index < 0)
        {
            edit.Context.Sink.Report(UnknownPly.Create(name.Where, name.Word!, plies.Select(p => p.Name)));
        }

        return index;
    }
}

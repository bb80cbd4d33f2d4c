using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Text;
using Recipe.Model;
using Recipe.Text;

namespace Recipe.Semantics.Tests;

/// <summary>Everything that binding gives, as one text, to compare two bindings by.</summary>
internal static class Dump
{
    public static string Of(BoundFile bound)
    {
        var text = new StringBuilder();
        foreach (var finding in bound.Findings)
        {
            text.Append(finding.Where).Append(' ').Append(finding.Severity).Append(' ').Append(finding.Descriptor.Code).Append(' ').Append(finding.Message).Append('\n');
            foreach (var label in finding.Labels)
            {
                text.Append("  ").Append(label.Where).Append(' ').Append(label.Text).Append('\n');
            }

            foreach (var fix in finding.Fixes)
            {
                text.Append("  ").Append(fix.Title).AppendJoin(", ", fix.Edits.Select(e => $" {e.Where}:{e.NewText}")).Append('\n');
            }
        }

        text.AppendJoin('\n', bound.Names.Select(n => $"{n.Kind} {n.Name} {n.Where} {n.Declaration}")).Append('\n');
        Write(text, bound.Model with { Materials = new Dictionary<string, Material>() });
        foreach (var (name, material) in bound.Model.Materials.Where(m => !m.Value.FromBook))
        {
            text.Append(name).Append(' ');
            Write(text, material);
        }

        return text.ToString();
    }

    private static void Write(StringBuilder text, object? value)
    {
        switch (value)
        {
            case null:
                text.Append('-');
                break;
            case string or IFormattable or bool or SourceSpan:
                text.Append(CultureInfo.InvariantCulture, $"{value}");
                break;
            case Material { FromBook: true } material:
                text.Append("book:").Append(material.Name);
                break;
            case IEnumerable all:
                text.Append('[');
                foreach (var one in all)
                {
                    Write(text, one);
                    text.Append(';');
                }

                text.Append(']');
                break;
            default:
                text.Append('{');
                foreach (var property in value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.GetIndexParameters().Length == 0))
                {
                    text.Append(property.Name).Append('=');
                    Write(text, property.GetValue(value));
                    text.Append(' ');
                }

                text.Append("}\n");
                break;
        }
    }
}

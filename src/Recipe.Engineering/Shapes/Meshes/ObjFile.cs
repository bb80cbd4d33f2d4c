using System.Globalization;

namespace Recipe.Engineering;

/// <summary>Reads Wavefront object files: v, f, g and o; polygons become fans from their first corner; the rest of the lines say nothing of shape.</summary>
internal static class ObjFile
{
    /// <summary>Whether the first word that is no remark is one of the form's.</summary>
    internal static bool Is(ReadOnlySpan<byte> bytes)
    {
        MeshWords words = new(bytes);
        while (!words.IsAtEnd)
        {
            ReadOnlySpan<byte> word = words.NextInLine();
            if (!word.IsEmpty && word[0] != '#')
            {
                return word.SequenceEqual("v"u8) || word.SequenceEqual("vn"u8) || word.SequenceEqual("vt"u8) || word.SequenceEqual("g"u8)
                    || word.SequenceEqual("o"u8) || word.SequenceEqual("f"u8) || word.SequenceEqual("s"u8)
                    || word.SequenceEqual("mtllib"u8) || word.SequenceEqual("usemtl"u8);
            }

            words.RestOfLine();
        }

        return false;
    }

    internal static MeshRefusal? Read(ReadOnlySpan<byte> bytes, MeshSoup soup)
    {
        MeshWords words = new(bytes);
        (int greatest, int lineOfGreatest) = (-1, 0);
        while (!words.IsAtEnd)
        {
            ReadOnlySpan<byte> word = words.NextInLine();
            MeshRefusal? refusal = null;
            if (word.SequenceEqual("v"u8))
            {
                refusal = MeshNumbers.Three(ref words, out double x, out double y, out double z);
                soup.AddPoint(x, y, z);
            }
            else if (word.SequenceEqual("f"u8))
            {
                int line = words.Line;
                refusal = Face(ref words, soup, out int most);
                (greatest, lineOfGreatest) = most > greatest ? (most, line) : (greatest, lineOfGreatest);
            }
            else if (word.SequenceEqual("g"u8) || word.SequenceEqual("o"u8))
            {
                soup.StartGroup(MeshWords.Text(words.RestOfLine()));
                continue;
            }

            if (refusal is not null)
            {
                return refusal;
            }

            words.RestOfLine();
        }

        // A face may come before its points, so corners are looked for at the end.
        return greatest >= soup.PointCount
            ? new MeshRefusal(MeshRefusalReason.NoSuchCorner, Found: greatest + 1.0, Limit: soup.PointCount, Line: lineOfGreatest)
            : null;
    }

    private static MeshRefusal? Face(ref MeshWords words, MeshSoup soup, out int most)
    {
        (int first, int last, int corners) = (0, 0, 0);
        most = -1;
        while (true)
        {
            ReadOnlySpan<byte> word = words.NextInLine();
            if (word.SequenceEqual("\\"u8))
            {
                words.RestOfLine();
                continue;
            }

            if (word.IsEmpty || word[0] == '#')
            {
                return corners >= 3 ? null : new MeshRefusal(MeshRefusalReason.Malformed, "f", corners, 3, words.Line);
            }

            int slash = word.IndexOf((byte)'/');
            ReadOnlySpan<byte> figure = slash < 0 ? word : word[..slash];
            if (!int.TryParse(figure, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int said))
            {
                return new MeshRefusal(MeshRefusalReason.Malformed, MeshWords.Text(word), Line: words.Line);
            }

            // A figure below zero counts back from the last point.
            int corner = said > 0 ? said - 1 : said == 0 ? -1 : soup.PointCount + said;
            if (corner < 0)
            {
                return new MeshRefusal(MeshRefusalReason.NoSuchCorner, Found: said, Limit: soup.PointCount, Line: words.Line);
            }

            most = Math.Max(most, corner);
            if (++corners == 1)
            {
                first = corner;
            }
            else if (corners > 2)
            {
                if (soup.IsFull)
                {
                    return new MeshRefusal(MeshRefusalReason.TooManyTriangles, Limit: MeshReading.MaximumTriangles, Line: words.Line);
                }

                soup.AddTriangle(first, last, corner);
            }

            last = corner;
        }
    }
}

using System.Text;

namespace Recipe.LanguageServer.Tests;

/// <summary>Takes apart what a server writes; stricter than the protocol, since the server always writes the same one header.</summary>
internal static class Frames
{
    public static IEnumerable<byte[]> Read(Stream stream)
    {
        while (true)
        {
            var header = new StringBuilder();
            while (!header.ToString().EndsWith("\r\n\r\n", StringComparison.Ordinal))
            {
                var next = stream.ReadByte();
                if (next < 0)
                {
                    Assert.True(header.Length == 0, $"The stream ends inside a header: {header}");
                    yield break;
                }

                header.Append((char)next);
            }

            const string name = "Content-Length: ";
            Assert.StartsWith(name, header.ToString());
            var body = new byte[int.Parse(header.ToString()[name.Length..].Trim())];
            stream.ReadExactly(body);
            yield return body;
        }
    }
}

using System.Reflection;
using Recipe.Preview.Http;

namespace Recipe.Preview;

/// <summary>The page itself: texts inside this assembly, and no other file.</summary>
internal static class PageFiles
{
    private const string Folder = "page/";

    /// <summary>A file of the page; null when it has none of that name. The page itself has no name.</summary>
    public static HttpReply? Find(string name)
    {
        var type = name switch
        {
            "" => "text/html; charset=utf-8",
            _ when name.EndsWith(".js", StringComparison.Ordinal) => "text/javascript; charset=utf-8",
            _ when name.EndsWith(".css", StringComparison.Ordinal) => "text/css; charset=utf-8",
            _ when name.EndsWith(".svg", StringComparison.Ordinal) => "image/svg+xml",
            _ => null,
        };
        using var stream = type is null ? null : Assembly.GetExecutingAssembly().GetManifestResourceStream(Folder + (name.Length == 0 ? "index.html" : name));
        if (stream is null)
        {
            return null;
        }

        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return new HttpReply(200, type!, bytes);
    }
}

using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace Recipe.Preview;

/// <summary>
/// The port and the token that a file's preview had last time, so that a page that stayed open finds it again. They stand in a file that only this
/// user may read; one that others may read is not believed.
/// </summary>
/// <param name="Port">The port; 0 when there was none.</param>
/// <param name="Token">The token: 32 random bytes in hexadecimal.</param>
internal sealed record Seat(int Port, string Token)
{
    private const int TokenBytes = 32;
    private const UnixFileMode OthersToo =
        UnixFileMode.GroupRead | UnixFileMode.GroupWrite | UnixFileMode.GroupExecute | UnixFileMode.OtherRead | UnixFileMode.OtherWrite | UnixFileMode.OtherExecute;

    /// <summary>A new one.</summary>
    public static Seat New() => new(0, RandomNumberGenerator.GetHexString(2 * TokenBytes, lowercase: true));

    /// <summary>The one of last time, or a new one.</summary>
    public static Seat Remembered(string? folder, string path)
    {
        if (folder is null)
        {
            return New();
        }

        try
        {
            var file = FileOf(folder, path);
            if (new FileInfo(file) is { Exists: true, LinkTarget: null } && (OperatingSystem.IsWindows() || (File.GetUnixFileMode(file) & OthersToo) == 0)
                && File.ReadAllLines(file) is [var port, { Length: 2 * TokenBytes } token]
                && int.TryParse(port, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number is > 0 and <= ushort.MaxValue
                && token.All(char.IsAsciiHexDigitLower))
            {
                return new Seat(number, token);
            }
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // Then it is a new one.
        }

        return New();
    }

    /// <summary>Remembers it; a folder that cannot be written to only costs the next start its old address.</summary>
    public void Remember(string? folder, string path)
    {
        if (folder is null)
        {
            return;
        }

        try
        {
            if (OperatingSystem.IsWindows())
            {
                Directory.CreateDirectory(folder);
            }
            else
            {
                Directory.CreateDirectory(folder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
            }

            var file = FileOf(folder, path);
            var temporary = string.Create(CultureInfo.InvariantCulture, $"{file}.{Environment.ProcessId}");
            var options = new FileStreamOptions { Mode = FileMode.Create, Access = FileAccess.Write };
            if (!OperatingSystem.IsWindows())
            {
                options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
            }

            using (var writer = new StreamWriter(temporary, options))
            {
                writer.Write(string.Create(CultureInfo.InvariantCulture, $"{Port}\n{Token}\n"));
            }

            File.Move(temporary, file, overwrite: true);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // As said.
        }
    }

    private static string FileOf(string folder, string path) =>
        Path.Combine(folder, Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(path)).AsSpan(0, 10)));
}

using System.Diagnostics;
using System.Text;
using Recipe.Fuzzing;
using Recipe.Fuzzing.Targets;
using SharpFuzz;

// TARGET                    reads inputs from afl-fuzz, which starts this program
// TARGET replay FILE...     runs inputs and says what each breaks
// TARGET seeds FOLDER       writes the inputs to begin with
// TARGET words FILE         writes the dictionary
if (args.Length == 0 || FuzzTargets.Find(args[0]) is not { } target)
{
    Console.Error.WriteLine($"The targets are {string.Join(", ", FuzzTargets.All.Select(known => known.Name))}.");
    return 2;
}

switch (args.Skip(1).FirstOrDefault())
{
    case null:
        Fuzzer.OutOfProcess.Run(stream =>
        {
            using var copy = new MemoryStream();
            stream.CopyTo(copy);
            target.Run(copy.ToArray());
        });
        return 0;
    case "replay":
        var broken = 0;
        foreach (var path in args.Skip(2))
        {
            broken += Replay(target, path) ? 0 : 1;
        }

        return broken == 0 ? 0 : 1;
    case "seeds":
        var folder = Directory.CreateDirectory(args[2]).FullName;
        foreach (var (name, bytes) in target.Seeds())
        {
            File.WriteAllBytes(Path.Combine(folder, name), bytes);
        }

        return 0;
    case "words":
        File.WriteAllLines(args[2], target.Words.Distinct(StringComparer.Ordinal).Select(Quoted));
        return 0;
    default:
        Console.Error.WriteLine($"There is no {args[1]} here.");
        return 2;
}

static bool Replay(IFuzzTarget target, string path)
{
    var watch = Stopwatch.StartNew();
    try
    {
        target.Run(File.ReadAllBytes(path));
        Console.WriteLine($"ok      {watch.ElapsedMilliseconds,6} ms  {path}");
        return true;
    }
    catch (Exception problem)
    {
        Console.WriteLine($"BROKEN  {watch.ElapsedMilliseconds,6} ms  {path}");
        Console.WriteLine(string.Join('\n', problem.ToString().Split('\n').Take(8)));
        return false;
    }
}

// The form of afl-fuzz: what is not printable, and quotes, in hexadecimal.
static string Quoted(string word) =>
    "\"" + string.Concat(Encoding.UTF8.GetBytes(word).Select(b => b is >= 0x20 and < 0x7F and not ((byte)'"' or (byte)'\\') ? ((char)b).ToString() : $"\\x{b:x2}")) + "\"";

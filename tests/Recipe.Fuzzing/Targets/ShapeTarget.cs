using Recipe.Compiler;
using Recipe.TestKit;

namespace Recipe.Fuzzing.Targets;

/// <summary>A recipe whose mould is a file of any bytes: it is checked, and what is found points into its text.</summary>
internal sealed class ShapeTarget : IFuzzTarget
{
    // Draping a large mesh takes seconds; what a fuzzer changes is seen on a small one.
    private const int Largest = 4_096;
    private const string File = "shapes/seat-pan.recipe";
    private static readonly string Text = Repository.Read("samples/shapes/seat-pan.recipe");
    private static readonly string Shop = Repository.Read("samples/shop.recipe");

    public string Name => "shape";

    public IEnumerable<string> Words => new MeshTarget().Words;

    public IEnumerable<(string Name, byte[] Bytes)> Seeds() => new MeshTarget().Seeds().Where(seed => seed.Bytes.Length <= Largest);

    public void Run(byte[] bytes)
    {
        if (bytes.Length > Largest)
        {
            return;
        }

        var files = new MemoryFiles { [File] = Text, ["shop.recipe"] = Shop, Shape = new ShapeBytes("shapes/seat-pan.stl", bytes) };
        BrokenPropertyException.ThrowUnless(new Workspace(files, new DateOnly(2026, 5, 14)).TryCompile(File, out var file), "The file is not found.");
        foreach (var finding in file!.Findings)
        {
            FindingRules.Hold(finding, file.Source);
        }
    }
}

using BenchmarkDotNet.Running;
using Recipe.Benchmarks;

// The libraries: dotnet run -c Release --project tests/Recipe.Benchmarks -- --filter '*'
// The published binary: dotnet run -c Release --project tests/Recipe.Benchmarks -- native PATH/recipe
if (args is ["native", var binary, "preview"])
{
    return NativeBudgets.MeasurePreview(binary);
}

if (args is ["native", var all])
{
    return NativeBudgets.Measure(all);
}

BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
return 0;

using BenchmarkDotNet.Running;
using Recipe.Benchmarks;

// The libraries: dotnet run -c Release --project tests/Recipe.Benchmarks -- --filter '*'
// The published binary: dotnet run -c Release --project tests/Recipe.Benchmarks -- native PATH/recipe [WORD]
// How its times grow: dotnet run -c Release --project tests/Recipe.Benchmarks -- growth PATH/recipe
if (args is ["native", var binary, .. { Length: <= 1 } words])
{
    return NativeBudgets.Measure(binary, words.FirstOrDefault(""));
}

if (args is ["growth", var program])
{
    return GrowthCurves.Measure(program);
}

BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
return 0;

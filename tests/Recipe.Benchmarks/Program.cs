// Run all with: dotnet run -c Release --project tests/Recipe.Benchmarks -- --filter '*'
BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);

using System.CommandLine;

var root = new RootCommand("Checks and compiles recipes for thin composite parts made in moulds.");
return root.Parse(args).Invoke();

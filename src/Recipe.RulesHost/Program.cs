using System.Reflection;
using Recipe.RulesHost;

// Only the protocol writes to standard output. Neither stream is closed at the end: a rule may still run on the other thread, and what it says
// then shall go nowhere and not be an exception.
var output = Console.OpenStandardOutput();
var input = Console.OpenStandardInput();
Console.SetOut(TextWriter.Null);
var version = typeof(HostLoop).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion;
var cache = args is ["--cache", var folder] ? folder : null;
try
{
    new HostLoop(input, output, version, cache).Run();
    return 0;
}
catch (IOException)
{
    // The program is gone.
    return 1;
}

using System.Text.Json;
using Recipe.RulesProcess.Protocol;

namespace Recipe.Fuzzing.Targets;

/// <summary>Lines between the program and the process of rules, both ways: what is read is written and read again as the same line.</summary>
internal sealed class WireTarget : IFuzzTarget
{
    public string Name => "wire";

    public IEnumerable<string> Words =>
        ["\"protocol\":1", "\"id\":", "\"files\":", "\"parts\":", "\"skip\":", "\"skipFiles\":", "\"facts\":", "\"elements\":", "\"kind\":", "\"at\":", "\"answer\":", "\"rules\":", "\"diagnostics\":", "\"findings\":", "\"notChecked\":", "\"problems\":", "\"compiled\":", "\"assemblies\":", "\"severity\":", "[\"q\",1]", "null", "[]", "{}", "1e400", "\"\\ud800\""];

    public IEnumerable<(string Name, byte[] Bytes)> Seeds() =>
    [
        ("request", """{"protocol":1,"id":1,"files":[{"name":"a.rule.cs","text":"x"}],"skip":[{"file":"a","rule":"b"}],"skipFiles":["c"],"parts":[{"kind":"part","facts":{"mass":["q",1.5,true],"title":["t","a"],"wet":["y",1]},"elements":{"ply":[{"kind":"ply","facts":{"n":["n",1],"w":["w","x"]},"elements":{}}]}}]}"""u8.ToArray()),
        ("progress", """{"at":1,"file":"a.rule.cs","rule":"b","part":0}"""u8.ToArray()),
        ("answer", """{"answer":1,"rules":[],"diagnostics":[{"file":"a","start":0,"end":1,"code":"CS1","message":"m"}],"findings":[{"file":"a","rule":"b","part":0,"group":"ply","index":0,"severity":1,"message":"m"}],"notChecked":[{"file":"a","rule":"b","part":0,"missing":"mass"}],"problems":[{"kind":0,"message":"m"}],"compiled":["a"],"assemblies":["b"]}"""u8.ToArray()),
        ("greeting", """{"protocol":1,"host":"1"}"""u8.ToArray()),
    ];

    public void Run(byte[] bytes)
    {
        Reads(() => AnswerWire.ReadGreeting(bytes));
        Reads(() =>
        {
            var request = RequestWire.Read(bytes);
            var line = RequestWire.Write(request);
            BrokenPropertyException.ThrowUnless(RequestWire.Write(RequestWire.Read(line)).AsSpan().SequenceEqual(line), "A request is another one once it was written and read.");
        });
        Reads(() =>
        {
            var (progress, answer) = AnswerWire.Read(bytes);
            BrokenPropertyException.ThrowUnless(progress is null != answer is null, "Progress and an answer, or neither.");
            var line = answer is null ? AnswerWire.Write(progress!) : AnswerWire.Write(answer);
            var (progressAgain, answerAgain) = AnswerWire.Read(line);
            BrokenPropertyException.ThrowUnless(
                (answerAgain is null ? AnswerWire.Write(progressAgain!) : AnswerWire.Write(answerAgain)).AsSpan().SequenceEqual(line),
                "An answer is another one once it was written and read.");
        });
    }

    /// <summary>What the two ends take for a line that is none; see HostLoop and HostSession.</summary>
    private static void Reads(Action read)
    {
        try
        {
            read();
        }
        catch (Exception problem) when (problem is JsonException or InvalidOperationException)
        {
            // Refused.
        }
    }
}

namespace Recipe.RulesHost.Compiling;

/// <summary>What the compiler writes into an assembly for the author, in the form of <see cref="RuleAnalyzers.AllowList.NameLists"/>. An author may write none of it.</summary>
internal static class CompilerNames
{
    public const string List = """
        Recipe.RulesHost.Running.Steps: Take Enter Enters Through Counted Size Text
        System.Action: .ctor
        System.Action`1: .ctor
        System.Action`2: .ctor
        System.Action`3: .ctor
        System.Func`1: .ctor
        System.Func`2: .ctor
        System.Func`3: .ctor
        System.Func`4: .ctor
        System.Func`5: .ctor
        System.Predicate`1: .ctor
        System.Comparison`1: .ctor
        System.String: Format(IFormatProvider,String,Object[])
        System.Object: GetHashCode
        System.Type: GetTypeFromHandle op_Equality
        System.RuntimeTypeHandle:
        System.RuntimeFieldHandle:
        System.Environment: CurrentManagedThreadId
        System.NotSupportedException: .ctor()
        System.IDisposable: Dispose
        System.MemoryExtensions: AsSpan
        System.Span`1: .ctor Item Slice CopyTo Length op_Implicit
        System.ReadOnlySpan`1: .ctor Item Slice CopyTo Length op_Implicit ToArray
        System.Collections.Generic.EqualityComparer`1: Default Equals GetHashCode
        System.Collections.Generic.IEnumerable`1: *
        System.Collections.Generic.IEnumerator`1: *
        System.Collections.Generic.ICollection`1: *
        System.Collections.Generic.IList`1: *
        System.Collections.IList: *
        System.Collections.ICollection: *
        System.Array: SetValue GetValue CopyTo Clone Rank
        System.Text.StringBuilder: Append(Object) Append(String)
        System.Runtime.CompilerServices.RuntimeHelpers: InitializeArray EnsureSufficientExecutionStack GetSubArray CreateSpan
        System.Runtime.CompilerServices.DefaultInterpolatedStringHandler: .ctor AppendLiteral AppendFormatted ToStringAndClear
        System.Text.StringBuilder+AppendInterpolatedStringHandler: .ctor AppendLiteral AppendFormatted
        System.Runtime.CompilerServices.SwitchExpressionException: .ctor
        System.Runtime.CompilerServices.Unsafe: As Add AsRef
        System.Runtime.InteropServices.MemoryMarshal: CreateSpan CreateReadOnlySpan
        System.Runtime.InteropServices.CollectionsMarshal: SetCount AsSpan
        System.Diagnostics.DebuggerBrowsableState:
        System.Diagnostics.DebuggableAttribute+DebuggingModes:
        System.InvalidOperationException: .ctor()
        System.IndexOutOfRangeException: .ctor()
        System.Runtime.CompilerServices.IsExternalInit:
        System.Runtime.CompilerServices.InlineArray2`1:
        System.Runtime.CompilerServices.InlineArray3`1:
        System.Runtime.CompilerServices.InlineArray4`1:
        System.Runtime.CompilerServices.InlineArray5`1:
        System.Runtime.CompilerServices.InlineArray6`1:
        System.Runtime.CompilerServices.InlineArray7`1:
        System.Runtime.CompilerServices.InlineArray8`1:
        System.Runtime.CompilerServices.InlineArray9`1:
        System.Runtime.CompilerServices.InlineArray10`1:
        System.Runtime.CompilerServices.InlineArray11`1:
        System.Runtime.CompilerServices.InlineArray12`1:
        System.Runtime.CompilerServices.InlineArray13`1:
        System.Runtime.CompilerServices.InlineArray14`1:
        System.Runtime.CompilerServices.InlineArray15`1:
        System.Runtime.CompilerServices.InlineArray16`1:
        System.Collections.Generic.List`1: .ctor(Int32)
        """;
}

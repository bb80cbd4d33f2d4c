namespace Recipe.RuleAnalyzers.AllowList;

/// <summary>
/// What a rule may name: a line for each type, with its members. A member alone stands for all its overloads, with types in
/// brackets for that overload; a property alone may be read, with <c>=</c> also be written; <c>*</c> is every member.
/// Not on the list is what could touch files, the network, other threads, time, chance, the machine or the runtime itself, what
/// depends on the process (hash codes of texts), and what allocates by a number (capacities, padding).
/// </summary>
internal static class NameLists
{
    /// <summary>What an author may write.</summary>
    public const string Source = """
        System.Object: .ctor Equals ToString
        System.ValueType:
        System.Enum: ToString() CompareTo Equals
        System.Boolean: Equals CompareTo ToString
        System.Byte: Equals CompareTo ToString MaxValue MinValue
        System.Int16: Equals CompareTo ToString MaxValue MinValue
        System.Int32: Equals CompareTo ToString MaxValue MinValue Abs Max Min Clamp Sign
        System.UInt32: Equals CompareTo ToString MaxValue MinValue
        System.Int64: Equals CompareTo ToString MaxValue MinValue Abs Max Min Clamp Sign
        System.UInt64: Equals CompareTo ToString MaxValue MinValue
        System.Single: Equals CompareTo ToString MaxValue MinValue IsNaN IsFinite IsInfinity NaN PositiveInfinity NegativeInfinity
        System.Double: Equals CompareTo ToString MaxValue MinValue IsNaN IsFinite IsInfinity NaN PositiveInfinity NegativeInfinity Epsilon Abs Max Min Clamp Sign Round Floor Ceiling Truncate Sqrt Pow
        System.Decimal: * -Parse -TryParse -GetHashCode -GetTypeCode -GetBits -TryGetBits -TryFormat
        System.Void:
        System.Char: Equals CompareTo ToString IsDigit IsLetter IsLetterOrDigit IsUpper IsLower IsWhiteSpace IsPunctuation ToUpperInvariant ToLowerInvariant
        System.String: Empty Length Chars Contains StartsWith EndsWith Equals IndexOf LastIndexOf IsNullOrEmpty IsNullOrWhiteSpace Join Concat Replace Split Substring ToLowerInvariant ToUpperInvariant Trim TrimEnd TrimStart CompareOrdinal op_Equality op_Inequality ToString() GetEnumerator Create(IFormatProvider,DefaultInterpolatedStringHandler)
        System.CharEnumerator: Current MoveNext
        System.StringComparison: *
        System.StringSplitOptions: *
        System.StringComparer: Ordinal OrdinalIgnoreCase
        System.MidpointRounding: *
        System.Math: *
        System.Nullable`1: .ctor HasValue Value GetValueOrDefault Equals ToString op_Implicit op_Explicit
        System.Array: Length Empty IndexOf Reverse Sort GetEnumerator
        System.Action: Invoke
        System.Action`1: Invoke
        System.Action`2: Invoke
        System.Action`3: Invoke
        System.Func`1: Invoke
        System.Func`2: Invoke
        System.Func`3: Invoke
        System.Func`4: Invoke
        System.Func`5: Invoke
        System.Predicate`1: Invoke
        System.Comparison`1: Invoke
        System.ValueTuple: .ctor
        System.ValueTuple`1: .ctor Item1 Equals ToString
        System.ValueTuple`2: .ctor Item1 Item2 Equals CompareTo ToString
        System.ValueTuple`3: .ctor Item1 Item2 Item3 Equals CompareTo ToString
        System.ValueTuple`4: .ctor Item1 Item2 Item3 Item4 Equals CompareTo ToString
        System.ValueTuple`5: .ctor Item1 Item2 Item3 Item4 Item5 Equals CompareTo ToString
        System.ValueTuple`6: .ctor Item1 Item2 Item3 Item4 Item5 Item6 Equals CompareTo ToString
        System.ValueTuple`7: .ctor Item1 Item2 Item3 Item4 Item5 Item6 Item7 Equals CompareTo ToString
        System.IEquatable`1: Equals
        System.IComparable: CompareTo
        System.IComparable`1: CompareTo
        System.IFormattable:
        System.IFormatProvider:
        System.IDisposable: Dispose
        System.Index: * -GetHashCode
        System.Range: * -GetHashCode
        System.Exception:
        System.SystemException:
        System.ArgumentException: .ctor(String)
        System.InvalidOperationException: .ctor(String)
        System.Globalization.CultureInfo: InvariantCulture
        System.Runtime.CompilerServices.DefaultInterpolatedStringHandler:
        System.Span`1:
        System.ReadOnlySpan`1: op_Implicit
        System.MemoryExtensions: Contains IndexOf SequenceEqual
        System.Text.StringBuilder: .ctor() .ctor(String) Append(String) Append(Char) Append(Int32) Append(Double) Append(Boolean) Append(AppendInterpolatedStringHandler) AppendLine() AppendLine(String) Length ToString()
        System.Text.StringBuilder+AppendInterpolatedStringHandler:
        System.Collections.IEnumerable: GetEnumerator
        System.Collections.IEnumerator: Current MoveNext Reset
        System.Collections.Generic.IEnumerable`1: GetEnumerator
        System.Collections.Generic.IEnumerator`1: Current
        System.Collections.Generic.IReadOnlyCollection`1: Count
        System.Collections.Generic.IReadOnlyList`1: Item
        System.Collections.Generic.IReadOnlyDictionary`2: Item Keys Values ContainsKey TryGetValue
        System.Collections.Generic.IReadOnlySet`1: Contains
        System.Collections.Generic.ICollection`1: Count Contains
        System.Collections.Generic.IList`1: Item IndexOf
        System.Collections.Generic.IDictionary`2: Item Keys Values ContainsKey TryGetValue
        System.Collections.Generic.ISet`1:
        System.Collections.Generic.IComparer`1: Compare
        System.Collections.Generic.IEqualityComparer`1: Equals
        System.Collections.Generic.Comparer`1: Default Create
        System.Collections.Generic.KeyValuePair`2: .ctor Key Value Deconstruct ToString
        System.Collections.Generic.List`1: .ctor() .ctor(IEnumerable) Add AddRange Count Item= Contains IndexOf Insert Remove RemoveAt RemoveAll Clear Reverse Sort Find FindAll FindIndex FindLast Exists TrueForAll ForEach ToArray GetEnumerator
        System.Collections.Generic.List`1+Enumerator: Current MoveNext Dispose
        System.Collections.Generic.Dictionary`2: .ctor() .ctor(IEqualityComparer) .ctor(IDictionary) .ctor(IEnumerable) Add TryAdd Item= ContainsKey ContainsValue TryGetValue Remove Count Keys Values Clear GetEnumerator
        System.Collections.Generic.Dictionary`2+Enumerator: Current MoveNext Dispose
        System.Collections.Generic.Dictionary`2+KeyCollection: Count GetEnumerator
        System.Collections.Generic.Dictionary`2+KeyCollection+Enumerator: Current MoveNext Dispose
        System.Collections.Generic.Dictionary`2+ValueCollection: Count GetEnumerator
        System.Collections.Generic.Dictionary`2+ValueCollection+Enumerator: Current MoveNext Dispose
        System.Collections.Generic.HashSet`1: .ctor() .ctor(IEnumerable) .ctor(IEqualityComparer) .ctor(IEnumerable,IEqualityComparer) Add Contains Remove Count UnionWith IntersectWith ExceptWith SetEquals IsSubsetOf IsSupersetOf Overlaps Clear GetEnumerator
        System.Collections.Generic.HashSet`1+Enumerator: Current MoveNext Dispose
        System.Collections.Generic.Queue`1: .ctor() .ctor(IEnumerable) Enqueue Dequeue Peek TryDequeue TryPeek Count Contains GetEnumerator
        System.Collections.Generic.Queue`1+Enumerator: Current MoveNext Dispose
        System.Collections.Generic.Stack`1: .ctor() .ctor(IEnumerable) Push Pop Peek TryPop TryPeek Count Contains GetEnumerator
        System.Collections.Generic.Stack`1+Enumerator: Current MoveNext Dispose
        System.Linq.Enumerable: Aggregate All Any Append AsEnumerable Average Cast Concat Contains Count DefaultIfEmpty Distinct DistinctBy ElementAt ElementAtOrDefault Empty Except ExceptBy First FirstOrDefault GroupBy GroupJoin Index Intersect IntersectBy Join Last LastOrDefault Max MaxBy Min MinBy OfType Order OrderBy OrderByDescending OrderDescending Prepend Range Repeat Reverse Select SelectMany SequenceEqual Single SingleOrDefault Skip SkipLast SkipWhile Sum Take TakeLast TakeWhile ThenBy ThenByDescending ToArray ToDictionary ToHashSet ToList ToLookup Union UnionBy Where Zip
        System.Linq.IGrouping`2: Key
        System.Linq.IOrderedEnumerable`1:
        System.Linq.ILookup`2: Item Contains Count
        UnitsNet.IQuantity:
        UnitsNet.QuantityValue: op_Implicit op_Explicit
        UnitsNet.ComparisonType: *
        Recipe.RuleApi.Fact: Kind Value Text IsAssumed Equals ToString op_Equality op_Inequality
        Recipe.RuleApi.FactKind: *
        Recipe.RuleApi.FactSheet: Kind Facts Elements Find Group
        Recipe.RuleApi.HouseRule: *
        Recipe.RuleApi.RuleReport: Finding NotChecked
        Recipe.RuleApi.RuleSeverity: *
        Recipe.RuleApi.Facts: Sheet IsKnown IsAssumed
        Recipe.RuleApi.ElementFacts: Group Index
        Recipe.RuleApi.PartFacts: * -.ctor
        Recipe.RuleApi.PlyFacts: * -.ctor
        Recipe.RuleApi.CoreFacts: * -.ctor
        Recipe.RuleApi.InsertFacts: * -.ctor
        Recipe.RuleApi.CoatFacts: * -.ctor
        Recipe.RuleApi.ReleaseFacts: * -.ctor
        Recipe.RuleApi.BagLayerFacts: * -.ctor
        Recipe.RuleApi.PotFacts: * -.ctor
        Recipe.RuleApi.CureStepFacts: * -.ctor
        Recipe.RuleApi.FinishStepFacts: * -.ctor
        Recipe.RuleApi.LoadFacts: * -.ctor
        """;

    /// <summary>The quantities of UnitsNet: what makes one from a number, its numbers in each unit, and arithmetic. Never its parser.</summary>
    public const string Quantities = """
        Angle Area AreaDensity Density Duration Energy Force Length Mass MassConcentration MassFlow MolarMass Pressure PressureChangeRate
        Ratio RatioChangeRate Speed Temperature TemperatureChangeRate TemperatureDelta Torque TorquePerLength Volume VolumeFlow
        """;

    /// <summary>Members of a quantity that lead to its parser, its tables or the whole of the library.</summary>
    public const string NotOfQuantities = """
        Parse TryParse ParseUnit TryParseUnit GetAbbreviation Info QuantityInfo Units Dimensions BaseDimensions ConversionBaseUnit
        DefaultConversionFunctions RegisterDefaultConversions MapGeneratedLocalizations GetHashCode GetTypeCode From ToUnit As UnitInfo
        """;
}

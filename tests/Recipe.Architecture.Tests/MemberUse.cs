namespace Recipe.Architecture.Tests;

/// <summary>A member that an assembly refers to.</summary>
/// <param name="Type">Its type, such as <c>System.DateTime</c>.</param>
/// <param name="Name">Its name in the metadata, such as <c>get_Now</c>.</param>
/// <param name="Id">Its documentation id, such as <c>M:System.DateTime.get_Now</c>.</param>
internal sealed record MemberUse(string Type, string Name, string Id)
{
    /// <summary>The documentation id of the property that it reads or writes, such as <c>P:System.DateTime.Now</c>.</summary>
    public string? Property =>
        Name.StartsWith("get_", StringComparison.Ordinal) || Name.StartsWith("set_", StringComparison.Ordinal) ? $"P:{Type}.{Name[4..]}" : null;
}

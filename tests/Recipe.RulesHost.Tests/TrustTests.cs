using Recipe.RulesProcess;

namespace Recipe.RulesHost.Tests;

/// <summary>Which folders are trusted: the ones that were named, what is below them, and nothing that only looks like it.</summary>
public sealed class TrustTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();
    private readonly TrustedFolders _trusted;

    public TrustTests()
    {
        Directory.CreateDirectory(_folder.Of("shop", "rules"));
        Directory.CreateDirectory(_folder.Of("shop-of-another"));
        File.WriteAllText(_folder.Of("shop", "rules", "one.rule.cs"), "");
        _trusted = new TrustedFolders(_folder.Of("settings", "trusted-folders"));
    }

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Nothing_is_trusted_at_first()
    {
        Assert.Empty(_trusted.List());
        Assert.False(_trusted.IsTrusted(_folder.Of("shop")));
    }

    [Fact]
    public void A_folder_trusts_what_is_below_it_and_not_its_neighbours()
    {
        _trusted.Trust(_folder.Of("shop") + Path.DirectorySeparatorChar);
        Assert.True(_trusted.IsTrusted(_folder.Of("shop")));
        Assert.True(_trusted.IsTrusted(_folder.Of("shop", "rules", "one.rule.cs")));
        Assert.True(_trusted.IsTrusted(_folder.Of("shop-of-another", "..", "shop")));
        Assert.False(_trusted.IsTrusted(_folder.Of("shop-of-another")));
        Assert.False(_trusted.IsTrusted(_folder.Of("shop", "..", "shop-of-another")));
        Assert.False(_trusted.IsTrusted(_folder.Path));
    }

    [Fact]
    public void A_link_is_trusted_by_where_it_leads()
    {
        _trusted.Trust(_folder.Of("shop"));
        Directory.CreateSymbolicLink(_folder.Of("shop", "out"), _folder.Of("shop-of-another"));
        Directory.CreateSymbolicLink(_folder.Of("in"), Path.Combine("shop", "rules"));
        File.CreateSymbolicLink(_folder.Of("shop", "out.rule.cs"), _folder.Of("shop-of-another", "a.rule.cs"));
        Assert.False(_trusted.IsTrusted(_folder.Of("shop", "out")));
        Assert.False(_trusted.IsTrusted(_folder.Of("shop", "out", "a.rule.cs")));
        Assert.False(_trusted.IsTrusted(_folder.Of("shop", "out.rule.cs")));
        Assert.True(_trusted.IsTrusted(_folder.Of("in", "one.rule.cs")));
    }

    [Fact]
    public void A_circle_of_links_is_not_trusted()
    {
        _trusted.Trust(_folder.Of("shop"));
        Directory.CreateSymbolicLink(_folder.Of("shop", "a"), _folder.Of("shop", "b"));
        Directory.CreateSymbolicLink(_folder.Of("shop", "b"), _folder.Of("shop", "a"));
        Assert.False(_trusted.IsTrusted(_folder.Of("shop", "a")));
    }

    [Fact]
    public void A_folder_that_was_trusted_through_a_link_is_kept_by_its_real_path()
    {
        Directory.CreateSymbolicLink(_folder.Of("link"), _folder.Of("shop"));
        var real = _trusted.Trust(_folder.Of("link"));
        Assert.EndsWith("shop", real, StringComparison.Ordinal);
        Assert.Equal([real], _trusted.List());
    }

    [Fact]
    public void Forgetting_takes_it_back()
    {
        _trusted.Trust(_folder.Of("shop"));
        _trusted.Trust(_folder.Of("shop-of-another"));
        _trusted.Trust(_folder.Of("shop"));
        Assert.Equal(2, _trusted.List().Count);
        Assert.True(_trusted.Forget(_folder.Of("shop")));
        Assert.False(_trusted.Forget(_folder.Of("shop")));
        Assert.False(_trusted.IsTrusted(_folder.Of("shop")));
        Assert.True(_trusted.IsTrusted(_folder.Of("shop-of-another")));
    }

    [Fact]
    public void A_folder_that_is_gone_can_be_forgotten()
    {
        var gone = _folder.Of("shop", "rules");
        var real = _trusted.Trust(gone);
        Directory.Delete(gone, recursive: true);
        Assert.Equal([real], _trusted.List());
        Assert.True(_trusted.Forget(gone));
    }

    [Fact]
    public void A_folder_that_is_not_there_cannot_be_trusted() =>
        Assert.Throws<DirectoryNotFoundException>(() => _trusted.Trust(_folder.Of("none")));

    [Fact]
    public void A_relative_line_in_the_list_trusts_nothing()
    {
        Directory.CreateDirectory(_folder.Of("settings"));
        File.WriteAllText(_folder.Of("settings", "trusted-folders"), ".\n\nshop\n");
        Assert.Empty(_trusted.List());
        Assert.False(_trusted.IsTrusted(_folder.Of("shop")));
        Assert.False(_trusted.IsTrusted("."));
    }
}

using Recipe.Compiler;

namespace Recipe.Cli.Tests;

/// <summary>Names of files by their letters alone. Shares of other machines: names of the form \\server\share\file, the Universal Naming Convention (Microsoft, MS-DTYP 2.2.57).</summary>
public sealed class PathNameTests
{
    [Theory]
    [InlineData("a/./b/../c.recipe", "a/c.recipe")]
    [InlineData("../a.recipe", "../a.recipe")]
    [InlineData("a/../../b.recipe", "../b.recipe")]
    [InlineData("/a//b.recipe", "/a/b.recipe")]
    [InlineData("/../a.recipe", "/a.recipe")]
    [InlineData(@"C:\shop\..\..\a.recipe", "C:/a.recipe")]
    [InlineData(@"\\nas\recipes\lids\..\lid.recipe", "//nas/recipes/lid.recipe")]
    [InlineData("//nas/recipes/../lid.recipe", "//nas/recipes/lid.recipe")]
    [InlineData("///a.recipe", "/a.recipe")]
    public void A_name_has_one_form(string name, string form)
    {
        Assert.Equal(form, PathNames.Normalize(name));
        Assert.Equal(form, PathNames.Normalize(form));
    }

    [Theory]
    [InlineData("lids/lid.recipe", "../shop.recipe", "shop.recipe")]
    [InlineData("lid.recipe", "/shop.recipe", "/shop.recipe")]
    [InlineData("//nas/recipes/lids/lid.recipe", "../shop.recipe", "//nas/recipes/shop.recipe")]
    [InlineData("lid.recipe", "//nas/recipes/shop.recipe", "//nas/recipes/shop.recipe")]
    public void A_path_is_read_from_the_file_that_it_stands_in(string from, string path, string name) => Assert.Equal(name, PathNames.Resolve(from, path));

    [Theory]
    [InlineData("a/b", "a")]
    [InlineData("a", "")]
    [InlineData("", null)]
    [InlineData("..", null)]
    [InlineData("/a", "/")]
    [InlineData("/", null)]
    [InlineData("C:/a", "C:")]
    [InlineData("C:", null)]
    [InlineData("//nas/recipes/lids", "//nas/recipes")]
    [InlineData("//nas/recipes", null)]
    public void There_is_nothing_above_a_root(string folder, string? above) => Assert.Equal(above, PathNames.Above(folder));
}

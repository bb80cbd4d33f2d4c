using Recipe.LanguageServer.Documents;

namespace Recipe.LanguageServer.Tests.Documents;

public sealed class DocumentNamesTests
{
    [Theory]
    [InlineData("file:///home/a/b.recipe", "/home/a/b.recipe")]
    [InlineData("file:///home/a%20b/%C3%A4%23%25.recipe", "/home/a b/ä#%.recipe")]
    [InlineData("file:///c%3A/x/a.recipe", "C:/x/a.recipe")]
    [InlineData("file:///C:/x/a.recipe", "C:/x/a.recipe")]
    [InlineData("file://localhost/x/a.recipe", "/x/a.recipe")]
    [InlineData("FILE:///x/./y/../a.recipe", "/x/a.recipe")]
    [InlineData("untitled:Untitled-1", "untitled:Untitled-1")]
    public void A_uri_has_a_name(string uri, string name) => Assert.Equal(name, DocumentNames.FromUri(uri));

    [Theory]
    [InlineData("/home/a b/ä#%.recipe", "file:///home/a%20b/%C3%A4%23%25.recipe")]
    [InlineData("C:/x/a.recipe", "file:///C%3A/x/a.recipe")]
    [InlineData("untitled:Untitled-1", "untitled:Untitled-1")]
    public void A_name_has_a_uri_and_it_leads_back(string name, string uri)
    {
        Assert.Equal(uri, DocumentNames.ToUri(name));
        Assert.Equal(name, DocumentNames.FromUri(uri));
    }

    [Fact]
    public void What_is_no_file_is_never_looked_for_on_disk()
    {
        Assert.False(DocumentNames.IsOnDisk("untitled:Untitled-1"));
        Assert.False(DocumentNames.IsOnDisk("shop.recipe"));
        Assert.True(DocumentNames.IsOnDisk("/shop.recipe"));
        Assert.True(DocumentNames.IsOnDisk("C:/shop.recipe"));
    }
}

using System.Diagnostics;
using Recipe.LanguageServer.Documents;
using Recipe.LanguageServer.Protocol;

namespace Recipe.LanguageServer.Tests.Documents;

/// <summary>What stands on disk and is no recipe holds no editor up.</summary>
public sealed class DiskFaultTests
{
    [Fact]
    public void A_pipe_that_nobody_writes_into_is_an_empty_text()
    {
        using var folder = new SampleFolder();
        using (var make = Process.Start("mkfifo", [folder.PathOf("waits.recipe")])!)
        {
            make.WaitForExit();
        }

        Assert.True(new DiskTexts().TryRead(folder.PathOf("waits.recipe"), out var text));
        Assert.Equal("", text);
        Assert.True(new DiskTexts().TryRead("/dev/zero", out text));
        Assert.Equal("", text);
    }

    [Fact]
    public void A_link_that_leads_nowhere_is_no_text()
    {
        using var folder = new SampleFolder();
        File.CreateSymbolicLink(folder.PathOf("lid.recipe"), "gone.recipe");
        Assert.False(new DiskTexts().TryRead(folder.PathOf("lid.recipe"), out _));
    }

    [Fact]
    public void A_folder_that_leads_back_to_itself_is_listed_once()
    {
        using var folder = new SampleFolder("shop.recipe");
        Directory.CreateSymbolicLink(folder.PathOf("round"), ".");
        var files = new WorkspaceFiles();
        files.Add(new WorkspaceFolder(new Uri(folder.Folder).AbsoluteUri, "bench"));
        Assert.Equal([folder.PathOf("shop.recipe")], files.Names());
    }
}

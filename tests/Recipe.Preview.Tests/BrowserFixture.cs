using Microsoft.Playwright;

namespace Recipe.Preview.Tests;

/// <summary>One browser for all tests: the one that is installed (Debian package chromium), never one that is downloaded.</summary>
public sealed class BrowserFixture : IAsyncLifetime
{
    public const string Name = "browser";

    private static readonly string[] Options =
        ["--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"];

    private IPlaywright? _playwright;
    private IBrowser? _browser;

    public async Task InitializeAsync()
    {
        var chromium = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Select(folder => Path.Combine(folder, "chromium")).FirstOrDefault(File.Exists)
            ?? throw new InvalidOperationException("chromium is not installed (Debian package chromium): the page is looked at in a real browser or not at all.");
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions { ExecutablePath = chromium, Args = Options });
    }

    /// <summary>A page of its own, with nothing kept from others.</summary>
    public async Task<Look> Open(PreviewServer server, int width = 1280, int height = 900, ColorScheme scheme = ColorScheme.Light)
    {
        var context = await _browser!.NewContextAsync(new BrowserNewContextOptions
        {
            ViewportSize = new ViewportSize { Width = width, Height = height },
            ColorScheme = scheme,
            Permissions = ["clipboard-read", "clipboard-write"],
        });
        var page = await context.NewPageAsync();
        page.SetDefaultTimeout(60_000);
        var look = new Look(context, page);
        await page.GotoAsync(server.Address.AbsoluteUri);
        await page.WaitForSelectorAsync("body[data-stamp]");
        return look;
    }

    public async Task DisposeAsync()
    {
        if (_browser is not null)
        {
            await _browser.DisposeAsync();
        }

        _playwright?.Dispose();
    }
}

[CollectionDefinition(BrowserFixture.Name)]
public sealed class BrowserCollection : ICollectionFixture<BrowserFixture>;

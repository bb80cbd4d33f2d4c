using Microsoft.Playwright;

namespace Recipe.Preview.Tests;

/// <summary>An open page, and what went wrong in it.</summary>
public sealed class Look : IAsyncDisposable
{
    private readonly IBrowserContext _context;
    private readonly List<string> _faults = [];
    private readonly List<string> _asked = [];

    public Look(IBrowserContext context, IPage page)
    {
        (_context, Page) = (context, page);
        page.PageError += (_, error) => _faults.Add(error);
        page.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning")
            {
                _faults.Add(message.Text);
            }
        };
        page.Request += (_, request) => _asked.Add(request.Url);
    }

    public IPage Page { get; }

    /// <summary>Errors of scripts and of the console: a policy that was broken, a file that is not there.</summary>
    public IReadOnlyList<string> Faults => _faults;

    /// <summary>Every address that the page asked.</summary>
    public IReadOnlyList<string> Asked => _asked;

    /// <summary>Waits until an element says something.</summary>
    public Task Says(string selector, string text) =>
        Page.WaitForFunctionAsync("([selector, text]) => document.querySelector(selector)?.textContent.includes(text)", new[] { selector, text });

    /// <summary>Moves a lever.</summary>
    public Task Move(string lever, double value) => Page.EvaluateAsync(
        "([id, value]) => { const lever = document.getElementById(`lever-${id}`); lever.value = value; lever.dispatchEvent(new Event('input')); }", new object[] { lever, value });

    /// <summary>What an element says.</summary>
    public async Task<string> TextOf(string selector) => await Page.TextContentAsync(selector) ?? "";

    public async ValueTask DisposeAsync() => await _context.DisposeAsync();
}

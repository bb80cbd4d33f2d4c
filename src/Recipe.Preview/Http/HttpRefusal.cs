namespace Recipe.Preview.Http;

/// <summary>A request that is not answered as it hoped.</summary>
/// <param name="status">The status of HTTP.</param>
/// <param name="message">Why, in a sentence.</param>
internal sealed class HttpRefusal(int status, string message) : Exception(message)
{
    public int Status { get; } = status;
}

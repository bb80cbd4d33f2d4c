namespace Recipe.Engineering;

/// <summary>Why a crossing of threads was not found.</summary>
public enum DrapeGapReason
{
    /// <summary>The threads have closed like scissors: the neighbours lie as far apart as two steps, or together.</summary>
    ThreadsClosed,

    /// <summary>No point of the surface lies one step from both neighbours.</summary>
    NoPoint,

    /// <summary>The net stopped at its greatest number of crossings.</summary>
    NetFull,
}

using System.Collections.Immutable;
using Recipe.Documents.Layout;

namespace Recipe.Documents.CutPlans;

/// <summary>A page of a drawing that is printed in parts and taped together.</summary>
/// <param name="Column">Which along the roll, from 1.</param>
/// <param name="Row">Which across it, from the far selvedge, from 1.</param>
/// <param name="Window">What it shows of the sheet: corner and size, mm.</param>
/// <param name="Shapes">Everything on it, mm from the page's upper left corner.</param>
internal sealed record CutTile(int Column, int Row, Drawings.Box Window, ImmutableArray<Shape> Shapes);

using CsCheck;

namespace Recipe.Engineering.Tests.Exploring;

/// <summary>A sketch is bounded, and follows from its points alone.</summary>
public sealed class PointSketchTests
{
    [Fact]
    public void Few_points_are_all_kept()
    {
        var sketch = new PointSketch(1, 1);
        var points = Enumerable.Range(0, 1000).Select(i => new SketchPoint(i, i * 0.001, 1 - (i * 0.001))).ToArray();
        foreach (var point in points)
        {
            sketch.Add(point);
        }

        Assert.Equal(points, sketch.Points);
        Assert.Equal(0, sketch.Level);
    }

    [Fact]
    public void Order_and_parts_do_not_count() => Gen.Select(Gen.Int, Gen.Int[2, 5]).Sample(
        (seed, parts) =>
        {
            var random = new Random(seed);
            var points = Enumerable.Range(0, 20_000).Select(i => new SketchPoint(i, random.NextDouble() * random.Next(1, 4), random.NextDouble())).ToArray();
            var whole = Of(points);
            Assert.InRange(whole.Points.Length, PointSketch.MostPoints / 8, PointSketch.MostPoints);
            var shuffled = points.ToArray();
            random.Shuffle(shuffled);
            Assert.Equal(whole.Points.AsEnumerable(), Of(shuffled).Points.AsEnumerable());
            var joined = new PointSketch(2, 0.5);
            foreach (var part in points.Chunk((points.Length / parts) + 1).Select(Of))
            {
                joined.Add(part.Level, part.Points);
            }

            Assert.Equal(whole.Points.AsEnumerable(), joined.Points.AsEnumerable());
            Assert.Equal(whole.Level, joined.Level);
        },
        iter: 12);

    [Fact]
    public void Any_numbers_are_taken()
    {
        var sketch = new PointSketch(double.NaN, 0);
        foreach (var value in (double[])[double.NaN, double.PositiveInfinity, double.MaxValue, double.MinValue, double.Epsilon, 0])
        {
            sketch.Add(new SketchPoint(0, value, value));
        }

        Assert.InRange(sketch.Points.Length, 1, 4);
        Assert.All(sketch.Points, point => Assert.True(double.IsFinite(point.X)));
    }

    [Fact]
    public void A_level_that_no_sketch_has_ends_at_the_coarsest()
    {
        var sketch = new PointSketch(1, 1);
        sketch.Add(int.MaxValue, [new SketchPoint(0, 1, 1), new SketchPoint(1, 2, 3), new SketchPoint(2, -1, 1)]);
        Assert.Equal([0L, 2L], sketch.Points.Select(point => point.Index));
        Assert.Equal(62, sketch.Level);
    }

    private static PointSketch Of(IEnumerable<SketchPoint> points)
    {
        var sketch = new PointSketch(2, 0.5);
        foreach (var point in points)
        {
            sketch.Add(point);
        }

        return sketch;
    }
}

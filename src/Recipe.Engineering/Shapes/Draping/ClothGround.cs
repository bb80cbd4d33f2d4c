using System.Collections.Concurrent;

namespace Recipe.Engineering;

/// <summary>
/// A surface made ready to lay cloth on: which triangle lies beside which, and how to find the nearest point. It is worked out once, however many
/// cloths are laid: on a scan of a million triangles it takes longer than the cloth. May be used from several threads.
/// </summary>
public sealed class ClothGround
{
    private readonly ConcurrentDictionary<int, Lazy<ClothGround>> _alone = new();
    private readonly int[] _part;
    private readonly int _parts;

    /// <summary>Makes a surface ready.</summary>
    /// <param name="mesh">The surface, m. Triangles without area are left out.</param>
    /// <exception cref="ArgumentException">The mesh has no area.</exception>
    public ClothGround(TriangleMesh mesh)
        : this(new MeshTopology(mesh ?? throw new ArgumentNullException(nameof(mesh))))
    {
    }

    internal ClothGround(MeshTopology surface)
    {
        if (surface.Count == 0)
        {
            throw new ArgumentException("The mesh has no area.", nameof(surface));
        }

        Surface = surface;
        Tree = new TriangleTree(surface);
        _part = surface.Parts(out _parts);
    }

    internal MeshTopology Surface { get; }

    internal TriangleTree Tree { get; }

    /// <summary>The connected part that a triangle belongs to, alone.</summary>
    internal ClothGround PartOf(int triangle)
    {
        if (_parts == 1)
        {
            return this;
        }

        int wanted = _part[triangle];
        return _alone.GetOrAdd(wanted, _ => new Lazy<ClothGround>(() => new ClothGround(Surface.Only(other => _part[other] == wanted)))).Value;
    }
}

using System.Collections.Immutable;
using Slabwright.Core.Job;
using Slabwright.Core.Measures;

namespace Slabwright.Sheets.Maps;

/// <summary>
/// A DXF drawing (release 2000) in real-world coordinates, with one named layer a kind of thing. Units are in the header
/// (<c>$INSUNITS</c>): metres along an alignment, otherwise the project's length unit on the straightened grid.
/// </summary>
public static class DxfFile
{
    /// <summary>Writes the drawing.</summary>
    public static SheetFile Write(Project project, RepairPlan plan, SheetOptions options)
    {
        var plane = new RoadPlane(project.Road, project.UnitSystem);
        var entities = new DxfText();
        new DxfDrawing(project, plan, plane, entities).Draw();
        var file = new DxfText();
        DxfFrame.WriteStart(file, plane.Unit, DxfLayers.All, 0.3, entities.HandleSeed);
        file.Append(entities);
        DxfFrame.WriteEnd(file);
        return new SheetFile($"{options.BaseName}.dxf", "image/vnd.dxf", "Drawing as DXF", file.ToBytes());
    }
}

/// <summary>Everything around the entities: header, tables, blocks and the objects a reader expects.</summary>
internal static class DxfFrame
{
    private const string ModelSpace = "1F";
    private const string PaperSpace = "1B";

    /// <summary>Writes everything up to the entities.</summary>
    /// <param name="file">The file.</param>
    /// <param name="unit">Unit of all coordinates.</param>
    /// <param name="layers">Its layers.</param>
    /// <param name="dash">Length of a dash, m.</param>
    /// <param name="seed">First handle not given out.</param>
    public static void WriteStart(DxfText file, Unit unit, ImmutableArray<DxfLayer> layers, double dash, string seed)
    {
        var isCustomary = unit == Units.Foot || unit == Units.Inch;
        file.Put(0, "SECTION").Put(2, "HEADER")
            .Put(9, "$ACADVER").Put(1, "AC1015")
            .Put(9, "$DWGCODEPAGE").Put(3, "ANSI_1252")
            .Put(9, "$INSUNITS").Put(70, UnitCode(unit))
            .Put(9, "$MEASUREMENT").Put(70, isCustomary ? 0 : 1)
            .Put(9, "$LTSCALE").Put(40, 1.0)
            .Put(9, "$HANDSEED").Put(5, seed)
            .Put(0, "ENDSEC");
        file.Put(0, "SECTION").Put(2, "CLASSES").Put(0, "ENDSEC");
        WriteTables(file, unit, layers, dash);
        WriteBlocks(file);
        file.Put(0, "SECTION").Put(2, "ENTITIES");
    }

    public static void WriteEnd(DxfText file)
    {
        file.Put(0, "ENDSEC").Put(0, "SECTION").Put(2, "OBJECTS")
            .Put(0, "DICTIONARY").Put(5, "C").Put(330, "0").Put(100, "AcDbDictionary").Put(281, 1).Put(3, "ACAD_GROUP").Put(350, "D")
            .Put(0, "DICTIONARY").Put(5, "D").Put(330, "C").Put(100, "AcDbDictionary").Put(281, 1)
            .Put(0, "ENDSEC").Put(0, "EOF");
    }

    /// <summary>The format's number of a unit of length.</summary>
    private static int UnitCode(Unit unit) => unit == Units.Inch ? 1 : unit == Units.Foot ? 2 : unit == Units.Millimetre ? 4 : 6;

    private static void WriteTables(DxfText file, Unit unit, ImmutableArray<DxfLayer> layers, double dash)
    {
        file.Put(0, "SECTION").Put(2, "TABLES");
        Table(file, "VPORT", "8", 0);
        EndTable(file);
        WriteLineTypes(file, unit, dash);
        WriteLayers(file, layers);
        Table(file, "STYLE", "3", 1);
        Entry(file, "STYLE", "11", "AcDbTextStyleTableRecord", "Standard")
            .Put(40, 0.0).Put(41, 1.0).Put(50, 0.0).Put(71, 0).Put(42, 1.0).Put(3, "txt").Put(4, "");
        EndTable(file);
        Table(file, "VIEW", "6", 0);
        EndTable(file);
        Table(file, "UCS", "7", 0);
        EndTable(file);
        Table(file, "APPID", "9", 1);
        Entry(file, "APPID", "12", "AcDbRegAppTableRecord", "ACAD");
        EndTable(file);
        Table(file, "DIMSTYLE", "A", 0).Put(100, "AcDbDimStyleTable").Put(71, 0);
        EndTable(file);
        Table(file, "BLOCK_RECORD", "1", 2);
        Entry(file, "BLOCK_RECORD", ModelSpace, "AcDbBlockTableRecord", "*Model_Space", "1");
        Entry(file, "BLOCK_RECORD", PaperSpace, "AcDbBlockTableRecord", "*Paper_Space", "1");
        EndTable(file);
        file.Put(0, "ENDSEC");
    }

    private static void WriteLineTypes(DxfText file, Unit unit, double length)
    {
        Table(file, "LTYPE", "5", 4);
        foreach (var (name, handle) in new[] { ("ByBlock", "14"), ("ByLayer", "15"), ("CONTINUOUS", "16") })
        {
            Entry(file, "LTYPE", handle, "AcDbLinetypeTableRecord", name, "5").Put(3, "").Put(72, 65).Put(73, 0).Put(40, 0.0);
        }

        var (dash, gap) = (unit.FromBase(length), unit.FromBase(length / 2));
        Entry(file, "LTYPE", "17", "AcDbLinetypeTableRecord", "DASHED", "5")
            .Put(3, "__ __ __").Put(72, 65).Put(73, 2).Put(40, dash + gap).Put(49, dash).Put(74, 0).Put(49, -gap).Put(74, 0);
        EndTable(file);
    }

    private static void WriteLayers(DxfText file, ImmutableArray<DxfLayer> layers)
    {
        Table(file, "LAYER", "2", layers.Length + 1);
        Entry(file, "LAYER", "10", "AcDbLayerTableRecord", "0", "2").Put(62, 7).Put(6, "CONTINUOUS");
        var handle = 0x40;
        foreach (var layer in layers)
        {
            var written = (handle++).ToString("X", System.Globalization.CultureInfo.InvariantCulture);
            Entry(file, "LAYER", written, "AcDbLayerTableRecord", layer.Name, "2").Put(62, layer.Colour).Put(6, layer.LineType);
        }

        EndTable(file);
    }

    private static DxfText Table(DxfText file, string name, string handle, int count) =>
        file.Put(0, "TABLE").Put(2, name).Put(5, handle).Put(330, "0").Put(100, "AcDbSymbolTable").Put(70, count);

    private static void EndTable(DxfText file) => file.Put(0, "ENDTAB");

    private static DxfText Entry(DxfText file, string type, string handle, string subclass, string name, string? table = null)
    {
        var owner = table ?? type switch { "STYLE" => "3", "APPID" => "9", _ => "1" };
        file.Put(0, type).Put(5, handle).Put(330, owner).Put(100, "AcDbSymbolTableRecord").Put(100, subclass).Put(2, name);
        return type == "BLOCK_RECORD" ? file : file.Put(70, 0);
    }

    private static void WriteBlocks(DxfText file)
    {
        file.Put(0, "SECTION").Put(2, "BLOCKS");
        WriteBlock(file, "*Model_Space", ModelSpace, "20", "21");
        WriteBlock(file, "*Paper_Space", PaperSpace, "1C", "1D");
        file.Put(0, "ENDSEC");
    }

    private static void WriteBlock(DxfText file, string name, string record, string begin, string end)
    {
        file.Put(0, "BLOCK").Put(5, begin).Put(330, record).Put(100, "AcDbEntity").Put(8, "0").Put(100, "AcDbBlockBegin")
            .Put(2, name).Put(70, 0).Point(10, new MapPoint(0, 0)).Put(3, name).Put(1, "");
        file.Put(0, "ENDBLK").Put(5, end).Put(330, record).Put(100, "AcDbEntity").Put(8, "0").Put(100, "AcDbBlockEnd");
    }
}

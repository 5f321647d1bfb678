using System.Globalization;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Text;

namespace Duskwright.Circuits.Tests.Solving;

/// <summary>The operating point of a net list, or where a transient analysis ends, by the shared library of ngspice, an independent circuit simulator. One call at a time.</summary>
internal static unsafe class Ngspice
{
    private const string Library = "libngspice.so.0";
    private static readonly Lock Gate = new();
    private static readonly StringBuilder Said = new();
    private static bool _started;

    /// <summary>Voltages of the nodes named, V.</summary>
    /// <param name="lines">The net list without title and end; node 0 is the reference.</param>
    /// <param name="nodes">Names of nodes, in small letters.</param>
    /// <param name="analysis">The command of the analysis; of a transient the last voltages are read.</param>
    internal static IReadOnlyDictionary<string, double> Volts(IEnumerable<string> lines, IEnumerable<string> nodes, string analysis = "op")
    {
        lock (Gate)
        {
            Start();
            Said.Clear();
            Load(["town", .. lines, ".end"]);
            Run(analysis);
            var volts = nodes.ToDictionary(n => n, n => n == "0" ? 0 : Read(n), StringComparer.Ordinal);
            Run("destroy all");
            Run("remcirc");
            return volts;
        }
    }

    /// <summary>How long the analysis of a net list takes, reading it and setting it up not counted: loading, ordering, factorising and solving its matrix, s.</summary>
    /// <param name="lines">The net list without title and end; its node n1 alone is kept.</param>
    /// <param name="runs">Number of runs, of which the mean is taken.</param>
    internal static double AnalysisSeconds(IEnumerable<string> lines, int runs)
    {
        lock (Gate)
        {
            Start();
            Said.Clear();
            Load(["town", .. lines, ".save v(n1)", ".end"]);
            for (var run = 0; run < runs; run++)
            {
                Run("op");
                Run("destroy all");
            }

            Said.Clear();
            Run("rusage all");
            var seconds = Part("load") + Part("reorder") + Part("factor") + Part("solve");
            Run("remcirc");
            return seconds / runs;
        }
    }

    private static double Part(string part)
    {
        var line = Said.ToString().Split('\n').Single(l => l.Contains($"Matrix {part} time = ", StringComparison.Ordinal));
        return double.Parse(line[(line.IndexOf('=', StringComparison.Ordinal) + 1)..], CultureInfo.InvariantCulture);
    }

    private static void Start()
    {
        if (_started)
        {
            return;
        }

        if (!NativeLibrary.TryLoad(Library, out _))
        {
            throw new InvalidOperationException($"{Library} is not installed; on Debian: apt-get install libngspice0.");
        }

        _ = ngSpice_Init(&Heard, &Heard, &Ended, null, null, null, null);
        _started = true;
    }

    private static void Load(string[] lines)
    {
        var native = new byte*[lines.Length + 1];
        for (var i = 0; i < lines.Length; i++)
        {
            native[i] = (byte*)Marshal.StringToCoTaskMemUTF8(lines[i]);
        }

        fixed (byte** first = native)
        {
            _ = ngSpice_Circ(first);
        }

        foreach (var line in native)
        {
            Marshal.FreeCoTaskMem((nint)line);
        }

        StopIfWrong();
    }

    private static void Run(string command)
    {
        Send(command);
        StopIfWrong();
    }

    private static void Send(string command)
    {
        var native = (byte*)Marshal.StringToCoTaskMemUTF8(command);
        _ = ngSpice_Command(native);
        Marshal.FreeCoTaskMem((nint)native);
    }

    private static double Read(string node)
    {
        var native = (byte*)Marshal.StringToCoTaskMemUTF8(node);
        var vector = ngGet_Vec_Info(native);
        Marshal.FreeCoTaskMem((nint)native);
        return vector is not null && vector->Length > 0 && vector->Real is not null
            ? vector->Real[vector->Length - 1]
            : throw new InvalidOperationException($"There is no voltage of {node}: {Said}");
    }

    // Its calls return nothing on errors too; only what it says tells. A step of its own that failed is a warning, the next one may do.
    private static void StopIfWrong()
    {
        var said = Said.ToString();
        if (said.Contains("error", StringComparison.OrdinalIgnoreCase) || said.Contains("singular matrix", StringComparison.OrdinalIgnoreCase) || said.Contains("solution failed", StringComparison.OrdinalIgnoreCase))
        {
            Clear();
            throw new InvalidOperationException(said);
        }
    }

    private static void Clear()
    {
        Said.Clear();
        Send("destroy all");
        Send("remcirc");
    }

    internal static string Number(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    [UnmanagedCallersOnly(CallConvs = [typeof(CallConvCdecl)])]
    private static int Heard(byte* text, int id, void* user)
    {
        Said.AppendLine(Marshal.PtrToStringUTF8((nint)text));
        return 0;
    }

    [UnmanagedCallersOnly(CallConvs = [typeof(CallConvCdecl)])]
    private static int Ended(int status, byte unload, byte quit, int id, void* user) => 0;

    [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int ngSpice_Init(
        delegate* unmanaged[Cdecl]<byte*, int, void*, int> said,
        delegate* unmanaged[Cdecl]<byte*, int, void*, int> state,
        delegate* unmanaged[Cdecl]<int, byte, byte, int, void*, int> ended,
        void* data,
        void* dataStart,
        void* running,
        void* user);

    [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int ngSpice_Circ(byte** lines);

    [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int ngSpice_Command(byte* command);

    [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern VectorInfo* ngGet_Vec_Info(byte* name);

    [StructLayout(LayoutKind.Sequential)]
    private struct VectorInfo
    {
        public byte* Name;
        public int Type;
        public short Flags;
        public double* Real;
        public double* Complex;
        public int Length;
    }
}

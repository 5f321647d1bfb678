namespace Duskwright.Study.Lists;

/// <summary>One label to fold over a pair.</summary>
/// <param name="Code">The building's code: "CH".</param>
/// <param name="Terminal">Switch and place on its strip: "A1"; for a pair that begins at another one, the tap or the house it begins at.</param>
/// <param name="Name">The building's name.</param>
/// <param name="Detail">What it carries: "4 LEDs, 10.0 mA"; a line to write on where nobody has counted.</param>
/// <param name="Circuit">The number of its circuit; 0 where it is not shared out.</param>
public sealed record LabelRow(string Code, string Terminal, string Name, string Detail, int Circuit);

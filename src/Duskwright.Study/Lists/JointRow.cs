namespace Duskwright.Study.Lists;

/// <summary>Joints of one kind at one place, still to be made.</summary>
/// <param name="Place">Where: a house or a tap.</param>
/// <param name="What">What is joined there.</param>
/// <param name="Joints">How many joints: plus and minus are two.</param>
/// <param name="Wires">How many conductors meet in each.</param>
/// <param name="SleeveMillimetres">The bore of the sleeve over each before it is shrunk, mm.</param>
/// <param name="OutOfReach">Whether nobody can reach them once the town stands.</param>
public sealed record JointRow(string Place, string What, int Joints, int Wires, double SleeveMillimetres, bool OutOfReach);

/// <summary>Ends of one wire that are bared alike.</summary>
/// <param name="Wire">The wire's name.</param>
/// <param name="At">Where they end: under a screw at the bank, or in a joint.</param>
/// <param name="Ends">How many.</param>
/// <param name="StripMillimetres">How much is bared, mm.</param>
/// <param name="Then">What is done with the bare end.</param>
public sealed record EndRow(string Wire, string At, int Ends, double StripMillimetres, string Then);

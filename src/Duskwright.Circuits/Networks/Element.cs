namespace Duskwright.Circuits.Networks;

/// <summary>A two-ended part of a network. Its current counts as positive from <see cref="A"/> through the part to <see cref="B"/>.</summary>
/// <param name="Name">The part's name in the plan, said in every failure.</param>
/// <param name="A">The node at its first end; node 0 is the reference.</param>
/// <param name="B">The node at its second end.</param>
public abstract record Element(string Name, int A, int B);

using Duskwright.Book.Drawings;

namespace Duskwright.Book.Tiles;

/// <summary>One page of the board at true size.</summary>
/// <param name="Name">Its row, lettered from the back, and its column, numbered from the left: "B3".</param>
/// <param name="Drawing">The drawing, in millimetres of the board from its back left corner.</param>
public sealed record BoardTile(string Name, Drawing Drawing);

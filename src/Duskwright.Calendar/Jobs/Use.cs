namespace Duskwright.Calendar.Jobs;

/// <summary>What a job takes of a resource.</summary>
/// <param name="Resource">The resource's id.</param>
/// <param name="Amount">How much of it: pairs of hands, places on the drying shelf; 1 or more.</param>
/// <param name="HeldAfterMinutes">Minutes for which it stays taken after the hands-on time: a shelf place while the paint dries; 0 or more.</param>
public sealed record Use(string Resource, int Amount = 1, int HeldAfterMinutes = 0);

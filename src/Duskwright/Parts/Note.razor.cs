using Duskwright.Study.Findings;
using Duskwright.Towns;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Parts;

/// <summary>A finding as a margin note: mark, word, number, remedy and a button that does it.</summary>
public partial class Note
{
    // A remedy alone does not say of which house or pack it speaks.
    private readonly string _id = $"note-{Guid.NewGuid():N}";

    [Inject]
    private OpenTown Open { get; set; } = default!;

    [Parameter, EditorRequired]
    public Finding Finding { get; set; } = default!;

    private string Mark => Finding.Severity switch { Severity.Spoils => "spoil", Severity.Look => "warn", _ => "sound" };

    // The key of the thing in the picture; a hairline is drawn to it.
    private string? About => Finding.Subject.Kind switch { SubjectKind.Building => Finding.Subject.Key, SubjectKind.Supply => $"pack:{Finding.Subject.Key}", _ => null };

    private string Word => Finding.Severity switch { Severity.Spoils => "Spoils the show.", Severity.Look => "Worth a look.", _ => "All well." };
}

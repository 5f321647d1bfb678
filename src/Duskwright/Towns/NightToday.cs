using Duskwright.Book.Night;
using Duskwright.Study;

namespace Duskwright.Towns;

/// <summary>The night scene of the open town, built once for each state of it and shared by all tabs.</summary>
public sealed class NightToday(OpenTown open)
{
    private readonly Lock _gate = new();
    private TownStudy? _of;
    private Task<NightScene?> _scene = Task.FromResult<NightScene?>(null);

    /// <summary>The scene of the town as it stands, built aside.</summary>
    /// <returns>The scene; none where the town has no board.</returns>
    public Task<NightScene?> SceneAsync()
    {
        lock (_gate)
        {
            var study = open.Study;
            if (!ReferenceEquals(study, _of))
            {
                (_of, _scene) = (study, Task.Run(() => NightScene.Of(study)));
            }

            return _scene;
        }
    }
}

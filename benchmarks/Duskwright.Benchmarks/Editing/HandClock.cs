using System.Text.Json.Serialization;

namespace Duskwright.Benchmarks.Editing;

/// <summary>What the page itself saw: from a movement, or from a house being set down, until the screen showed it, ms each.</summary>
internal sealed class HandClock
{
    /// <summary>
    /// Times the hand in the page. A thing counts as shown once the frame after it has been handed on to be painted. The figures of a house
    /// set down are there when its margin says another length of its pair; the rest is there when nothing is said to be as of before.
    /// </summary>
    internal const string Script = """
        () => {
          const clock = window.handClock = { drawn: [], fast: [], slow: [], settled: true };
          let down = null;
          const shown = then => requestAnimationFrame(() => setTimeout(then, 0));
          const words = () => document.querySelector('.margin .speaks')?.textContent ?? '';
          document.addEventListener('pointermove', e => { if (e.buttons) shown(() => clock.drawn.push(performance.now() - e.timeStamp)); }, true);
          document.addEventListener('pointerup', e => { down = { at: e.timeStamp, words: words(), fast: false, slow: false }; clock.settled = false; }, true);
          new MutationObserver(() => {
            if (!down) return;
            const was = down;
            if (!was.fast && words() !== was.words) { was.fast = true; shown(() => clock.fast.push(performance.now() - was.at)); }
            if (was.fast && !was.slow && !document.querySelector('.margin .asof')) { was.slow = true; shown(() => { clock.slow.push(performance.now() - was.at); clock.settled = true; }); }
          }).observe(document.body, { subtree: true, childList: true, characterData: true, attributes: true });
        }
        """;

    [JsonPropertyName("drawn")]
    public List<double> Drawn { get; init; } = [];

    [JsonPropertyName("fast")]
    public List<double> Fast { get; init; } = [];

    [JsonPropertyName("slow")]
    public List<double> Slow { get; init; } = [];
}

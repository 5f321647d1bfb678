// The focus never falls to the page as a whole: what is newly chosen on the drawing takes it, or a neighbour of what has gone.
(() => {
  const can = 'a[href], button:not(:disabled), input:not(:disabled), select:not(:disabled), textarea:not(:disabled), summary, [tabindex="0"]';
  const most = 12;
  const before = [];
  let last = null, chosen = null, byKey = null, standIn = null;

  const stands = e => e.isConnected && !e.matches(':disabled') && e.getClientRects().length > 0;
  const there = e => e.matches(can) && stands(e);
  const all = n => n instanceof Element ? [n, ...n.querySelectorAll(can)].filter(there) : [];
  const picked = () => document.querySelector('.picture .pick[aria-pressed=true]');
  const land = e => {
    if (!e) return false;
    if (!e.matches(can)) e.tabIndex = -1;
    e.focus({ preventScroll: !byKey });
    return document.activeElement === e;
  };
  const head = () => document.querySelector('main h1');
  const earlier = () => before.findLast(e => there(e) && e.closest('main'));

  // What stood beside it, the next before the one above; what went with it is stepped over.
  const beside = (gone, records, fits = () => true) => {
    const step = (n, way) => n?.isConnected ? n[way] : records.find(r => [...r.removedNodes].includes(n))?.[way];
    for (const [way, at] of [['nextSibling', 0], ['previousSibling', -1]])
      for (let n = step(gone, way); n; n = step(n, way)) {
        const found = n.isConnected && fits(n) ? all(n).at(at) : null;
        if (found) return found;
      }
    return null;
  };

  const neighbour = records => {
    const record = records.find(r => [...r.removedNodes].some(n => n.contains(last)));
    if (!record) return last.isConnected ? beside(last, records) : null;
    const gone = [...record.removedNodes].find(n => n.contains(last));
    if (gone.matches('.trouble, .drafting')) return earlier();
    const like = ['.note', 'button.text'].find(kind => gone.matches(kind));
    if (like) return beside(gone, records, n => n.matches?.(like));
    return record.target.matches('.margin, main') ? picked() ?? head() : beside(gone, records);
  };

  const lost = records => {
    const now = picked();
    if (byKey !== null && now && now.dataset.key !== chosen && land(now)) return;
    if (!last || stands(last)) return;
    land(neighbour(records)) || land(earlier()) || land(head());
    standIn = document.activeElement;
  };

  addEventListener('keydown', () => { byKey = true; standIn = null; }, true);
  addEventListener('pointerdown', () => { byKey = false; standIn = null; }, true);
  // Who points beside everything wants no focus.
  addEventListener('mousedown', () => setTimeout(() => { if (document.activeElement === document.body) last = null; }));
  addEventListener('focusin', e => { if (last && last !== e.target) { before.push(last); if (before.length > most) before.shift(); } last = e.target; });
  new MutationObserver(records => {
    // What has gone is often drawn before what has come: until a hand stirs, a stand-in gives the focus up again.
    const on = document.activeElement;
    if (on === document.body || on === standIn || on?.matches(':disabled')) lost(records);
    chosen = picked()?.dataset.key ?? null;
  }).observe(document.body, { childList: true, subtree: true, attributes: true, attributeFilter: ['disabled', 'hidden', 'aria-pressed'] });
  chosen = picked()?.dataset.key ?? null;
})();

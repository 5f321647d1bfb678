// Brings a drawing nearer, and moves it under the hand: wheel, two fingers, keys and buttons. The drawing's own frame is the whole.
export function zoomable(place) {
  const most = 12;
  const touches = new Map();
  let whole = null, shown = null, pinch = null;

  const drawing = () => place.querySelector('svg.board');
  const now = svg => { const b = svg.viewBox.baseVal; return [b.x, b.y, b.width, b.height]; };
  // A frame that is not the one set here is a new whole: the board has another size.
  const frame = svg => { const is = now(svg); if (!shown || shown.some((n, i) => Math.abs(n - is[i]) > .01)) { whole = is; shown = is; } return shown; };
  const show = (svg, x, y, w) => {
    const size = Math.min(whole[2], Math.max(whole[2] / most, w));
    const high = size * whole[3] / whole[2];
    const within = (at, from, room, long) => Math.min(from + room - long, Math.max(from, at));
    shown = [within(x, whole[0], whole[2], size), within(y, whole[1], whole[3], high), size, high];
    svg.setAttribute('viewBox', shown.join(' '));
    svg.style.touchAction = size < whole[2] ? 'none' : 'pan-x pan-y';
    place.dataset.near = (whole[2] / size).toFixed(2);
  };
  const at = (svg, x, y) => new DOMPoint(x, y).matrixTransform(svg.getScreenCTM().inverse());
  const by = (svg, factor, point) => { const [x, y, w] = frame(svg); const p = point ?? { x: x + w / 2, y: y + shown[3] / 2 }; show(svg, p.x - (p.x - x) / factor, p.y - (p.y - y) / factor, w / factor); };
  const middle = svg => { const near = document.activeElement?.closest?.('.pick'), on = near?.ownerSVGElement === svg ? near : svg.querySelector('.picked'); if (!on) return null; const b = on.getBoundingClientRect(); return at(svg, b.x + b.width / 2, b.y + b.height / 2); };

  place.addEventListener('wheel', e => {
    const svg = e.target.closest?.('svg.board');
    if (!svg) return;
    const [, , w] = frame(svg);
    // Seen whole, the wheel goes on down the page.
    if (e.deltaY > 0 && w >= whole[2] - .01) return;
    e.preventDefault();
    by(svg, Math.exp(-e.deltaY / 400), at(svg, e.clientX, e.clientY));
  }, { passive: false });

  place.addEventListener('click', e => {
    const way = e.target.closest?.('[data-zoom]')?.dataset.zoom, svg = drawing();
    if (!way || !svg) return;
    frame(svg);
    // Nearer to what is chosen, so that no part of the board needs a hand that drags.
    if (way === 'all') show(svg, whole[0], whole[1], whole[2]); else if (way === 'out') by(svg, 1 / 1.5); else { const p = middle(svg), w = shown[2] / 1.5; if (p) show(svg, p.x - w / 2, p.y - w / 2 * whole[3] / whole[2], w); else by(svg, 1.5); }
  });

  place.addEventListener('keydown', e => {
    const svg = e.target.closest?.('svg.board');
    if (!svg || e.ctrlKey || e.metaKey || !['+', '=', '-', '0'].includes(e.key)) return;
    e.preventDefault();
    frame(svg);
    if (e.key === '0') show(svg, whole[0], whole[1], whole[2]); else by(svg, e.key === '-' ? 1 / 1.5 : 1.5, middle(svg));
  });

  // What the keyboard comes to is brought into sight.
  place.addEventListener('focusin', e => {
    const svg = e.target.closest?.('svg.board');
    if (!svg) return;
    const p = middle(svg), [x, y, w, h] = frame(svg);
    if (p && (p.x < x || p.y < y || p.x > x + w || p.y > y + h)) show(svg, p.x - w / 2, p.y - h / 2, w);
  });

  const spread = () => { const [a, b] = [...touches.values()]; return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2, far: Math.hypot(a.x - b.x, a.y - b.y) }; };
  place.addEventListener('pointerdown', e => {
    const svg = e.target.closest?.('svg.board');
    if (!svg) return;
    frame(svg);
    touches.set(e.pointerId, { x: e.clientX, y: e.clientY, free: !e.target.closest('.pick[data-movable]') && !e.shiftKey });
    pinch = touches.size === 2 ? spread() : null;
  }, true);
  place.addEventListener('pointermove', e => {
    const was = touches.get(e.pointerId), svg = drawing();
    if (!was || !svg) return;
    const from = { x: was.x, y: was.y };
    Object.assign(was, { x: e.clientX, y: e.clientY });
    if (touches.size === 2 && pinch) {
      e.stopPropagation();
      const is = spread();
      if (pinch.far > 0) by(svg, is.far / pinch.far, at(svg, is.x, is.y));
      pinch = is;
    } else if (was.free && shown && shown[2] < whole[2]) {
      const [a, b] = [at(svg, from.x, from.y), at(svg, e.clientX, e.clientY)];
      show(svg, shown[0] - (b.x - a.x), shown[1] - (b.y - a.y), shown[2]);
    }
  }, true);
  for (const end of ['pointerup', 'pointercancel']) addEventListener(end, e => { touches.delete(e.pointerId); pinch = null; });
}

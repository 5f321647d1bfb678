// Moves a house over the board, or a window over its wall, while the hand moves it, and tells the program where it was put down, or how far the keys moved it.
// The framework draws what is inside a house anew after each edit; here only the house's own group is shifted meanwhile.
export function mount(place, listener, coarse, fine) {
  const least = 4;
  let held = null;

  const millimetres = svg => { const m = svg.getScreenCTM(); return 1 / m.a; };

  // While points are being put down, the board listens to nothing else.
  const placing = e => e.target.closest?.('svg.placing');

  const down = e => {
    if (placing(e)) return;
    if (e.shiftKey && e.button === 0 && !e.target.closest?.('.pick') && e.target.closest?.('svg.board')) { frame(e); return; }
    const house = e.target.closest?.('.pick[data-movable]');
    if (!house || e.button !== 0) return;
    // A finger that only wants to go on over the page would drag along whatever lies under it; what it is to move is chosen first.
    if (e.pointerType === 'touch' && !house.classList.contains('picked') && !/^(size|corner):/.test(house.dataset.key)) return;
    const svg = house.ownerSVGElement;
    const others = house.classList.contains('picked') ? [...svg.querySelectorAll('.picked[data-movable]')].filter(o => o !== house) : [];
    held = { house, others, svg, x: e.clientX, y: e.clientY, scale: millimetres(svg), moved: false, pointer: e.pointerId };
  };

  const move = e => {
    if (!held || e.pointerId !== held.pointer) return;
    const [dx, dy] = [(e.clientX - held.x) * held.scale, (e.clientY - held.y) * held.scale];
    if (!held.moved && Math.hypot(e.clientX - held.x, e.clientY - held.y) < least) return;
    if (!held.moved) { held.moved = true; held.svg.setPointerCapture(held.pointer); held.house.classList.add('held'); }
    for (const h of [held.house, ...held.others]) h.setAttribute('transform', `translate(${dx} ${dy})`);
    stretch(held, dx, dy);
    e.preventDefault();
  };

  // What a corner sizes grows with it from its lower left corner.
  const sized = house => house.dataset.key.startsWith('size:') ? house.ownerSVGElement.querySelector(`[data-key="${house.dataset.key.slice(5)}"]`) : null;
  const stretch = (held, dx, dy) => {
    const thing = sized(held.house);
    if (!thing) return;
    held.box ??= thing.getBBox();
    const [x, y, w, h] = [held.box.x, held.box.y + held.box.height, held.box.width, held.box.height];
    thing.setAttribute('transform', `translate(${x} ${y}) scale(${Math.max(.1, (w + dx) / w)} ${Math.max(.1, (h - dy) / h)}) translate(${-x} ${-y})`);
  };

  // A frame drawn with Shift held chooses the houses whose middle it holds.
  const frame = e => {
    const svg = e.target.closest('svg.board'), from = at(svg, e);
    const box = svg.appendChild(document.createElementNS('http://www.w3.org/2000/svg', 'path'));
    box.setAttribute('class', 'i-fold');
    const draw = m => { const to = at(svg, m); box.setAttribute('d', `M${from.x} ${from.y}H${to.x}V${to.y}H${from.x}z`); };
    const done = m => {
      removeEventListener('pointermove', draw);
      const r = box.getBoundingClientRect();
      box.remove();
      const held = [...svg.querySelectorAll('.pick[data-movable]')].filter(p => { const b = p.getBoundingClientRect(), x = b.x + b.width / 2, y = b.y + b.height / 2; return x > r.left && x < r.right && y > r.top && y < r.bottom; });
      if (m.type === 'pointerup') listener.invokeMethodAsync('Framed', held.map(p => p.dataset.key));
    };
    addEventListener('pointermove', draw);
    addEventListener('pointerup', done, { once: true });
  };
  const at = (svg, e) => new DOMPoint(e.clientX, e.clientY).matrixTransform(svg.getScreenCTM().inverse());

  const click = e => {
    const svg = placing(e), house = e.target.closest?.('.pick[data-movable]');
    if (svg) { const p = at(svg, e); e.stopPropagation(); listener.invokeMethodAsync('Placed', p.x, p.y); }
    else if (house && e.shiftKey && e.isTrusted) { e.stopPropagation(); listener.invokeMethodAsync('Framed', [house.dataset.key]); }
  };

  const let_go = house => { house.removeAttribute('transform'); sized(house)?.removeAttribute('transform'); house.classList.remove('held'); };

  const up = async e => {
    if (!held || e.pointerId !== held.pointer) return;
    const was = held;
    held = null;
    if (!was.moved) return;
    // The click that ends a drag chooses nothing.
    was.svg.addEventListener('click', c => c.stopPropagation(), { capture: true, once: true });
    setTimeout(() => was.svg.dispatchEvent(new Event('click')), 0);
    // The moment it is drawn where it was put down, it is shifted no more: else it would be seen twice as far for a blink.
    const free = () => { drawn.disconnect(); [was.house, ...was.others].forEach(let_go); };
    const drawn = new MutationObserver(free);
    drawn.observe(was.house, { childList: true, subtree: true });
    try { await listener.invokeMethodAsync('Moved', was.house.dataset.key, (e.clientX - was.x) * was.scale, -(e.clientY - was.y) * was.scale, 0); } finally { free(); }
  };

  const cancel = () => { if (held) { [held.house, ...held.others].forEach(let_go); held = null; } };

  const key = e => {
    if (e.key === 'Escape') { if (held) e.preventDefault(); cancel(); return; }
    const house = e.target.closest?.('.pick[data-movable]');
    if (house && e.key === 'Delete') { e.preventDefault(); listener.invokeMethodAsync('Removed', house.dataset.key); return; }
    const step = e.shiftKey ? fine : coarse;
    const by = { ArrowLeft: [-step, 0, 0], ArrowRight: [step, 0, 0], ArrowUp: [0, step, 0], ArrowDown: [0, -step, 0], ',': [0, 0, 5], '.': [0, 0, -5] }[e.key];
    if (!house || !by) return;
    e.preventDefault();
    listener.invokeMethodAsync('Moved', house.dataset.key, ...by);
  };

  // Where drawing is begun far down the page, the board comes into sight; where it is in sight already it stays under the hand.
  place.addEventListener('focusin', e => {
    if (!e.target.matches('.drafting')) return;
    const svg = place.querySelector('svg.board'), top = svg.getBoundingClientRect().top;
    if (top < 0 || top > innerHeight / 2) svg.scrollIntoView({ block: 'start' });
  });
  place.addEventListener('click', click, true);
  place.addEventListener('pointerdown', down);
  place.addEventListener('pointermove', move);
  // Browsers do not heed touch-action inside a drawing: what is held keeps the page from moving.
  place.addEventListener('touchmove', e => { if (held) e.preventDefault(); }, { passive: false });
  place.addEventListener('pointerup', up);
  place.addEventListener('pointercancel', cancel);
  place.addEventListener('keydown', key);
}

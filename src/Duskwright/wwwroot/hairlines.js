// Draws a hairline from each margin note in sight to the thing in the picture that it speaks of.
// The lines lie in a layer of their own over the page, so that nothing inside the picture or the margin is touched.
(() => {
  const names = 'http://www.w3.org/2000/svg';
  const layer = document.createElementNS(names, 'svg');
  layer.setAttribute('class', 'hairlines');
  layer.setAttribute('aria-hidden', 'true');
  const beside = matchMedia('(min-width: 1181px)');
  const most = 4;
  let waiting = false;

  const line = (note, thing, step, picture) => {
    const from = note.querySelector('svg').getBoundingClientRect();
    const to = thing.getBoundingClientRect();
    const y = from.top + from.height / 2;
    const lane = picture.right + 10 - step * 5;
    const low = note.dataset.about.startsWith('pack:');
    const end = low ? [to.left + to.width / 2, to.bottom] : [to.right, to.top + to.height / 2];
    const turn = low ? picture.bottom + 4 + step * 5 : end[1];
    const path = document.createElementNS(names, 'path');
    path.setAttribute('class', [...note.classList].find(c => c !== 'note') ?? '');
    path.setAttribute('d', `M${from.left - 4} ${y}H${lane}V${turn}H${end[0]}${low ? `V${end[1]}` : ''}`);
    const dot = document.createElementNS(names, 'circle');
    dot.setAttribute('class', path.getAttribute('class'));
    dot.setAttribute('cx', end[0]);
    dot.setAttribute('cy', end[1]);
    dot.setAttribute('r', 2.5);
    layer.append(path, dot);
  };

  const draw = () => {
    waiting = false;
    layer.replaceChildren();
    const margin = document.querySelector('.spread .margin');
    const picture = document.querySelector('.spread .picture .drawn');
    if (!beside.matches || !margin || !picture) return;
    const sight = margin.getBoundingClientRect();
    const frame = picture.getBoundingClientRect();
    [...margin.querySelectorAll('.note[data-about]')]
      .filter(n => { const r = n.getBoundingClientRect(); return r.top > sight.top && r.top + 16 < sight.bottom; })
      .map(n => [n, picture.querySelector(`[data-key="${CSS.escape(n.dataset.about)}"]`)])
      .filter(([, thing]) => thing && thing.getBoundingClientRect().width > 0)
      .slice(0, most)
      .forEach(([note, thing], i) => line(note, thing, i, frame));
  };

  const soon = () => { if (!waiting) { waiting = true; requestAnimationFrame(draw); } };
  document.body.append(layer);
  addEventListener('resize', soon);
  addEventListener('scroll', soon, true);
  document.fonts.ready.then(soon);
  new MutationObserver(changes => { if (changes.some(c => !layer.contains(c.target) && c.target !== layer)) soon(); })
    .observe(document.body, { childList: true, subtree: true, characterData: true, attributes: true, attributeFilter: ['class', 'd', 'data-about'] });
})();

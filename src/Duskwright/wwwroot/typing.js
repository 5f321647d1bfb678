// The field that is typed in keeps its words and its place, whatever the program draws anew around it.
(() => {
  const typed = 'input:not([type=range], [type=checkbox], [type=radio], [type=file]), textarea';
  const meanwhile = new WeakMap();

  // Half typed it takes nothing from the program; left as it was, it shows what came meanwhile.
  const words = field => Object.getOwnPropertyDescriptor(Object.getPrototypeOf(field), 'value');
  addEventListener('input', e => {
    const field = e.target;
    if (!field.matches?.(typed) || Object.hasOwn(field, 'value')) return;
    Object.defineProperty(field, 'value', { configurable: true, get() { return words(field).get.call(field); }, set(value) { meanwhile.set(field, value); } });
  }, true);
  const left = field => { delete field.value; meanwhile.delete(field); };
  addEventListener('change', e => left(e.target), true);
  addEventListener('focusout', e => {
    const field = e.target;
    const came = meanwhile.get(field);
    left(field);
    if (came !== undefined) field.value = came;
  }, true);

  // What comes or goes above it is made up for by scrolling, and where there is nothing to scroll by room left open.
  let held = null, top = 0, ours = null, room = null;
  const scroller = from => { for (let e = from.parentElement; e; e = e.parentElement) if (/auto|scroll/.test(getComputedStyle(e).overflowY) && e.scrollHeight > e.clientHeight) return e; return document.scrollingElement; };
  const look = () => { held = document.activeElement?.matches?.(`${typed}, select`) ? document.activeElement : null; if (held) top = held.getBoundingClientRect().top; };
  const moved = () => held.getBoundingClientRect().top - top;
  const keep = () => {
    if (!held?.isConnected || document.activeElement !== held) { look(); return; }
    if (Math.abs(moved()) < .5) return;
    const within = scroller(held);
    within.scrollTop += moved();
    ours = [within, within.scrollTop];
    if (moved() > -.5) return;
    let block = held;
    while (block.parentElement && block.parentElement !== within && !block.parentElement.matches('.margin, main')) block = block.parentElement;
    room = [block, (room?.[0] === block ? room[1] : 0) - moved()];
    block.style.paddingTop = `${room[1]}px`;
  };

  // The room is taken back unseen once the page has been scrolled past it.
  const close = within => {
    if (!room?.[0].isConnected || !within.contains(room[0]) || within.scrollTop < room[1]) return;
    const [block, high] = room;
    room = null;
    block.style.paddingTop = '';
    within.scrollTop -= high;
  };
  addEventListener('focusin', () => { look(); requestAnimationFrame(look); });
  addEventListener('resize', look);
  addEventListener('scroll', e => {
    const within = e.target === document ? document.scrollingElement : e.target;
    if (ours?.[0] === within && ours[1] === within.scrollTop) { ours = null; return; }
    close(within);
    look();
  }, true);
  new MutationObserver(keep).observe(document.body, { childList: true, subtree: true, characterData: true, attributes: true, attributeFilter: ['class', 'open', 'hidden'] });
})();

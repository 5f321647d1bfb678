// Keys and pasted rows of a table that is typed in like a spreadsheet.
export function rows(place, listener) {
  place.addEventListener('keydown', e => {
    const cell = e.target.closest?.('td, th');
    const by = { Enter: 1, ArrowDown: 1, ArrowUp: -1 }[e.key];
    if (!cell || !by || e.target.tagName !== 'INPUT') return;
    e.preventDefault();
    const row = by > 0 ? cell.parentElement.nextElementSibling : cell.parentElement.previousElementSibling;
    const next = row?.children[cell.cellIndex]?.querySelector('input');
    if (next) { next.focus(); next.select(); } else if (e.key === 'Enter') e.target.blur();
  });
  place.addEventListener('paste', e => {
    const text = e.clipboardData?.getData('text/plain') ?? '';
    if (!/[\t\n]/.test(text.trimEnd())) return;
    e.preventDefault();
    listener.invokeMethodAsync('Pasted', text);
  });
}

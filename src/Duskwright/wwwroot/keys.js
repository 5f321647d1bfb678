// Ctrl+Z takes the last change back, Ctrl+Y or Ctrl+Shift+Z makes it again; a field that is typed in keeps these keys for its own letters.
addEventListener('keydown', e => {
  if (!(e.ctrlKey || e.metaKey) || e.altKey || e.target.closest?.('input:not([type=range], [type=checkbox]), textarea')) return;
  const key = e.key.toLowerCase();
  const way = key === 'y' || (key === 'z' && e.shiftKey) ? 'Control+Y' : key === 'z' ? 'Control+Z' : '';
  const button = document.querySelector(`button[aria-keyshortcuts="${way}"]`);
  if (!button) return;
  e.preventDefault();
  button.click();
});

// Escape goes from a thing in a drawing to the margin, where it is spoken of, and from there back to it.
addEventListener('keydown', e => {
  const margin = document.getElementById('margin');
  if (e.key !== 'Escape' || e.defaultPrevented || !margin) return;
  if (e.target.closest?.('.pick')) margin.focus();
  else if (margin.contains(e.target)) document.querySelector('.pick.picked')?.focus();
});

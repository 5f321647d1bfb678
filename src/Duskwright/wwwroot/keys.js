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

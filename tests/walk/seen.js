/* What is wrong with the focus: it does not show (WCAG 2.2, 2.4.7), or all of it lies under something (2.4.11). */
() => {
  const at = document.activeElement;
  if (!at || at === document.body || at.localName === 'video') return []; /* a film's controls are the browser's */
  const name = `${at.localName}.${at.className}#${at.id}`, found = [];
  const shown = at.matches('.option input') ? at.parentElement.querySelector('.face') : at;
  const style = getComputedStyle(shown);
  if (at.tabIndex >= 0 && (style.outlineStyle === 'none' || parseFloat(style.outlineWidth) < 2)) {
    found.push(`${name} does not show its focus`);
  }
  const boxes = [...shown.getClientRects()].filter(box => box.width && box.height), parts = [.1, .3, .5, .7, .9];
  const points = boxes.flatMap(box => parts.flatMap(x => parts.map(
    y => [box.left + box.width * x, box.top + box.height * y])));
  const seen = points.some(([x, y]) => {
    const hit = document.elementFromPoint(x, y);
    return hit && (shown.contains(hit) || hit.contains(shown) || (hit.closest('label') || hit).contains(at));
  });
  if (!seen) found.push(`${name} is hidden`);
  return found;
}

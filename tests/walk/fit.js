/* Every place where text does not fit: too wide for the screen, cut off, or out of the box it stands in. */
(shortened) => {
  const passed = 'script, style, noscript, .seen, .skip, textarea, select, title, desc';
  const found = new Set(), boxes = new Map();
  const about = one => {
    if (!boxes.has(one)) {
      const style = getComputedStyle(one);
      boxes.set(one, {
        box: one.getBoundingClientRect(),
        scrolls: /auto|scroll/.test(style.overflowX),
        hides: /hidden|clip/.test(style.overflowX),
        unseen: style.clipPath !== 'none',
        passed: style.display === 'inline' || style.display === 'contents' ||
          (one instanceof SVGElement && one.localName !== 'svg')
      });
    }
    return boxes.get(one);
  };
  const short = text => text.trim().replace(/\s+/g, ' ').slice(0, 50);
  const tell = (why, one, text) => found.add(`${why} ${one.localName}.${one.getAttribute('class') || ''}: ${short(text)}`);
  if (document.documentElement.scrollWidth > innerWidth) {
    found.add(`page of ${document.documentElement.scrollWidth} pixels`);
  }
  const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let text = walk.nextNode(); text; text = walk.nextNode()) {
    const parent = text.parentElement;
    if (!text.data.trim() || parent.closest(passed) || parent.closest(shortened)) continue;
    if (!parent.checkVisibility({ visibilityProperty: true })) continue;
    const range = document.createRange();
    range.selectNodeContents(text);
    const lines = [...range.getClientRects()].filter(line => line.width > 1 && line.height > 1);
    const right = Math.max(...lines.map(line => line.right)), left = Math.min(...lines.map(line => line.left));
    for (let one = parent; one && one !== document.body; one = one.parentElement) {
      const known = about(one);
      if (known.scrolls || known.unseen) break;
      if (known.passed) continue;
      if (right > known.box.right + 1.5 || left < known.box.left - 1.5) {
        tell(known.hides ? 'cut off in' : 'out of', one, text.data);
        break;
      }
    }
  }
  return [...found];
}

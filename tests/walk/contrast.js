/* The contrast of each place that a selector names: [selector, ratio, least that it needs]. */
(selectors) => {
  const rgb = text => {
    const parts = text.match(/[\d.]+/g).map(Number);
    return { parts: parts.slice(0, 3), alpha: parts.length > 3 ? parts[3] : 1 };
  };
  const light = parts => {
    const [r, g, b] = parts.map(one => one / 255).map(one => (one <= 0.04045 ? one / 12.92 : ((one + 0.055) / 1.055) ** 2.4));
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const ground = one => {
    for (let at = one; at; at = at.parentElement) {
      const found = rgb(getComputedStyle(at).backgroundColor);
      if (found.alpha === 1) return found.parts;
      if (found.alpha > 0) return null;
    }
    return null;
  };
  return selectors.map(selector => {
    const one = document.querySelector(selector), style = getComputedStyle(one);
    const drawn = one instanceof SVGElement;
    const ink = rgb(drawn ? style.fill : style.color);
    const haloed = drawn && style.paintOrder.startsWith('stroke') && parseFloat(style.strokeWidth) >= 3;
    const under = haloed ? rgb(style.stroke).parts : ground(one);
    if (!under || ink.alpha < 1) return [selector, 0, 4.5];
    const [high, low] = [light(ink.parts), light(under)].sort((a, b) => b - a);
    const size = parseFloat(style.fontSize), large = size >= 24 || (size >= 18.66 && style.fontWeight >= 700);
    return [selector, (high + 0.05) / (low + 0.05), large ? 3 : 4.5];
  });
}

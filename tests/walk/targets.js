/* Every target that is too small for a finger, and everything that moves by itself. */
([ours, least]) => {
  const found = new Set();
  const named = (one, why) => found.add(`${one.localName}.${one.className} ${why} ${one.textContent.trim().slice(0, 30)}`);
  for (const one of document.querySelectorAll('a[href], button, input, select, textarea, summary')) {
    if (!one.checkVisibility({ visibilityProperty: true }) || one.disabled || one.closest('.skip')) continue;
    if (getComputedStyle(one).display === 'inline' && one.localName === 'a') continue;
    const label = one.matches('[type=radio], [type=checkbox]') && one.closest('label');
    const box = (label || one).getBoundingClientRect();
    const small = one.closest('.told, .rests, .behind, .ruling, .marks, .usual, .judged') ? least : ours;
    if (box.height + .5 < small || box.width + .5 < small) named(one, `${Math.round(box.width)}x${Math.round(box.height)}`);
  }
  for (const one of document.querySelectorAll('*')) {
    const style = getComputedStyle(one), times = `${style.transitionDuration}, ${style.animationDuration}`;
    if (times.split(', ').some(time => parseFloat(time) > 0) || style.scrollBehavior === 'smooth') named(one, 'moves');
  }
  return [...found];
}

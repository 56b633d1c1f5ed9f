/* What is known of one person's test, as values that come together from several places without loss. */
(function () {
  "use strict";
  var loom = (window.caseloom = window.caseloom || {});

  function isCell(cell) {
    return Boolean(cell) && typeof cell === "object" && Number.isInteger(cell.tick) && cell.tick > 0;
  }
  function areCells(cells) {
    return Boolean(cells) && typeof cells === "object" && Object.values(cells).every(isCell);
  }
  /* What another program or a torn write left behind is not taken for answers. */
  loom.whole = function (kept) {
    return Boolean(kept) && /^[0-9a-f]{32}$/.test(kept.sheet) && !isNaN(Date.parse(kept.started)) &&
      Number.isInteger(kept.rev) && Number.isInteger(kept.tick) && areCells(kept.answers) && areCells(kept.marks);
  };
  loom.blank = function (taught) {
    return { sheet: loom.fresh(), started: loom.stamp(new Date()), "class": taught, rev: 0, tick: 0, answers: {}, marks: {} };
  };
  /* Every change gets a tick: the time in milliseconds, but always after all that is known here. */
  loom.set = function (state, part, name, cell) {
    state.tick = Math.max(state.tick + 1, Date.now());
    state[part][name] = Object.assign({}, cell, { tick: state.tick });
  };
  function later(a, b) {
    if (!a || !b) return a || b;
    if (a.tick !== b.tick) return a.tick > b.tick ? a : b;
    return JSON.stringify(a) >= JSON.stringify(b) ? a : b;
  }
  function cells(a, b) {
    var made = {};
    Object.keys(a).concat(Object.keys(b)).sort().forEach(function (name) { made[name] = later(a[name], b[name]); });
    return made;
  }
  /* What orders two sheets: which was begun first, then anything that is the same everywhere. */
  function head(state) {
    return JSON.stringify([String(Date.parse(state.started)).padStart(16, "0"), state.sheet, state.started, state["class"] || ""]);
  }
  /* The first sheet that was begun gives its number; of every answer and mark the later one holds. */
  loom.merge = function (a, b) {
    if (!a || !b) return a || b;
    var begun = head(a) <= head(b) ? a : b;
    return {
      sheet: begun.sheet, started: begun.started, "class": begun["class"],
      rev: Math.max(a.rev, b.rev), tick: Math.max(a.tick, b.tick),
      answers: cells(a.answers, b.answers), marks: cells(a.marks, b.marks)
    };
  };
  loom.same = function (a, b) {
    return JSON.stringify(loom.merge(a, a)) === JSON.stringify(loom.merge(b, b));
  };
})();

/* One version of a test: who sits here, what they answered, and the parts of the page that follow from it.

   Knows nothing of what is right. `sitting` is what the parts share: the state, and how to change it. */
(function () {
  "use strict";
  var loom = window.caseloom, data = loom.data, say = data.say || {};
  var paper = document.getElementById("paper");
  if (!paper) return;
  var byId = document.getElementById.bind(document), line = document.querySelector(".keeping");
  var code = loom.codeGiven(), early = {}, kept = "", keeper, parts;

  function fieldset(one) {
    return paper.querySelector('fieldset[data-question="' + one.q + '"]');
  }
  function kind(one) {
    return loom.kinds[one.kind];
  }
  function put(one) {
    var cell = sitting.state.answers[one.q];
    kind(one).put(fieldset(one), cell ? cell.value : null);
  }
  var sitting = {
    state: null,
    code: code,
    name: function () { return [data.test, data.version, code].join("-"); },
    isOpen: function (one) { return !kind(one).whole(fieldset(one)); },
    answered: function () { return data.questions.filter(function (one) { return !sitting.isOpen(one); }).length; },
    said: function (one) { return kind(one).said(fieldset(one)); },
    /* Finished, and the answers are still those. */
    isFinished: function () {
      var end = sitting.state.marks.end;
      return Boolean(end) && end.crc32 === loom.checksum(sitting.state, code);
    },
    mark: function (name, cell) {
      loom.set(sitting.state, "marks", name, cell);
      keep();
    },
    /* The next revision, counted on from whatever another window may have made. */
    revise: function () {
      keeper.look();
      sitting.state.rev += 1;
    },
    take: function (state) {
      met(state);
      keep();
    },
    open: function () {
      paper.hidden = false;
      byId("drafts").hidden = false;
    },
    /* The bar says what matters most: that nothing is kept, else the time left, else the code. */
    tellWhere: function () {
      var where = document.querySelector(".where"), text = clock.line() || say.code_shown.replace("{code}", code);
      where.classList.toggle("clay-text", kept === "no");
      where.textContent = kept === "no" ? say.code_not_kept : text;
    },
    goTo: function (heading) {
      heading.focus({ preventScroll: true });
      heading.scrollIntoView({ block: "start" });
    },
    forget: function () { return keeper.forget(); }
  };

  function refresh() {
    byId("handing").hidden = !sitting.isFinished();
    parts.forEach(function (part) { if (part.refresh) part.refresh(); });
  }
  function keep() {
    keeper.write(sitting.state);
    refresh();
  }
  /* What was given before the safe store was heard stays the newest. */
  function met(other) {
    var before = JSON.stringify(sitting.state.answers);
    sitting.state = loom.merge(sitting.state, other);
    Object.keys(early || {}).forEach(function (name) {
      if (sitting.state.answers[name].tick > early[name].tick) loom.set(sitting.state, "answers", name, early[name]);
    });
    if (JSON.stringify(sitting.state.answers) !== before) data.questions.forEach(put);
    clock.found();
    refresh();
    return sitting.state;
  }

  function changed(event) {
    var box = event.target.closest("fieldset[data-question]");
    var one = box && data.questions.find(function (asked) { return asked.q === box.dataset.question; });
    if (!one) return;
    var cell = { value: kind(one).read(box) }, old = sitting.state.answers[one.q] || { value: null };
    if (kind(one).typed) cell.typed = kind(one).typed(box);
    if (JSON.stringify([cell.value, cell.typed]) === JSON.stringify([old.value, old.typed])) return;
    if (clock.late()) cell.late = true;
    loom.set(sitting.state, "answers", one.q, cell);
    if (early) early[one.q] = sitting.state.answers[one.q];
    keep();
  }
  function isSafe() {
    var marks = sitting.state.marks, ticks = Object.values(sitting.state.answers).map(function (cell) { return cell.tick; });
    var last = Math.max.apply(null, [0].concat(ticks));
    return [marks.drafted, marks.saved, marks.handed].some(function (mark) { return mark && mark.tick > last; }) || !last;
  }
  var told = {
    kept: function (how) {
      early = null;
      kept = how;
      var text = { sure: say.kept, quick: say.kept_quick, no: say.not_kept }[how];
      if (line.textContent !== text) line.textContent = text;
      line.classList.toggle("clay-text", how === "no");
      sitting.tellWhere();
      if (how === "no") byId("drafts").open = true;
    },
    met: met,
    others: function (count) { byId("others").textContent = count ? say.other_windows : ""; },
    forgotten: function () { share.leave(); }
  };
  function begin() {
    var taught = loom.given().get("class");
    sitting.state = loom.blank(taught || data["class"]);
    keeper = loom.keeper(code, told);
    sitting.state = keeper.read() || sitting.state;
    if (taught) sitting.state["class"] = taught;
    data.questions.forEach(function (one) {
      kind(one).ready(fieldset(one));
      put(one);
    });
    document.querySelector(".where").classList.remove("title");
    sitting.tellWhere();
    byId("to-review").hidden = false;
    paper.addEventListener("change", changed);
    paper.addEventListener("input", changed);
    clock.start();
    keep();
    window.addEventListener("load", post.send);
  }
  window.addEventListener("hashchange", function () {
    if (loom.given().get("code")) location.reload();
  });
  window.addEventListener("beforeunload", function (event) {
    if (kept === "no" && !isSafe()) event.preventDefault();
  });
  if (!loom.isCode(code) || loom.versionOf(code) !== data.version) {
    paper.hidden = true;
    loom.askForCode();
    if (loom.isCode(code) && loom.versionOf(code) in data.pages) location.replace(loom.wayTo(code));
    return;
  }
  var clock = loom.clock(sitting), post = loom.posting(sitting), share = loom.sharing(sitting);
  loom.draft(sitting);
  parts = [loom.review(sitting), loom.finish(sitting, post), post, share];
  begin();
})();

/* The answers so far as a file, and such a file opened again: for browsers that keep nothing. */
(function () {
  "use strict";
  var loom = (window.caseloom = window.caseloom || {});

  function belongs(draft, code) {
    var data = loom.data;
    return draft.test === data.test && draft.edition === data.edition && draft.version === data.version &&
      loom.tidy(String(draft.code)) === code;
  }
  function sound(draft) {
    return draft.format === "caseloom/answers/1" && Array.isArray(draft.answers) && loom.crc32(loom.flat(draft)) === draft.crc32;
  }
  /* What a saved file says, as a state that can be merged; null where it is damaged or something else. */
  loom.stateOf = function (text) {
    var state, draft;
    try {
      draft = JSON.parse(text);
      if (!sound(draft)) return null;
      state = { sheet: draft.sheet, started: draft.started, "class": draft["class"], rev: draft.rev, tick: 0, answers: {}, marks: {} };
      draft.answers.forEach(function (one) {
        if (one.value === null) return;
        state.answers[one.q] = { value: one.value, typed: one.typed, tick: one.tick || Date.parse(draft.started) };
        state.tick = Math.max(state.tick, state.answers[one.q].tick);
      });
      if (draft.time) state.marks.time = { began: draft.time.began, more: draft.time.more, tick: Date.parse(draft.time.began) };
    } catch (other) {
      return null;
    }
    return loom.whole(state) ? { state: state, draft: draft } : null;
  };
  loom.download = function (link, text, name) {
    if (link.dataset.made) URL.revokeObjectURL(link.href);
    link.dataset.made = "yes";
    link.href = URL.createObjectURL(new Blob([text], { type: "application/json" }));
    link.download = name;
  };
  loom.draft = function (sitting) {
    var say = loom.data.say, byId = document.getElementById.bind(document), said = byId("draft-said");

    function save() {
      var link = document.createElement("a");
      sitting.revise();
      loom.download(link, loom.sheet(sitting.state, sitting.code, true), sitting.name() + "-draft.json");
      document.body.append(link);
      link.click();
      link.remove();
      sitting.mark("drafted", { rev: sitting.state.rev });
      said.textContent = say.draft_saved;
    }
    function take(text) {
      var found = loom.stateOf(text);
      if (!found) return (said.textContent = say.draft_damaged);
      if (!belongs(found.draft, sitting.code)) return (said.textContent = say.draft_other.replace("{code}", String(found.draft.code).slice(0, 12)));
      sitting.take(found.state);
      said.textContent = say.draft_taken.replace("{n}", Object.keys(found.state.answers).length);
    }
    byId("draft-save").addEventListener("click", save);
    byId("draft-open").addEventListener("change", function () {
      var file = byId("draft-open").files[0];
      if (!file) return;
      file.text().then(take, function () { said.textContent = say.draft_damaged; });
      byId("draft-open").value = "";
    });
  };
})();

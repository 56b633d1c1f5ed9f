/* A device that many use: when a sheet is safe, everything of this person is cleared for the next one. */
(function () {
  "use strict";
  var loom = (window.caseloom = window.caseloom || {});

  loom.sharing = function (sitting) {
    var say = loom.data.say, byId = document.getElementById.bind(document);
    var part = byId("pass-on"), button = byId("pass"), saved = byId("pass-saved");

    function isReceived() {
      var marks = sitting.state.marks;
      return sitting.isFinished() && marks.handed && marks.handed.rev === marks.end.rev;
    }
    function isSaved() {
      var marks = sitting.state.marks;
      return sitting.isFinished() && marks.saved && marks.saved.rev === marks.end.rev;
    }
    function show() {
      if (!loom.isShared()) return;
      part.hidden = !sitting.isFinished();
      saved.closest(".agree").hidden = isReceived() || !isSaved();
      button.disabled = !isReceived() && !(isSaved() && saved.checked);
      byId("pass-said").textContent = isReceived() ? say.pass_received : isSaved() ? say.pass_saved : say.pass_first;
    }
    function clear() {
      button.disabled = true;
      sitting.forget().then(leave, leave);
    }
    /* What this person practised, and wrote for themselves. */
    function forgetNotes() {
      try {
        Object.keys(localStorage).filter(function (name) {
          return /^caseloom\/(?:practice|after)\//.test(name);
        }).forEach(function (name) { localStorage.removeItem(name); });
      } catch (blocked) { /* Then nothing was kept. */ }
    }
    function leave() {
      loom.forgetCode();
      forgetNotes();
      document.querySelectorAll("form").forEach(function (form) { form.reset(); });
      byId("sheet-text").value = "";
      location.replace(loom.wayBack());
      if (loom.data.alone) location.reload();
    }
    saved.addEventListener("change", show);
    button.addEventListener("click", clear);
    return { refresh: show, leave: leave };
  };
})();

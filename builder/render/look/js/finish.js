/* The answer sheet: made when a person says so, there again after a reload, as a file and as text. */
(function () {
  "use strict";
  var loom = (window.caseloom = window.caseloom || {});

  loom.finish = function (sitting, post) {
    var say = loom.data.say, byId = document.getElementById.bind(document);
    var field = byId("sheet-text"), file = byId("sheet-file"), said = byId("sheet-said");

    function lay() {
      if (!sitting.isFinished()) return;
      var text = loom.sheet(sitting.state, sitting.code, false);
      if (field.value === text) return;
      field.value = text;
      said.textContent = "";
      byId("handing-title").textContent = say.sheet_ready;
      loom.download(file, text, sitting.name() + ".json");
    }
    /* The same answers are the same sheet; only changed ones make a new revision of it. */
    function finish() {
      var sum = loom.checksum(sitting.state, sitting.code);
      if (!sitting.isFinished()) {
        sitting.revise();
        sitting.mark("end", { at: loom.stamp(new Date()), rev: sitting.state.rev, crc32: sum });
      }
      post.send();
      sitting.goTo(byId("handing-title"));
    }
    function copied() {
      said.textContent = say.copied;
      sitting.mark("saved", { rev: sitting.state.marks.end.rev });
    }
    function copy() {
      field.closest("details").open = true;
      field.focus();
      field.select();
      var byHand = function () { said.textContent = say.copy_by_hand; };
      if (navigator.clipboard) navigator.clipboard.writeText(field.value).then(copied, byHand);
      else if (document.execCommand("copy")) copied();
      else byHand();
    }
    byId("finish").addEventListener("click", finish);
    byId("sheet-copy").addEventListener("click", copy);
    file.addEventListener("click", function () { sitting.mark("saved", { rev: sitting.state.marks.end.rev }); });
    return { refresh: lay };
  };
})();

/* Handing in to a host, where the page comes from one: never twice, never lost.

   A host brings `caseloom.hand.take(text, told)`, which tries until the sheet has arrived and promises
   `{received, at}`: the number of the receipt and the time. It tells "asking" and "waiting" meanwhile, and rejects
   only where the host will not have this sheet. `caseloom.hand.here(code, answered, of)` says how far one is. */
(function () {
  "use strict";
  var loom = (window.caseloom = window.caseloom || {});
  loom.hand = loom.hand || {};

  function clockTime(at) {
    var when = new Date(at);
    return isNaN(when) ? String(at) : when.toLocaleTimeString([], { hour: "2-digit", minute: "2-digit" });
  }
  loom.posting = function (sitting) {
    var say = loom.data.say, byId = document.getElementById.bind(document);
    var flights = {}, refusals = {};

    function rev() { return sitting.isFinished() ? sitting.state.marks.end.rev : 0; }
    function receipt() {
      var handed = sitting.state.marks.handed;
      return handed && handed.rev === rev() ? handed : null;
    }
    function send() {
      var now = rev();
      if (!loom.hand.take || !now || receipt() || refusals[now] || flights[now]) return;
      flights[now] = "asking";
      loom.hand.take(loom.sheet(sitting.state, sitting.code, false), function (how) {
        flights[now] = how;
        show();
      }).then(function (got) {
        delete flights[now];
        if (!receipt()) sitting.mark("handed", { rev: now, received: String(got.received), at: got.at });
      }, function (why) {
        delete flights[now];
        refusals[now] = String(why && why.message);
        show();
      });
    }
    function state() {
      var now = rev();
      return receipt() ? "received" : refusals[now] ? "refused" : flights[now] === "waiting" ? "waiting" : "sending";
    }
    function words(state) {
      var handed = receipt();
      if (handed) return say.received_as.replace("{n}", handed.received).replace("{time}", clockTime(handed.at));
      return state === "refused" ? refusals[rev()] : say[state + "_why"];
    }
    function show() {
      if (!loom.hand.take || !rev()) return;
      var how = state(), text = words(how);
      byId("post").hidden = false;
      byId("post").dataset.state = how;
      byId("handing-title").textContent = say[how];
      if (byId("post-said").textContent !== text) byId("post-said").textContent = text;
      byId("post-again").hidden = how === "received" || how === "sending";
      byId("sheet-file").classList.add("mild");
      byId("sheet-lede").textContent = how === "received" ? say.sheet_copy_lede : say.sheet_else_lede;
    }
    if (loom.hand.take) byId("finish").textContent = say.finish_hand;
    byId("post-again").addEventListener("click", function () {
      delete refusals[rev()];
      window.dispatchEvent(new Event("online"));
      send();
    });
    return {
      send: send,
      refresh: function () {
        if (loom.hand.here) loom.hand.here(sitting.code, sitting.answered(), loom.data.questions.length);
        show();
      },
      isReceived: function () { return Boolean(receipt()); }
    };
  };
})();

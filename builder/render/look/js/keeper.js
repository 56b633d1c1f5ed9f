/* The keeper of one person's test: both stores and the other windows behind one word, `write`. */
(function () {
  "use strict";
  var loom = (window.caseloom = window.caseloom || {});

  /* `told.kept` hears how well it is kept: "sure", "quick" (a crash may cost the last seconds) or "no".
     `told.met` gets what was found elsewhere and answers with what it makes of both; `told.others` hears how
     many other windows are open; `told.forgotten` that one of them has cleared this person away. */
  loom.keeper = function (code, told) {
    var data = loom.data, name = ["caseloom", data.edition, data.test, data.version, code].join("/");
    var quick = loom.quickStore(name), safe = loom.safeStore(name);
    var waiting = null, busy = false, over = false, kept = { quick: false, safe: null };

    function tell() {
      if (!over && kept.safe !== null) told.kept(kept.safe ? "sure" : kept.quick ? "quick" : "no");
    }
    function settle(held) {
      busy = false;
      kept.safe = Boolean(held);
      if (held && !over) kept.quick = quick.write(told.met(held));
      tell();
      drain();
    }
    function drain() {
      if (busy || over || waiting === null) return;
      var state = waiting;
      waiting = null;
      busy = true;
      safe.write(state).then(settle, settle.bind(null, null));
    }
    function write(state) {
      var held = quick.read();
      if (held) state = told.met(held);
      kept.quick = quick.write(state);
      if (kept.safe === false) tell();
      waiting = JSON.parse(JSON.stringify(state));
      peers.say("state", state);
      drain();
    }
    function heard(message, count) {
      if (over) return;
      if (message.what === "forgotten") {
        over = true;
        return told.forgotten();
      }
      var found = message.what === "state" ? message.state : quick.read();
      if (found && loom.whole(found) && !loom.same(told.met(found), found)) write(told.met(found));
      told.others(count);
    }
    var peers = loom.peers(name, heard);
    return {
      read: quick.read,
      write: write,
      look: function () {
        var held = quick.read();
        if (held) told.met(held);
      },
      forget: function () {
        over = true;
        peers.say("forgotten");
        return safe.forget().then(quick.forget, quick.forget);
      }
    };
  };
})();

/* Other windows of this browser that have the same test open: they tell each other what was answered. */
(function () {
  "use strict";
  var loom = (window.caseloom = window.caseloom || {});

  function opened() {
    try {
      return new BroadcastChannel("caseloom");
    } catch (none) {
      return null;
    }
  }
  /* `heard` gets every message and how many others are open; where browsers carry no messages from page to
     page, they carry word of a changed store, or there is a look at it when the window comes back. */
  loom.peers = function (name, heard) {
    var me = loom.fresh(), channel = opened(), others = {};
    function say(what, state) {
      if (channel) channel.postMessage({ name: name, from: me, what: what, state: state });
    }
    function pass(message) {
      heard(message, Object.keys(others).length);
    }
    function receive(event) {
      var message = event.data || {};
      if (message.name !== name || message.from === me) return;
      if (message.what === "hello") say("here");
      if (message.what === "gone") delete others[message.from];
      else others[message.from] = true;
      pass(message);
    }
    if (channel) channel.onmessage = receive;
    window.addEventListener("storage", function (event) {
      if (event.key === name) pass({ what: "look" });
    });
    document.addEventListener("visibilitychange", function () {
      if (!document.hidden) pass({ what: "look" });
    });
    window.addEventListener("pagehide", function () { say("gone"); });
    window.addEventListener("pageshow", function (event) { if (event.persisted) say("hello"); });
    say("hello");
    return { say: say };
  };
})();

/* Put by the host in the hall before the scripts of every page it serves; never part of what is built.
   caseloom.hand.take(sheet, told): gives the sheet (its text) to the host, over and over while the host cannot
     be reached. Resolves to {received, at}. `told("waiting")` is called at each failed try, `told("asking")` before
     each. Rejects only where the host will not have this sheet: an Error whose message is meant for the participant.
   caseloom.hand.here(code, answered, of): where this phone stands; call it as often as you like. */
(function () {
  "use strict";
  var loom = (window.caseloom = window.caseloom || {});
  var known = JSON.parse(document.currentScript.dataset.hall);
  var PAUSES = [1000, 2000, 4000, 8000], PATIENCE = 15000, PING = 4000, HEARTBEAT = 20000;
  var wake = [];

  function post(path, text) {
    var end = new AbortController(), timer = setTimeout(function () { end.abort(); }, PATIENCE);
    return fetch(path, {
      method: "POST", headers: { "Content-Type": "application/json" }, body: text, credentials: "omit",
      cache: "no-store", redirect: "error", signal: end.signal
    }).then(function (answer) {
      return answer.json().catch(function () { return {}; }).then(function (told) {
        return { status: answer.status, told: told };
      });
    }).finally(function () { clearTimeout(timer); });
  }
  /* Waits, but not when the network or the person comes back sooner. */
  function pause(time) {
    return new Promise(function (done) {
      var timer = setTimeout(done, time * (0.75 + Math.random() / 2));
      wake.push(function () { clearTimeout(timer); done(); });
    });
  }
  function awake() {
    if (!document.hidden) wake.splice(0).forEach(function (done) { done(); });
  }
  ["online", "pageshow", "focus"].forEach(function (name) { window.addEventListener(name, awake); });
  document.addEventListener("visibilitychange", awake);

  function settled(got) {
    if (got.status === 200 && got.told.received) return got.told;
    if (got.status === 422 || got.status === 413) {
      var refused = new Error(got.told.line || known.refused);
      refused.refused = true;
      throw refused;
    }
    return null;
  }
  function take(sheet, told) {
    var text = typeof sheet === "string" ? sheet : JSON.stringify(sheet), tries = 0;
    var tell = told || function () {};
    function once() {
      tell("asking");
      return post("/hand", text).catch(function () { return { status: 0, told: {} }; }).then(settled).then(function (done) {
        if (done) return done;
        tell("waiting");
        return pause(PAUSES[Math.min(tries++, PAUSES.length - 1)]).then(once);
      });
    }
    return once();
  }

  var stand = null, sent = "", last = 0, due = null;
  function ping() {
    due = null;
    if (!stand || document.hidden) return;
    sent = JSON.stringify(stand);
    last = Date.now();
    post("/here", sent).catch(function () {});
  }
  function here(code, answered, of) {
    stand = { code: code, answered: answered, of: of };
    if (JSON.stringify(stand) === sent || due) return;
    due = setTimeout(ping, Math.max(0, PING - (Date.now() - last)));
  }
  setInterval(ping, HEARTBEAT);

  loom.hand = { klass: known["class"], take: take, here: here };
  /* A page that was reached by a link inside the course still knows its class. */
  if (document.currentScript.dataset.test !== undefined && known["class"]) {
    var carried = new URLSearchParams(location.hash.slice(1));
    if (!carried.get("class")) {
      carried.set("class", known["class"]);
      history.replaceState(null, "", "#" + carried);
    }
  }
})();

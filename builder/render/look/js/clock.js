/* A time limit, where a course has set one: told before, shown quietly, longer where that was agreed.

   It ends nothing. What is answered after it is kept like all else and marked as late. */
(function () {
  "use strict";
  var loom = (window.caseloom = window.caseloom || {});
  var MINUTE = 60000, WARN = [10, 5, 1];

  loom.minutes = function (left) { return Math.max(0, Math.ceil(left / MINUTE)); };
  /* Milliseconds left; null where nothing limits the time. */
  loom.timeLeft = function (time, now) {
    if (!time || time.more === "none") return null;
    return Date.parse(time.began) + loom.data.minutes * Number(time.more) * MINUTE - now;
  };
  loom.clock = function (sitting) {
    var say = loom.data.say, byId = document.getElementById.bind(document), told = Infinity;
    var gate = byId("before"), line = byId("time-left"), news = byId("time-said");

    function left() { return loom.timeLeft(sitting.state.marks.time, Date.now()); }
    function warn(minutes) {
      var step = minutes === 0 ? 0 : WARN.filter(function (one) { return minutes <= one; }).pop();
      if (step === undefined || step >= told) return;
      told = step;
      news.textContent = step ? say.time_soon.replace("{n}", minutes) : say.time_out;
    }
    function words(rest) {
      if (rest === null) return sitting.state.marks.time ? say.time_none : "";
      return rest > 0 ? say.time_left.replace("{n}", loom.minutes(rest)) : say.time_over;
    }
    function show() {
      var rest = left(), text = words(rest);
      if (line.textContent === text) return;
      line.textContent = text;
      sitting.tellWhere();
      if (rest !== null) warn(loom.minutes(rest));
    }
    function begin(event) {
      event.preventDefault();
      sitting.mark("time", { began: loom.stamp(new Date()), more: byId("more").value });
      open();
      sitting.goTo(byId("paper").querySelector("h2"));
    }
    function open() {
      gate.hidden = true;
      sitting.open();
      setInterval(show, 1000);
      show();
    }
    function closed() {
      if (sitting.state.marks.time) return open();
      gate.hidden = false;
      byId("paper").hidden = true;
      var agreed = loom.given().get("more");
      byId("more").value = agreed;
      if (byId("more").selectedIndex < 0) byId("more").value = "1";
      gate.addEventListener("submit", begin);
    }
    return {
      line: function () { return loom.data.minutes && left() !== null && left() > 0 ? words(left()) : ""; },
      late: function () { return loom.data.minutes && left() !== null && left() < 0; },
      start: function () { if (loom.data.minutes) closed(); else sitting.open(); },
      found: function () { if (loom.data.minutes && !gate.hidden && sitting.state.marks.time) open(); }
    };
  };
})();

/* The answer sheet: its flat string, its checksum, its JSON. */
(function () {
  "use strict";
  var loom = (window.caseloom = window.caseloom || {});

  function flatValue(value) {
    if (value === null) return "";
    if (typeof value === "string") return value;
    return value.map(function (one) { return typeof one === "string" ? one : one.join(">"); }).join(",");
  }
  loom.flat = function (sheet) {
    var head = [sheet.edition, sheet.test, sheet.version, sheet.code].join("|") + "\n";
    return head + sheet.answers.map(function (one) { return one.q + "=" + flatValue(one.value) + "\n"; }).join("");
  };
  loom.crc32 = function (text) {
    var bytes = new TextEncoder().encode(text), sum = ~0;
    for (var i = 0; i < bytes.length; i++) {
      sum ^= bytes[i];
      for (var bit = 0; bit < 8; bit++) sum = (sum >>> 1) ^ (sum & 1 ? 0xedb88320 : 0);
    }
    return ("0000000" + (~sum >>> 0).toString(16)).slice(-8);
  };
  /* A time with its offset, to the second, as the clock on this device tells it. */
  loom.stamp = function (when) {
    var two = function (n) { return String(Math.floor(Math.abs(n))).padStart(2, "0"); };
    var away = -when.getTimezoneOffset();
    return when.getFullYear() + "-" + two(when.getMonth() + 1) + "-" + two(when.getDate()) + "T" +
      two(when.getHours()) + ":" + two(when.getMinutes()) + ":" + two(when.getSeconds()) +
      (away < 0 ? "-" : "+") + two(away / 60) + ":" + two(away % 60);
  };
  loom.fresh = function () {
    return Array.from(crypto.getRandomValues(new Uint8Array(16)), function (byte) {
      return ("0" + byte.toString(16)).slice(-2);
    }).join("");
  };
  loom.sheet = function (state, code, taught) {
    var made = {
      format: "caseloom/answers/1", sheet: state.sheet, rev: state.rev,
      edition: loom.data.edition, test: loom.data.test, version: loom.data.version,
      "class": taught, code: code, started: state.started, finished: state.finished,
      zone: Intl.DateTimeFormat().resolvedOptions().timeZone || "UTC",
      answers: loom.data.questions.map(function (one) {
        var value = state.answers[one.q], typed = (state.typed || {})[one.q];
        var given = { q: one.q, kind: one.kind, value: value === undefined ? null : value };
        if (given.value !== null && typed !== undefined) given.typed = typed;
        return given;
      })
    };
    made.crc32 = loom.crc32(loom.flat(made));
    return JSON.stringify(made);
  };
})();

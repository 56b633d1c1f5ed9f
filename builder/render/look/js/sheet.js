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
  function answer(state, one, draft) {
    var cell = state.answers[one.q] || { value: null }, given = { q: one.q, kind: one.kind, value: cell.value };
    if (cell.value !== null && cell.typed !== undefined) given.typed = cell.typed;
    if (draft && cell.tick) given.tick = cell.tick;
    return given;
  }
  /* What the clock says, where there is a limit: what was agreed, when it began, what came after it. */
  function timeOf(state) {
    var time = state.marks.time, late = loom.data.questions.filter(function (one) { return (state.answers[one.q] || {}).late; });
    return { limit: loom.data.minutes, more: time.more, began: time.began, late: late.map(function (one) { return one.q; }) };
  }
  function made(state, code, draft) {
    var end = state.marks.end, sheet = {
      format: "caseloom/answers/1", sheet: state.sheet, rev: draft || !end ? state.rev : end.rev,
      edition: loom.data.edition, test: loom.data.test, version: loom.data.version,
      "class": state["class"], code: code, started: state.started, finished: draft || !end ? null : end.at,
      zone: Intl.DateTimeFormat().resolvedOptions().timeZone || "UTC",
      answers: loom.data.questions.map(function (one) { return answer(state, one, draft); })
    };
    if (loom.data.minutes && state.marks.time) sheet.time = timeOf(state);
    sheet.crc32 = loom.crc32(loom.flat(sheet));
    return sheet;
  }
  /* The sheet as it is handed in; a draft is a sheet that is not finished and knows when each answer was given. */
  loom.sheet = function (state, code, draft) {
    return JSON.stringify(made(state, code, draft));
  };
  loom.checksum = function (state, code) {
    return made(state, code, false).crc32;
  };
})();

/* The days to come back on, counted from the last day of the course, and a calendar file of them (RFC 5545). */
(function () {
  "use strict";
  var loom = (window.caseloom = window.caseloom || {});
  var kept = document.getElementById("after-data"), DAY = 86400000, WIDE = 75;
  var SPANS = { day: [1, 0], week: [7, 0], month: [0, 1], quarter: [0, 3] };

  function parsed(text) {
    var found = /^(\d{4})-(\d\d)-(\d\d)$/.exec(text || "");
    if (!found) return null;
    var day = new Date(Date.UTC(+found[1], found[2] - 1, +found[3]));
    return day.toISOString().slice(0, 10) === text ? day : null;
  }
  loom.dayAfter = function (last, days, months) {
    var there = new Date(Date.UTC(last.getUTCFullYear(), last.getUTCMonth() + months + 1, 0));
    there.setUTCDate(Math.min(last.getUTCDate(), there.getUTCDate()));
    return new Date(there.getTime() + days * DAY);
  };
  function plain(day) { return day.toISOString().slice(0, 10).replace(/-/g, ""); }
  function escaped(text) { return text.replace(/[\\;,]/g, "\\$&").replace(/\n/g, "\\n"); }
  function size(letter) { return new TextEncoder().encode(letter).length; }
  function folded(line) {
    var parts = [""], room = WIDE;
    Array.from(line).forEach(function (letter) {
      if (room < size(letter)) {
        parts.push("");
        room = WIDE - 1;
      }
      parts[parts.length - 1] += letter;
      room -= size(letter);
    });
    return parts.join("\r\n ");
  }
  loom.calendar = function (data, last) {
    var lines = ["BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//caseloom//after the course//EN", "METHOD:PUBLISH"];
    data.days.forEach(function (one) {
      var day = loom.dayAfter(last, one.days, one.months), next = new Date(day.getTime() + DAY);
      lines.push("BEGIN:VEVENT", "SUMMARY:" + escaped(one.title), "DTSTART;VALUE=DATE:" + plain(day),
        "DTEND;VALUE=DATE:" + plain(next), "DTSTAMP:" + plain(day) + "T000000Z",
        "UID:" + data.key + "-" + plain(last) + "-" + one.id + "@caseloom",
        "DESCRIPTION:" + escaped(one.text), "TRANSP:TRANSPARENT", "END:VEVENT");
    });
    return lines.concat("END:VCALENDAR", "").map(folded).join("\r\n");
  };
  loom.showDays = function () {
    var last = parsed(loom.mine.read("ended"));
    document.querySelectorAll("[data-due]").forEach(function (place) {
      if (place.dataset.count === undefined) place.dataset.count = place.textContent;
      var span = SPANS[place.dataset.due], day = last && loom.dayAfter(last, span[0], span[1]);
      var words = day && day.toLocaleDateString(document.documentElement.lang || undefined,
        { dateStyle: "full", timeZone: "UTC" });
      place.textContent = words || place.dataset.count;
      if (!place.dataset.count) place.hidden = !words;
    });
  };
  if (!loom.mine) return;
  var named = /^#ended=(\d{4}-\d\d-\d\d)$/.exec(location.hash);
  if (named && parsed(named[1])) {
    loom.mine.write("ended", named[1]);
    loom.mine.fill();
  }
  loom.showDays();
  if (!kept) return;
  var data = JSON.parse(kept.textContent), form = document.querySelector(".ended");
  var field = document.getElementById("ended"), problem = document.getElementById("ended-problem");
  var saved = form.querySelector(".saved");
  form.hidden = false;
  document.querySelector(".without").hidden = true;
  field.addEventListener("input", function () {
    problem.textContent = saved.textContent = "";
    field.removeAttribute("aria-invalid");
    loom.showDays();
  });
  form.addEventListener("submit", function (event) {
    event.preventDefault();
    var last = parsed(field.value);
    if (!last) {
      problem.textContent = problem.dataset.missing;
      field.setAttribute("aria-invalid", "true");
      field.focus();
      return;
    }
    var link = document.createElement("a");
    link.href = URL.createObjectURL(new Blob([loom.calendar(data, last)], { type: "text/calendar" }));
    link.download = data.file;
    link.click();
    setTimeout(function () { URL.revokeObjectURL(link.href); }, DAY / 1440);
    saved.textContent = saved.dataset.saved;
  });
})();

/* A film: captions from the words below it; chapters and lines jump, and the present ones are marked. */
(function () {
  "use strict";
  function items(film, list) {
    return Array.from(film.querySelectorAll(list + " > li"));
  }
  function place(cue, settings) {
    settings.split(" ").forEach(function (one) {
      var name = one.split(":")[0], value = (one.split(":")[1] || "").split(",")[0];
      if (name === "align") cue.align = value;
      if (name === "vertical") cue.vertical = value;
      if (name === "size" || name === "position") cue[name] = parseFloat(value);
      if (name === "line") {
        cue.snapToLines = value.slice(-1) !== "%";
        cue.line = parseFloat(value);
      }
    });
  }
  function caption(track, item) {
    var text = item.querySelector("span").textContent.replace(/&/g, "&amp;").replace(/</g, "&lt;");
    var cue = new VTTCue(item.dataset.start / 1000, item.dataset.end / 1000, text);
    place(cue, item.dataset.settings || "");
    track.addCue(cue);
  }
  function jump(video, item) {
    video.currentTime = item.dataset.start / 1000;
    var begun = video.play();
    if (begun) begun.catch(function () { /* who forbids playing still sees the place */ });
  }
  function pressable(video, item) {
    var button = document.createElement("button");
    button.type = "button";
    while (item.firstChild) button.appendChild(item.firstChild);
    item.appendChild(button);
    button.addEventListener("click", jump.bind(null, video, item));
    return button;
  }
  /* A long list is one stop for the Tab key; arrows lead through it. */
  function walk(buttons) {
    buttons.forEach(function (button, at) {
      button.tabIndex = at ? -1 : 0;
      button.addEventListener("focus", function () {
        buttons.forEach(function (one) { one.tabIndex = one === button ? 0 : -1; });
      });
      button.addEventListener("keydown", function (event) {
        var to = { ArrowDown: at + 1, ArrowUp: at - 1, Home: 0, End: buttons.length - 1 }[event.key];
        if (to === undefined || event.altKey || event.ctrlKey || event.metaKey) return;
        event.preventDefault();
        if (buttons[to]) buttons[to].focus();
      });
    });
  }
  function mark(list, time) {
    var now = null;
    list.forEach(function (item) {
      var is = time >= item.dataset.start && time < item.dataset.end;
      if (is) now = item;
      if (is) item.firstChild.setAttribute("aria-current", "true");
      else item.firstChild.removeAttribute("aria-current");
    });
    return now;
  }
  function show(item) {
    var box = item.parentNode;
    if (box.matches(":hover") || box.contains(document.activeElement)) return;
    box.scrollTop = item.offsetTop - (box.clientHeight - item.offsetHeight) / 2;
  }
  function prepare(film) {
    var video = film.querySelector("video"), hint = film.querySelector(".hint");
    var chapters = items(film, ".chapters"), lines = items(film, ".lines"), last = null;
    var track = video.addTextTrack("captions", video.dataset.captions, document.documentElement.lang);
    lines.forEach(caption.bind(null, track));
    track.mode = "showing";
    chapters.forEach(pressable.bind(null, video));
    walk(lines.map(pressable.bind(null, video)));
    film.classList.add("live");
    if (hint) hint.hidden = false;
    function follow() {
      var time = Math.round(video.currentTime * 1000);
      mark(chapters, time);
      var now = mark(lines, time);
      if (now && now !== last) show(now);
      last = now;
    }
    ["timeupdate", "seeking"].forEach(function (name) { video.addEventListener(name, follow); });
  }
  document.querySelectorAll(".film").forEach(prepare);
})();

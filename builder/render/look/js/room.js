/* The room: keys and clicker move on, one key reveals, letters count hands. */
(function () {
  "use strict";
  var room = document.querySelector(".stage"), bar = document.querySelector(".presenter");
  var beats = Array.from(room.querySelectorAll(".beat"));
  var onward = bar.querySelector(".forward"), back = bar.querySelector(".back");
  var letters = bar.querySelector(".letters"), place = bar.querySelector(".place");
  var at = 0;

  function closed(beat) {
    return beat.classList.contains("asked") && !beat.classList.contains("open");
  }
  function tell() {
    place.textContent = place.dataset.place.replace("##", beats.length).replace("#", at + 1);
    onward.textContent = closed(beats[at]) ? onward.dataset.reveal : onward.dataset.on;
    onward.disabled = at === beats.length - 1 && !closed(beats[at]);
    back.disabled = at === 0 && !beats[at].classList.contains("open");
  }
  function show(place) {
    at = Math.max(0, Math.min(beats.length - 1, place));
    beats.forEach(function (beat, index) { beat.classList.toggle("here", index === at); });
    window.history.replaceState(null, "", "#" + (at + 1));
    window.scrollTo(0, 0);
    room.classList.toggle("begun", at > 0);
    (beats[at].querySelector("h2") || room.querySelector("h1")).focus({ preventScroll: true });
    tell();
  }
  function forward() {
    if (closed(beats[at])) {
      beats[at].classList.add("open");
      tell();
    } else if (at < beats.length - 1) show(at + 1);
  }
  function backward() {
    if (beats[at].classList.contains("open")) {
      beats[at].classList.remove("open");
      tell();
    } else if (at > 0) show(at - 1);
  }
  function count(beat) {
    var inputs = Array.from(beat.querySelectorAll(".hands input"));
    var hands = inputs.map(function (input) { return parseInt(input.value, 10) || 0; });
    var total = hands.reduce(function (sum, one) { return sum + one; }, 0);
    inputs.forEach(function (input, index) {
      var share = total ? Math.round(100 * hands[index] / total) : 0;
      input.closest(".choice").style.setProperty("--share", share + "%");
    });
    var line = beat.querySelector(".total");
    line.textContent = total ? line.dataset.total.replace("#", total) : "";
  }
  function raise(letter, by) {
    var choice = beats[at].querySelector('[data-letter="' + letter + '"]');
    if (!choice) return false;
    var input = choice.querySelector("input");
    input.value = Math.max(0, Math.min(999, (parseInt(input.value, 10) || 0) + by)) || "";
    count(beats[at]);
    return true;
  }
  function key(event) {
    if (event.ctrlKey || event.metaKey || event.altKey || event.target.closest(".menu")) return;
    var typing = event.target.matches("input"), pressing = event.target.matches("button, a, summary");
    var name = event.key, done = true;
    if (name === "PageDown" || (name === "ArrowRight" && !typing) || (name === " " && !typing && !pressing)) forward();
    else if (name === "PageUp" || (name === "ArrowLeft" && !typing)) backward();
    else if (!typing && letters.getAttribute("aria-pressed") === "true" && /^[a-z]$/i.test(name)) {
      done = raise(name.toUpperCase(), event.shiftKey ? -1 : 1);
    } else done = false;
    if (done) event.preventDefault();
  }
  beats.forEach(function (beat) {
    beat.addEventListener("input", function (event) {
      event.target.value = event.target.value.replace(/\D/g, "");
      count(beat);
    });
  });
  letters.addEventListener("click", function () {
    letters.setAttribute("aria-pressed", String(letters.getAttribute("aria-pressed") !== "true"));
  });
  onward.addEventListener("click", forward);
  back.addEventListener("click", backward);
  document.addEventListener("keydown", key);
  room.classList.add("live");
  bar.hidden = false;
  show((parseInt(location.hash.slice(1), 10) || 1) - 1);
})();

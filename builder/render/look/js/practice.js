/* A practice case unfolds: one question after another, one visit after another; what is over folds.

   The address says how: #blank asks everything, #worked shows everything, #part shows visit one worked (of a
   single visit the first half of its questions) and asks the rest. */
(function () {
  "use strict";
  var loom = window.caseloom, root = document.querySelector(".case");
  var visits = Array.from(root.querySelectorAll(".visit"));
  var links = Array.from(root.querySelectorAll(".modes a"));
  var where = document.querySelector(".where"), again = root.querySelector(".again");
  var kept = loom.practised(root.dataset.kept), state = kept.read(), looking = [];

  function mode() {
    var named = links.map(function (link) { return link.hash; });
    return named.indexOf(location.hash) > 0 ? location.hash.slice(1) : "blank";
  }
  function stepsOf(visit) { return Array.from(visit.querySelectorAll(".step")); }
  function fieldset(step) { return step.querySelector("fieldset"); }
  function kind(step) { return loom.kindOf(fieldset(step)); }
  function name(step) { return fieldset(step).dataset.question; }
  function isDecided(step) { return state.answers[name(step)] !== undefined; }

  function isGiven(place, number, count) {
    if (mode() !== "part") return mode() === "worked";
    return visits.length > 1 ? place === 0 : number < Math.floor(count / 2);
  }
  function isOver(place) {
    var steps = stepsOf(visits[place]);
    return steps.every(function (step, number) { return isGiven(place, number, steps.length) || isDecided(step); });
  }
  /* The last visit that is to be seen: as far as one went on, over visits that are over. */
  function reached() {
    if (mode() === "worked") return visits.length - 1;
    var place = 0;
    while (place < Math.min(state.visit, visits.length - 1) && isOver(place)) place += 1;
    return place;
  }
  function put(step) {
    kind(step).put(fieldset(step), isDecided(step) ? state.answers[name(step)] : null);
    if (isDecided(step) && kind(step).read(fieldset(step)) === null) delete state.answers[name(step)];
  }
  function tell(step, decided) {
    var value = decided ? [].concat(state.answers[name(step)]) : [], chose = step.querySelector(".chose");
    var right = step.querySelector(".line").dataset.right.split(" "), ordered = fieldset(step).dataset.kind === "order";
    step.querySelectorAll(".yours").forEach(function (tag) {
      tag.hidden = ordered || value.indexOf(tag.dataset.of) < 0;
    });
    var alike = ordered ? value.join() === right.join() : value.slice().sort().join() === right.slice().sort().join();
    var own = step.querySelector(".own");
    chose.textContent = alike || !decided ? "" : chose.dataset.chose.replace("#", kind(step).said(fieldset(step)));
    if (own) own.textContent = chose.textContent;
  }
  function layStep(step, given, last) {
    var decided = !given && isDecided(step), told = step.querySelector(".reveal"), shown = given || decided;
    var folded = shown && !last && mode() !== "worked";
    step.classList.toggle("given", given);
    step.classList.toggle("decided", decided);
    step.classList.toggle("folded", folded);
    fieldset(step).disabled = shown;
    step.querySelector(".decide").hidden = shown;
    step.querySelector(".problem").textContent = "";
    told.hidden = !shown;
    told.open = shown && !folded;
    told.querySelector(".line").hidden = !folded;
    told.querySelector(".show").hidden = folded;
    step.querySelectorAll(".besides").forEach(function (part) { part.open = !given; });
    tell(step, decided);
    return shown;
  }
  function layVisit(visit, place, last) {
    var steps = stepsOf(visit), open = true, over = place < last && mode() !== "worked";
    var answered = steps.some(function (step, number) {
      return isDecided(step) && !isGiven(place, number, steps.length);
    });
    steps.forEach(function (step, number) {
      var given = isGiven(place, number, steps.length);
      var following = steps[number + 1], after = following && !isGiven(place, number + 1, steps.length) && isDecided(following);
      step.hidden = !open;
      open = layStep(step, given, given ? !answered : !after) && open;
    });
    visit.hidden = place > last;
    visit.querySelector(".day").hidden = over && looking.indexOf(visit) < 0;
    visit.querySelector(".look-back").hidden = !visit.querySelector(".day").hidden;
    visit.querySelectorAll(".next").forEach(function (part) { part.hidden = !open; });
    visit.classList.toggle("whole", steps.every(function (step) { return step.classList.contains("given"); }));
    visit.querySelectorAll(".on").forEach(function (part) { part.hidden = !open || over || mode() === "worked"; });
  }
  function lay() {
    var last = reached();
    root.dataset.mode = mode();
    links.forEach(function (link) {
      if (link.hash === "#" + mode()) link.setAttribute("aria-current", "true");
      else link.removeAttribute("aria-current");
    });
    visits.forEach(function (visit, place) { layVisit(visit, place, last); });
    where.textContent = visits[last].dataset.where;
    again.hidden = mode() === "worked" || !Object.keys(state.answers).length;
  }
  function decide(step, event) {
    event.preventDefault();
    var value = kind(step).read(fieldset(step)), problem = step.querySelector(".problem");
    if (value === null) {
      problem.textContent = problem.dataset.choose;
      fieldset(step).querySelector("input, select, textarea, button").focus();
      return;
    }
    state.answers[name(step)] = value;
    kept.write(state);
    lay();
    step.querySelector(".told").focus({ preventScroll: true });
    step.scrollIntoView({ block: "start" });
  }
  function goOn(place) {
    state.visit = place + 1;
    kept.write(state);
    looking = [];
    lay();
    visits[place + 1].querySelector("h2").focus();
  }
  function here() {
    var open = root.querySelector(".step:not([hidden]):not(.given):not(.decided)");
    var place = open || root.querySelector(".on:not([hidden])") || again;
    var control = place.matches("button") ? place : place.querySelector("input, select, textarea, button");
    control.focus({ preventScroll: true });
    place.scrollIntoView({ block: "start" });
    root.querySelector(".resumed").hidden = true;
  }
  visits.forEach(function (visit, place) {
    stepsOf(visit).forEach(function (step) {
      step.reset();
      kind(step).ready(fieldset(step));
      put(step);
      step.addEventListener("submit", decide.bind(null, step));
    });
    visit.querySelectorAll(".on").forEach(function (on) { on.addEventListener("click", goOn.bind(null, place)); });
    visit.querySelector(".look-back").addEventListener("click", function () {
      looking.push(visit);
      lay();
      visit.querySelector("h2").focus();
    });
  });
  again.querySelector("button").addEventListener("click", function () {
    kept.forget();
    window.scrollTo(0, 0);
    location.reload();
  });
  root.querySelector(".resumed button").addEventListener("click", here);
  window.addEventListener("hashchange", lay);
  root.querySelector(".modes").hidden = false;
  root.querySelector(".resumed").hidden = mode() === "worked" || !Object.keys(state.answers).length;
  lay();
})();

/* A practice case unfolds: one question after another, one visit after another; a visit that is over folds. */
(function () {
  "use strict";
  var visits = Array.from(document.querySelectorAll(".visit"));
  var where = document.querySelector(".where");
  var again = document.querySelector(".again");

  function stepsOf(visit) {
    return Array.from(visit.querySelectorAll(".step"));
  }
  function mark(step) {
    step.querySelectorAll("input:checked").forEach(function (input) {
      step.querySelector('[data-of="' + input.value + '"]').hidden = false;
    });
  }
  function ended(visit) {
    var last = visit === visits[visits.length - 1];
    visit.querySelectorAll(".next, .on").forEach(function (part) { part.hidden = false; });
    if (last) again.hidden = false;
  }
  function decide(visit, step, event) {
    event.preventDefault();
    var problem = step.querySelector(".problem");
    if (!step.querySelector("input:checked")) {
      problem.textContent = problem.dataset.choose;
      step.querySelector("input").focus();
      return;
    }
    problem.textContent = "";
    var told = step.querySelector(".reveal");
    step.querySelector("fieldset").disabled = true;
    step.querySelectorAll(".option, .hint").forEach(function (part) { part.hidden = true; });
    step.querySelector(".decide").hidden = true;
    told.hidden = false;
    told.open = true;
    told.classList.add("opened");
    mark(step);
    var steps = stepsOf(visit), following = steps[steps.indexOf(step) + 1];
    if (following) following.hidden = false; else ended(visit);
    told.querySelector(".told").focus({ preventScroll: true });
    step.scrollIntoView({ block: "start" });
  }
  function enter(visit, focus) {
    visit.hidden = false;
    where.textContent = visit.dataset.where;
    if (!stepsOf(visit).length) ended(visit);
    if (focus) visit.querySelector("h2").focus();
  }
  function prepare(visit, place) {
    visit.hidden = place > 0;
    visit.querySelectorAll(".next").forEach(function (part) { part.hidden = true; });
    stepsOf(visit).forEach(function (step, index) {
      step.reset();
      step.hidden = index > 0;
      step.querySelector(".decide").hidden = false;
      step.querySelector(".reveal").hidden = true;
      step.addEventListener("submit", decide.bind(null, visit, step));
    });
    var on = visit.querySelector(".on");
    var back = visit.querySelector(".look-back"), day = visit.querySelector(".day");
    if (on) on.addEventListener("click", function () {
      on.hidden = day.hidden = true;
      back.hidden = false;
      enter(visits[place + 1], true);
    });
    back.addEventListener("click", function () {
      back.hidden = true;
      day.hidden = false;
      visit.querySelector("h2").focus();
    });
  }
  visits.forEach(prepare);
  again.querySelector("button").addEventListener("click", function () {
    window.scrollTo(0, 0);
    location.reload();
  });
  enter(visits[0], false);
})();

/* One version of a test: answers, review, answer sheet. Knows nothing of what is right. */
(function () {
  "use strict";
  var loom = window.caseloom, data = loom.data, say = data.say || {};
  var paper = document.getElementById("paper");
  if (!paper) return;
  var byId = document.getElementById.bind(document);
  var code = loom.tidy(loom.given().get("code") || "");
  var state, keeper, fileAddress, unkept = false;

  function fieldset(one) {
    return paper.querySelector('fieldset[data-question="' + one.q + '"]');
  }
  function kind(one) {
    return loom.kinds[one.kind];
  }
  function take(one) {
    var box = fieldset(one);
    state.answers[one.q] = kind(one).read(box);
    if (kind(one).typed) (state.typed = state.typed || {})[one.q] = kind(one).typed(box);
  }
  function keep() {
    var kept = keeper.write(state), line = document.querySelector(".keeping");
    unkept = !kept;
    line.classList.toggle("clay-text", !kept);
    var text = kept ? say.kept : say.not_kept;
    if (line.textContent !== text) line.textContent = text;
  }
  function changed() {
    data.questions.forEach(take);
    byId("handing").hidden = true;
    keep();
    if (!byId("review").hidden) list();
  }
  function open() {
    return data.questions.filter(function (one) { return !kind(one).whole(fieldset(one)); });
  }
  function row(one, index) {
    var li = document.createElement("li"), link = document.createElement("a");
    var number = document.createElement("b"), text = kind(one).said(fieldset(one));
    number.textContent = index + 1 + ". ";
    link.href = "#" + one.q;
    link.addEventListener("click", function (event) { event.preventDefault(); goTo(byId(one.q + "-n")); });
    li.className = text ? "" : "open";
    link.append(number, text || say.unanswered);
    li.appendChild(link);
    return li;
  }
  function list() {
    var left = open(), numbers = left.map(function (one) { return data.questions.indexOf(one) + 1; });
    document.querySelector(".answered").replaceChildren.apply(document.querySelector(".answered"), data.questions.map(row));
    byId("review-state").textContent = left.length
      ? say.left_open.replace("{numbers}", numbers.join(", ")) : say.all_answered;
  }
  function goTo(heading) {
    heading.focus({ preventScroll: true });
    heading.scrollIntoView({ block: "start" });
  }
  function review(event) {
    event.preventDefault();
    byId("review").hidden = false;
    list();
    goTo(byId("review-title"));
  }
  function finish() {
    state.rev += 1;
    state.finished = loom.stamp(new Date());
    keep();
    var text = loom.sheet(state, code, loom.given().get("class") || data["class"]);
    byId("sheet-text").value = text;
    if (fileAddress) URL.revokeObjectURL(fileAddress);
    fileAddress = URL.createObjectURL(new Blob([text], { type: "application/json" }));
    byId("sheet-file").href = fileAddress;
    byId("sheet-file").download = [data.test, data.version, code].join("-") + ".json";
    byId("handing").hidden = false;
    byId("sheet-said").textContent = "";
    goTo(byId("handing-title"));
  }
  function copy() {
    var field = byId("sheet-text");
    field.closest("details").open = true;
    field.focus();
    field.select();
    var done = function () { byId("sheet-said").textContent = say.copied; };
    if (navigator.clipboard) navigator.clipboard.writeText(field.value).then(done, function () {});
    else if (document.execCommand("copy")) done();
  }
  function begin() {
    keeper = loom.keeper(code);
    state = keeper.read() || { sheet: loom.fresh(), rev: 0, started: loom.stamp(new Date()), finished: null, answers: {} };
    data.questions.forEach(function (one) {
      kind(one).ready(fieldset(one));
      kind(one).put(fieldset(one), state.answers[one.q]);
      take(one);
    });
    keep();
    paper.hidden = false;
    byId("to-review").hidden = false;
    paper.addEventListener("change", changed);
    paper.addEventListener("input", changed);
    paper.addEventListener("submit", review);
    byId("finish").addEventListener("click", finish);
    byId("sheet-copy").addEventListener("click", copy);
    document.querySelector(".where").classList.remove("title");
    document.querySelector(".where").textContent = say.code_shown.replace("{code}", code);
  }
  window.addEventListener("hashchange", function () {
    if (loom.given().get("code")) location.reload();
  });
  window.addEventListener("beforeunload", function (event) {
    if (unkept && byId("handing").hidden && open().length < data.questions.length) event.preventDefault();
  });
  if (loom.isCode(code) && loom.versionOf(code) === data.version) {
    begin();
  } else {
    paper.hidden = true;
    loom.askForCode();
    if (loom.isCode(code)) location.replace(loom.wayTo(code));
  }
})();

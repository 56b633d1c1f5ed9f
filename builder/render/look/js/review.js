/* Looking over all answers: which questions have none, each a link back to it. */
(function () {
  "use strict";
  var loom = (window.caseloom = window.caseloom || {});

  loom.review = function (sitting) {
    var say = loom.data.say, byId = document.getElementById.bind(document);

    function link(one, text) {
      var made = document.createElement("a");
      made.href = "#" + one.q;
      made.append.apply(made, text);
      made.addEventListener("click", function (event) {
        event.preventDefault();
        sitting.goTo(byId(one.q + "-n"));
      });
      return made;
    }
    function row(one, index) {
      var li = document.createElement("li"), number = document.createElement("b");
      var text = sitting.said(one);
      number.textContent = index + 1 + ". ";
      li.className = sitting.isOpen(one) ? "open" : "";
      li.appendChild(link(one, text && !sitting.isOpen(one) ? [number, text] : text ? [number, text, " – ", say.unfinished] : [number, say.unanswered]));
      return li;
    }
    function state() {
      var open = loom.data.questions.filter(sitting.isOpen), parts = say.left_open.split("{numbers}"), made = [parts[0]];
      if (!open.length) return [say.all_answered];
      open.forEach(function (one, index) {
        if (index) made.push(", ");
        made.push(link(one, [String(loom.data.questions.indexOf(one) + 1)]));
      });
      return made.concat(parts[1]);
    }
    function list() {
      var rows = document.querySelector(".answered"), summary = byId("review-state");
      rows.replaceChildren.apply(rows, loom.data.questions.map(row));
      summary.replaceChildren.apply(summary, state());
      summary.classList.toggle("clay-text", loom.data.questions.some(sitting.isOpen));
    }
    byId("paper").addEventListener("submit", function (event) {
      event.preventDefault();
      byId("review").hidden = false;
      list();
      sitting.goTo(byId("review-title"));
    });
    return { refresh: function () { if (!byId("review").hidden) list(); } };
  };
})();

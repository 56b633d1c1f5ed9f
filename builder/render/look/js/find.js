/* Finding pages by words. The index is a script, loaded when the field is first used. */
(function () {
  "use strict";
  var box = document.querySelector(".find");
  if (!box) return;
  var base = box.dataset.base.replace(/\/?$/, "/");
  var field = box.querySelector("input");
  var said = box.querySelector(".found");
  var list = box.querySelector(".finds");
  var most = 12;
  box.hidden = false;

  function fold(text) {
    return text.normalize("NFD").replace(/[\u0300-\u036f]/g, "").toLowerCase();
  }
  function bare(html) {
    var made = new DOMParser().parseFromString(html.replace(/</g, " <"), "text/html");
    return made.body.textContent.replace(/\s+/g, " ").trim();
  }
  function load() {
    field.removeEventListener("focus", load);
    var script = document.createElement("script");
    script.src = base + "search/search_index.js";
    script.onload = show;
    document.head.appendChild(script);
  }
  function prepared() {
    var index = window.caseloomIndex;
    if (!index.folded) {
      var pages = {};
      index.docs.forEach(function (one) { if (one.location.indexOf("#") < 0) pages[one.location] = bare(one.title); });
      index.folded = index.docs.map(function (one) {
        var text = bare(one.text), title = bare(one.title), page = pages[one.location.split("#")[0]];
        if (page && page !== title) title = page + " · " + title;
        return { at: one.location, title: title, text: text, low: fold(text), head: fold(title) };
      });
    }
    return index.folded;
  }
  function weight(one, words) {
    var sum = 0;
    for (var i = 0; i < words.length; i++) {
      var head = one.head.indexOf(words[i]), low = one.low.indexOf(words[i]);
      if (head < 0 && low < 0) return 0;
      sum += (head >= 0 ? 10 : 0) + (head === 0 ? 5 : 0) + (low >= 0 ? 1 : 0);
    }
    return sum;
  }
  function excerpt(one, word) {
    var at = Math.max(0, one.low.indexOf(word) - 40);
    return (at ? "… " : "") + one.text.slice(at, at + 120) + (one.text.length > at + 120 ? " …" : "");
  }
  function item(one, words) {
    var li = document.createElement("li"), link = document.createElement("a");
    var title = document.createElement("b"), text = document.createElement("span");
    title.textContent = one.title;
    text.textContent = excerpt(one, words[0]);
    link.href = base + one.at;
    link.append(title, text);
    li.appendChild(link);
    return li;
  }
  function show() {
    if (!window.caseloomIndex) return;
    var words = fold(field.value).split(/\s+/).filter(Boolean);
    var hits = prepared().map(function (one) { return { one: one, sum: words.length ? weight(one, words) : 0 }; })
      .filter(function (hit) { return hit.sum; })
      .sort(function (a, b) { return b.sum - a.sum; });
    list.replaceChildren.apply(list, hits.slice(0, most).map(function (hit) { return item(hit.one, words); }));
    said.textContent = !words.length ? "" : hits.length ? box.dataset.some.replace("{n}", hits.length) : box.dataset.none;
  }
  field.addEventListener("focus", load);
  field.addEventListener("input", show);
})();

/* The instructor's page: what stands here is asked for anew every second. */
(function () {
  "use strict";
  var given = JSON.parse(document.getElementById("data").textContent), words = given.words;
  var byId = document.getElementById.bind(document), shown = {};

  function make(kind, text, name) {
    var made = document.createElement(kind);
    if (text !== undefined) made.textContent = text;
    if (name) made.className = name;
    return made;
  }
  /* A part is drawn again only where it has changed, so that nothing moves under a finger. */
  function part(id, value, draw) {
    var text = JSON.stringify(value);
    if (shown[id] === text) return;
    shown[id] = text;
    byId(id).replaceChildren.apply(byId(id), value.map(draw));
  }
  function line(text) { return make("p", text, "aside-clay"); }
  function address(one) {
    var li = make("li"), button = make("button", one[0]);
    button.type = "button";
    button.addEventListener("click", function () { send("/open", { address: one[0] }); });
    li.append(button, make("span", one[1], "quiet"));
    return li;
  }
  function screen(one) {
    var li = make("li"), link = make("a", one[0], "button mild");
    link.href = "/screen?at=" + encodeURIComponent(one[1]);
    link.target = "caseloom-screen";
    li.append(link);
    return li;
  }
  function count(one) {
    var div = make("div");
    div.append(make("dt", one[1]), make("dd", one[0]));
    return div;
  }
  function person(one) {
    var li = make("li", undefined, "is-" + one.state), where = make("span", one.text, "where-now");
    li.append(make("b", one.name), where);
    one.receipts.forEach(function (receipt) { li.append(make("small", receipt, "receipt")); });
    return li;
  }
  function left(one) {
    var li = make("li");
    li.append(make("b", one.at + " " + one.file), make("span", one.fault), make("small", one.remedy));
    return li;
  }
  function show(state) {
    part("notices", state.notices, line);
    byId("is-shut").hidden = Boolean(state.way);
    byId("is-open").hidden = byId("shut").hidden = !state.way;
    byId("no-address").hidden = state.addresses.length > 0;
    byId("way").textContent = state.way;
    part("addresses", state.addresses, address);
    part("screens", Object.entries(given.starts), screen);
    part("counts", state.counts, count);
    part("people", state.people, person);
    byId("aside").hidden = !state.aside.length;
    part("aside-list", state.aside, left);
  }
  function read(answer) {
    return answer.json().then(function (told) {
      byId("problem").textContent = told.fault || "";
      if (answer.ok) show(told);
    });
  }
  function send(path, data) {
    fetch(path, { method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify(data) })
      .then(read).catch(gone);
  }
  function gone() { part("notices", [words.gone], line); }
  function again() {
    fetch("/state").then(read).catch(gone).finally(function () { setTimeout(again, 1000); });
  }
  byId("shut").addEventListener("click", function () { send("/shut", {}); });
  show(given.state);
  again();
})();

/* Steps in order, without dragging: two buttons for each step, or its place chosen from a list.

   The step that is moved stays where it is in the page and the others move around it, so that it keeps the focus. */
(function () {
  "use strict";
  var loom = window.caseloom;

  function list(fieldset) { return fieldset.querySelector(".steps"); }
  function steps(fieldset) { return Array.from(list(fieldset).children); }
  function meant(fieldset) { return fieldset.querySelector(".meant input"); }
  function what(step) { return step.querySelector(".what").textContent; }

  function number(fieldset) {
    var all = steps(fieldset);
    all.forEach(function (step, index) {
      step.querySelector("select").value = String(index + 1);
      step.querySelector(".up").setAttribute("aria-disabled", String(index === 0));
      step.querySelector(".down").setAttribute("aria-disabled", String(index === all.length - 1));
    });
  }
  function arrange(fieldset, order, fixed) {
    var at = order.indexOf(fixed);
    order.forEach(function (step, index) {
      if (index < at) list(fieldset).insertBefore(step, fixed);
      else if (step !== fixed) list(fieldset).appendChild(step);
    });
    number(fieldset);
  }
  function move(fieldset, step, place) {
    var order = steps(fieldset).filter(function (one) { return one !== step; });
    if (place < 0 || place > order.length || steps(fieldset)[place] === step) return number(fieldset);
    order.splice(place, 0, step);
    arrange(fieldset, order, step);
    meant(fieldset).checked = true;
    fieldset.querySelector("[role=status]").textContent = list(fieldset).dataset.moved
      .replace("{step}", what(step)).replace("{n}", place + 1).replace("{of}", order.length);
    loom.changed(meant(fieldset));
  }
  function attend(fieldset, step) {
    var select = step.querySelector("select");
    select.options[0].remove();
    select.addEventListener("change", function (event) {
      event.stopPropagation();
      move(fieldset, step, Number(select.value) - 1);
    });
    [[".up", -1], [".down", 1]].forEach(function (one) {
      step.querySelector(one[0]).addEventListener("click", function () {
        move(fieldset, step, steps(fieldset).indexOf(step) + one[1]);
      });
    });
    step.querySelector(".moves").hidden = false;
  }
  function read(fieldset) {
    if (!meant(fieldset).checked) return null;
    return steps(fieldset).map(function (step) { return step.dataset.step; });
  }
  loom.kinds.order = {
    ready: function (fieldset) {
      steps(fieldset).forEach(function (step) { attend(fieldset, step); });
      fieldset.querySelector(".meant").hidden = false;
      number(fieldset);
    },
    read: read,
    put: function (fieldset, value) {
      var all = steps(fieldset), given = Array.isArray(value) ? value : [];
      var order = given.map(function (name) {
        return all.find(function (step) { return step.dataset.step === name; });
      }).filter(function (step, index, found) { return step && found.indexOf(step) === index; });
      var whole = order.length === all.length;
      if (whole) arrange(fieldset, order, order[0]);
      meant(fieldset).checked = whole;
    },
    said: function (fieldset) {
      return read(fieldset) === null ? "" : steps(fieldset).map(function (step, index) {
        return index + 1 + ". " + what(step);
      }).join(" ");
    },
    whole: function (fieldset) { return read(fieldset) !== null; }
  };
})();

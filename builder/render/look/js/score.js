/* What an answer earns: the same policies as the tool's own, in whole numbers of any size, as a fraction in text.

   caseloom.score(question, policy, value) gives such as "1", "0" or "5/6". A question has its kind and what is
   right, in the shape of the examples that both sides are tested with. */
(function () {
  "use strict";
  var loom = (window.caseloom = window.caseloom || {});
  var SHAPE = /^([+-]?)(?:([0-9]{1,30})(?:[.]([0-9]{0,30}))?|[.]([0-9]{1,30}))$/;

  function divisor(a, b) { return b ? divisor(b, a % b) : a < 0n ? -a : a; }
  function fraction(over, under) {
    var n = BigInt(over), d = BigInt(under), by = divisor(n, d) || 1n;
    return { n: n / by, d: d / by };
  }
  function told(one) { return one.d === 1n ? String(one.n) : one.n + "/" + one.d; }
  function least(one) { return one.n < 0n ? fraction(0, 1) : one; }
  function whole(yes) { return fraction(yes ? 1 : 0, 1); }
  function count(list, test) { return list.filter(test).length; }
  function once(list) { return Array.from(new Set(list)); }

  function settled(key, picked) {
    var off = count(key.options, function (one) { return picked.includes(one) !== key.right.includes(one); });
    off += count(picked, function (one) { return !key.options.includes(one) && !key.right.includes(one); });
    return Math.max(0, key.options.length - off);
  }
  function exactly(key, picked) {
    return picked.length === key.right.length && picked.every(function (one) { return key.right.includes(one); });
  }
  function half(key, picked, near) {
    return exactly(key, picked) ? whole(true) : near ? fraction(1, 2) : whole(false);
  }
  var CHOICES = {
    exact: function (key, picked) { return whole(exactly(key, picked)); },
    plus_minus: function (key, picked, hits) {
      return least(fraction(hits - (picked.length - hits), key.right.length));
    },
    per_option: function (key, picked) { return fraction(settled(key, picked), key.options.length); },
    half_point: function (key, picked) {
      return half(key, picked, settled(key, picked) === key.options.length - 1);
    },
    over_half: function (key, picked) { return half(key, picked, 2 * settled(key, picked) > key.options.length); },
    limited: function (key, picked, hits) {
      return picked.length > key.right.length ? whole(false) : fraction(hits, key.right.length);
    },
    shares: function (key, picked, hits) {
      var right = key.right.length, wrong = Math.max(1, key.options.length - right);
      return least(fraction(hits * wrong - (picked.length - hits) * right, right * wrong));
    }
  };
  function choice(key, policy, value) {
    var picked = once(typeof value === "string" ? [value] : value.map(function (one) {
      return typeof one === "string" ? one : "";
    }));
    var hits = count(picked, function (one) { return key.right.includes(one); });
    return (key.right.length ? CHOICES[policy] : CHOICES.exact)(key, picked, hits);
  }

  function pairsOf(places) {
    return places.flatMap(function (one, at) {
      return places.slice(at + 1).map(function (other) { return [one, other]; });
    });
  }
  function rising(pair) { return pair[0] < pair[1]; }
  function longest(places) {
    var best = [];
    places.forEach(function (place, at) {
      best.push(1 + Math.max.apply(null, [0].concat(best.filter(function (_, k) {
        return k < at && places[k] < place;
      }))));
    });
    return Math.max.apply(null, best);
  }
  function inPlace(places) { return count(places, function (place, at) { return place === at; }); }
  var ORDERS = {
    exact: function (places) { return whole(inPlace(places) === places.length); },
    in_place: function (places) { return fraction(inPlace(places), places.length); },
    pairs: function (places) {
      var every = pairsOf(places);
      return fraction(count(every, rising), every.length);
    },
    adjacent: function (places) {
      return fraction(count(places, function (place, at) { return at && place === places[at - 1] + 1; }), places.length - 1);
    },
    longest: function (places) { return fraction(longest(places), places.length); },
    longest_beyond_one: function (places) { return fraction(longest(places) - 1, places.length - 1); },
    footrule: function (places) {
      var off = places.reduce(function (sum, place, at) { return sum + Math.abs(place - at); }, 0);
      var most = Math.floor(places.length * places.length / 2);
      return fraction(most - off, most);
    }
  };
  function order(key, policy, value) {
    var given = typeof value === "string" ? [] : value.filter(function (one) { return typeof one === "string"; });
    var same = given.slice().sort().join("\n") === key.steps.slice().sort().join("\n");
    var kept = same && key.must.every(function (pair) { return given.indexOf(pair[0]) < given.indexOf(pair[1]); });
    if (!kept || given.length !== key.steps.length) return whole(false);
    return ORDERS[policy](given.map(function (step) { return key.steps.indexOf(step); }));
  }

  function match(key, policy, value) {
    var joined = typeof value === "string" ? [] : value.filter(Array.isArray).map(function (pair) { return pair.join(">"); });
    var given = once(joined), right = key.pairs.map(function (pair) { return pair.join(">"); });
    var hits = given.filter(function (one) { return right.includes(one); });
    if (policy === "exact") return whole(given.length === right.length && hits.length === right.length);
    var sure = hits.filter(function (hit) {
      var left = hit.slice(0, hit.indexOf(">") + 1);
      return count(given, function (one) { return one.startsWith(left); }) === 1;
    });
    return fraction(sure.length, right.length);
  }

  /* A number as typed: point or comma, its own unit after it or not; null where it is none. */
  loom.numberOf = function (typed, unit) {
    var text = typed.trim().toLowerCase(), own = unit.trim().toLowerCase();
    if (own && text.endsWith(own)) text = text.slice(0, text.length - own.length);
    var shape = SHAPE.exec(text.trim().replace(/\u2212/g, "-").replace(/,/g, "."));
    if (!shape) return null;
    var parts = shape[3] === undefined ? shape[4] || "" : shape[3];
    var digits = BigInt((shape[2] || "") + parts || "0");
    return fraction(shape[1] === "-" ? -digits : digits, 10n ** BigInt(parts.length));
  };
  function bound(text) {
    var parts = text.split("/");
    return fraction(parts[0], parts[1] || 1);
  }
  function below(one, other) { return one.n * other.d < other.n * one.d; }
  function number(key, policy, value) {
    var found = loom.numberOf(typeof value === "string" ? value : "", key.unit);
    return whole(found !== null && !below(found, bound(key.least)) && !below(bound(key.most), found));
  }

  function panel(key, policy, value) {
    var picked = once([].concat(value)), votes = new Map(key.votes);
    if (picked.length !== 1) return whole(false);
    return fraction(votes.get(picked[0]) || 0, Math.max.apply(null, Array.from(votes.values())));
  }

  var KINDS = { one: choice, many: choice, order: order, match: match, number: number, panel: panel };
  loom.score = function (question, policy, value) {
    return value === null ? "0" : told(KINDS[question.kind](question, policy, value));
  };
})();

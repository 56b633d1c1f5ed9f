# caseloom: `make demo` shows the whole job, `make test` proves it, `make help` lists the rest.

SHELL := /bin/bash
.SHELLFLAGS := -eu -o pipefail -c
.DELETE_ON_ERROR:
.DEFAULT_GOAL := help
.PHONY: help env demo test soak bench sheets lint format lock clean system-tests

VENV := .venv
BIN := $(VENV)/bin
UV ?= uv
CHROMIUM ?= chromium
AXE := tests/browser/node_modules/axe-core/axe.min.js
YAML_SERVER := tests/editor/node_modules/yaml-language-server/bin/yaml-language-server

SOURCE_DATE_EPOCH ?= $(shell git log -1 --format=%ct 2>/dev/null || echo 315532800)
export SOURCE_DATE_EPOCH

# The first interpreter on this machine that is new enough.
NEW_ENOUGH := import sys; sys.exit(sys.version_info < (3, 11, 2))
PYTHON ?= $(shell for p in python3 python3.14 python3.13 python3.12 python3.11; do \
	if $$p -c '$(NEW_ENOUGH)' 2>/dev/null; then echo $$p; exit; fi; done; echo false)

# $(call say,words): one plain line, and stop.
say = { echo 'caseloom: $(1)' >&2; exit 1; }

# $(call apt,packages,what is missing): install from Debian where that is possible, else say so.
apt = { [ "$$(id -u)" = 0 ] && command -v apt-get >/dev/null \
	|| $(call say,$(2) is missing; on Debian "apt-get install $(1)" as root brings it.); \
	echo "caseloom: installing $(1)"; \
	{ apt-get -qq update && DEBIAN_FRONTEND=noninteractive apt-get -qq -y install --no-install-recommends $(1); } \
	>/dev/null 2>&1 || $(call say,$(2) is missing and "apt-get install $(1)" failed: is there a network?); }

# $(call pip,arguments): the epoch is withheld so that modules are compiled to be checked by time, which is quicker.
pip = { env -u SOURCE_DATE_EPOCH $(BIN)/python -m pip --disable-pip-version-check install --quiet $(1) \
	>$(VENV)/pip.log 2>&1 || $(pip-failed); }
pip-failed = { grep -q 'connection broken' $(VENV)/pip.log \
	&& $(call say,the packages could not be fetched: is there a network? $(VENV)/pip.log says more.) \
	|| $(call say,the packages could not be installed; $(VENV)/pip.log says why.); }

help: ## list the targets
	@sed -n 's/^\([a-z]*\):.*## \(.*\)/make \1\t\2/p' Makefile | expand -t 14

$(VENV)/made:
	@$(PYTHON) -c '$(NEW_ENOUGH)' 2>/dev/null \
	|| $(call say,Python 3.11.2 or newer is missing; name one with "make PYTHON=...".)
	@$(PYTHON) -c 'import ensurepip' 2>/dev/null || $(call apt,python3-venv,the venv module of Python)
	@$(PYTHON) -m venv --clear $(VENV) || $(call say,$(PYTHON) could not make $(VENV).)
	@touch $@

$(VENV)/runtime: requirements.lock pyproject.toml | $(VENV)/made
	@echo "caseloom: installing the packages of requirements.lock into $(VENV)"
	@$(call pip,--require-hashes --requirement requirements.lock)
	@$(call pip,--no-deps --no-build-isolation --editable .)
	@touch $@

$(VENV)/tests: requirements-test.lock | $(VENV)/runtime
	@echo "caseloom: installing the packages of requirements-test.lock into $(VENV)"
	@$(call pip,--require-hashes --requirement requirements-test.lock)
	@touch $@

env: $(VENV)/runtime $(VENV)/tests ## make .venv, with everything development needs

demo: $(VENV)/runtime ## run the whole job on demo_course into out/demo
	@$(BIN)/caseloom demo --out out/demo

system-tests:
	@command -v $(CHROMIUM) >/dev/null || $(call apt,chromium,Chromium)
	@command -v npm >/dev/null || $(call apt,nodejs npm,npm)

$(AXE): tests/browser/package-lock.json
$(YAML_SERVER): tests/editor/package-lock.json
$(AXE) $(YAML_SERVER): | system-tests
	@cd $(dir $<) && npm ci --silent --ignore-scripts --no-audit --no-fund >/dev/null 2>&1 \
	|| $(call say,what $(dir $<) needs could not be fetched by npm: is there a network?)
	@touch $@

lint: env ## check style and types
	@$(BIN)/ruff check --quiet
	@$(BIN)/ruff format --check --quiet
	@$(BIN)/mypy --no-error-summary

format: env ## put every file into the one format
	@$(BIN)/ruff check --quiet --fix --select I,F401
	@$(BIN)/ruff format --quiet

test: system-tests $(AXE) $(YAML_SERVER) lint ## run everything that must hold
	@$(BIN)/pytest -n auto --maxprocesses 6 --cov --cov-report=term

soak: env system-tests ## try for longer what must not be lost (KILLS=500 kills more often), and print the figures
	@$(BIN)/pytest -q -s -p no:cacheprovider tests/soak/soak_*.py tests/browser/soak_*.py

bench: env ## measure the speed, as ratios of one run
	@$(BIN)/pytest -q -s -p no:cacheprovider tests/bench/bench_*.py

planted: env ## print what is found when each known fault is planted in the rules, one at a time
	@$(BIN)/python -m tests.judge.show_planted

sheets: env system-tests ## answer the demo's test in a browser again, after a change of its cases
	@$(BIN)/python -m tests.demo.write_sheets

lock: ## resolve the lock files anew (needs uv; UPGRADE=--upgrade moves every pin)
	@command -v $(UV) >/dev/null || $(call say,uv is missing; name one with "make lock UV=...".)
	@echo 'hatchling>=1.27' | $(LOCK) pyproject.toml - --output-file requirements.lock
	@$(LOCK) pyproject.toml --extra test --constraints requirements.lock --output-file requirements-test.lock

LOCK = UV_CUSTOM_COMPILE_COMMAND='make lock' $(UV) pip compile --quiet --universal --python-version 3.11.0 \
	--generate-hashes $(UPGRADE)

clean: ## remove what make made
	@rm -rf $(VENV) out dist tests/*/node_modules .coverage .coverage.* .hypothesis \
	.mypy_cache .pytest_cache .ruff_cache

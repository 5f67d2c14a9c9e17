# Every target installs what it misses (tests/build/setup.sh says what it does) and is
# safe to run again.

export PATH := $(or $(XDG_CACHE_HOME),$(HOME)/.cache)/elbowroom/tools/bin:$(PATH)
export PORT ?= 8080

.PHONY: serve build test proof bench pictures setup

# The page at http://localhost:8080/elbowroom/
serve: build
	@node tests/build/serve.mjs

build:
	@bash tests/build/setup.sh page
	@env -u NO_COLOR trunk build --release

# Every check, as CI runs it; the last line counts them all.
test:
	@node tests/build/run_all.mjs

# The same checks at their full counts.
proof:
	@ELBOWROOM_FULL=1 node tests/build/run_all.mjs

# How fast it is: one table at the end (tests/bench).
bench: setup build
	@node tests/bench/run.mjs

# The README's pictures, taken anew.
pictures: setup build
	@cd tests && node build/pictures.mjs

setup:
	@bash tests/build/setup.sh tests

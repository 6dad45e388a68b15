# make run    build the site and serve it on this machine; LAN=1 lets phones in the same network in
# make test   everything that has to hold
# The other targets say above them what they are for. Go, and for the tests node and Chromium, are all it takes.

GO ?= go
OUT ?= dist
ADDR ?= 127.0.0.1:8080
FUZZTIME ?= 20s
FORMS ?= 2000
SBOM ?= sbom.cdx.json
BARS ?= 20

# Go's own runner for tests compiled to WASM. It hands the environment on to the program, which can hold only 8 kB
# of it, so that it gets no more than it needs. go test splits this at spaces outside quotes.
WASM_EXEC = env -i 'PATH=$$PATH' 'HOME=$$HOME' '$$($(GO) env GOROOT)/lib/wasm/go_js_wasm_exec'

.PHONY: run build test format vet unit wasm browser numbers numbers-exact vulncheck reproducible sbom size \
	bench speed bars fuzz clean need-node engines endure \
	release release-check hosts-check lighthouse

run:
	$(GO) run ./site serve -dir $(OUT) -addr $(ADDR) $(if $(LAN),-lan)

build:
	$(GO) run ./site build -out $(OUT)

test: format vet unit wasm numbers browser

format:
	@unformatted=$$(gofmt -l calc site wasm); if [ -n "$$unformatted" ]; then echo "Run gofmt -w on:"; echo "$$unformatted"; exit 1; fi

vet:
	$(GO) vet ./...
	GOOS=js GOARCH=wasm $(GO) vet ./wasm/... ./site/size/empty

# All tests but those in a browser.
unit:
	$(GO) test $$($(GO) list ./... | grep -v /site/browser)

# The calculators' tests once more, with fewer random forms, compiled to WASM as on the page: its arithmetic may differ in the
# last bit. The planner reckons in whole minutes, where nothing differs.
wasm: need-node
	GOOS=js GOARCH=wasm $(GO) test -short -exec="$(WASM_EXEC)" $$($(GO) list ./calc/... | grep -v calc/day/plan)

# Random forms of every calculator, natively and as WASM: the same texts, and numbers that hardly differ. make numbers FORMS=100000
numbers: need-node
	$(GO) run ./calc/check/bits -forms $(FORMS)

# The same against a program whose arithmetic is all Go's, as that of WASM is: every bit is the same.
numbers-exact: need-node
	GOARCH=386 CGO_ENABLED=0 $(GO) run ./calc/check/bits -forms $(FORMS) -exact

# The finished site in Chromium. Where there is none, it is installed if this machine can.
browser:
	@.ci/axe || echo "No accessibility checker: its test is passed over here, and fails where CI is set." >&2
	CHROMIUM="$$(.ci/chromium)" && export CHROMIUM && .ci/browser

# The main job, starting without a network, timers and the one file in Firefox and WebKit too. They are installed where this
# machine can; one that is missing is passed over, and said so.
engines: build
	@.ci/engines
	SPRAYWRIGHT_ENGINES=$(abspath $(OUT)) $(GO) test ./site/engines -count=1 -v

# Longer what the browser tests do a few times by chance: a browser killed while it writes, releases put on a host in any
# order, hostile links on every kind of page.
endure: HARD = SPRAYWRIGHT_KILLS=200 SPRAYWRIGHT_DEPLOYS=50 SPRAYWRIGHT_HOSTILE=10
endure:
	CHROMIUM="$$(.ci/chromium)" $(HARD) $(GO) test ./site/browser -count=1 -v -timeout 90m -run 'KilledBrowser|DeploysAndReloads|HostileLinksOfEvery'

# Known vulnerabilities in what is compiled. Says so where the list of them cannot be reached.
vulncheck:
	.ci/vulncheck

# Two builds in two places, byte by byte. It takes some minutes.
reproducible:
	.ci/reproducible

# What the site is made of, as a bill of materials (CycloneDX).
sbom:
	$(GO) run ./site/supply/sbom -out $(SBOM) -version "$(VERSION)"

# What a visitor downloads; fails when the core has grown past its limit.
size:
	$(GO) run ./site/size

# How long one recalculation takes, on the page's core and natively; how good and how quick the planner of the booth day
# is, natively, as WASM and beside general-purpose exact solvers where they are installed (glpsol, cbc).
bench: need-node build
	node testdata/bench.mjs $(OUT) testdata/demo/job.txt
	node testdata/scale.mjs $(OUT)
	cd testdata/pace && npm install --no-package-lock --ignore-scripts --no-audit --no-fund --loglevel=error && node pace.mjs
	$(GO) test -run='^$$' -bench=. -benchtime=0.2s ./calc/menu
	$(GO) run ./calc/day/plan/bars first shops proofs
	GOOS=js GOARCH=wasm $(GO) run -exec="$(WASM_EXEC)" ./calc/day/plan/bars first shops
	$(GO) run ./calc/day/plan/compare -seconds 10

# How long a person waits for the first answer and for the answer to a key, in Chromium, beside a page with an empty program.
speed:
	$(GO) run ./site build -compress -out $(OUT)
	CHROMIUM="$$(.ci/chromium)" && export CHROMIUM && $(GO) run ./site/speed -dist $(OUT)

# How good and how quick the planner is in Chromium; BARS says how many days of each kind it proves.
bars:
	CHROMIUM="$$(.ci/chromium)" && export CHROMIUM && SPRAYWRIGHT_BARS=$(BARS) $(GO) test ./site/browser -run '^TestTheBarsOfThePlanner$$' -count=1 -v -timeout 60m

# Random input for every fuzz test, FUZZTIME each: make fuzz FUZZTIME=10m
fuzz:
	@for package in $$($(GO) list ./calc/... ./site ./site/words); do \
		for target in $$($(GO) test -list='^Fuzz' $$package | grep '^Fuzz'); do \
			echo "$$package $$target"; $(GO) test $$package -run='^$$' -fuzz="^$$target$$" -fuzztime=$(FUZZTIME) || exit 1; \
		done; \
	done

# What a release holds, in .cache/release, out of what is committed: the site, the one file, a server for each system. It
# asks the module proxy for the tool, once, and nobody else for anything.
release: vulncheck
	$(GO) build -C .goreleaser -trimpath -o ../.cache/goreleaser github.com/goreleaser/goreleaser/v2
	.cache/goreleaser release --snapshot --clean

# Makes a release and opens it: every archive, its content run where this machine can.
release-check: release
	CHROMIUM="$$(.ci/chromium)" RELEASE="$(CURDIR)/.cache/release" $(GO) test -count=1 -v -run='OfARelease|OutOf|ForOtherMachines' ./site/browser

# The release's archive behind nginx and lighttpd, with the settings that the site shows; a server that is missing is passed over.
hosts-check:
	CHROMIUM="$$(.ci/chromium)" RELEASE="$(CURDIR)/.cache/release" PATH="$$PATH:/usr/sbin" $(GO) test -count=1 -v -run=TheArchiveOn ./site/browser

# Lighthouse on every page, as on a phone; PAGES names some instead, and MARKS some of its marks. What it measures needs a machine with nothing else to do.
LIGHTHOUSE = lighthouse@12.8.2# the last that runs on node 20
lighthouse: need-node
	$(GO) run ./site build -out .cache/site -compress
	@test -d .cache/lighthouse/node_modules/lighthouse || npm install --prefix .cache/lighthouse --no-audit --no-fund --ignore-scripts $(LIGHTHOUSE)
	CHROMIUM="$$(.ci/chromium)" && export CHROMIUM && .ci/lighthouse .cache/site $(PAGES)

clean:
	rm -rf $(OUT)

need-node:
	@.ci/need-node

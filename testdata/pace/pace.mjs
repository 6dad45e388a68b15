// Holds the core's arithmetic, compiled to WASM, to its limits in one run:
//
//   node testdata/pace/pace.mjs
//
// A grid of moist air must take no longer per point than with the general-purpose JavaScript library that package.json
// names, and 100,000 draws of the amount to mix less than 100 ms.
import { execFileSync } from "node:child_process";
import { createRequire } from "node:module";

const mostDraws = 100; // ms

// ns per operation of a Go benchmark as WASM.
function benchmark(name, pack) {
  const root = execFileSync("go", ["env", "GOROOT"], { encoding: "utf8" }).trim();
  const text = execFileSync("go", ["test", "-run=^$", `-bench=^Benchmark${name}$`, "-count=3", `-exec=${root}/lib/wasm/go_js_wasm_exec`, pack],
    { encoding: "utf8", env: { PATH: process.env.PATH, HOME: process.env.HOME, GOOS: "js", GOARCH: "wasm" } });
  const took = [...text.matchAll(/\s([\d.]+) ns\/op/g)].map((m) => Number(m[1]));
  if (took.length === 0) throw new Error(`no figure for ${name} in:\n${text}`);
  return Math.min(...took);
}

// The same grid as BenchmarkGrid's, -10 to 50 °C and 2 to 100 % at sea level.
function library() {
  const psychrolib = createRequire(import.meta.url)("psychrolib");
  psychrolib.SetUnitSystem(psychrolib.SI);
  let points = 0;
  const grid = () => {
    points = 0;
    for (let t = -10; t <= 50; t += 2) {
      for (let rh = 2; rh <= 100; rh += 2, points++) psychrolib.CalcPsychrometricsFromRelHum(t, rh / 100, 101325);
    }
  };
  grid(); // compiled by now
  let best = Infinity;
  for (let i = 0; i < 7; i++) {
    const from = performance.now();
    grid();
    best = Math.min(best, performance.now() - from);
  }
  return (best * 1e6) / points;
}

const points = 31 * 50;
const ours = benchmark("Grid", "./calc/climate") / points, theirs = library();
const draws = benchmark("Simulation", "./calc/film") / 1e6;
console.log(`psychrometrics per point: WASM ${ours.toFixed(0)} ns, the library ${theirs.toFixed(0)} ns: ${(ours / theirs).toFixed(2)} times`);
console.log(`100,000 draws of the amount to mix in WASM: ${draws.toFixed(1)} ms`);
if (ours > theirs || draws > mostDraws) {
  console.error("pace: over the limit");
  process.exit(1);
}

// Runs in the page of solver.mjs: solves the same rations with the solver of the core and with HiGHS, in turns, so that
// what else the machine does slows both alike.
import load, { Seeded } from '/answer.js';
import loadHighs from '/highs.mjs';

const LIMITS = 30;
/** Rations of each size. */
const SEEDS = 20;
/** Batches of the main size, and solves in each; HiGHS is slower and solves fewer times in a batch. */
const BATCHES = 200;
const SOLVES = 50;
const SOLVES_HIGHS = 10;
/** How far two costs may be apart, as a share. */
const CLOSE = 1e-8;
/** HiGHS at its own settings, but the cheapest itself and not one within a ten-thousandth of it, as the core proves. */
const OPTIONS = { output_flag: false, mip_rel_gap: 0, mip_abs_gap: 0 };
/** How closely the costs are compared: HiGHS as exact as it goes without giving up. */
const EXACT = {
  primal_feasibility_tolerance: 1e-9,
  dual_feasibility_tolerance: 1e-9,
  mip_feasibility_tolerance: 1e-9,
};

const median = (numbers) => {
  const sorted = [...numbers].sort((a, b) => a - b);
  const half = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
};

const timeOf = (times, run) => {
  const from = performance.now();
  run(times);
  return (performance.now() - from) / times;
};

/** The numbers of a ration as HiGHS takes them, a limit with two sides as one row; text would make it two. */
function modelOf(highs, numbers) {
  const { cost, lower, upper, whole, rowLower, rowUpper, terms } = numbers;
  const { continuous, integer } = highs.constants.variableType;
  const ends = (bounds, end) => bounds.map((bound) => bound ?? end);
  const [numCols, numRows] = [cost.length, rowLower.length];
  const places = terms.map((_, place) => place).filter((place) => terms[place] !== 0);
  const starts = Array.from({ length: numRows + 1 }, (_, row) => places.filter((place) => place < row * numCols).length);
  const matrix = {
    format: 'csr',
    numCols,
    numRows,
    starts,
    indices: places.map((place) => place % numCols),
    values: places.map((place) => terms[place]),
  };
  return highs.createModel({
    numCols,
    numRows,
    colCost: cost,
    colLower: ends(lower, -highs.infinity),
    colUpper: ends(upper, highs.infinity),
    rowLower: ends(rowLower, -highs.infinity),
    rowUpper: ends(rowUpper, highs.infinity),
    matrix,
    ...(whole.includes(true) ? { integrality: whole.map((is) => (is ? integer : continuous)) } : {}),
  });
}

/** One ration in both solvers. HiGHS keeps its model, so that copying is not in its time, and forgets what it found. */
function pair(highs, foods, doses, seed) {
  const ours = new Seeded(foods, LIMITS, doses, seed);
  const model = modelOf(highs, JSON.parse(ours.numbers()));
  model.options.set(OPTIONS);
  let text;
  const cost = () => {
    model.clearSolver();
    model.run();
    if (model.getModelStatus() !== highs.constants.modelStatus.optimal) throw new Error(`HiGHS: ${model.getModelStatus()}`);
    return model.getObjectiveValue();
  };
  return {
    ours,
    branches: () => ours.branches(),
    mine: (times) => ours.cost(times),
    highs: (times) => {
      for (let i = 0; i < times; i += 1) cost();
    },
    /** Without its presolve, which costs it more than it saves on so few numbers. */
    plain: (times) => {
      const presolve = model.options.get('presolve');
      model.options.set({ presolve: 'off' });
      for (let i = 0; i < times; i += 1) cost();
      model.options.set({ presolve });
    },
    /** From text each time, as its older door has it. */
    text: (times) => {
      text ??= model.exportModel('lp');
      for (let i = 0; i < times; i += 1) highs.solve(text, OPTIONS);
    },
    /** How far the costs are apart, as a share. */
    apart: () => {
      const before = Object.fromEntries(Object.keys(EXACT).map((name) => [name, model.options.get(name)]));
      model.options.set(EXACT);
      const theirs = cost();
      model.options.set(before);
      return Math.abs(ours.cost(1) - theirs) / Math.max(1, Math.abs(theirs));
    },
    done: () => {
      ours.free();
      model.dispose();
    },
  };
}

function agreed(pairs, what) {
  const apart = Math.max(...pairs.map((each) => each.apart()));
  if (!(apart <= CLOSE)) throw new Error(`${what}: the costs are ${apart} apart`);
  return apart;
}

/** So many batches in turns over the rations; the medians of both. */
function race(pairs, batches, solves, solvesHighs) {
  const mine = [];
  const highs = [];
  for (let batch = 0; batch < batches; batch += 1) {
    const each = pairs[batch % pairs.length];
    mine.push(timeOf(solves, each.mine));
    highs.push(timeOf(solvesHighs, each.highs));
  }
  return { ours: median(mine), highs: median(highs), oursSlowest: Math.max(...mine), highsSlowest: Math.max(...highs) };
}

export async function timed() {
  await load({ module_or_path: new URL('/answer_bg.wasm', location.href) });
  const highs = await loadHighs({ locateFile: (file) => new URL(`/${file}`, location.href).href });
  const rations = (foods, doses) => Array.from({ length: SEEDS }, (_, seed) => pair(highs, foods, doses, seed));
  const round = (foods, doses, batches, solves, solvesHighs) => {
    const pairs = rations(foods, doses);
    const apart = agreed(pairs, `${foods} foods, ${doses} in whole doses`);
    // The browser compiles what runs often once more, and better.
    race(pairs, SEEDS, solves, solvesHighs);
    const found = { foods, limits: LIMITS, doses, apart, ...race(pairs, batches, solves, solvesHighs) };
    found.branches = median(pairs.map((each) => each.branches()));
    if (batches === BATCHES) {
      for (const way of ['plain', 'text']) {
        const all = () => pairs.map((each) => timeOf(solvesHighs, each[way]));
        all();
        found[way] = median(all());
      }
    }
    for (const each of pairs) each.done();
    console.log(JSON.stringify(found));
    return found;
  };
  const main = round(30, 0, BATCHES, SOLVES, SOLVES_HIGHS);
  const growth = [10, 20, 30, 50, 100, 200].map((foods) => round(foods, 0, 2 * SEEDS, 10, 5));
  const doses = [5, 10, 20].map((doses) => round(30, doses, 2 * SEEDS, 1, 1));
  return { version: highs.version.string, batches: BATCHES, solves: SOLVES, solvesHighs: SOLVES_HIGHS, main, growth, doses };
}

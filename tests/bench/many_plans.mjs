// Random plans, the same ones for the same seed: invented, of no real house. For the terminal tool's
// bench and the comparisons of the JavaScript module; imports nothing of the program.

const FOOT = 0.3048;
const INCH = 0.0254;

/** Numbers from 0 to 1 from a seed: a 32-bit state that goes by a fixed step and is stirred well. */
export function random(seed) {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x9e3779b9) >>> 0;
    let mixed = state;
    mixed = Math.imul(mixed ^ (mixed >>> 16), 0x85ebca6b);
    mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
    return ((mixed ^ (mixed >>> 16)) >>> 0) / 2 ** 32;
  };
}

const SETS = ['irc_2021', 'irc_2018', 'irc_2015', 'irc_2012', 'irc_before_2012', 'imc_504', 'ifgc_614', 'umc_504'];
const ENDS = ['wall_hood', 'louvred_hood', 'roof_cap'];
const PHASES = ['warm_up', 'drying', 'end_of_drying', 'cool_down'];

/** A plan of a house with 4 in. duct, two to six legs, a riser now and then, and a visit in every
 * fourth; its air cools along the run in all but every eighth. */
export function composed(seed) {
  const next = random(seed);
  const between = (least, most) => least + next() * (most - least);
  const one = (list) => list[Math.floor(next() * list.length)];
  const chance = (share) => next() < share;
  const elbow = () => {
    const kind = one(['smooth', 'segmented', 'segmented', 'sharp_mitre']);
    return { kind, centre_line_radius_m: one([3, 4, 6]) * INCH };
  };
  const riser = (share) => (chance(share) ? { rise_m: between(0.8, 3), elbow: elbow() } : null);
  const [across, down] = [between(3, 9), between(3, 7)];
  const corners = [[0, 0], [across, 0], [across, down], [0, down]];
  const dryer = {
    x_m: across / 2, y_m: down - 0.5, width_m: 0.6858, depth_m: 0.7112, turned_deg: 0,
    outlet_height_m: 0.1, energy: one(['gas', 'electric']),
  };
  const points = [];
  let [x, y, heading] = [dryer.x_m, dryer.y_m - dryer.depth_m / 2, 0];
  const legs = 2 + Math.floor(next() * 5);
  for (let leg = 1; leg <= legs; leg += 1) {
    const length = leg === 1 ? between(0.4, 1.2) : between(0.7, 3.5);
    x += length * Math.sin((heading * Math.PI) / 180);
    y -= length * Math.cos((heading * Math.PI) / 180);
    const duct = leg === 1 && chance(0.4) ? one([{ semi_rigid: { short_of_full_stretch_percent: between(0, 40) } }, { foil: { short_of_full_stretch_percent: between(0, 40) } }]) : 'rigid';
    points.push({
      id: `p${leg}`, x_m: x, y_m: y, duct, elbow: elbow(), riser: leg < legs ? riser(0.25) : null,
      estimate: chance(0.1) ? { less_m: 0.2, more_m: between(0.2, 0.6) } : null,
      blockage_free_area: chance(0.05) ? between(0.4, 0.9) : null,
    });
    heading += one([90, -90, 90, -90, 45, -45]);
  }
  const plan = {
    format: 'elbowroom-plan',
    version: 1,
    title: `Invented house ${seed}`,
    note: 'Invented; no real house.',
    site: { altitude_m: between(0, 2500), outdoor_temperature_degc: between(-25, 35), outdoor_relative_humidity: between(0.2, 0.9) },
    exhaust: {
      temperature_degc: between(35, 70), relative_humidity: between(0.1, 0.6), phase: one(PHASES),
      along_run: chance(0.125) ? 'keeps_temperature' : 'cools',
    },
    flow: chance(0.9) ? { kind: 'typical_blower' } : { kind: 'stated_airflow', airflow_m3_per_s: between(0.02, 0.08) },
    code: { rule_set: one(SETS), path_through_fittings_counts: chance(0.5) },
    walls: corners.map(([fromX, fromY], side) => {
      const [toX, toY] = corners[(side + 1) % 4];
      return { id: `w${side + 1}`, from_x_m: fromX, from_y_m: fromY, to_x_m: toX, to_y_m: toY, thickness_m: 0.5 * FOOT, outside: side < 2 };
    }),
    openings: [{ id: 'o1', wall: 'w1', kind: 'window', offset_m: between(0.1, 1), width_m: 0.9 }],
    obstacles: Array.from({ length: Math.floor(next() * 6) }, (_, index) => ({
      id: `b${index + 1}`, name: `Box ${index + 1}`, level: one(['room', 'ceiling_space']),
      x_m: between(0, across), y_m: between(0, down), width_m: between(0.2, 0.8), depth_m: between(0.2, 0.8),
    })),
    zones: chance(0.3) ? [{ id: 'z1', kind: 'attic', level: 'ceiling_space', temperature_degc: between(-20, 40), x_m: 0, y_m: 0, width_m: across, depth_m: down }] : [],
    dryer,
    run: { diameter_m: 4 * INCH, outlet: { elbow: elbow(), riser: riser(0.2) }, points, termination: { kind: one(ENDS), free_area: chance(0.1) ? between(0.4, 1) : 1 } },
  };
  if (seed % 4 === 0) plan.visits = [visit(between(20, 400))];
  return plan;
}

function visit(pressure) {
  return {
    id: 'v1',
    date: 'a day in spring',
    entries: [{
      reading: {
        at: 'outlet',
        measured: { static_pressure: { pressure_pa: pressure, against: 'room', resolution_pa: 1, tolerance_pa: 2 } },
        conditions: { heat: false, lint_screen_clean: true, drum_empty: true, flap_held: false, door_open: false },
      },
    }],
  };
}

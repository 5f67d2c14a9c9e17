//! The air marched along the run, cell by cell.

use super::heat_run::HeatRun;
use super::{AirAlong, ElementHeat, HeatCell, HeatProfile, LocalAir};
use crate::air::{WATER_HEAT_CAPACITY, enthalpy, heat_capacity, saturated_humidity_ratio};
use crate::duct::heat_transfer::{
    Bulk, FULLY_TURBULENT, Film, Shell, StillAir, Wall, mass_transfer_coefficient, nusselt, wall,
};
use crate::numeric::root;
use crate::system::compiled::{CompiledRun, Passage};
use crate::system::input::Values;
use crate::units::{Density, Temperature};

/// Where the march has come to.
struct Walk<'a> {
    heat: &'a HeatRun,
    celsius: f64,
    humidity_ratio: f64,
    /// What a metre takes off the temperature and off the humidity ratio, as the last cell had it.
    slope: f64,
    ratio_slope: f64,
    wall: Wall,
    cells: Vec<HeatCell>,
}

/// Marches the air of `run` along its stretches, each element's flow being that of its passage (in
/// the order of the elements). The mass of dry air stays but for leaks; the air that a leak draws in
/// is not mixed in.
pub(in crate::system) fn march(
    run: &CompiledRun,
    heat: &HeatRun,
    passages: &[Passage],
    values: &Values,
) -> HeatProfile {
    // Kilograms of dry air in a cubic metre of exhaust.
    let dry_density = run.density.kilograms_per_cubic_metre() / (1.0 + heat.humidity_ratio);
    let cells = heat.stretches.iter().map(|stretch| stretch.cells as usize);
    let mut walk = Walk {
        heat,
        celsius: heat.celsius,
        humidity_ratio: heat.humidity_ratio,
        slope: 0.0,
        ratio_slope: 0.0,
        wall: Wall {
            celsius: heat.celsius,
            outward: 0.0,
            film_share: 1.0,
            water: 0.0,
            saturated: 0.0,
        },
        cells: Vec::with_capacity(cells.sum()),
    };
    // Elements in a row mostly share bore and flow: their Nusselt number is worked out once.
    let mut known = (f64::NAN, f64::NAN, 0.0);
    let mut surroundings = None;
    for stretch in &heat.stretches {
        let (Some(passage), still) = (passages.get(stretch.element), heat.still[stretch.still])
        else {
            continue;
        };
        let state = &passage.state;
        let dry_air = passage.airflow.cubic_metres_per_second() * dry_density;
        // Air that a draught drives backward is not followed.
        if dry_air <= 0.0 {
            continue;
        }
        #[allow(clippy::float_cmp, reason = "the same state, or another")]
        if known.0 != state.reynolds || known.1 != state.friction_factor {
            let bore = &run.elements[stretch.element].bore;
            let friction = |reynolds: f64| {
                if state.reynolds >= FULLY_TURBULENT {
                    state.friction_factor
                } else {
                    bore.friction_factor(reynolds, values)
                }
            };
            let number = nusselt(state.reynolds, heat.prandtl, friction);
            known = (state.reynolds, state.friction_factor, number);
        }
        let length = stretch.length / f64::from(stretch.cells);
        if surroundings != Some((stretch.still, stretch.shell)) {
            surroundings = Some((stretch.still, stretch.shell));
            walk.foresee(dry_air, known.2, &stretch.shell, &still);
        }
        for _ in 0..stretch.cells {
            let shell = &stretch.shell;
            walk.cell(stretch.element, length, dry_air, known.2, shell, &still);
        }
    }
    let dry_air = passages.first().map_or(0.0, |first| {
        first.airflow.cubic_metres_per_second() * dry_density
    });
    profile(run, heat, walk.cells, dry_air)
}

impl Walk<'_> {
    /// What carries heat and vapour at so many °C.
    fn film(&self, celsius: f64, nusselt: f64, shell: &Shell) -> Film {
        let heat = nusselt * self.heat.conductivity(celsius) / shell.hydraulic_diameter;
        let vapour = mass_transfer_coefficient(heat, heat_capacity(self.humidity_ratio));
        Film { heat, vapour }
    }

    fn bulk(&self, celsius: f64, humidity_ratio: f64) -> Bulk {
        Bulk {
            celsius,
            humidity_ratio,
            pressure: self.heat.pressure,
            dry_above: self.heat.dry_above,
        }
    }

    /// The slopes where shell or surroundings are others than before.
    fn foresee(&mut self, dry_air: f64, nusselt: f64, shell: &Shell, still: &StillAir) {
        let film = self.film(self.celsius, nusselt, shell);
        let bulk = self.bulk(self.celsius, self.humidity_ratio);
        self.wall = wall(&bulk, &film, shell, still, &self.wall);
        let passed = film.heat * shell.perimeter * (self.celsius - self.wall.celsius);
        self.slope = passed / (dry_air * heat_capacity(self.humidity_ratio));
        self.ratio_slope = self.wall.water / dry_air;
    }

    /// Marches through one cell: the wall is found at the cell's foreseen middle, and the air goes on
    /// toward the still air (and its vapour toward the wall's) by the exponential of what that
    /// passes on. So a cell may be long, and heat and water balance to the last digit.
    fn cell(
        &mut self,
        element: usize,
        length: f64,
        dry_air: f64,
        nusselt: f64,
        shell: &Shell,
        still: &StillAir,
    ) {
        let half = self.slope * length / 2.0;
        // The last slope foresees no middle beyond the still air.
        let middle = if (self.celsius - half - still.celsius) * (self.celsius - still.celsius) > 0.0
        {
            self.celsius - half
        } else {
            self.celsius
        };
        let capacity = heat_capacity(self.humidity_ratio);
        let film = self.film(middle, nusselt, shell);
        let middle_ratio = self.humidity_ratio - self.ratio_slope * length / 2.0;
        let bulk = self.bulk(middle, middle_ratio.max(0.0));
        self.wall = wall(&bulk, &film, shell, still, &self.wall);
        let passed = film.heat * shell.perimeter * (middle - self.wall.celsius);
        let over = middle - still.celsius;
        let (entering, entering_ratio) = (self.celsius, self.humidity_ratio);
        let a_kelvin = dry_air * capacity;
        let cooled = decayed(passed, over, entering - still.celsius, length / a_kelvin);
        let mut leaving = entering - cooled;
        let mut ratio = entering_ratio;
        if self.wall.water > 0.0 {
            let reach = film.vapour * shell.perimeter * length / dry_air;
            let excess = entering_ratio - self.wall.saturated;
            ratio = self.wall.saturated + excess * (-reach).exp();
        }
        let water = dry_air * (entering_ratio - ratio);
        let mut water_heat = water * WATER_HEAT_CAPACITY * self.wall.celsius;
        let held = |celsius: f64, ratio: f64| enthalpy(Temperature::from_celsius(celsius), ratio);
        // What goes through the wall, by the balance; mist gives its heat to the air.
        let given = held(entering, entering_ratio) - held(leaving, ratio);
        let lost = dry_air * given - water_heat;
        let mut all_water = water;
        if leaving < self.heat.dry_above {
            let mist = self.mist(&mut leaving, &mut ratio);
            all_water += dry_air * mist;
            water_heat += dry_air * mist * WATER_HEAT_CAPACITY * leaving;
        }
        self.slope = (entering - leaving) / length;
        self.ratio_slope = (entering_ratio - ratio) / length;
        (self.celsius, self.humidity_ratio) = (leaving, ratio);
        self.cells.push(HeatCell {
            element,
            length,
            celsius: leaving,
            humidity_ratio: ratio,
            wall: still.celsius + lost / (self.wall.outward * length),
            water: all_water,
            heat: lost,
            water_heat,
        });
    }

    /// Air that holds more vapour than it can lets it go as mist and is warmed by it, at the same
    /// heat in all; gives the mist, kg a kg of dry air.
    fn mist(&self, celsius: &mut f64, ratio: &mut f64) -> f64 {
        /// Of the computation.
        const TOLERANCE_KELVINS: f64 = 1e-9;
        let saturated = |celsius: f64| {
            saturated_humidity_ratio(Temperature::from_celsius(celsius), self.heat.pressure)
        };
        let held = |celsius: f64, ratio: f64| enthalpy(Temperature::from_celsius(celsius), ratio);
        let whole = *ratio;
        if whole <= saturated(*celsius) {
            return 0.0;
        }
        let start = held(*celsius, whole);
        let off = |celsius: f64| {
            let now = saturated(celsius);
            held(celsius, now) + (whole - now) * WATER_HEAT_CAPACITY * celsius - start
        };
        // At the dew point of the exhaust, or of what is left of it, nothing is over.
        let Ok(found) = root(off, *celsius, self.heat.dry_above, TOLERANCE_KELVINS) else {
            return 0.0;
        };
        *celsius = found;
        *ratio = saturated(*celsius);
        whole - *ratio
    }
}

/// How far a temperature falls over a cell: `passed` W/m at a difference of `over` K to the still
/// air, beginning at a difference of `start`, by `per_watt` K a (W/m).
fn decayed(passed: f64, over: f64, start: f64, per_watt: f64) -> f64 {
    /// So near the still air's temperature the heat that passes hangs on the water alone, K.
    /// Of the computation.
    const NEAR: f64 = 0.5;
    if over.abs() < NEAR {
        return (passed * per_watt).clamp(-NEAR, NEAR);
    }
    // A wet wall may be warmer than hardly moving air, and warms it: by no more than to twice the
    // difference in a cell, or the next cell would begin beyond all bounds.
    let reach = (passed / over * per_watt).max(-core::f64::consts::LN_2);
    start * -(-reach).exp_m1()
}

fn profile(run: &CompiledRun, heat: &HeatRun, cells: Vec<HeatCell>, dry_air: f64) -> HeatProfile {
    let specific = |celsius: f64, ratio: f64| {
        let density = heat.air(celsius, ratio).density();
        (1.0 + ratio) / density.kilograms_per_cubic_metre()
    };
    let at_outlet = specific(heat.celsius, heat.humidity_ratio);
    let mut air = AirAlong::constant(run.density, run.viscosity);
    air.elements.reserve_exact(run.elements.len());
    let mut elements = Vec::with_capacity(run.elements.len());
    let (mut celsius, mut ratio) = (heat.celsius, heat.humidity_ratio);
    let (mut length, mut sum) = (0.0, 0.0);
    let mut rest = cells.iter().peekable();
    for index in 0..run.elements.len() {
        let (entering, entering_ratio) = (celsius, ratio);
        let (mut own_length, mut own_sum, mut own_ratio, mut water) = (0.0, 0.0, 0.0, 0.0);
        let mut coldest = f64::INFINITY;
        while let Some(cell) = rest.next_if(|cell| cell.element == index) {
            own_length += cell.length;
            own_sum += f64::midpoint(celsius, cell.celsius) * cell.length;
            own_ratio += f64::midpoint(ratio, cell.humidity_ratio) * cell.length;
            (celsius, ratio) = (cell.celsius, cell.humidity_ratio);
            water += cell.water;
            coldest = coldest.min(cell.wall);
        }
        length += own_length;
        sum += own_sum;
        let (mean, mean_ratio) = if own_length > 0.0 {
            (own_sum / own_length, own_ratio / own_length)
        } else {
            (celsius, ratio)
        };
        let volume = specific(mean, mean_ratio);
        air.elements.push(LocalAir {
            expansion: volume / at_outlet,
            density: Density::from_kilograms_per_cubic_metre((1.0 + mean_ratio) / volume),
        });
        elements.push(ElementHeat {
            entering: Temperature::from_celsius(entering),
            leaving: Temperature::from_celsius(celsius),
            expansion: (
                specific(entering, entering_ratio) / at_outlet,
                specific(celsius, ratio) / at_outlet,
            ),
            coldest_wall: coldest
                .is_finite()
                .then(|| Temperature::from_celsius(coldest)),
            humidity_ratio: ratio,
            water,
        });
    }
    if length > 0.0 {
        air.viscosity = heat.air(sum / length, heat.humidity_ratio).viscosity();
    }
    HeatProfile {
        celsius: heat.celsius,
        humidity_ratio: heat.humidity_ratio,
        pressure: heat.pressure,
        dry_air,
        cells,
        elements,
        air,
    }
}

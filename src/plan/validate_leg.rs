//! Checks every value of a leg against its limits.

use super::validate::{Check, Path};
use super::{ConcealedElbows, Duct, Estimate, Field, Insulation, RunPoint};

impl Check {
    pub(super) fn leg(&mut self, path: Path<'_>, point: &RunPoint) {
        let duct = format_args!("{path}.duct");
        match point.duct {
            Duct::Rigid => {}
            Duct::SemiRigid {
                short_of_full_stretch_percent: percent,
            } => {
                let path = format_args!("{duct}.semi_rigid.short_of_full_stretch_percent");
                self.value(path, percent, Field::SHORT_OF_FULL_STRETCH);
            }
            Duct::Foil {
                short_of_full_stretch_percent: percent,
            } => {
                let path = format_args!("{duct}.foil.short_of_full_stretch_percent");
                self.value(path, percent, Field::SHORT_OF_FULL_STRETCH);
            }
            Duct::FlatRectangular { width, depth } => {
                let path = format_args!("{duct}.flat_rectangular");
                let (width, depth) = (width.metres(), depth.metres());
                self.value(
                    format_args!("{path}.width_m"),
                    width,
                    Field::RECTANGULAR_SIDE,
                );
                self.value(
                    format_args!("{path}.depth_m"),
                    depth,
                    Field::RECTANGULAR_SIDE,
                );
            }
        }
        let leg = &point.leg;
        if let Some(diameter) = leg.diameter {
            self.value(
                format_args!("{path}.diameter_m"),
                diameter.metres(),
                Field::DIAMETER,
            );
        }
        if let Some(Estimate { less, more }) = leg.estimate {
            self.value(
                format_args!("{path}.estimate.less_m"),
                less.metres(),
                Field::ESTIMATE,
            );
            self.value(
                format_args!("{path}.estimate.more_m"),
                more.metres(),
                Field::ESTIMATE,
            );
        }
        if let Some(ConcealedElbows { least, most }) = leg.concealed {
            let (least, most) = (f64::from(least), f64::from(most));
            let path = format_args!("{path}.concealed_elbows");
            self.value(format_args!("{path}.most"), most, Field::CONCEALED_ELBOWS);
            let field = Field {
                least: 0.0,
                greatest: most,
            };
            self.value(format_args!("{path}.least"), least, field);
        }
        if let Some(free) = leg.blockage_free_area {
            self.value(
                format_args!("{path}.blockage_free_area"),
                free,
                Field::FREE_SHARE,
            );
        }
        if let Some(area) = leg.leak_free_area_m2 {
            self.value(
                format_args!("{path}.leak_free_area_m2"),
                area,
                Field::LEAK_AREA,
            );
        }
        match leg.insulation {
            None => {}
            Some(Insulation::Thickness(thickness)) => self.value(
                format_args!("{path}.insulation.thickness_m"),
                thickness.metres(),
                Field::INSULATION_THICKNESS,
            ),
            Some(Insulation::Resistance(resistance)) => self.value(
                format_args!("{path}.insulation.resistance_m2_k_per_w"),
                resistance,
                Field::INSULATION_RESISTANCE,
            ),
        }
    }
}

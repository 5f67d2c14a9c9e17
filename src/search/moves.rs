//! The moves of the search for routes: on along a track, out through a wall, round an elbow, up or down
//! a riser, and up through the roof.

use super::field::{Field, Station};
use super::heading::Way;
use super::label::Label;
use super::routes::Routes;
use super::terminal::{End, Terminal, ahead, is_off_openings};

/// A leg short of a tangent by less than this, m, holds it. Of the computation.
pub(super) const SPARE_ROUNDING: f64 = 1e-10;

impl Routes {
    /// An elbow or a riser right at the outlet, as the present run has it.
    pub(super) fn turn_at_outlet(&mut self, first: &Label) {
        let Some(before) = self.labels().checked_sub(1) else {
            return;
        };
        let before = u32::try_from(before).ok();
        let (at_45, at_90) = self.tangents;
        for (way, is_quarter) in first.way.turns() {
            let tangent = if is_quarter { at_90 } else { at_45 };
            self.offer(Label {
                way,
                straight: -tangent,
                spare: -tangent,
                at_45: u8::from(!is_quarter),
                at_90: u8::from(is_quarter),
                before,
                ..*first
            });
        }
        self.risers(first, before, true);
    }

    pub(super) fn go_on(&mut self, label: &Label, before: Option<u32>) {
        let from = self.field.point(label.station);
        let next = self.field.next(label.station, label.way);
        let is_clear = |field: &mut Field, next: Station| {
            let to = field.point(next);
            field.is_clear(label.station, next, label.way)
                && (label.is_first_leg || field.is_clear_of_body(label.station.level, from, to))
        };
        if let Some(next) = next.filter(|next| is_clear(&mut self.field, *next)) {
            let length = from.distance(self.field.point(next)).metres();
            self.offer(Label {
                station: next,
                straight: label.straight + length,
                spare: (label.spare + length).min(self.tangents.1),
                before,
                ..*label
            });
            return;
        }
        let height = self.field.height(label.station);
        let reach = self.field.reach.straight;
        let Some(terminal) = ahead(&self.plan, from, label.way, height, reach) else {
            return;
        };
        let length = from.distance(terminal.point).metres();
        let level = label.station.level;
        let is_clear = self
            .field
            .is_last_leg_clear(level, from, terminal.point, terminal.end)
            && (label.is_first_leg || self.field.is_clear_of_body(level, from, terminal.point));
        if is_clear && label.spare + length >= -SPARE_ROUNDING {
            self.offer(Label {
                terminal: Some(terminal),
                straight: label.straight + length,
                spare: 0.0,
                before,
                ..*label
            });
        }
    }

    pub(super) fn turn(&mut self, label: &Label, before: Option<u32>) {
        let (at_45, at_90) = self.tangents;
        for (way, is_quarter) in label.way.turns() {
            let tangent = if is_quarter { at_90 } else { at_45 };
            if label.spare < tangent - SPARE_ROUNDING {
                continue;
            }
            let leads_on = !way.is_diagonal() || self.field.next(label.station, way).is_some();
            if leads_on && self.field.is_bend_clear(label.station, label.way, way) {
                self.offer(Label {
                    way,
                    straight: label.straight - 2.0 * tangent,
                    spare: -tangent,
                    at_45: label.at_45 + u8::from(!is_quarter),
                    at_90: label.at_90 + u8::from(is_quarter),
                    is_first_leg: false,
                    before,
                    ..*label
                });
            }
        }
    }

    /// To every other level, and on from there on any heading.
    pub(super) fn risers(&mut self, label: &Label, before: Option<u32>, at_outlet: bool) {
        let tangent = self.tangents.1;
        let levels = u16::try_from(self.field.tracks.heights.len()).unwrap_or(0);
        for level in (0..levels).filter(|level| *level != label.station.level) {
            let station = Station {
                level,
                ..label.station
            };
            let rise = (self.field.height(station) - self.field.height(label.station)).abs();
            let is_clear = self.field.is_riser_clear(label.station, level, at_outlet);
            if rise.metres() < 2.0 * tangent - SPARE_ROUNDING || !is_clear {
                continue;
            }
            let outlet = self.plan.dryer.outlet_heading();
            let goes_back = |way: Way| outlet.turn_to(way.heading()).degrees() > 90.1;
            // At the outlet nothing straight stands before the first elbow.
            let taken_off = if at_outlet { 3.0 } else { 4.0 } * tangent;
            for way in Way::all() {
                self.offer(Label {
                    station,
                    way,
                    straight: label.straight + rise.metres() - taken_off,
                    spare: -tangent,
                    at_90: label.at_90 + 2,
                    is_first_leg: at_outlet && !goes_back(way),
                    before,
                    ..*label
                });
            }
        }
    }

    /// Up from a level leg to a cap on the roof.
    pub(super) fn up_through_roof(&mut self, label: &Label, before: Option<u32>) {
        let Some(roof) = self.options.roof_height else {
            return;
        };
        let tangent = self.tangents.1;
        let rise = (roof - self.field.height(label.station)).metres();
        let point = self.field.point(label.station);
        let has_room = rise >= tangent - SPARE_ROUNDING
            && self.field.is_clear_to_roof(label.station)
            && is_off_openings(&self.plan, point);
        if has_room {
            self.offer(Label {
                terminal: Some(Terminal {
                    point,
                    end: End::Roof,
                }),
                straight: label.straight + rise - 2.0 * tangent,
                at_90: label.at_90 + 1,
                spare: 0.0,
                before,
                ..*label
            });
        }
    }
}

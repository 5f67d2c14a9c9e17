//! From labels back to the corners of a route.

#![allow(
    clippy::float_cmp,
    reason = "heights are tracks, copied and never worked out"
)]

use super::{Corner, LabelSearch, NONE, ROUNDING};
use crate::plan::segment_distance;

impl LabelSearch {
    /// The corners from the outlet to `end`, those on a straight left out.
    pub(super) fn corners(&self, label: u32, end: Corner) -> Vec<Corner> {
        let mut all = vec![end];
        let mut at = label;
        // A bend's turn and a riser lie at the parent's crossing; the end's own height may differ.
        let mut height = if self
            .options
            .roof_height
            .is_some_and(|roof| roof.metres() == end.height)
        {
            f64::NAN
        } else {
            end.height
        };
        while at != NONE {
            let own = self.labels[at as usize];
            let (place, _) = self.place(own.state);
            let here = self.point(place);
            let level = self.tracks.height_m[place.2];
            if height != level && !height.is_nan() {
                all.push(Corner { at: here, height });
            }
            all.push(Corner {
                at: here,
                height: level,
            });
            if let Some(landing) = own.landing {
                all.push(Corner {
                    at: landing,
                    height: level,
                });
            }
            height = level;
            at = own.parent;
        }
        all.reverse();
        simplified(&all)
    }

    pub(super) fn crosses_itself(&self, corners: &[Corner]) -> bool {
        let width = self.plan.run.diameter.metres();
        let legs: Vec<_> = corners.windows(2).collect();
        legs.iter().enumerate().any(|(index, leg)| {
            legs.iter().skip(index + 2).any(|other| {
                let span = |leg: &[Corner]| {
                    (
                        leg[0].height.min(leg[1].height),
                        leg[0].height.max(leg[1].height),
                    )
                };
                let (own, far) = (span(leg), span(other));
                own.0 - width < far.1
                    && far.0 - width < own.1
                    && segment_distance(leg[0].at, leg[1].at, other[0].at, other[1].at)
                        < width - ROUNDING
            })
        })
    }
}

/// Without the corners that lie on a straight.
fn simplified(all: &[Corner]) -> Vec<Corner> {
    let mut kept: Vec<Corner> = Vec::new();
    for corner in all {
        if kept.last().is_some_and(|last| {
            last.at.distance(corner.at).metres() < ROUNDING && last.height == corner.height
        }) {
            continue;
        }
        if let [.., before, last] = kept[..] {
            let straight = before
                .at
                .heading_to(last.at)
                .zip(last.at.heading_to(corner.at));
            let is_level = before.height == last.height && last.height == corner.height;
            if is_level && straight.is_some_and(|(one, other)| one.turn_to(other).degrees() < 1e-3)
            {
                kept.pop();
            }
        }
        kept.push(*corner);
    }
    kept
}

//! Checks of the room, and of the dryer that stands in it.

use super::validate::Check;
use super::{Field, ObstacleKind, Plan, ValueError};

impl Check {
    pub(super) fn room(&mut self, plan: &Plan) {
        self.walls(plan);
        self.openings(plan);
        self.obstacles(plan);
        self.zones(plan);
        self.picture(plan);
        self.value(
            format_args!("ceiling_height_m"),
            plan.ceiling_height.metres(),
            Field::CEILING,
        );
        self.dryer(plan);
    }

    fn walls(&mut self, plan: &Plan) {
        self.count(format_args!("walls"), plan.walls.len(), Field::COUNT);
        self.ids("walls", plan.walls.iter().map(|wall| &*wall.id));
        for (index, wall) in plan.walls.iter().enumerate() {
            let ends = [
                ("from_x_m", wall.from_x_m),
                ("from_y_m", wall.from_y_m),
                ("to_x_m", wall.to_x_m),
                ("to_y_m", wall.to_y_m),
            ];
            for (name, value) in ends {
                self.value(
                    format_args!("walls[{index}].{name}"),
                    value,
                    Field::COORDINATE,
                );
            }
            let thickness = wall.thickness.metres();
            self.value(
                format_args!("walls[{index}].thickness_m"),
                thickness,
                Field::THICKNESS,
            );
        }
    }

    fn openings(&mut self, plan: &Plan) {
        self.count(format_args!("openings"), plan.openings.len(), Field::COUNT);
        self.ids("openings", plan.openings.iter().map(|opening| &*opening.id));
        for (index, opening) in plan.openings.iter().enumerate() {
            if !plan.walls.iter().any(|wall| wall.id == opening.wall) {
                self.fail(ValueError::NoSuchWall {
                    path: format!("openings[{index}].wall"),
                });
            }
            let (offset, width) = (opening.offset.metres(), opening.width.metres());
            self.value(
                format_args!("openings[{index}].offset_m"),
                offset,
                Field::OFFSET,
            );
            self.value(
                format_args!("openings[{index}].width_m"),
                width,
                Field::SIZE,
            );
        }
    }

    fn obstacles(&mut self, plan: &Plan) {
        self.count(
            format_args!("obstacles"),
            plan.obstacles.len(),
            Field::COUNT,
        );
        self.ids(
            "obstacles",
            plan.obstacles.iter().map(|obstacle| &*obstacle.id),
        );
        for (index, obstacle) in plan.obstacles.iter().enumerate() {
            self.value(
                format_args!("obstacles[{index}].x_m"),
                obstacle.x_m,
                Field::COORDINATE,
            );
            self.value(
                format_args!("obstacles[{index}].y_m"),
                obstacle.y_m,
                Field::COORDINATE,
            );
            let (width, depth) = (obstacle.width.metres(), obstacle.depth.metres());
            self.value(
                format_args!("obstacles[{index}].width_m"),
                width,
                Field::SIZE,
            );
            self.value(
                format_args!("obstacles[{index}].depth_m"),
                depth,
                Field::SIZE,
            );
            if let ObstacleKind::Framing { spacing, .. } = obstacle.kind {
                self.value(
                    format_args!("obstacles[{index}].kind.framing.spacing_m"),
                    spacing.metres(),
                    Field::SPACING,
                );
            }
        }
    }

    fn dryer(&mut self, plan: &Plan) {
        let dryer = &plan.dryer;
        self.value(format_args!("dryer.x_m"), dryer.x_m, Field::COORDINATE);
        self.value(format_args!("dryer.y_m"), dryer.y_m, Field::COORDINATE);
        self.value(
            format_args!("dryer.width_m"),
            dryer.width.metres(),
            Field::SIZE,
        );
        self.value(
            format_args!("dryer.depth_m"),
            dryer.depth.metres(),
            Field::SIZE,
        );
        self.value(
            format_args!("dryer.turned_deg"),
            dryer.turned_deg,
            Field::TURN,
        );
        self.value(
            format_args!("dryer.outlet_height_m"),
            dryer.outlet_height.metres(),
            Field::HEIGHT,
        );
    }

    fn zones(&mut self, plan: &Plan) {
        self.count(format_args!("zones"), plan.zones.len(), Field::COUNT);
        self.ids("zones", plan.zones.iter().map(|zone| &*zone.id));
        for (index, zone) in plan.zones.iter().enumerate() {
            self.value(
                format_args!("zones[{index}].temperature_degc"),
                zone.temperature.celsius(),
                Field::ZONE_TEMPERATURE,
            );
            self.value(
                format_args!("zones[{index}].x_m"),
                zone.x_m,
                Field::COORDINATE,
            );
            self.value(
                format_args!("zones[{index}].y_m"),
                zone.y_m,
                Field::COORDINATE,
            );
            self.value(
                format_args!("zones[{index}].width_m"),
                zone.width.metres(),
                Field::SIZE,
            );
            self.value(
                format_args!("zones[{index}].depth_m"),
                zone.depth.metres(),
                Field::SIZE,
            );
        }
    }

    fn picture(&mut self, plan: &Plan) {
        let Some(picture) = &plan.picture else {
            return;
        };
        let path = format_args!("picture.data_base64");
        self.base64(path, &picture.data_base64, Field::PICTURE);
        self.value(format_args!("picture.x_m"), picture.x_m, Field::COORDINATE);
        self.value(format_args!("picture.y_m"), picture.y_m, Field::COORDINATE);
        self.value(
            format_args!("picture.width_m"),
            picture.width.metres(),
            Field::SIZE,
        );
        self.value(
            format_args!("picture.depth_m"),
            picture.depth.metres(),
            Field::SIZE,
        );
    }
}

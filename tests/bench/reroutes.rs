//! The search, natively: time to the first answer that beats the present run and to the whole set, as
//! medians, and how both grow with the room's area and with its obstacles. Rooms are invented.

use elbowroom::plan::{Level, Obstacle, ObstacleKind, Plan, Point, Riser, RunPoint, Wall, blank};
use elbowroom::search::{Options, Request, Search};
use elbowroom::units::Length;
use std::time::Instant;

const REPEATS: usize = 15;
/// Labels between two looks at the clock.
const STEP: usize = 200;

/// `width` by `depth` feet with so many boxes on two levels, and a run that climbs and winds.
fn room(width: f64, depth: f64, obstacles: usize) -> Plan {
    let mut plan = blank("Bench, invented".to_owned());
    let (right, foot) = (Length::from_feet(width), Length::from_feet(depth));
    let (right, foot) = (right.metres(), foot.metres());
    let wall = |id: &str, from: (f64, f64), to: (f64, f64), outside| Wall {
        id: id.into(),
        from_x_m: from.0,
        from_y_m: from.1,
        to_x_m: to.0,
        to_y_m: to.1,
        thickness: Length::from_inches(6.0),
        outside,
    };
    plan.walls = vec![
        wall("w1", (0.0, 0.0), (right, 0.0), false),
        wall("w2", (right, 0.0), (right, foot), true),
        wall("w3", (right, foot), (0.0, foot), false),
        wall("w4", (0.0, foot), (0.0, 0.0), true),
    ];
    plan.dryer.x_m = right / 2.0;
    plan.dryer.y_m = foot * 0.55;
    let outlet = plan.dryer.outlet();
    // A low-discrepancy spread (Roberts 2018, from memory): the same boxes every time.
    let share = |index: usize, step: f64| {
        #[allow(clippy::cast_precision_loss, reason = "a few hundred boxes")]
        let at = index as f64 * step;
        at.fract()
    };
    let mut index = 0;
    while plan.obstacles.len() < obstacles {
        index += 1;
        let (x, y) = (
            share(index, 0.754_877_666) * right,
            share(index, 0.569_840_291) * foot,
        );
        let near = (x - outlet.x).abs() < 1.2 && (y - outlet.y).abs() < 1.6;
        if near {
            continue;
        }
        plan.obstacles.push(Obstacle {
            id: format!("b{index}").as_str().into(),
            name: String::new(),
            kind: ObstacleKind::ClosedArea,
            level: if index % 2 == 0 {
                Level::CeilingSpace
            } else {
                Level::Room
            },
            x_m: x,
            y_m: y,
            width: Length::from_metres(0.2 + share(index, 0.31) * 0.5),
            depth: Length::from_metres(0.2 + share(index, 0.47) * 0.5),
        });
    }
    let first = plan.run.points[0].clone();
    let point = |id: &str, x: f64, y: f64| RunPoint {
        id: id.into(),
        position: Point::new(x, y),
        ..first.clone()
    };
    let mut climb = point("p1", outlet.x, outlet.y - 0.4);
    climb.fitting.riser = Some(Riser {
        rise: Length::from_feet(8.5),
        elbow: first.fitting.elbow,
    });
    plan.run.points = vec![
        climb,
        point("p2", outlet.x, outlet.y - 1.5),
        point("p3", outlet.x + 1.5, outlet.y - 1.5),
        point("p4", outlet.x + 1.5, outlet.y - 2.5),
        point("p5", right + 0.0762, outlet.y - 2.5),
    ];
    plan
}

/// What a search took.
struct Timed {
    /// Milliseconds to the first answer that beats the present run.
    first: Option<f64>,
    /// Milliseconds to the whole set.
    whole: f64,
    /// Milliseconds of the longest step: so long a stop may have to wait.
    longest: f64,
    labels: usize,
    suggestions: usize,
    is_proven: bool,
}

fn timed(plan: &Plan) -> Timed {
    let start = Instant::now();
    let elapsed = || start.elapsed().as_secs_f64() * 1e3;
    let mut search = Search::new(Request {
        plan: plan.clone(),
        options: Options::default(),
    });
    let (mut first, mut before, mut longest) = (None, 0.0, 0.0_f64);
    loop {
        let reply = search.advance(STEP);
        longest = longest.max(elapsed() - before);
        before = elapsed();
        let best = reply.suggestions.as_ref().and_then(|it| it.first());
        let beats = best.zip(reply.present.as_ref());
        if first.is_none() && beats.is_some_and(|(best, own)| best.figures.order(own).is_lt()) {
            first = Some(elapsed());
        }
        if reply.is_done {
            return Timed {
                first,
                whole: elapsed(),
                longest,
                labels: reply.progress.looked_at,
                suggestions: reply.suggestions.map_or(0, |it| it.len()),
                is_proven: reply.progress.is_proven,
            };
        }
    }
}

fn median(mut values: Vec<f64>) -> f64 {
    values.sort_by(f64::total_cmp);
    values.get(values.len() / 2).copied().unwrap_or(f64::NAN)
}

fn main() {
    println!(
        "room, ft  boxes  first, ms  whole, ms  longest step, ms  labels  suggestions  proven"
    );
    for (width, depth, boxes) in [
        (20.0, 15.0, 60),
        (40.0, 30.0, 15),
        (40.0, 30.0, 30),
        (40.0, 30.0, 60),
        (40.0, 30.0, 120),
        (80.0, 60.0, 60),
    ] {
        let plan = room(width, depth, boxes);
        let runs: Vec<_> = (0..REPEATS).map(|_| timed(&plan)).collect();
        let first = median(runs.iter().filter_map(|run| run.first).collect());
        let whole = median(runs.iter().map(|run| run.whole).collect());
        let longest = median(runs.iter().map(|run| run.longest).collect());
        let Timed {
            labels,
            suggestions,
            is_proven,
            ..
        } = runs[0];
        println!(
            "{width} x {depth}  {boxes}  {first:.1}  {whole:.1}  {longest:.1}  {labels}  {suggestions}  {is_proven}"
        );
    }
}

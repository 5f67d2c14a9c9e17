//! The pressure line and the line of temperatures as SVG files: the same geometry as on the page.

use super::drawing::{FONTS, holdable};
use super::handover::{VisitFound, WorkedPlan};
use super::pressure_readings::pressure_readings;
use super::words::{HandoverLabel, HandoverMessage, HeatLabel, Label, Language, Message, say};
use crate::scene::{
    HeatLine, HeatPlot, PLOT_FOOT, PLOT_HEIGHT, PLOT_LEFT, PLOT_RIGHT, PLOT_TOP, PLOT_WIDTH,
    PlotPoint, PressurePlot,
};
use crate::system::pressure_line;
use crate::units::{Length, Pressure, Temperature, UnitSystem};
use svg::Document;
use svg::node::element::{Group, Path, Rectangle, Text};

/// Paper millimetres for each unit of a plot: 640 of them are 160 mm.
const MILLIMETRES: f64 = 0.25;
/// The heading above the plot, in the plot's units.
const HEAD: f64 = 22.0;
/// Height of letters, in the plot's units.
const LETTERS: f64 = 11.0;
/// Lines and letters.
const INK: &str = "#1b1f24";
const SOFT: &str = "#6b7280";
/// Half of a reading's mark, and of the clean run's tick, in the plot's units.
const HALF: f64 = 4.5;
const TICK: f64 = 6.0;

/// The pressure line of a run with the readings of a visit on it; none where no air moves.
pub fn pressure_svg(
    run: &WorkedPlan,
    visit: Option<&VisitFound>,
    language: Language,
    units: UnitSystem,
) -> Option<String> {
    let (point, ledger) = run.assessment.working.as_ref()?;
    let line = pressure_line(point, ledger);
    let read = visit.and_then(|found| {
        let visit = run.plan.visits.get(found.visit)?;
        Some(pressure_readings(&run.plan, visit, &found.clean, &line))
    });
    let end = line.last().map(|at| at.distance).unwrap_or_default();
    let plot = PressurePlot::of(line, read.unwrap_or_default());
    let sheet = Sheet { language, units };
    let pressure = |pascals: f64| units.pressure(Pressure::from_pascals(pascals));
    let (nought, top) = (plot.y(0.0), plot.y(plot.highest));
    let mut group = Group::new()
        .add(stroke(
            format!(
                "M{PLOT_LEFT} {PLOT_TOP}V{}M{PLOT_LEFT} {nought:.2}H{}",
                PLOT_HEIGHT - PLOT_FOOT,
                PLOT_WIDTH - PLOT_RIGHT
            ),
            SOFT,
            1.0,
        ))
        .add(stroke(plot.path(|at| at.total), INK, 2.0).set("stroke-linejoin", "round"))
        .add(
            stroke(plot.path(|at| at.r#static), INK, 1.5)
                .set("stroke-dasharray", "5 3")
                .set("stroke-linejoin", "round"),
        );
    for point in &plot.readings {
        group = reading(group, &plot, point);
    }
    let named = plot.line.iter().rev().nth(1);
    if let Some(at) = named {
        let x = plot.x(at.distance.metres()) - 6.0;
        let total = plot.y(at.total.pascals()) - 7.0;
        let r#static = plot.y(at.r#static.pascals()) + 13.0;
        group = group
            .add(words(
                &sheet.label(Label::PressureLineTotal),
                x,
                total,
                "end",
            ))
            .add(words(
                &sheet.label(Label::PressureLineStatic),
                x,
                r#static.min(PLOT_HEIGHT - PLOT_FOOT + 12.0),
                "end",
            ));
    }
    let left = PLOT_LEFT - 5.0;
    group = group
        .add(words(
            &pressure(plot.highest).figure,
            left,
            top + 4.0,
            "end",
        ))
        .add(words("0", left, nought + 4.0, "end"));
    let title = format!(
        "{}, {}",
        sheet.label(Label::PressureLine),
        pressure(0.0).unit
    );
    Some(sheet.document(group, &title, end, &run.plan.title))
}

/// A reading as a diamond, with a tick at what the clean run reads.
fn reading(group: Group, plot: &PressurePlot, point: &PlotPoint) -> Group {
    let (x, y) = (plot.x(point.metres), plot.y(point.read));
    let mut group = group;
    if let Some(clean) = point.clean {
        let clean = plot.y(clean);
        let tick = format!(
            "M{:.2} {clean:.2}H{:.2}M{x:.2} {clean:.2}V{y:.2}",
            x - TICK,
            x + TICK
        );
        group = group.add(stroke(tick, SOFT, 1.0));
    }
    let diamond = format!(
        "M{x:.2} {:.2}L{:.2} {y:.2}L{x:.2} {:.2}L{:.2} {y:.2}Z",
        y - HALF,
        x + HALF,
        y + HALF,
        x - HALF
    );
    group.add(stroke(diamond, INK, 1.5).set("fill", "#ffffff"))
}

/// The line of temperatures of a run; none where no air moves or it keeps its temperature.
pub fn heat_svg(run: &WorkedPlan, language: Language, units: UnitSystem) -> Option<String> {
    let (point, _) = run.assessment.working.as_ref()?;
    let plot = HeatPlot::of(&run.assessment.run, point.heat.as_ref()?);
    let sheet = Sheet { language, units };
    let foot = PLOT_HEIGHT - PLOT_FOOT;
    let mut group = Group::new()
        .add(
            Path::new()
                .set("d", plot.wet_path())
                .set("fill", SOFT)
                .set("fill-opacity", 0.25),
        )
        .add(stroke(
            format!("M{PLOT_LEFT} {PLOT_TOP}V{foot}H{}", PLOT_WIDTH - PLOT_RIGHT),
            SOFT,
            1.0,
        ));
    for (line, dashes) in [
        (HeatLine::Air, "none"),
        (HeatLine::Wall, "5 3"),
        (HeatLine::DewPoint, "1.5 3"),
    ] {
        group = group.add(
            stroke(plot.path(line), INK, 2.0)
                .set("stroke-dasharray", dashes)
                .set("stroke-linejoin", "round"),
        );
    }
    for (y, line) in plot.name_places() {
        let name = sheet.label(Label::Heat(match line {
            HeatLine::Air => HeatLabel::LineAir,
            HeatLine::Wall => HeatLabel::LineWall,
            HeatLine::DewPoint => HeatLabel::LineDewPoint,
        }));
        group = group.add(words(&name, PLOT_WIDTH - PLOT_RIGHT - 6.0, y, "end"));
    }
    let degrees = |celsius: f64| units.temperature(Temperature::from_celsius(celsius));
    let left = PLOT_LEFT - 5.0;
    group = group
        .add(words(
            &degrees(plot.highest).figure,
            left,
            PLOT_TOP + 4.0,
            "end",
        ))
        .add(words(&degrees(plot.lowest).figure, left, foot + 4.0, "end"));
    let name = sheet.label(Label::Heat(HeatLabel::Line));
    let title = format!("{name}, {}", degrees(0.0).unit);
    let end = plot.line.last().map(|at| at.distance).unwrap_or_default();
    Some(sheet.document(group, &title, end, &run.plan.title))
}

fn stroke(data: String, colour: &str, width: f64) -> Path {
    Path::new()
        .set("d", data)
        .set("fill", "none")
        .set("stroke", colour)
        .set("stroke-width", width)
}

fn words(text: &str, x: f64, y: f64, anchor: &str) -> Text {
    Text::new(holdable(text))
        .set("x", x)
        .set("y", y)
        .set("font-size", LETTERS)
        .set("text-anchor", anchor)
        .set("fill", INK)
}

struct Sheet {
    language: Language,
    units: UnitSystem,
}

impl Sheet {
    fn label(&self, label: Label) -> String {
        say(self.language, self.units, Message::Label(label))
    }

    /// The whole file: heading, plot, and the length along its foot.
    fn document(&self, plot: Group, title: &str, end: Length, job: &str) -> String {
        /// The most letters of the job's name.
        const LONGEST_NAME: usize = 60;
        let along = HandoverMessage::Label(HandoverLabel::AlongTheRun);
        let along = say(self.language, self.units, Message::Handover(along));
        let foot = PLOT_HEIGHT - 10.0;
        let (width, height) = (PLOT_WIDTH, PLOT_HEIGHT + HEAD);
        let job: String = job.chars().take(LONGEST_NAME).collect();
        let heading = if job.is_empty() {
            title.to_owned()
        } else {
            format!("{title}: {job}")
        };
        let plot = plot
            .add(words("0", PLOT_LEFT, foot, "start"))
            .add(words(
                &format!("{along} {}", self.units.length(end)),
                PLOT_WIDTH - PLOT_RIGHT,
                foot,
                "end",
            ))
            .set("transform", format!("translate(0 {HEAD})"));
        let paper = Rectangle::new()
            .set("width", width)
            .set("height", height)
            .set("fill", "#ffffff");
        let mut text = Document::new()
            .set("width", format!("{:.2}mm", width * MILLIMETRES))
            .set("height", format!("{:.2}mm", height * MILLIMETRES))
            .set("viewBox", (0.0, 0.0, width, height))
            .set("font-family", FONTS)
            .add(paper)
            .add(words(&heading, 10.0, 16.0, "start").set("font-weight", "bold"))
            .add(plot)
            .to_string();
        text.push('\n');
        text
    }
}
